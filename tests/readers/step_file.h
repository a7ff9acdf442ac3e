// A reader of STEP files (ISO 10303-21, clear text) of our own, without any kernel: what the text says, instance by
// instance. step_products.h and step_bodies.h ask what it means.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace visewright::readers {

/// One parameter: a value, a list, or a value with its type's name in front.
struct Value {
  enum class Kind : std::uint8_t { missing, derived, number, text, enumeration, reference, list, typed };
  Kind kind = Kind::missing;
  double number = 0;
  std::uint64_t reference = 0;
  std::string text;  // decoded to UTF-8; the word of an enumeration; the name of a type
  std::vector<Value> items;
};

/// NAME(parameters).
struct Record {
  std::string name;
  std::vector<Value> values;
};

/// #id = one record, or several for a complex instance.
struct Instance {
  std::uint64_t id = 0;
  std::vector<Record> records;

  /// The record of that name, or nullptr.
  [[nodiscard]] const Record* find(std::string_view name) const;
  [[nodiscard]] bool is(std::string_view name) const { return find(name) != nullptr; }
};

struct StepFile {
  std::vector<Record> header;
  std::map<std::uint64_t, Instance> instances;
  /// What breaks the rules of the clear text, unknown references among it. Empty for a sound file.
  std::vector<std::string> problems;

  [[nodiscard]] const Instance* at(std::uint64_t id) const;
  /// The instance a parameter refers to, or nullptr.
  [[nodiscard]] const Instance* at(const Value&) const;
  /// The instance that the parameter at `index` of the record `name` of an instance refers to, or nullptr.
  [[nodiscard]] const Instance* step(const Instance*, std::string_view name, std::size_t index) const;
  /// Every instance that has a record of that name, by rising id.
  [[nodiscard]] std::vector<const Instance*> all(std::string_view name) const;
  [[nodiscard]] const Record* head(std::string_view name) const;
  /// The schema's name, the first word of FILE_SCHEMA; empty when there is none.
  [[nodiscard]] std::string schema() const;
};

/// "#12".
[[nodiscard]] std::string numbered(std::uint64_t id);

/// Never throws; what cannot be read is among the problems.
[[nodiscard]] StepFile read_step(std::string_view bytes);

/// The parameter at `index` of a record, or a missing value.
[[nodiscard]] const Value& parameter(const Record*, std::size_t index);

}  // namespace visewright::readers
