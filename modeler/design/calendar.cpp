#include "design/calendar.h"

#include <algorithm>
#include <charconv>
#include <chrono>

namespace visewright::design {
namespace {

int number(std::string_view digits) {
  int value = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), value);
  return value;
}

}  // namespace

bool is_date(std::string_view text) {
  constexpr std::string_view form = "0000-00-00";
  const bool formed = std::equal(text.begin(), text.end(), form.begin(), form.end(),
                                 [](char c, char f) { return f == '-' ? c == '-' : c >= '0' && c <= '9'; });
  if (!formed) return false;
  const std::chrono::year_month_day day{std::chrono::year(number(text.substr(0, 4))),
                                        std::chrono::month(static_cast<unsigned>(number(text.substr(5, 2)))),
                                        std::chrono::day(static_cast<unsigned>(number(text.substr(8, 2))))};
  return day.ok() && day.year() >= std::chrono::year(1);
}

}  // namespace visewright::design
