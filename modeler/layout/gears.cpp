// The gear train: sizes, distances, meshes and phases.
#include <algorithm>
#include <map>
#include <tuple>

#include "formulas/train.h"
#include "layout/gear_outline.h"
#include "layout/rules_bench.h"
#include "layout/sections.h"
#include "layout/spur.h"

namespace visewright::layout {
namespace {

constexpr double inch_mm = 25.4, print_play_mm = 0.15;

template <class T>
T of_row(const std::vector<T>& list, std::size_t i) {
  return list.size() == 1 ? list.front() : list[i];
}

void fix_pitch(Desk& d) {
  auto& t = d.plan.train;
  const auto& given = d.design.train;
  auto& c = d.choose;
  if (given.diametral_pitch) {
    const Ratio pitch = c.ledger().ratio("train.diametral_pitch", reasons::Unit::one, given.diametral_pitch->value, reasons::Basis::given,
                                         rules::diametral_pitch, {}, given.diametral_pitch->place);
    t.module = c.derived(rules::module, inch_mm / pitch.value, {pitch.id});
  } else {
    t.module = c.length(rules::module, given.module, 0);
  }
  const auto& angle = given.pressure_angle;
  t.pressure_angle = c.ledger().angle("train.pressure_angle", angle ? angle->value : units::degrees(20),
                                      angle ? reasons::Basis::given : reasons::Basis::assumed, rules::pressure_angle, {},
                                      angle ? angle->place : base::Place{});
  t.backlash = c.length(rules::backlash, given.backlash, 0.10 * t.module.mm() + print_play_mm, {t.module.id});
  t.material = d.material("train.material", given.material, "PETG");
  t.gear_to_wood = c.length(rules::gear_to_wood, d.design.gaps.gear_to_wood, 2.0);
  t.axial_gap = c.length(rules::axial_gap, d.design.gaps.gear_axial, 1.5);
  t.relief = c.derived(rules::relief, std::max(8.0, c.up(4 * t.module.mm(), 1, 8)), {t.module.id});
}

/// What the design says of each gear; the pocket is that of the gear as designed, shift by rescue or not.
std::vector<Gear> designed_gears(Desk& d) {
  auto& t = d.plan.train;
  auto& c = d.choose;
  const auto& given = d.design.train;
  const std::size_t count = given.teeth.value.size();
  const std::vector<double>& owned = d.plan.workshop.owned.hole_saws_mm;
  const bool centre_drive = d.design.drive.at && d.design.drive.at->value == "centre";
  std::vector<Gear> gears;
  for (std::size_t i = 0; i < count; ++i) {
    const std::string at = "train.gears " + std::to_string(i + 1) + " ";
    Gear g;
    g.on_shaft = centre_drive && 2 * i + 1 == count;
    g.drive = i == 0 || i + 1 == count || g.on_shaft;
    g.sense = i % 2 == 0 ? 1 : -1;
    g.teeth = c.ledger().count(at + "teeth", given.teeth.value[i], reasons::Basis::given, rules::teeth, {}, given.teeth.place);
    g.thinning = c.named(rules::thinning, at + "thinning", t.backlash.mm() / 2, {t.backlash.id});
    g.shift.value = given.profile_shift ? of_row(given.profile_shift->value, i) : 0.0;
    g.pocket.value = units::mm(c.up_to_owned(formulas::tip_diameter_mm(spur_gear(t, g)) + 2 * t.gear_to_wood.mm(), owned));
    gears.push_back(g);
  }
  return gears;
}

void fix_each_gear(Desk& d) {
  auto& t = d.plan.train;
  auto& c = d.choose;
  const auto& given = d.design.train.profile_shift;
  auto gears = designed_gears(d);
  const auto rescued = rescued_shifts(d, gears);
  for (std::size_t i = 0; i < gears.size(); ++i) {
    const std::string at = "train.gears " + std::to_string(i + 1) + " ";
    Gear& g = gears[i];
    const bool shifted = !rescued.empty();
    g.shift = c.ledger().ratio(at + "profile_shift", reasons::Unit::one, shifted ? Chooser::rounded(rescued[i]) : g.shift.value,
                               given ? reasons::Basis::given : reasons::Basis::derived, shifted ? rules::rescued_shift : rules::shift, {},
                               given ? given->place : base::Place{});
    const auto gear = spur_gear(t, g);
    g.pitch_diameter = c.named(rules::pitch_diameter, at + "pitch_diameter", formulas::pitch_diameter_mm(gear), {t.module.id, g.teeth.id});
    g.tip = c.named(rules::tip, at + "tip_diameter", formulas::tip_diameter_mm(gear), {t.module.id, g.teeth.id, g.shift.id});
    g.root = c.named(rules::root, at + "root_diameter", formulas::root_diameter_mm(gear), {t.module.id, g.teeth.id, g.shift.id});
    g.pocket = shifted ? c.named(rules::pocket_drilled, at + "pocket", g.pocket.mm(), {t.module.id, g.teeth.id, t.gear_to_wood.id})
                       : c.named(rules::pocket, at + "pocket", g.pocket.mm(), {g.tip.id, t.gear_to_wood.id});
    t.gears.push_back(g);
  }
}

/// Axles nearer than the base circles allow have no involute between them.
bool refused_as_too_close(Desk& d, std::size_t i, const formulas::Mesh& mesh, const base::Place* place) {
  if (formulas::involutes_meet(mesh)) return false;
  const auto words = [&](double mm) { return units::write_length(units::mm(mm), d.plan.unit); };
  d.wrong(d.design.measured.axle_centres ? "measured.axle_centres" : "train.centre_distances",
          "gears " + std::to_string(i + 1) + " and " + std::to_string(i + 2) + " stand " + words(mesh.centre_distance_mm) +
              " apart, nearer than their teeth can mesh",
          "about " + words(formulas::tight_centre_distance_mm(mesh.first, mesh.second)), place);
  return true;
}

void fix_meshes(Desk& d) {
  auto& t = d.plan.train;
  auto& c = d.choose;
  const auto measured = measured_distances(d);
  const auto& given = d.design.train.centre_distances;
  for (std::size_t i = 0; i + 1 < t.gears.size(); ++i) {
    const std::string at = "train.meshes " + std::to_string(i + 1) + " ";
    const auto left = spur_gear(t, t.gears[i]), right = spur_gear(t, t.gears[i + 1]);
    Mesh m;
    if (!measured.empty()) {
      m.centre_distance = c.ledger().length(at + "centre_distance", units::mm(measured[i]), reasons::Basis::measured, rules::measured_distance, {},
                                            d.design.measured.axle_centres->place);
    } else if (given) {
      m.centre_distance = c.ledger().length(at + "centre_distance", given->value[i], reasons::Basis::given, rules::centre_distance, {}, given->place);
    } else {
      m.centre_distance = c.named(rules::centre_distance, at + "centre_distance", formulas::tight_centre_distance_mm(left, right),
                                  {t.module.id, t.gears[i].teeth.id, t.gears[i + 1].teeth.id});
    }
    const formulas::Mesh mesh{left, right, m.centre_distance.mm()};
    if (refused_as_too_close(d, i, mesh, measured.empty() ? place_of(given) : place_of(d.design.measured.axle_centres))) return;
    const auto id = m.centre_distance.id;
    m.operating_angle = c.ledger().angle(at + "operating_pressure_angle", units::radians(formulas::operating_pressure_angle_rad(mesh)),
                                         reasons::Basis::derived, rules::operating_angle, {id});
    m.backlash = c.named(rules::mesh_backlash, at + "backlash", formulas::backlash_mm(mesh), {t.backlash.id, id});
    m.normal_backlash = c.named(rules::normal_backlash, at + "normal_backlash", formulas::normal_backlash_mm(mesh), {m.backlash.id, t.pressure_angle.id});
    m.contact_ratio = c.ledger().ratio(at + "contact_ratio", reasons::Unit::one, formulas::contact_ratio(mesh), reasons::Basis::derived,
                                       rules::contact_ratio, {id});
    m.tip_clearance = c.named(rules::tip_clearance, at + "tip_clearance", formulas::tip_clearance_mm(mesh), {id});
    t.meshes.push_back(m);
  }
}

void fix_places(Desk& d) {
  auto& t = d.plan.train;
  auto& c = d.choose;
  std::vector<Size> from_left{c.named(rules::left_screw, "train.gears 1 from_left", 0)};
  for (std::size_t i = 0; i < t.meshes.size(); ++i) {
    const Size &before = from_left.back(), &step = t.meshes[i].centre_distance;
    from_left.push_back(c.named(rules::from_left, "train.gears " + std::to_string(i + 2) + " from_left", before.mm() + step.mm(), {before.id, step.id}));
  }
  t.spacing = c.derived(rules::spacing, from_left.back().mm(), {from_left.back().id});
  std::vector<int> teeth;
  for (const Gear& g : t.gears) teeth.push_back(g.teeth.value);
  const auto phases = formulas::phases_rad(teeth);
  for (std::size_t i = 0; i < t.gears.size(); ++i) {
    const std::string at = "train.gears " + std::to_string(i + 1) + " ";
    t.gears[i].centre_x = c.named(rules::centre_x, at + "centre_x", from_left[i].mm() - t.spacing.mm() / 2, {from_left[i].id, t.spacing.id});
    t.gears[i].phase = c.ledger().angle(at + "phase", units::radians(phases[i]), reasons::Basis::derived, rules::phase);
  }
}

/// Equal gears share one outline, so that they are one part.
void draw_outlines(Desk& d) {
  auto& t = d.plan.train;
  std::map<std::tuple<int, double, double>, std::shared_ptr<const geometry::Loop>> drawn;
  for (Gear& g : t.gears) {
    auto& outline = drawn[{g.teeth.value, g.shift.value, g.thinning.mm()}];
    if (!outline) {
      GearShape shape;
      shape.teeth = g.teeth.value;
      shape.module_mm = t.module.mm();
      shape.pressure_angle_rad = t.pressure_angle.rad();
      shape.shift = g.shift.value;
      shape.thinning_mm = g.thinning.mm();
      // A steep rack has no room for the usual rounding; a trace less than the full round leaves a strip of root circle.
      const double rounding = formulas::rack_tip_radius_mm(spur_gear(t, g)) / shape.module_mm;
      if (rounding < shape.tip_rounding) shape.tip_rounding = 0.999 * rounding;
      auto loop = gear_outline(shape);
      if (!loop && !t.beyond_rescue.empty()) {
        const auto& beyond = t.beyond_rescue.front();
        d.wrong("measured.axle_centres",
                "the hole of gear " + std::to_string(beyond.gear + 1) + " lies " + units::write_length(units::mm(beyond.by_mm), d.plan.unit) +
                    " beyond what shifted gears make good",
                "plug it and drill it again", place_of(d.design.measured.axle_centres));
        return;
      }
      if (!loop) {
        d.wrong("train.teeth", loop.error().front().wrong, loop.error().front().right, &d.design.train.teeth.place);
        return;
      }
      outline = std::make_shared<const geometry::Loop>(std::move(*loop));
    }
    g.outline = outline;
  }
}

}  // namespace

void fix_gears(Desk& d) {
  fix_pitch(d);
  fix_each_gear(d);
  fix_meshes(d);
  if (!d.faults.empty()) return;
  fix_places(d);
  draw_outlines(d);
}

void fix_face_width(Desk& d) {
  auto& t = d.plan.train;
  auto& c = d.choose;
  const auto& collar = d.plan.collar;
  const double needed = collar.flange_thickness.mm() + collar.nut_height.mm() + 3.5 - t.axial_gap.mm();
  t.face_width = c.length(rules::face_width, d.design.train.face_width, c.up(std::max(8 * t.module.mm(), needed), 1, 8),
                          {t.module.id, collar.flange_thickness.id, collar.nut_height.id, t.axial_gap.id});
}

}  // namespace visewright::layout
