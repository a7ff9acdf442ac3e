// Short forms in which the rows of the key table are written, and the groups they stand in.
#pragma once

#include <span>

#include "design/keys.h"

namespace visewright::design {

/// The groups in their order, one file each.
[[nodiscard]] std::span<const KeyRow> drive_rows();     // top level, train, screw, collar, rear nut, drive
[[nodiscard]] std::span<const KeyRow> jaw_rows();       // jaws, cover, lining, axle, bracket
[[nodiscard]] std::span<const KeyRow> bench_rows();     // bench, gaps
[[nodiscard]] std::span<const KeyRow> workshop_rows();  // accuracy, assume, shop, stock, measured

namespace rows {

using View = std::string_view;

/// What a row says in words: an example, what is taken when it is left out, what it means.
struct Words {
  View example, left_out, meaning;
};

/// A key whose type needs a range.
constexpr KeyRow sized(KeyType type, View table, View key, Range range, Words words, Binding binding) {
  return {.table = table,
          .key = key,
          .type = type,
          .range = range,
          .example = words.example,
          .left_out = words.left_out,
          .meaning = words.meaning,
          .binding = binding};
}
constexpr KeyRow length(View table, View key, Range range, Words words, Binding binding) {
  return sized(KeyType::length, table, key, range, words, binding);
}
constexpr KeyRow number(View table, View key, Range range, Words words, Binding binding) {
  return sized(KeyType::number, table, key, range, words, binding);
}
constexpr KeyRow percent(View table, View key, Range range, Words words, Binding binding) {
  return sized(KeyType::percent, table, key, range, words, binding);
}
constexpr KeyRow count(View table, View key, Range range, Words words, Binding binding) {
  return sized(KeyType::count, table, key, range, words, binding);
}

/// A list of sized values.
constexpr KeyRow list(KeyType type, View table, View key, Range range, Items items, Words words, Binding binding) {
  KeyRow row = sized(type, table, key, range, words, binding);
  row.items = items;
  return row;
}
constexpr KeyRow lengths(View table, View key, Range range, Items items, Words words, Binding binding) {
  return list(KeyType::lengths, table, key, range, items, words, binding);
}

/// A key of a type without a range: text, date, true or false.
constexpr KeyRow plain(KeyType type, View table, View key, Words words, Binding binding) {
  return sized(type, table, key, {}, words, binding);
}
constexpr KeyRow choice(View table, View key, std::span<const View> choices, Words words, Binding binding) {
  KeyRow row = sized(KeyType::choice, table, key, {}, words, binding);
  row.choices = choices;
  return row;
}
/// The name of something in the catalogue, or one of a few words that stand for one.
constexpr KeyRow name(View table, View key, Known known, Words words, Binding binding,
                      std::span<const View> choices = {}) {
  KeyRow row = sized(KeyType::name, table, key, {}, words, binding);
  row.known = known;
  row.choices = choices;
  return row;
}

/// The same row, for a key that must be given.
constexpr KeyRow needed(KeyRow row) {
  row.required = true;
  return row;
}

}  // namespace rows
}  // namespace visewright::design
