#include "outputs/facets/zip.h"

#include <array>

#include "outputs/facets/bytes.h"

namespace visewright::outputs::facets {
namespace {

constexpr std::array<std::uint32_t, 256> crc_table = [] {
  std::array<std::uint32_t, 256> table{};
  for (std::uint32_t i = 0; i < 256; ++i) {
    std::uint32_t c = i;
    for (int bit = 0; bit < 8; ++bit) c = (c & 1U) != 0 ? 0xEDB88320U ^ (c >> 1U) : c >> 1U;
    table[i] = c;
  }
  return table;
}();

constexpr std::uint32_t first_date = (0U << 9U) | (1U << 5U) | 1U;  // years since 1980, month, day

/// What the local head and the central directory say alike: version, flags (UTF-8 names), method, time, date, sums.
void add_common(std::string& out, const ZipEntry& entry, std::uint32_t crc) {
  add_u16(out, 20);
  add_u16(out, 1U << 11U);
  add_u16(out, 0);
  add_u16(out, 0);
  add_u16(out, first_date);
  add_u32(out, crc);
  add_u32(out, static_cast<std::uint32_t>(entry.bytes.size()));
  add_u32(out, static_cast<std::uint32_t>(entry.bytes.size()));
  add_u16(out, static_cast<std::uint32_t>(entry.path.size()));
  add_u16(out, 0);
}

}  // namespace

std::uint32_t crc32(std::string_view bytes) {
  std::uint32_t c = 0xFFFFFFFFU;
  for (const char byte : bytes) c = crc_table[(c ^ static_cast<unsigned char>(byte)) & 0xFFU] ^ (c >> 8U);
  return c ^ 0xFFFFFFFFU;
}

std::string zip(std::span<const ZipEntry> entries) {
  std::string out, directory;
  for (const ZipEntry& entry : entries) {
    const std::uint32_t crc = crc32(entry.bytes), at = static_cast<std::uint32_t>(out.size());
    add_u32(out, 0x04034B50U);
    add_common(out, entry, crc);
    out += entry.path;
    out += entry.bytes;
    add_u32(directory, 0x02014B50U);
    add_u16(directory, 20);
    add_common(directory, entry, crc);
    add_u16(directory, 0);  // no remark
    add_u16(directory, 0);  // first disk
    add_u16(directory, 0);
    add_u32(directory, 0);
    add_u32(directory, at);
    directory += entry.path;
  }
  const std::uint32_t start = static_cast<std::uint32_t>(out.size()), count = static_cast<std::uint32_t>(entries.size());
  out += directory;
  add_u32(out, 0x06054B50U);
  add_u16(out, 0);
  add_u16(out, 0);
  add_u16(out, count);
  add_u16(out, count);
  add_u32(out, static_cast<std::uint32_t>(directory.size()));
  add_u32(out, start);
  add_u16(out, 0);
  return out;
}

}  // namespace visewright::outputs::facets
