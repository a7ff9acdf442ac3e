// What fits on the bed of the printer and of the laser.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "making/tools.h"

namespace visewright::making {

/// The largest factor by which a p × q rectangle may be scaled so that it still fits into a × b, turned as it likes.
/// Source: J. E. Carver's criterion for a rectangle in a rectangle (Mathematics Magazine 30, 1957), from memory:
/// with p ≥ q, a ≥ b it fits when p ≤ a and q ≤ b, or when p > a, q ≤ b and
/// b ≥ (2pqa + (p² − q²)·sqrt(p² + q² − a²)) / (p² + q²). REQUIRES: all above zero.
[[nodiscard]] double largest_scale(double p, double q, double a, double b);

struct OnBed {
  enum class Bed : std::uint8_t { print, laser } bed{};
  std::string part;
  std::vector<double> size_mm, bed_mm;  // as it lies; height last, when the bed has one
  double scale = 0;                     // what the bed holds, as a share of the part's size; 1 just fits
};
/// Every printed part against the print bed and every sheet that a laser may cut against the laser bed, where the
/// workshop has such a bed. A round part cannot gain by turning; others may lie askew.
[[nodiscard]] std::vector<OnBed> on_beds(const std::vector<Workpiece>&, const OwnedTools&);

/// Whether a laser cuts this: thin sheets of acrylic, plywood, MDF, leather, felt; never polycarbonate.
[[nodiscard]] bool laser_cuts(const standards::MaterialRow&, double thickness_mm);

}  // namespace visewright::making
