// The key table: the only list of the design file's tables and keys. Reading, checking, writing, the listing of keys
// and the table in the README are all made from it.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "design/binding.h"

namespace visewright::design {

enum class KeyType : std::uint8_t {
  text,
  date,
  choice,
  strength,  // a strength class or a yield stress in MPa
  name,      // something that the catalogue knows
  hands,     // "right" or "left", one for both screws or one each
  texts,
  yes_no,
  count,
  counts,
  number,
  numbers,
  percent,
  angle,  // degrees
  force,
  length,
  millimetres,  // a length whose bare number is in mm in every file
  lengths,
  points,  // [x] or [x, z] each
};

/// Both ends are allowed. In mm, N, degrees, percent, or plain, after the type.
struct Range {
  double least = 0, most = 0;
};

/// How many values a list may hold. A list with `bare` may be given as one value without brackets.
struct Items {
  std::size_t least = 1, most = 1;
  bool bare = false;
};

/// What the catalogue must know under the given name.
enum class Known : std::uint8_t { nothing, thread, nut, washer, wood_screw, wood, metal, material };

struct KeyRow {
  std::string_view table;  // "" is the top level, "drive.wheel" a table in a table
  std::string_view key;
  KeyType type;
  Range range{};
  Items items{};
  std::span<const std::string_view> choices{};
  Known known = Known::nothing;
  bool required = false;
  std::string_view example;   // a good value as it stands in the file, whatever the file's units
  std::string_view left_out;  // what is taken when the key is left out
  std::string_view meaning;   // one sentence without its full stop
  Binding binding;
};

struct TableRow {
  std::string_view name;     // "train", "rear_nut.bar"
  std::string_view meaning;  // one sentence without its full stop
  /// Set for a table that may stand several times, [[name]]: how many there are, and one more at the end.
  std::size_t (*count)(const Design&) = nullptr;
  void (*add)(Design&) = nullptr;
  [[nodiscard]] bool repeated() const { return add != nullptr; }
};

/// All keys, those of a table together, in the order in which a design file is written.
[[nodiscard]] const std::vector<KeyRow>& keys();

/// All tables in the same order; the first is the top level, a table in a table follows the one it stands in.
[[nodiscard]] std::span<const TableRow> tables();

/// The keys of one table.
[[nodiscard]] std::span<const KeyRow> keys_of(std::string_view table);

/// Null when there is none.
[[nodiscard]] const KeyRow* key_row(std::string_view table, std::string_view key);
[[nodiscard]] const TableRow* table_row(std::string_view name);

/// "train.module"; at the top level the key alone.
[[nodiscard]] std::string dotted(std::string_view table, std::string_view key);

/// "[train]", "[[stock]]", "the top level".
[[nodiscard]] std::string heading(std::string_view table);

/// What a value of this key must be, limits in `show`: "a length from 1 mm to 200 mm", "one of "mm" or "in"".
[[nodiscard]] std::string wanted(const KeyRow&, units::LengthUnit show);

/// The number of a limit or a value with its unit: "200 mm", "20 degrees", "1e+300 N". Lengths in `show`.
[[nodiscard]] std::string shown(KeyType, double value, units::LengthUnit show);

/// The whole table as Markdown, one section a table of the file. The same bytes always.
[[nodiscard]] std::string key_table_markdown();

}  // namespace visewright::design
