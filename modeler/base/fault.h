// What went wrong, as a value: faults, the place in a text they point at, and results that carry them.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <tl/expected.hpp>

namespace visewright::base {

/// A position in a text that was read. `text` is the index of that text (0 the design, 1 the shop, 2 … the catalogue);
/// `line` and `column` count from 1; line 0 means "the text as a whole".
struct Place {
  std::uint16_t text = 0;
  std::uint32_t line = 0;
  std::uint32_t column = 0;
  friend bool operator==(const Place&, const Place&) = default;
};

/// Whose fault it is. Each cause has one exit status: 2, 3, 4, 130 and 70.
enum class Cause : std::uint8_t { input, output, geometry, interrupted, own_mistake };

/// One thing that is wrong. `key` is what it is about ("train.module"), `wrong` says what is wrong, `right` what would
/// be right. No text ends in a full stop: the edge adds it.
struct Fault {
  Cause cause = Cause::input;
  std::optional<Place> place;
  std::string key;
  std::string wrong;
  std::string right;
};

using Faults = std::vector<Fault>;

/// A value, or every fault found on the way to it, in line order.
template <class T>
using Result = tl::expected<T, Faults>;

/// A single fault, ready to be returned from a function that gives a Result.
[[nodiscard]] inline tl::unexpected<Faults> fault(Cause cause, std::string key, std::string wrong, std::string right,
                                                  std::optional<Place> place = std::nullopt) {
  return tl::unexpected<Faults>(Faults{Fault{cause, place, std::move(key), std::move(wrong), std::move(right)}});
}

/// The faults of a failed result, ready to be returned as another type.
[[nodiscard]] inline tl::unexpected<Faults> passed_on(Faults faults) { return tl::unexpected<Faults>(std::move(faults)); }

/// Exit status of the program for a cause.
[[nodiscard]] int exit_status(Cause) noexcept;

/// Sorts by text, line and column; faults without a place come last. Equal places keep their order.
void in_line_order(Faults&);

}  // namespace visewright::base
