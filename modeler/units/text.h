// Strict reading of quantities from text, and writing them back. An unknown unit is an error, never a guess.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "base/fault.h"
#include "units/quantity.h"

namespace visewright::units {

enum class LengthUnit : std::uint8_t { millimetre, inch };

/// Reads "19 mm", "2.5 cm", "3/4 in", "1-1/4 in", "1 1/4\"". A number without a unit takes `bare`, or is a fault when
/// there is none. A number is a sign or none, then decimal digits with at most one point, or a fraction with or without
/// a whole number before it; no exponent. Inches are converted as fractions: decimal digits and n/d alike, one
/// division. Not finite, a zero denominator, a trailing word: a fault at `place`. Range checks are the caller's.
[[nodiscard]] base::Result<Length> read_length(std::string_view text, std::optional<LengthUnit> bare,
                                               std::string_view key, base::Place place);

/// A bare number in a unit, as the design file gives it.
[[nodiscard]] Length length_in(double value, LengthUnit unit);

/// Reads "100 N", "22 lbf", "1.2 kN"; a force must carry its unit. 1 lbf = 4.4482216152605 N exactly.
[[nodiscard]] base::Result<Force> read_force(std::string_view text, std::string_view key, base::Place place);

/// Millimetres with at most three decimals, or inches as a fraction when within 1e-9 in of n/64, else with four
/// decimals; each with its unit: "19 mm", "1-1/4 in". Law: read_length(write_length(x)) is x to what was printed.
[[nodiscard]] std::string write_length(Length, LengthUnit show);

/// The shortest decimal text with at most `decimals` places, a point, no exponent and no trailing zeros; the same in
/// every locale. Minus zero prints as 0.
[[nodiscard]] std::string write_number(double value, int decimals);

}  // namespace visewright::units
