#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <locale>
#include <sstream>

#include "reading/screening.h"
#include "reading/tree.h"

namespace visewright::reading {
namespace {

/// What the library's description of a fault contains, and how a workshop says it. The first that fits is taken.
struct Saying {
  std::string_view contains, wrong, right;
};

constexpr std::string_view right_number =
    "digits with a point, as 19 or 2.5; with a unit it stands in quotes, as \"19 mm\"";
constexpr std::string_view right_value =
    "a number, true or false, a text in quotes, a list in [ ] or a table in { }, one value a key";

constexpr std::string_view right_key = "letters, digits, _ and -, then = and a value";

constexpr std::array sayings{
    Saying{"string: encountered end-of-file", "a text in quotes is not closed", "the same quotes at both ends"},
    Saying{"array: encountered end-of-file", "a list is not closed", "a ] after the last value"},
    Saying{"inline table: encountered end-of-file", "a table in { } is not closed", "a } after the last value"},
    Saying{"header: encountered end-of-file", "a heading is not closed", "[name], or [[name]] for one of several"},
    Saying{"pair: encountered end-of-file", "the text ends where a value should stand", "key = value"},
    Saying{"redefine existing", "this name was given before", "each key and each table once"},
    Saying{"cannot insert", "this name was given before as another kind of value", "each key and each table once"},
    Saying{"header", "this heading cannot be read",
           "[name], or [[name]] for one of several, with nothing else on the line"},
    Saying{"parsing key:", "this key cannot be read", right_key},
    Saying{"root table", "this line starts with neither a key nor a heading", right_key},
    Saying{"expected a comment", "something stands behind the value",
           "one value on a line; with a unit it stands in quotes, as \"19 mm\""},
    Saying{"expected '='", "there is no = after the key", "key = value"},
    Saying{"expected value, saw", "there is no value after the =", right_value},
    Saying{"escape sequence", "a backslash in this text is followed by a letter that means nothing there",
           "\\\\ for a backslash, or the text in single quotes"},
    Saying{"unicode scalar", "a \\u in this text is not followed by the number of a letter",
           "four hexadecimal digits after \\u, eight after \\U"},
    Saying{"string", "this text cannot be read", "quotes at both ends, on one line"},
    Saying{"array", "this list cannot be read", "values with commas between them in [ ]"},
    Saying{"inline table", "this table in { } cannot be read",
           "{ key = value, key = value } on one line, without a comma before the }"},
    Saying{"integer", "this number cannot be read", right_number},
    Saying{"floating-point", "this number cannot be read", right_number},
    Saying{"numeric value", "this number cannot be read", right_number},
    Saying{"date", "this date cannot be read", "year-month-day, as 2024-02-29"},
    Saying{"time", "this time cannot be read", "hours:minutes:seconds, as 08:30:00"},
    Saying{"value", "this value cannot be read", right_value},
    Saying{"boolean", "this value cannot be read", right_value},
    Saying{"comment", "this comment holds a character that cannot be shown", "printable characters after the #"},
    Saying{"", "this line cannot be read", "key = value, a heading as [name], or a comment after #"},
};

base::Place place_of(const toml::source_position& position, std::uint16_t text_index) {
  return {text_index, position.line, position.column};
}

/// Copies the library's sorted tree into ours and puts the entries back into the order of the text.
class Copy {
 public:
  explicit Copy(std::uint16_t text_index) : text_index_(text_index) {}

  [[nodiscard]] Table table(const toml::table& from) const {
    Table to;
    for (const auto& [key, node] : from) {
      to.entries.push_back({std::string(key.str()), place_of(key.source().begin, text_index_), value(node)});
    }
    std::stable_sort(to.entries.begin(), to.entries.end(), [](const Entry& a, const Entry& b) {
      return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
    return to;
  }

 private:
  [[nodiscard]] Value value(const toml::node& from) const {
    Value to{place_of(from.source().begin, text_index_), false};
    if (const auto* inner = from.as_table()) {
      to.what = table(*inner);
    } else if (const auto* list = from.as_array()) {
      Array values;
      for (const toml::node& each : *list) values.push_back(value(each));
      to.what = std::move(values);
    } else if (const auto* text = from.as_string()) {
      to.what = text->get();
    } else if (const auto* whole = from.as_integer()) {
      to.what = whole->get();
    } else if (const auto* number = from.as_floating_point()) {
      to.what = number->get();
    } else if (const auto* yes = from.as_boolean()) {
      to.what = yes->get();
    } else {
      to.what = date_text(from);
    }
    return to;
  }

  [[nodiscard]] static std::string date_text(const toml::node& from) {
    std::ostringstream text;
    text.imbue(std::locale::classic());
    if (const auto* date = from.as_date()) text << date->get();
    if (const auto* time = from.as_time()) text << time->get();
    if (const auto* both = from.as_date_time()) text << both->get();
    return text.str();
  }

  std::uint16_t text_index_;
};

base::Fault as_fault(const toml::parse_error& error, std::string_view name, std::uint16_t text_index) {
  const auto* const saying = std::find_if(sayings.begin(), sayings.end(), [&](const Saying& each) {
    return error.description().find(each.contains) != std::string_view::npos;
  });
  return {base::Cause::input, place_of(error.source().begin, text_index), std::string(name), std::string(saying->wrong),
          std::string(saying->right)};
}

}  // namespace

base::Result<Table> read_toml(std::string_view text, std::string_view name, std::uint16_t text_index) {
  if (auto refused = screened(text, name, text_index)) return base::passed_on({std::move(*refused)});
  try {
    return Copy(text_index).table(toml::parse(text));
  } catch (const toml::parse_error& error) {
    return base::passed_on({as_fault(error, name, text_index)});
  }
}

}  // namespace visewright::reading
