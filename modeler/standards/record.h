// One row of a table, read column by column; whatever is wrong is collected with its place.
#pragma once

#include <functional>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "reading/tree.h"
#include "standards/rows.h"
#include "units/text.h"

namespace visewright::standards {

/// A figure is looked for in the row first and then in what its table says for all rows. A missing or wrong one is a
/// fault and reads as an empty value. An empty text stands for "no figure".
class Record {
 public:
  Record(const reading::Table& table, const reading::Array& columns, const reading::Value& row, std::string_view path,
         base::Faults& faults);

  [[nodiscard]] bool has(std::string_view key);
  [[nodiscard]] std::string text(std::string_view key);
  /// A list of texts, or a single one.
  [[nodiscard]] std::vector<std::string> texts(std::string_view key);
  [[nodiscard]] bool yes(std::string_view key);
  /// Finite and above zero, as every figure of the catalogue is.
  [[nodiscard]] double number(std::string_view key);
  [[nodiscard]] std::optional<double> number_if_any(std::string_view key);
  [[nodiscard]] std::vector<double> numbers(std::string_view key);
  /// A bare number is in the table's `unit`; a text carries its own.
  [[nodiscard]] units::Length length(std::string_view key);
  /// A list of such lengths; it may be empty.
  [[nodiscard]] std::vector<units::Length> lengths(std::string_view key);
  [[nodiscard]] units::LengthUnit unit();
  [[nodiscard]] Source source();

  void wrong(std::string_view key, std::string what, std::string right);
  /// Says a fault for every column and table key that nothing asked for: a mistyped one would be lost otherwise.
  void all_asked_for();

 private:
  [[nodiscard]] const reading::Value* find(std::string_view key);
  template <class T>
  [[nodiscard]] const T* typed(std::string_view key, std::string_view wanted);

  const reading::Table& table_;
  const reading::Array& columns_;
  const reading::Array* cells_ = nullptr;
  base::Place place_;
  std::string_view path_;
  base::Faults& faults_;
  std::set<std::string, std::less<>> asked_;
};

/// A fault in our own tables.
[[nodiscard]] base::Fault own_fault(std::string_view path, base::Place place, std::string wrong, std::string right);

}  // namespace visewright::standards
