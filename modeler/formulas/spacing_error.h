// What errors of marking and drilling do to a row of gears, and to the parts that share its holes.
//
// Errors count along the row. One across it, dz, changes a distance a by dz²/(2a) only and is left out.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "formulas/spur_gear.h"

namespace visewright::formulas {

/// Axle distances between which two gears work.
struct WorkingDistances {
  double tight_mm = 0;  // at this distance and below they jam
  double loose_mm = 0;  // above this one the teeth let go of each other too early
};

/// The distance at which the contact ratio has sunk to `ratio`: it falls strictly as the axles part. Found by halving;
/// the sum of the base radii when it is not reached at any distance.
[[nodiscard]] double distance_at_contact_ratio_mm(const SpurGear& first, const SpurGear& second, double ratio) noexcept;

/// Tight is where the backlash is used up, from inv aw = inv a + (2 m (x1 + x2) tan a - thinning)/(m (z1 + z2)), or
/// where a tip meets the mate's root if that is farther apart; loose is where the contact ratio is `least_ratio`.
[[nodiscard]] WorkingDistances working_distances(const SpurGear& first, const SpurGear& second,
                                                 double least_ratio = 1.1) noexcept;

/// How the holes are marked: drilled through one template, each measured from one datum, or each from the one before.
enum class Marking : std::uint8_t { from_template, one_datum, chain };

/// Half widths: each error lies anywhere within ± the value, evenly. A mark, a drill's wander and a template's hole
/// are drawn for each hole on its own; a chain adds up its marks.
struct HoleErrors {
  double mark_mm = 0;
  double wander_mm = 0;
  double template_mm = 0;
  double template_scale = 0;  // share of every length on the template: 0.01 is one in a hundred
  double bush_play_mm = 0;    // of the first and the last axle in their bushes, a difference of diameters
  double run_out_mm = 0;      // of a gear in one turn, from least to most: it stands off centre by up to half of it
};

/// A hole of the row, by its number, and how far off its place in another part may be.
struct SharedBore {
  std::size_t hole = 0;
  double play_mm = 0;  // to either side
};
/// The bores of one part, in the order of the row. The part may be shifted to where its bores fit best.
using SharedBores = std::vector<SharedBore>;

struct SpacingInput {
  std::vector<double> distances_mm;       // from axle to axle, one fewer than gears
  std::vector<WorkingDistances> working;  // of the same meshes
  std::vector<SharedBores> parts;         // drilled from the same pattern as the part that carries the axles
  HoleErrors errors;
  Marking marking = Marking::from_template;
  bool axles_measured = false;  // the part with the axles is made, the distances are what it has, the rest follows it
};

/// How far one distance may come out from where it should be, and how far it can go before the mesh fails.
struct MeshSpread {
  double worst_mm = 0;            // all errors at their ends and on one side
  double root_sum_square_mm = 0;  // of the same errors
  double room_nearer_mm = 0;      // to the tight distance; negative when the mesh jams without any error
  double room_apart_mm = 0;       // to the loose distance
};
[[nodiscard]] std::vector<MeshSpread> mesh_spreads(const SpacingInput&);

/// How far two bores of a part may stand off from the same two holes of the part with the axles, for the pair where
/// that comes nearest to, or farthest beyond, what their play allows. All zero for a part with fewer than two bores.
struct PartSpread {
  double worst_mm = 0;
  double root_sum_square_mm = 0;
  double allowed_mm = 0;              // play of both bores
  std::size_t first = 0, second = 0;  // holes of the row
};
[[nodiscard]] std::vector<PartSpread> part_spreads(const SpacingInput&);

/// What came of building the row many times over, each time with errors drawn afresh.
struct SpacingOdds {
  std::uint64_t seed = 0;
  std::size_t trials = 0;
  std::size_t bind = 0;     // builds in which any mesh jams
  std::size_t slack = 0;    // … any mesh falls below the least contact ratio
  std::size_t line_up = 0;  // … the bores of any part cannot be made to line up
  std::size_t any = 0;      // … any of the three
  /// The factor on all errors, play and run-out included, up to which the share asked for of all builds works; 0 when
  /// a mesh fails without any error, nothing when there is no error to multiply.
  std::optional<double> largest_scale;
  std::optional<double> largest_scale_of_meshes;  // the same when only the meshes have to work
  /// For each hole of the row: the share of builds in which it gives first as errors grow. A mesh or a pair of bores
  /// counts half for each of its two holes. Law: they sum to 1 when there are errors.
  std::vector<double> gives_first;
};

/// Counts builds. Run-out works both ways, for a gear that stands off centre comes nearer and goes away in each turn.
/// One pass finds for every build the factor on its errors at which it first fails, since all is linear in them; the
/// chance and the largest factor are both read from those. Law: the errors of a build follow from the seed and its
/// number alone, and are the same whatever the way of marking.
/// Random numbers: G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number generators" (2014), the
/// 64-bit mixing function applied to counters.
[[nodiscard]] SpacingOdds spacing_odds(const SpacingInput&, std::size_t trials, std::uint64_t seed,
                                       double share_working = 0.99);

}  // namespace visewright::formulas
