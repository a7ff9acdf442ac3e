#include "kernel/step_text.h"

#include <array>
#include <charconv>
#include <cstdint>

namespace visewright::kernel {
namespace {

constexpr std::string_view opening = "{{", closing = "}}";
constexpr char32_t unreadable = 0xFFFD;

/// The code point at the front of a UTF-8 text, which is shortened by it.
char32_t next(std::string_view& text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned lead = byte(0);
  const std::size_t more = lead < 0x80 ? 0 : lead < 0xC2 ? 4 : lead < 0xE0 ? 1 : lead < 0xF0 ? 2 : lead < 0xF5 ? 3 : 4;
  char32_t point = more == 0 ? lead : lead & (0x3Fu >> more);
  bool good = more < 4 && text.size() > more;
  for (std::size_t i = 1; good && i <= more; ++i) {
    good = (byte(i) & 0xC0u) == 0x80u;
    point = (point << 6u) | (byte(i) & 0x3Fu);
  }
  constexpr std::array<char32_t, 4> least{0, 0x80, 0x800, 0x10000};
  if (good) good = point >= least[more] && point <= 0x10FFFF && (point < 0xD800 || point > 0xDFFF);
  text.remove_prefix(good ? more + 1 : 1);
  return good ? point : unreadable;
}

void append_hex(std::string& to, char32_t point, int digits) {
  constexpr std::string_view hex = "0123456789ABCDEF";
  for (int d = digits - 1; d >= 0; --d) to += hex[(point >> (4 * d)) & 0xFu];
}

}  // namespace

std::string encoded(std::string_view utf8) {
  std::string out;
  int open = 0;  // digits of the escape that is open, 0 when none is
  const auto close = [&] {
    if (open != 0) out += "\\X0\\";
    open = 0;
  };
  while (!utf8.empty()) {
    const char32_t point = next(utf8);
    if (point >= 0x20 && point < 0x7F) {
      close();
      out += static_cast<char>(point);
      if (point == U'\'' || point == U'\\') out += static_cast<char>(point);
      continue;
    }
    const int digits = point > 0xFFFF ? 8 : 4;
    if (open != digits) {
      close();
      out += digits == 8 ? "\\X4\\" : "\\X2\\";
      open = digits;
    }
    append_hex(out, point, digits);
  }
  close();
  return out;
}

std::string Texts::stand_in(std::string_view utf8) {
  encoded_.push_back(encoded(utf8));
  return std::string(opening) + std::to_string(encoded_.size() - 1) + std::string(closing);
}

std::string Texts::put_back(std::string_view file) const {
  std::string out;
  out.reserve(file.size());
  while (true) {
    const std::size_t at = file.find(opening);
    if (at == std::string_view::npos) return out.append(file);
    out.append(file.substr(0, at));
    file.remove_prefix(at + opening.size());
    std::size_t index = 0;
    const auto read = std::from_chars(file.data(), file.data() + file.size(), index);
    out.append(encoded_.at(index));
    file.remove_prefix(static_cast<std::size_t>(read.ptr - file.data()) + closing.size());
  }
}

}  // namespace visewright::kernel
