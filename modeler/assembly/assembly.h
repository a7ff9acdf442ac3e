// The placed parts: in which group each moves, at which pose it stands where, and which fit each pair must have.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "geometry/placement.h"
#include "parts/part.h"
#include "reasons/rule.h"

namespace visewright::assembly {

enum class Group : std::uint8_t { fixed, moving, turning };

struct Pose {
  double opening_mm = 0;
  bool grip_out = false;
};

/// One part in its place. `shut` is where its frame stands at opening 0, grip folded, in the model's axes (X right, Y
/// into the bench, Z up). A turning part turns about its own z (out of the bench): `turn_rad_per_mm` of opening,
/// anticlockwise as the person sees it positive.
struct Placed {
  std::uint32_t part = 0;     // index into Assembly::parts
  std::string name;           // "drive gear, left"
  geometry::Placement shut;
  Group group = Group::fixed;
  double turn_rad_per_mm = 0;
  std::optional<geometry::Placement> grip_out;  // set for the folding grip alone: where it stands when out
  geometry::Vector turn_about_mm{0, 0, 0};      // a point of the axis at shut, for parts that do not stand on it
};

/// Touching is no fault for any declared pair; nothing but `least_mm` sets them apart.
struct Clear { double least_mm; };
struct Sliding {};   // a running fit: bore over shaft, face on face
struct Press {};
struct Threaded {};  // cylinders at the major diameter touch
struct Meshing { double least_gap_mm; };
struct Touching {};
struct Bonded {};
using Fit = std::variant<Clear, Sliding, Press, Threaded, Meshing, Touching, Bonded>;
[[nodiscard]] std::string_view word(const Fit&);

struct Pair {
  std::uint32_t a = 0, b = 0;  // indices into Assembly::placed
  Fit fit;
};

struct Assembly {
  std::vector<std::shared_ptr<const parts::Part>> parts;
  std::vector<double> mass_kg;  // of each part, in the same order
  std::vector<Placed> placed;
  std::vector<Pair> declared;
  double opening_max_mm = 0;
  double moving_to_fixed_mm = 0;  // the general gap
};

/// Where a placed part stands at a pose.
[[nodiscard]] geometry::Placement at(const Placed&, const Pose&);

}  // namespace visewright::assembly
