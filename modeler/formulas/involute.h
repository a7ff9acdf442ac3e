// The involute function and its inverse.
#pragma once

namespace visewright::formulas {

/// inv a = tan a - a, the angle in radians, 0 ≤ a < π/2 (ISO 21771:2007). Law: strictly increasing, inv 0 = 0.
[[nodiscard]] double involute(double angle_rad) noexcept;

/// The angle whose involute is `value`, in radians, between 0 and π/2; not a number for a negative value. Newton's
/// method from above, which cannot overshoot because the function is convex. Law: involute(inverse_involute(v)) = v.
[[nodiscard]] double inverse_involute(double value) noexcept;

}  // namespace visewright::formulas
