#include "reading/screening.h"

#include <algorithm>
#include <string>

#include "reading/tree.h"

namespace visewright::reading {
namespace {

/// Line and column, counted in letters as an editor shows them, of the byte at `offset`.
base::Place place_at(std::string_view text, std::size_t offset, std::uint16_t text_index) {
  base::Place place{text_index, 1, 1};
  for (const char c : text.substr(0, offset)) {
    const bool continues_a_letter = (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
    if (c == '\n') {
      ++place.line;
      place.column = 1;
    } else if (!continues_a_letter) {
      ++place.column;
    }
  }
  return place;
}

/// Bytes of the well-formed letter at the start of `text` (Unicode 15 table 3-7); 0 when it is malformed.
std::size_t letter_bytes(std::string_view text) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  const auto follows = [&](std::size_t i, unsigned from = 0x80, unsigned to = 0xBF) {
    return byte(i) >= from && byte(i) <= to;
  };
  const unsigned first = byte(0);
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return follows(1) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const unsigned from = first == 0xE0 ? 0xA0 : 0x80;  // no overlong forms
    const unsigned to = first == 0xED ? 0x9F : 0xBF;    // no halves of surrogate pairs
    return follows(1, from, to) && follows(2) ? 3 : 0;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    const unsigned from = first == 0xF0 ? 0x90 : 0x80;
    const unsigned to = first == 0xF4 ? 0x8F : 0xBF;
    return follows(1, from, to) && follows(2) && follows(3) ? 4 : 0;
  }
  return 0;
}

std::optional<std::size_t> first_malformed(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t bytes = letter_bytes(text.substr(at));
    if (bytes == 0) return at;
    at += bytes;
  }
  return std::nullopt;
}

/// Offset behind the quoted text that starts at `at`. An unfinished one ends the text: the parser then says so.
std::size_t behind_quotes(std::string_view text, std::size_t at) {
  const char quote = text[at];
  const std::string three(3, quote);
  const bool many_lines = text.substr(at, 3) == three;
  for (std::size_t i = at + (many_lines ? 3 : 1); i < text.size(); ++i) {
    if (quote == '"' && text[i] == '\\') {
      ++i;
    } else if (many_lines ? text.substr(i, 3) == three : text[i] == quote) {
      return i + (many_lines ? 3 : 1);
    } else if (!many_lines && text[i] == '\n') {
      return i;
    }
  }
  return text.size();
}

bool goes_on_a_key(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-' ||
         c == ' ' || c == '\t';
}

/// Where brackets or dotted keys nest deeper than anybody writes by hand.
std::optional<std::size_t> first_too_deep(std::string_view text) {
  int brackets = 0;
  int parts = 1;
  for (std::size_t at = 0; at < text.size();) {
    const char c = text[at];
    if (c == '#') {
      at = std::min(text.find('\n', at), text.size());
      continue;
    }
    if (c == '"' || c == '\'') {
      at = behind_quotes(text, at);
      continue;
    }
    if (c == '[' || c == '{') ++brackets;
    if ((c == ']' || c == '}') && brackets > 0) --brackets;
    if (c == '.') {
      ++parts;
    } else if (!goes_on_a_key(c)) {
      parts = 1;
    }
    if (brackets > deepest_brackets || parts > most_key_parts) return at;
    ++at;
  }
  return std::nullopt;
}

}  // namespace

std::optional<base::Fault> screened(std::string_view text, std::string_view name, std::uint16_t text_index) {
  const auto refused = [&](base::Place place, std::string wrong, std::string right) {
    return base::Fault{base::Cause::input, place, std::string(name), std::move(wrong), std::move(right)};
  };
  if (text.size() > longest_text) {
    return refused({text_index, 0, 0}, "the text is " + std::to_string(text.size()) + " bytes long",
                   "at most " + std::to_string(longest_text) + " bytes are read; a design is a page or two");
  }
  if (const auto at = first_malformed(text)) {
    return refused(place_at(text, *at, text_index), "this byte is not part of any UTF-8 letter",
                   "save the file as UTF-8 text");
  }
  if (const auto at = first_too_deep(text)) {
    return refused(place_at(text, *at, text_index), "lists or tables stand too deep inside one another",
                   "at most " + std::to_string(deepest_brackets) + " brackets inside one another and " +
                       std::to_string(most_key_parts) + " names joined by dots");
  }
  return std::nullopt;
}

}  // namespace visewright::reading
