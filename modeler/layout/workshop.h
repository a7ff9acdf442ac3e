// What the Plan carries of the workshop: how exactly it works, what is assumed, owned, in stock and already made.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "reasons/ledger.h"

namespace visewright::layout {

/// How the holes of the train are marked: drilled through one template, every hole measured from one datum, or each
/// from the hole before it.
enum class Marking : std::uint8_t { from_template, one_datum, chain };

/// Errors are half widths: a hole stands within ± the value. Scale and moisture are in percent, the temperature in
/// kelvin.
struct AccuracyPlan {
  Marking marking = Marking::from_template;
  reasons::Size mark_error, drill_wander, template_error;
  reasons::Ratio template_scale, moisture_swing, temperature_swing;
  reasons::Size hole_allowance;               // what a printed hole is drawn larger
  std::optional<reasons::Size> kerf, cutter;  // absent: outlines are drawn as they are, without compensation
};

/// Every coefficient that is assumed and may be set; stresses and moduli in MPa, shares from 0 to 1.
struct AssumePlan {
  reasons::Ratio thread_friction, collar_friction, mesh_efficiency;
  reasons::Ratio screw_modulus, screw_yield, wood_modulus, panel_modulus;
  reasons::Ratio wood_strength, wood_crushing, gear_strength, cover_strength, pin_strength, weld_strength;
  reasons::Ratio wood_share, tooth_share, cover_share, withdrawal_share;
  reasons::Size nut_play, gear_run_out;
  reasons::Ratio lean_force;  // newtons
};

/// Tools owned, in mm; an empty list means that every size is at hand, an empty bed that there is no limit.
struct OwnedPlan {
  std::string preset;
  std::vector<double> drills_mm, hole_saws_mm, flat_bits_mm, cutters_mm;
  std::vector<double> print_bed_mm, laser_bed_mm;
};

/// A kind of piece on the rack; sizes longest first, empty for a bought piece.
struct StockPiece {
  std::string kind, material;
  std::vector<double> size_mm;
  int count = 1;
  std::optional<double> price;
  base::Place place;
};

struct WorkshopPlan {
  OwnedPlan owned;
  std::vector<StockPiece> stock;
  std::vector<std::string> made;  // names of the parts that are finished
};

}  // namespace visewright::layout
