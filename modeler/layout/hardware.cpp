// Thread, nuts, washers and bearing: what the catalogue brings along.
#include <algorithm>
#include <iterator>
#include <map>

#include "layout/rules_jaw.h"
#include "layout/rules_screw.h"
#include "layout/sections.h"
#include "standards/designation.h"

namespace visewright::layout {
namespace {

std::array<bool, 2> hands(const Desk& desk) {
  const bool even = desk.design.train.teeth.value.size() % 2 == 0;
  const auto& given = desk.design.screw.hand;
  if (!given) return {false, even};
  const auto& list = given->value;
  return {list.front() == "left", list.back() == "left"};
}

/// The largest journal whose bearing the catalogue has: metric bearings on metric rod, inch bearings on inch rod.
const standards::BearingRow* wheel_bearing(const standards::Catalogue& catalogue, double limit_mm, bool inch) {
  const standards::BearingRow* best = nullptr;
  for (const auto& row : catalogue.bearings()) {
    const bool inch_series = row.designation.starts_with("R");
    if (inch_series != inch || units::in_mm(row.bore) > limit_mm) continue;
    if (!best || row.bore > best->bore) best = &row;
  }
  return best ? usual_bearing(catalogue, best->bore) : nullptr;
}

/// A washer given by series or by its designation, or the usual series of the thread.
const standards::WasherRow* washer(const Desk& d, const design::Maybe<std::string>& given, bool usually_large) {
  const std::string& thread = d.plan.screw.thread->designation;
  if (!given || given->value == "normal" || given->value == "large")
    return d.catalogue.washer(thread, given ? given->value == "large" : usually_large);
  const auto rows = d.catalogue.washers();
  const auto same = [&](const standards::WasherRow& row) {
    return standards::designation_key(row.designation) == standards::designation_key(given->value);
  };
  const auto found = std::find_if(rows.begin(), rows.end(), same);
  return found == rows.end() ? nullptr : &*found;
}

void fix_nuts(Desk& d) {
  auto& plan = d.plan;
  for (std::size_t side = 0; side < 2; ++side) {
    const bool left = plan.screw.left_hand[side];
    const std::string& thread = plan.screw.thread->designation;
    // A nut given by name serves the right-hand thread; its left-hand row is the thread's own.
    const auto& named = d.design.collar.nut;
    const auto* standard = named && !left ? d.catalogue.nut(named->value) : d.catalogue.hexagon_nut(thread, left);
    const auto* bar = d.catalogue.hexagon_bar(thread, left);
    plan.collar.nut[side] = standard ? standard : bar;
    const bool whole = d.design.rear_nut.kind && d.design.rear_nut.kind->value == "long nut";
    const auto* long_nut = d.catalogue.long_nut(thread, left);
    const bool from_bar = !long_nut || (d.design.rear_nut.kind && d.design.rear_nut.kind->value == "hexagon bar");
    plan.rear_nut.nut[side] = from_bar ? bar : long_nut;
    plan.rear_nut.kind = from_bar ? "hexagon bar" : whole ? "long nut" : "half long nut";
    plan.rear_nut.share_of = plan.rear_nut.kind == "half long nut" ? 2 : 1;
    if (!plan.collar.nut[side] || !plan.rear_nut.nut[side])
      d.wrong("screw.thread", "the catalogue has no nut and no hexagon bar for " + thread, "choose another thread",
              &d.design.screw.thread.place);
  }
}

void fix_collar(Desk& d) {
  auto& c = d.plan.collar;
  const auto& given = d.design.collar;
  const double rod = d.plan.screw.diameter.mm();
  c.across_flats = d.choose.length(rules::nut_across, d.design.measured.nut_across_flats, {},
                                   units::in_mm(c.nut[0]->across_flats_max));
  c.nut_height = d.choose.catalogue(rules::nut_height, "collar.nut_height", c.nut[0]->height_max);
  c.flange_outside = d.choose.catalogue(rules::flange_outside, "collar.flange_outside", c.flange->outside);
  c.flange_thickness = d.choose.catalogue(rules::flange_thickness, "collar.flange_thickness", c.flange->thickness);
  c.thrust_outside = d.choose.catalogue(rules::thrust_outside, "collar.thrust_outside", c.thrust->outside);
  c.thrust_thickness = d.choose.catalogue(rules::thrust_thickness, "collar.thrust_thickness", c.thrust->thickness);
  c.bevel = d.choose.derived(rules::bevel_leg, 3.0);
  const auto id = d.plan.screw.diameter.id;
  c.pin = d.choose.length(rules::collar_pin, given.pin, d.choose.inch() ? d.choose.up(0.25 * rod, 1, 4) : std::round(0.25 * rod), {id});
  c.pin_length = d.choose.derived(rules::collar_pin_length, c.across_flats.mm() - 0.5, {c.across_flats.id});
  c.hexagon = d.choose.derived(rules::hexagon, c.across_flats.mm() + 0.2, {c.across_flats.id});
  c.flange_recess = d.choose.derived(rules::flange_recess, c.flange_outside.mm() + 1, {c.flange_outside.id});
  c.front_bore = d.choose.derived(rules::front_bore, rod + 0.6, {id});
}

void fix_bearing(Desk& d) {
  auto& plan = d.plan;
  const Size root = d.choose.catalogue(rules::thread_root, "screw.thread_root", plan.screw.thread->root);
  const bool inch_rod = plan.screw.thread->family == standards::ThreadFamily::unified ||
                        plan.screw.thread->family == standards::ThreadFamily::acme;
  const auto& bore = d.design.drive.wheel.bore;
  const auto* row = bore ? usual_bearing(d.catalogue, bore->value)
                         : wheel_bearing(d.catalogue, root.mm() - 0.5, inch_rod);
  if (!row) {
    d.wrong("drive.wheel.bore", "no bearing of the catalogue fits the wheel end of the screw",
            "leave the bore out, or choose the bore of a bearing in `catalogue bearings`", place_of(bore));
    return;
  }
  auto& b = plan.bearing;
  b.row = row;
  b.bore = d.choose.catalogue(rules::bearing_size, "bearing.bore", row->bore);
  b.outside = d.choose.catalogue(rules::bearing_size, "bearing.outside", row->outside);
  b.width = d.choose.catalogue(rules::bearing_size, "bearing.width", row->width_shielded);
  const double wall = b.outside.mm() - b.bore.mm();
  b.inner_land = d.choose.derived(rules::inner_land, b.bore.mm() + 0.3 * wall, {b.bore.id, b.outside.id});
  b.outer_land = d.choose.derived(rules::outer_land, b.outside.mm() - 0.3 * wall, {b.bore.id, b.outside.id});
  plan.screw.journal = d.choose.length(rules::journal, bore, b.bore.mm(), {root.id});
}

/// The first listed thread of each diameter of the family, and of those the two below and the two above.
std::vector<const standards::ThreadRow*> near_sizes(const standards::Catalogue& catalogue, const standards::ThreadRow& thread) {
  std::map<double, const standards::ThreadRow*> rising;
  for (const auto& row : catalogue.threads())
    if (row.family == thread.family) rising.emplace(units::in_mm(row.major), &row);
  const auto at = rising.find(units::in_mm(thread.major));
  auto from = at, to = std::next(at);
  for (int i = 0; i < 2 && from != rising.begin(); ++i) --from;
  for (int i = 0; i < 2 && to != rising.end(); ++i) ++to;
  std::vector<const standards::ThreadRow*> list;
  for (auto each = from; each != to; ++each)
    if (each != at) list.push_back(each->second);
  return list;
}

}  // namespace

const standards::BearingRow* usual_bearing(const standards::Catalogue& catalogue, units::Length bore) {
  const standards::BearingRow* best = nullptr;
  for (const auto& row : catalogue.bearings()) {
    const bool thin = row.designation.starts_with("68") || row.designation.starts_with("69");
    if (!thin && row.bore == bore && (!best || row.outside < best->outside)) best = &row;
  }
  return best;
}

const standards::MaterialRow* Desk::material(const std::string& key, const design::Maybe<std::string>& given,
                                             const std::string& usual) const {
  const std::string& name = given ? given->value : usual;
  choose.text(rules::gear_material, key, name, place_of(given));
  const auto* row = catalogue.material(name);
  if (!row) wrong(key, "the catalogue knows no material \"" + name + "\"", "see `catalogue materials`", place_of(given));
  return row ? row : &catalogue.materials().front();
}

void fix_hardware(Desk& d) {
  auto& plan = d.plan;
  const auto* thread = d.catalogue.thread(d.design.screw.thread.value);
  if (!thread) {
    d.wrong("screw.thread", "unknown thread", "see `catalogue threads`", &d.design.screw.thread.place);
    return;
  }
  plan.screw.thread = thread;
  plan.screw.near_sizes = near_sizes(d.catalogue, *thread);
  plan.screw.left_hand = hands(d);
  d.choose.text(rules::thread, "screw.thread", thread->designation, &d.design.screw.thread.place);
  for (std::size_t side = 0; side < 2; ++side)
    d.choose.text(rules::hand, side == 0 ? "screw.hand.left_screw" : "screw.hand.right_screw",
                  plan.screw.left_hand[side] ? "left" : "right", place_of(d.design.screw.hand));
  plan.screw.closes_clockwise = {!plan.screw.left_hand[0], !plan.screw.left_hand[1]};
  plan.screw.material = d.material("screw.material", {}, "steel");
  plan.screw.strength_class = d.design.screw.strength_class ? d.design.screw.strength_class->value : "4.6";
  d.choose.text(rules::strength_class, "screw.strength_class", plan.screw.strength_class, place_of(d.design.screw.strength_class));
  plan.screw.diameter = d.choose.length(rules::screw_diameter, d.design.measured.rod_diameter, {}, units::in_mm(thread->major));

  plan.collar.flange = washer(d, d.design.collar.washer, false);
  plan.collar.thrust = washer(d, d.design.collar.thrust_washer, true);
  if (!plan.collar.thrust) plan.collar.thrust = plan.collar.flange;
  if (!plan.collar.flange) {
    d.wrong("collar.washer", "the catalogue has no washer for " + thread->designation, "choose another thread");
    return;
  }
  fix_nuts(d);
  if (!d.faults.empty()) return;
  fix_collar(d);
  fix_bearing(d);
}

}  // namespace visewright::layout
