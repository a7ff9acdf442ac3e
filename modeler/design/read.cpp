#include "design/read.h"

#include <algorithm>
#include <string>
#include <vector>

#include "base/nearest.h"
#include "design/contradictions.h"
#include "design/keys.h"
#include "design/value.h"
#include "reading/tree.h"

namespace visewright::design {
namespace {

using reading::Entry;
using reading::Table;
using reading::Value;

constexpr std::size_t longest_key_shown = 60;

std::string last_name(std::string_view table) {
  const std::size_t dot = table.rfind('.');
  return std::string(dot == std::string_view::npos ? table : table.substr(dot + 1));
}

/// The name of the table that a table stands in.
std::string_view parent(std::string_view table) {
  const std::size_t dot = table.rfind('.');
  return dot == std::string_view::npos ? std::string_view() : table.substr(0, dot);
}

class Reader {
 public:
  Reader(const standards::Catalogue& catalogue, base::Faults& faults) : catalogue_(&catalogue), faults_(&faults) {}

  Design read(const Table& file) {
    ValueReader unit_reader(units::LengthUnit::millimetre, *catalogue_, *faults_);
    if (const Entry* unit = file.find("units")) unit_reader.read(*key_row("", "units"), unit->value, design_, 0);
    values_.emplace(design_.unit, *catalogue_, *faults_);
    read_table("", file, {});
    for (const std::string_view needed : {"train", "screw"}) {
      if (file.find(needed) == nullptr) missing_keys(needed, Table{}, {});
    }
    return std::move(design_);
  }

 private:
  void add(base::Place place, std::string key, std::string wrong, std::string right) {
    faults_->push_back({base::Cause::input, place, std::move(key), std::move(wrong), std::move(right)});
  }

  void read_table(std::string_view name, const Table& table, base::Place place, std::size_t index = 0) {
    for (const Entry& entry : table.entries) {
      const std::string full = dotted(name, entry.key);
      const KeyRow* row = key_row(name, entry.key);
      const TableRow* inner = table_row(full);
      if (row != nullptr) {
        if (full != "units") values_->read(*row, entry.value, design_, index);
      } else if (inner != nullptr && !entry.key.empty()) {
        read_inner(*inner, entry);
      } else {
        unknown(name, entry);
      }
    }
    missing_keys(name, table, place);
  }

  void read_inner(const TableRow& inner, const Entry& entry) {
    const std::string name(inner.name);
    if (!inner.repeated()) {
      const auto* table = std::get_if<Table>(&entry.value.what);
      if (table != nullptr) return read_table(inner.name, *table, entry.place);
      return add(entry.place, name, "this is " + std::string(kind_of(entry.value)),
                 "a table: " + heading(name) + " with its keys below it");
    }
    const std::string right = "a table for each: " + heading(name) + " with its keys below it";
    const auto* list = std::get_if<reading::Array>(&entry.value.what);
    if (list == nullptr) return add(entry.place, name, "this is " + std::string(kind_of(entry.value)), right);
    for (const Value& each : *list) {
      const auto* table = std::get_if<Table>(&each.what);
      if (table == nullptr) {
        add(each.place, name, "this is " + std::string(kind_of(each)), right);
        continue;
      }
      inner.add(design_);
      read_table(inner.name, *table, each.place, inner.count(design_) - 1);
    }
  }

  void missing_keys(std::string_view name, const Table& table, base::Place place) {
    for (const KeyRow& row : keys_of(name)) {
      if (!row.required || table.find(row.key) != nullptr) continue;
      add(place, dotted(name, row.key), "this key is missing in " + heading(name),
          wanted(row, design_.unit) + ", for example " + std::string(row.key) + " = " + std::string(row.example));
    }
  }

  void unknown(std::string_view table, const Entry& entry) {
    const std::string key = entry.key.substr(0, longest_key_shown);
    std::vector<std::string_view> known;
    for (const KeyRow& row : keys_of(table)) known.push_back(row.key);
    std::vector<std::string> inner_names;
    for (const TableRow& row : tables()) {
      if (!row.name.empty() && parent(row.name) == table) inner_names.push_back(last_name(row.name));
    }
    known.insert(known.end(), inner_names.begin(), inner_names.end());
    std::string right = "the nearest known is " + std::string(base::nearest_name(key, known));
    if (const std::string places = elsewhere(key); !places.empty()) right += "; " + key + " is a key of " + places;
    add(entry.place, dotted(table, key), "there is no such key in " + heading(table), std::move(right));
  }

  /// The tables that know this key.
  static std::string elsewhere(std::string_view key) {
    std::string places;
    for (const KeyRow& row : keys()) {
      if (row.key == key) places += (places.empty() ? "" : ", ") + heading(row.table);
    }
    return places;
  }

  const standards::Catalogue* catalogue_;
  base::Faults* faults_;
  std::optional<ValueReader> values_;
  Design design_;
};

/// In line order; what is beyond the limit becomes one fault that counts it.
base::Faults told(base::Faults faults, std::string_view file) {
  base::in_line_order(faults);
  if (faults.size() <= most_faults) return faults;
  const std::size_t more = faults.size() - most_faults;
  faults.resize(most_faults);
  faults.push_back({base::Cause::input, std::nullopt, std::string(file), "and " + std::to_string(more) + " more",
                    "mend these first, then read again"});
  return faults;
}

}  // namespace

base::Result<Design> read(std::string_view text, std::string_view file, const standards::Catalogue& catalogue) {
  const base::Result<Table> tree = reading::read_toml(text, file, 0);
  if (!tree) return base::passed_on(tree.error());
  base::Faults faults;
  Design design = Reader(catalogue, faults).read(*tree);
  for (base::Fault& fault : contradictions(design, *tree, catalogue)) faults.push_back(std::move(fault));
  if (!faults.empty()) return base::passed_on(told(std::move(faults), file));
  return design;
}

}  // namespace visewright::design
