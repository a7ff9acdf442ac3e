// How near two bodies come to each other, proved on their stacks.
#pragma once

#include "fitup/stand.h"

namespace visewright::fitup {

/// `distance`: never above the truth; when `exact`, the truth. `overlap`: they may share more than a skin: this stage
/// cannot clear them. Points are in the model at `opening_mm`.
struct Nearness {
  double distance = 0;
  bool exact = false;
  bool overlap = false;
  double opening_mm = 0;
  Vector a{}, b{};
  bool grip_out = false;
};

/// Over a stretch of openings; for bodies that do not move against each other, at any. Looks no further than
/// `within_mm`, and then gives that distance.
[[nodiscard]] Nearness nearness(const Stand& a, const Stand& b, Motion, Slide openings, bool a_is_fixed, double within_mm);

/// As they stand at opening 0, without turning or sliding: for bodies brought together by hand.
[[nodiscard]] inline Nearness as_they_stand(const Stand& a, const Stand& b, double within_mm) {
  return nearness(a, b, Motion::none, {}, false, within_mm);
}

/// Two elements as they stand, along whichever axis shows the larger gap; `overlap` when none shows them apart.
[[nodiscard]] Approach between(const Element& a, const Element& b, double within_mm);

/// The round seat that two bodies share, if any: first along the way out, then along the axes of their drums.
[[nodiscard]] Coaxial seat(const Stand& a, const Stand& b, Motion, Slide openings, bool a_is_fixed);

}  // namespace visewright::fitup
