// The sections of a Plan in the order in which they are fixed; each needs those before it.
#pragma once

#include "layout/chooser.h"
#include "layout/plan.h"

namespace visewright::layout {

/// What every section works with.
struct Desk {
  const design::Design& design;
  const standards::Catalogue& catalogue;
  Chooser& choose;
  Plan& plan;
  base::Faults& faults;

  /// A fault of the input, at the place of a given value when there is one.
  void wrong(std::string key, std::string what, std::string right, const base::Place* at = nullptr) const {
    faults.push_back({base::Cause::input, at ? std::optional(*at) : std::nullopt, std::move(key), std::move(what),
                      std::move(right)});
  }
  /// A material by given name or the usual one; the name is remembered under `key`. A usual name is always known.
  const standards::MaterialRow* material(const std::string& key, const design::Maybe<std::string>& given,
                                         const std::string& usual) const;
};

/// The smallest bearing of this bore that is not of the thin series 68 and 69: their rings are too narrow for the
/// cover's lip to hold one and clear the other. Null when the catalogue has none.
[[nodiscard]] const standards::BearingRow* usual_bearing(const standards::Catalogue&, units::Length bore);

void fix_workshop(Desk&);   // accuracy, tools, stock
/// Distances between the axles as drilled; empty when nobody measured them.
[[nodiscard]] std::vector<double> measured_distances(const Desk&);
/// Shifts that make good what was drilled wrong, when the gears are printed; empty when there is nothing to rescue.
[[nodiscard]] std::vector<double> rescued_shifts(Desk&, const std::vector<Gear>& designed);
void fix_gears(Desk&);      // module, teeth, centres, meshes, phases
void fix_hardware(Desk&);   // thread, nuts, washers, bearing
void fix_face_width(Desk&);
void fix_axle_bearing(Desk&);
void fix_front_jaw(Desk&);  // boards, bevel, dog holes, and the stack up to the cover
void fix_wheel(Desk&);
void fix_shaft(Desk&);  // of a wheel in the middle
void fix_rear(Desk&);       // rear jaw, nut block, brackets
void fix_screw(Desk&);      // lengths, opening, cross holes
void fix_bench(Desk&);
void fix_cover(Desk&);  // and the axles behind it
void fix_patterns(Desk&);
void fix_assumptions(Desk&);  // of materials, friction and play

}  // namespace visewright::layout
