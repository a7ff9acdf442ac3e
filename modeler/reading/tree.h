// TOML text as a tree in which everything knows its place. The only folder that sees the TOML library.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/fault.h"

namespace visewright::reading {

struct Value;
struct Entry;
using Array = std::vector<Value>;

/// Entries in the order of the file.
struct Table {
  std::vector<Entry> entries;
  [[nodiscard]] const Entry* find(std::string_view key) const;
};

/// A TOML value; dates come as their text.
struct Value {
  base::Place place;
  std::variant<bool, std::int64_t, double, std::string, Array, Table> what;
};

struct Entry {
  std::string key;
  base::Place place;  // of the key
  Value value;
};

/// Longest text that is read, bytes: a design is a page, not a book.
inline constexpr std::size_t longest_text = 1U << 20U;

/// Reads TOML 1.0. A text that is too long, not UTF-8 or not TOML is one fault with line and column.
/// `text_index` goes into every place; `name` is the file's name for the message.
[[nodiscard]] base::Result<Table> read_toml(std::string_view text, std::string_view name, std::uint16_t text_index);

/// What a value is, for messages: "a number", "a text", "a list", "a table", "true or false".
[[nodiscard]] std::string_view kind_of(const Value&);

}  // namespace visewright::reading
