// Numbers as bytes, lowest first, whatever the machine's own order.
#pragma once

#include <bit>
#include <cstdint>
#include <string>

namespace visewright::outputs::facets {

inline void add_u16(std::string& bytes, std::uint32_t value) {
  for (int shift = 0; shift < 16; shift += 8) bytes.push_back(static_cast<char>((value >> shift) & 0xFFU));
}
inline void add_u32(std::string& bytes, std::uint32_t value) {
  for (int shift = 0; shift < 32; shift += 8) bytes.push_back(static_cast<char>((value >> shift) & 0xFFU));
}
inline void add_float(std::string& bytes, float value) { add_u32(bytes, std::bit_cast<std::uint32_t>(value)); }

}  // namespace visewright::outputs::facets
