#include "reading/tree.h"

#include <algorithm>

namespace visewright::reading {

const Entry* Table::find(std::string_view key) const {
  const auto found = std::find_if(entries.begin(), entries.end(), [&](const Entry& entry) { return entry.key == key; });
  return found == entries.end() ? nullptr : &*found;
}

std::string_view kind_of(const Value& value) {
  struct Kind {
    std::string_view operator()(bool) const { return "true or false"; }
    std::string_view operator()(std::int64_t) const { return "a number"; }
    std::string_view operator()(double) const { return "a number"; }
    std::string_view operator()(const std::string&) const { return "a text"; }
    std::string_view operator()(const Array&) const { return "a list"; }
    std::string_view operator()(const Table&) const { return "a table"; }
  };
  return std::visit(Kind{}, value.what);
}

}  // namespace visewright::reading
