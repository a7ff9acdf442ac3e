#include <algorithm>
#include <vector>

#include "reading/tree.h"
#include "standards/catalogue.h"
#include "standards/readers.h"
#include "standards/record.h"
#include "shops_files.h"
#include "standards_files.h"

namespace visewright::standards {
namespace {

/// The first text of the catalogue; see base::Place.
constexpr std::uint16_t first_text = 2;

/// The table's columns, and its rows as lists of figures. A table without columns is one row by itself.
void read_table(const reading::Value& value, const Reader& reader, std::string_view path, Rows& rows,
                base::Faults& faults) {
  const auto* table = std::get_if<reading::Table>(&value.what);
  if (table == nullptr) {
    faults.push_back(own_fault(path, value.place, "this is no table", "[[" + std::string(reader.table) + "]]"));
    return;
  }
  const auto list = [&](std::string_view key) -> const reading::Array* {
    const reading::Entry* entry = table->find(key);
    return entry == nullptr ? nullptr : std::get_if<reading::Array>(&entry->value.what);
  };
  const auto read_row = [&](const reading::Array& columns, const reading::Value& row) {
    Record record(*table, columns, row, path, faults);
    reader.read(record, rows);
    record.all_asked_for();
  };
  const reading::Array* columns = list("columns");
  const reading::Array* lines = list("rows");
  if (columns != nullptr && lines != nullptr) {
    for (const reading::Value& line : *lines) read_row(*columns, line);
  } else if (columns == nullptr && lines == nullptr) {
    read_row({}, reading::Value{value.place, reading::Array{}});
  } else {
    faults.push_back(own_fault(path, value.place, "columns and rows must both be lists", "columns = [ ], rows = [ ]"));
  }
}

void read_file(const reading::Table& file, std::string_view path, Rows& rows, base::Faults& faults) {
  for (const reading::Entry& entry : file.entries) {
    const auto kinds = readers();
    const auto reader = std::find_if(kinds.begin(), kinds.end(), [&](const Reader& r) { return r.table == entry.key; });
    const auto* tables = std::get_if<reading::Array>(&entry.value.what);
    if (reader == kinds.end() || tables == nullptr) {
      faults.push_back(own_fault(path, entry.place, "\"" + entry.key + "\" is no kind of table",
                                 "a heading in double brackets that the catalogue knows"));
      continue;
    }
    for (const reading::Value& table : *tables) read_table(table, *reader, path, rows, faults);
  }
}

}  // namespace

base::Result<Catalogue> Catalogue::read(std::span<const TextFile> files) {
  Rows rows;
  base::Faults faults;
  for (std::size_t i = 0; i < files.size(); ++i) {
    const auto [path, text] = files[i];
    const auto tree = reading::read_toml(text, path, static_cast<std::uint16_t>(first_text + i));
    if (tree) {
      read_file(*tree, path, rows, faults);
    } else {
      for (base::Fault fault : tree.error()) {
        fault.cause = base::Cause::own_mistake;
        faults.push_back(std::move(fault));
      }
    }
  }
  if (!faults.empty()) {
    base::in_line_order(faults);
    return base::passed_on(std::move(faults));
  }
  return Catalogue(std::move(rows));
}

base::Result<Catalogue> Catalogue::embedded() {
  std::vector<TextFile> files;
  for (const visewright::embedded::File& file : visewright::embedded::standards())
    files.push_back({file.path, file.text});
  for (const visewright::embedded::File& file : visewright::embedded::shops()) files.push_back({file.path, file.text});
  return read(files);
}

}  // namespace visewright::standards
