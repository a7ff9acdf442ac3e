// The frame round the entities of a DXF file: header, tables, blocks and objects that a reader wants to find.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// Pairs of a group code and a value, each on a line of its own, and handles counted up.
class DxfText {
 public:
  void put(int code, std::string_view value);
  void put(int code, long value);
  void put(int code, double value);
  /// A point at height 0: codes `code`, `code` + 10 and, where wanted, `code` + 20.
  void point(int code, geometry::Point, bool with_z = true);
  /// The next free handle, in hexadecimal.
  std::string handle();
  void section(std::string_view name);
  void end_section() { put(0, "ENDSEC"); }
  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  std::string text_;
  std::uint32_t last_handle_ = 0x2F;  // those below stand for tables and fixed records
};

/// Words as DXF writes them: ⌀ and ° as %%c and %%d, other letters beyond ASCII as \U+XXXX.
[[nodiscard]] std::string dxf_words(std::string_view utf8);

/// The handle of the block record of model space, which owns every entity.
inline constexpr std::string_view model_space = "1F";

void put_header(DxfText&, const geometry::Box&);
void put_tables(DxfText&, const Sheet&);
void put_blocks(DxfText&);
void put_objects(DxfText&);

}  // namespace visewright::outputs::papers
