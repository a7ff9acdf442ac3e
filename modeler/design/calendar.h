// Dates of the design file.
#pragma once

#include <string_view>

namespace visewright::design {

/// Whether the text is a day of the Gregorian calendar written year-month-day, "2024-02-29", from year 1.
[[nodiscard]] bool is_date(std::string_view text);

}  // namespace visewright::design
