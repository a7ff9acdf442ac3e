// Faces, and holes that follow the shared patterns.
#include "parts/compose.h"
#include "parts/list.h"
#include "support/hand_plan.h"

namespace visewright::parts {
namespace {

using geometry::Vector;

// Hand derivation: whoever looks at a face sees x to the right and y up, with the face's z towards the eye.
TEST(Faces, FromBehindRightIsThePersonsLeft) {
  EXPECT_EQ(on(back(), geometry::Point{10, 5}), (geometry::Point{-10, 5}));
  EXPECT_EQ(on(front(30), geometry::Point{10, 5}), (geometry::Point{10, 5}));
}

TEST(Faces, HaveTheirYUpOrIntoTheBench) {
  EXPECT_EQ(top(50).datum.y_axis(), (Vector{0, 0, -1}));
  EXPECT_EQ(bottom(-50).datum.y_axis(), (Vector{0, 0, 1}));
  EXPECT_EQ(left(-50).datum.y_axis(), (Vector{0, 1, 0}));
  EXPECT_EQ(right(50).datum.y_axis(), (Vector{0, 1, 0}));
  EXPECT_EQ(bench_front(20).datum.y_axis(), (Vector{0, 0, 1}));
}

geometry::Point middle_of(const Work& work) {
  if (const auto* hole = std::get_if<Drill>(&work)) return hole->at;
  const geometry::Profile* outline = nullptr;
  if (const auto* cut = std::get_if<CutOut>(&work)) outline = &cut->outline;
  if (const auto* rout = std::get_if<Rout>(&work)) outline = &rout->outline;
  const geometry::Box box = geometry::box(outline->outer.front());
  return 0.5 * (box.low + box.high);
}

const Face* face_of(const Work& work) {
  return std::visit(
      [](const auto& w) -> const Face* {
        if constexpr (requires { w.face; }) return &w.face;
        return nullptr;
      },
      work);
}

struct Followed {
  int count = 0;

  /// Every operation that says it follows a hole must stand there, seen from the front.
  void check(const Part& part, const layout::Pattern& pattern) {
    for (const Body& body : bodies(part)) {
      if (!body.piece) continue;
      for (const Operation& o : body.piece->operations) check(o, pattern, part.name);
    }
    if (const auto* built = std::get_if<BuiltUp>(&part.made))
      for (const Operation& o : built->after) check(o, pattern, part.name);
  }
  void check(const Operation& o, const layout::Pattern& pattern, const std::string& part) {
    if (o.pattern != pattern.name || std::holds_alternative<Ease>(o.work)) return;
    const geometry::Point at = middle_of(o.work);
    const Vector stands = geometry::to_outside(face_of(o.work)->datum, {at.x, at.y, 0});
    const geometry::Point wanted = pattern.hole(o.hole).at;
    EXPECT_NEAR(stands[0], wanted.x, 1e-9) << part << ": " << o.name;
    EXPECT_NEAR(stands[1], wanted.y, 1e-9) << part << ": " << o.name;
    ++count;
  }
};

TEST(Patterns, AreFollowedOnEveryFaceEvenWhenLopsided) {
  support::HandPlan hand;
  hand.plan.screws.holes[0].at = {-171, 4};
  hand.plan.axles.holes[0].at = {-77, -3};
  hand.plan.cover_edge.holes[0].at = {-231, 60};
  hand.plan.rear_mounting.holes[0].at = {-211, 71};
  Followed followed;
  for (const Part& part : {front_jaw(hand.plan), cover(hand.plan), front_lining(hand.plan), rear_lining(hand.plan)})
    for (const layout::Pattern* pattern :
         {&hand.plan.screws, &hand.plan.axles, &hand.plan.cover_edge, &hand.plan.cusps})
      followed.check(part, *pattern);
  followed.check(rear_jaw(hand.plan), hand.plan.rear_mounting);
  // Jaw: 2 recesses, 2 bores, 2 + 3 pockets, 3 axle holes, 12 pilots, 8 relief holes; cover: 2 seats, 2 bores, 3 axle
  // and 12 edge screws; linings 2 each; rear jaw: 8 counterbores and 8 holes.
  EXPECT_EQ(followed.count, 32 + 19 + 4 + 16);
}

// Towards the person is −y in the bench's frame and z in the jaw's: a mounting screw must meet one and the same line.
TEST(Patterns, OfTheMountingScrewsMeetInJawAndBench) {
  const support::HandPlan hand;
  int count = 0;
  for (const Operation& o : bodies(bench_top_part(hand.plan))[0].piece->operations) {
    if (o.pattern != "rear mounting") continue;
    const auto& hole = std::get<Drill>(o.work);
    const Vector stands = geometry::to_outside(hole.face.datum, {hole.at.x, hole.at.y, 0});
    const geometry::Point wanted = hand.plan.rear_mounting.hole(o.hole).at;
    EXPECT_EQ(stands, (Vector{wanted.x, 39, wanted.y}));
    ++count;
  }
  EXPECT_EQ(count, 8);
}

// The dogs' pattern counts back from the clamping face, so 20 behind it is z = 20 of the jaw.
TEST(Patterns, OfTheDogsCountsFromTheClampingFace) {
  const support::HandPlan hand;
  const Part jaw = front_jaw(hand.plan);
  const auto& after = std::get<BuiltUp>(jaw.made).after;
  ASSERT_EQ(after.size(), 4U);
  const auto& hole = std::get<Drill>(after[0].work);
  EXPECT_EQ(geometry::to_outside(hole.face.datum, {hole.at.x, hole.at.y, 0}), (Vector{-135, 110, 20}));
}

// Through holes of screw and collar and the pin must lie on one line: the pin's axis at shut stands at 55 out.
TEST(Patterns, OfTheCollarPinMeetInScrewAndCollar) {
  const support::HandPlan hand;
  EXPECT_NEAR(hand.plan.front_jaw.joint_out.mm() + collar_pin_height_mm(hand.plan), 55, 1e-9);
  const Part screw = lead_screw(hand.plan, 0);
  for (const Operation& o : bodies(screw)[0].piece->operations) {
    if (!o.name.starts_with("hole for the collar pin")) continue;
    const auto& hole = std::get<Drill>(o.work);
    const Vector stands = geometry::to_outside(hole.face.datum, {hole.at.x, hole.at.y, 0});
    EXPECT_NEAR(stands[0], 0, 1e-12);
    EXPECT_NEAR(stands[2] + hand.plan.screw.tail_out.mm(), 55, 1e-9);
  }
}

TEST(Extents, HoldTheBodyWhereverItStands) {
  const std::vector<Shape> shapes{cylinder(10, -2, 5), placed(cylinder(4, 0, 20), {{0, 0, 0}, {0, 1, 0}, {1, 0, 0}}),
                                  HalfSpace{{{500, 0, 0}, {1, 0, 0}, {0, 0, 1}}}};
  const Extent box = extent(shapes);
  EXPECT_EQ(box.low_mm, (Vector{-5, -5, -2}));
  EXPECT_EQ(box.high_mm, (Vector{20, 5, 5}));
  EXPECT_NEAR(box.diagonal_mm(), std::sqrt(25.0 * 25 + 100 + 49), 1e-12);
}

}  // namespace
}  // namespace visewright::parts
