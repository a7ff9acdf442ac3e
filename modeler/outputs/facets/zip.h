// A zip archive whose files are stored as they are, with one fixed date: the same files give the same bytes.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace visewright::outputs::facets {

struct ZipEntry {
  std::string path, bytes;
};

/// In the order given. After PKWARE's APPNOTE 6.3: local heads, central directory, end record; no compression, no extra
/// fields, the date 1980-01-01 00:00, which is the first that the format has. REQUIRES: below 4 GiB in all.
[[nodiscard]] std::string zip(std::span<const ZipEntry>);

/// CRC-32 of ISO 3309, as zip uses it.
[[nodiscard]] std::uint32_t crc32(std::string_view bytes);

}  // namespace visewright::outputs::facets
