// How the placed parts move as the vise opens.
#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "assembly/assemble.h"
#include "layout/planning.h"

namespace visewright::assembly {
namespace {

using geometry::Placement;

constexpr double near_mm = 1e-9;

struct Built {
  layout::Plan plan;
  Assembly assembly;

  explicit Built(const std::string& text) : plan(layout::good_plan(text)), assembly(assemble(plan)) {}

  const Placed& named(const std::string& name) const {
    const auto found = std::find_if(assembly.placed.begin(), assembly.placed.end(), [&](const Placed& p) { return p.name == name; });
    if (found == assembly.placed.end()) throw std::runtime_error("no " + name);
    return *found;
  }
};

const Built& small() {
  static const Built built(layout::preset_text("small-instrument-bench"));
  return built;
}
const Built& five() {
  static const Built built(layout::five_gears);
  return built;
}
/// An even count of gears: the screw at the right is left-handed.
const Built& uneven() {
  static const Built built("train = { module = 3, teeth = [30, 25, 36, 30] }\nscrew = { thread = \"M20\" }\n");
  return built;
}

void expect_vector(const geometry::Vector& got, const geometry::Vector& want, const std::string& what) {
  for (std::size_t i = 0; i < 3; ++i) EXPECT_NEAR(got[i], want[i], near_mm) << what << ", axis " << i;
}
void expect_same(const Placement& a, const Placement& b, const std::string& what) {
  expect_vector(a.origin_mm, b.origin_mm, what);
  expect_vector(a.x_axis, b.x_axis, what);
  expect_vector(a.z_axis, b.z_axis, what);
}

// Expected: Y runs into the bench and the front jaw comes out of it, so its Y falls by the opening and nothing else
// changes; what is fixed stands still.
TEST(Motion, MovingPartsComeOutByTheOpeningAndFixedOnesStay) {
  for (const Built* built : {&small(), &five(), &uneven()}) {
    for (const Placed& part : built->assembly.placed) {
      if (part.group == Group::turning) continue;
      Placement want = at(part, {0, false});
      if (part.group == Group::moving) want.origin_mm[1] -= 57.25;
      expect_same(at(part, {57.25, false}), want, part.name);
    }
    EXPECT_EQ(built->named("front jaw").group, Group::moving);
    EXPECT_EQ(built->named("rear jaw").group, Group::fixed);
  }
}

// Expected: a right-hand screw turned clockwise runs away from who turns it, one lead a turn: opening = constant − lead
// × clockwise turns. So a quarter lead of opening is a quarter turn anticlockwise, seen with X right and Z up.
TEST(Motion, RightHandScrewTurnsAnticlockwiseToOpen) {
  for (const Built* built : {&small(), &five()}) {
    const double lead = units::in_mm(built->plan.screw.thread->lead);
    for (const char* name : {"lead screw, left", "lead screw, right"}) {
      const Placed& screw = built->named(name);
      EXPECT_NEAR(screw.turn_rad_per_mm * lead, 2 * units::pi, 1e-12) << name;
      const geometry::Vector before = at(screw, {0, false}).x_axis, after = at(screw, {lead / 4, false}).x_axis;
      expect_vector(after, {-before[2], 0, before[0]}, name);
      Placement want = at(screw, {0, false});
      want.origin_mm[1] -= 3 * lead;
      expect_same(at(screw, {3 * lead, false}), want, std::string(name) + " after three turns");
    }
  }
}

// Expected: four gears turn the outer two against each other, so one screw is left-handed and turns the other way.
TEST(Motion, LeftHandScrewTurnsClockwiseToOpen) {
  const double lead = units::in_mm(uneven().plan.screw.thread->lead);
  const Placed &left = uneven().named("lead screw, left"), &right = uneven().named("lead screw, right");
  ASSERT_TRUE(uneven().plan.screw.left_hand[1]);
  EXPECT_NEAR(left.turn_rad_per_mm * lead, 2 * units::pi, 1e-12);
  EXPECT_NEAR(right.turn_rad_per_mm * lead, -2 * units::pi, 1e-12);
  EXPECT_NE(left.part, right.part);
  EXPECT_EQ(five().named("lead screw, left").part, five().named("lead screw, right").part);
}

// Expected: teeth that mesh pass the line of centres at the same speed on opposite ways round: z1 n1 = −z2 n2. The
// outer gears are pinned to their screws and turn with them.
TEST(Motion, NeighbouringGearsTurnOppositeWaysByTheirTeeth) {
  for (const Built* built : {&small(), &five(), &uneven()}) {
    const auto& gears = built->plan.train.gears;
    const auto rate = [&](std::size_t k) { return built->named("gear " + std::to_string(k + 1)).turn_rad_per_mm; };
    for (std::size_t k = 0; k + 1 < gears.size(); ++k)
      EXPECT_NEAR(rate(k) * gears[k].teeth.value, -rate(k + 1) * gears[k + 1].teeth.value, 1e-9) << "gear " << k + 1;
    EXPECT_NEAR(rate(0), built->named("lead screw, left").turn_rad_per_mm, 1e-12);
    EXPECT_NEAR(rate(gears.size() - 1), built->named("lead screw, right").turn_rad_per_mm, 1e-12);
  }
}

// Expected: what sits on the screws turns with them at one rate; jaws, cover and bench do not turn.
TEST(Motion, ScrewsGearsAndWheelsTurn) {
  for (const Built* built : {&small(), &five(), &uneven()}) {
    for (const Placed& part : built->assembly.placed) {
      const bool turns = part.name.starts_with("lead screw") || part.name.starts_with("gear ") || part.name.starts_with("hand wheel") ||
                         part.name.starts_with("grip") || part.name.starts_with("thrust collar") || part.name.starts_with("keeper ring") ||
                         part.name.starts_with("collar pin") || part.name.starts_with("end-stop pin") || part.name.starts_with("lock screw") ||
                         part.name.starts_with("wheel bearing, inner") || part.name.starts_with("idler bearing, outer");
      EXPECT_EQ(part.group == Group::turning, turns) << part.name;
      EXPECT_EQ(part.turn_rad_per_mm != 0, turns) << part.name;
    }
  }
}

// Expected: the grip hinges in the wheel; folding it out moves nothing else, and its hinge stays where it was.
TEST(Motion, FoldingTheGripOutMovesTheGripAlone) {
  std::size_t grips = 0;
  for (const Placed& part : five().assembly.placed) {
    const Placement folded = at(part, {31, false}), out = at(part, {31, true});
    if (part.grip_out) {
      ++grips;
      EXPECT_TRUE(part.name.starts_with("grip")) << part.name;
      expect_vector(out.origin_mm, folded.origin_mm, part.name);
      EXPECT_NEAR(geometry::dot(out.x_axis, folded.x_axis) + geometry::dot(out.z_axis, folded.z_axis), 0, 1e-9);
    } else {
      expect_same(out, folded, part.name);
    }
  }
  EXPECT_EQ(grips, 2U);
}

// Expected: the hinge runs on a circle of the grip's radius about the screw's axis, out of the bench with the wheel.
TEST(Motion, HingeOfTheGripStaysOnItsCircle) {
  for (const char* side : {"left", "right"}) {
    const Placed& grip = five().named(std::string("grip, ") + side);
    const double axis_x = five().plan.screws.hole(side).at.x;
    for (const double opening : {0.0, 0.3, 1.1, 62.5, 249.9}) {
      for (const bool out : {false, true}) {
        const geometry::Vector hinge = at(grip, {opening, out}).origin_mm;
        EXPECT_NEAR(std::hypot(hinge[0] - axis_x, hinge[2]), five().plan.wheel.grip_radius.mm(), 1e-9) << side << " at " << opening;
        EXPECT_NEAR(hinge[1], -(five().plan.wheel.grip_out.mm() + opening), 1e-9) << side << " at " << opening;
      }
    }
  }
}

// Expected: by the meaning of an index. A pair declared twice would leave it open which fit is meant.
TEST(Motion, IndicesAndNamesAreGood) {
  for (const Built* built : {&small(), &five(), &uneven()}) {
    const Assembly& a = built->assembly;
    std::set<std::string> names;
    std::set<std::uint32_t> used;
    for (const Placed& part : a.placed) {
      ASSERT_LT(part.part, a.parts.size()) << part.name;
      used.insert(part.part);
      EXPECT_TRUE(names.insert(part.name).second) << "twice: " << part.name;
    }
    EXPECT_EQ(used.size(), a.parts.size()) << "a part that is placed nowhere";
    std::set<std::pair<std::uint32_t, std::uint32_t>> pairs;
    for (const Pair& pair : a.declared) {
      ASSERT_LT(std::max(pair.a, pair.b), a.placed.size());
      EXPECT_NE(pair.a, pair.b) << a.placed[pair.a].name;
      EXPECT_TRUE(pairs.insert(std::minmax(pair.a, pair.b)).second) << a.placed[pair.a].name << " and " << a.placed[pair.b].name;
    }
  }
}

}  // namespace
}  // namespace visewright::assembly
