// Volumes of bodies made for the purpose, against closed forms.
#include <cmath>

#include "parts/compose.h"
#include "support/hand_plan.h"

namespace visewright::parts {
namespace {

using geometry::Point;
using units::pi;

const standards::MaterialRow& water() {
  static const standards::MaterialRow row = support::material("water", standards::MaterialKind::plastic, 1.0);
  return row;
}

Part block(geometry::Vector size, std::vector<Operation> work) {
  return made_of("block", Bar{&water(), geometry::times(-0.5, size), size}, std::move(work));
}

double within(double expected) { return 1e-7 * expected; }

TEST(Volume, OfABlockIsItsSidesMultiplied) { EXPECT_NEAR(volume_mm3(block({20, 30, 40}, {})), 24000, 1e-8); }

TEST(Volume, OfAnEmptyPrintIsNothing) { EXPECT_EQ(volume_mm3(made_of("nothing", Printed{&water()})), 0); }

TEST(Volume, OfRoundHolesFromAnyFaceIsTheirCylinder) {
  for (const Face& face : {front(20), back(-20), top(20), bottom(-20), left(-20), right(20)}) {
    SCOPED_TRACE(face.name);
    EXPECT_NEAR(volume_mm3(block({40, 40, 40}, {drill("through", face, {3, -2}, 10)})), 64000 - pi * 25 * 40,
                within(64000));
    EXPECT_NEAR(volume_mm3(block({40, 40, 40}, {drill("blind", face, {3, -2}, 10, 7)})), 64000 - pi * 25 * 7,
                within(64000));
  }
}

// Two equal cylinders whose axes cross at right angles share 16 r³/3 (Archimedes); three in a row need no more than
// two to cross.
TEST(Volume, OfCrossingHolesCountsTheirCommonPartOnce) {
  const Part crossed = block({40, 40, 40}, {drill("a", front(20), {0, 0}, 12), drill("b", top(20), {0, 0}, 12)});
  EXPECT_NEAR(volume_mm3(crossed), 64000 - 2 * pi * 36 * 40 + 16 * 216.0 / 3, within(64000));
}

// Three equal cylinders along three axes: by inclusion, 3·πr²·40 − 3·16r³/3 + 8(2 − √2)r³ is taken away.
TEST(Volume, OfThreeCrossingHolesHoldsTheTricylinder) {
  const Part crossed = block({40, 40, 40}, {drill("a", front(20), {0, 0}, 12), drill("b", top(20), {0, 0}, 12),
                                            drill("c", right(20), {0, 0}, 12)});
  const double taken = 3 * pi * 36 * 40 - 16 * 216.0 + 8 * (2 - std::sqrt(2.0)) * 216;
  EXPECT_NEAR(volume_mm3(crossed), 64000 - taken, within(64000));
}

TEST(Volume, OfTurnedBodies) {
  const geometry::Loop half_disc =
      geometry::trusted({geometry::Arc{{0, -5}, {0, 5}, {0, 0}, true}, geometry::Line{{0, 5}, {0, -5}}});
  Bought ball{"ball", "", &water(), {Revolved{geometry::region(half_disc), {}}}, {}};
  EXPECT_NEAR(volume_mm3(bought("ball", ball)), 4 * pi * 125 / 3, 1e-5);
  Bought cone{"cone", "", &water(), {turned_body({{0, 0}, {6, 0}, {0, 9}})}, {}};
  EXPECT_NEAR(volume_mm3(bought("cone", cone)), pi * 36 * 9 / 3, 1e-5);
  // A torus of middle radius R and tube r, by Pappus: 2π²Rr².
  Bought ring{"ring",
              "",
              &water(),
              {Revolved{geometry::region(geometry::circle({20, 0}, 4)), {{1, 2, 3}, {0, 1, 0}, {1, 0, 0}}}},
              {}};
  EXPECT_NEAR(volume_mm3(bought("ring", ring)), 2 * pi * pi * 20 * 16, 1e-4);
}

TEST(Volume, OfAPartlyTurnedBodyIsItsShareOfTheWhole) {
  for (const double z : {1.0, -1.0}) {
    Revolved wedge = turned_body({{2, 0}, {7, 0}, {2, 9}});
    wedge.axis.z_axis = {0, 0, z};
    wedge.from_rad = 0.5;
    wedge.to_rad = 0.5 + pi / 3;
    Bought stock{"wedge", "", &water(), {wedge}, {}};
    // Triangle of 22.5 mm² with its centroid at 2 + 5/3, by Pappus.
    EXPECT_NEAR(volume_mm3(bought("wedge", stock)), pi / 3 * (2 + 5.0 / 3) * 22.5, 1e-5);
  }
}

TEST(Volume, OfABevelOnASlopeInOneDirection) {
  const double k = std::sqrt(0.5);
  const geometry::Placement edge{{20, 10, 0}, {0, 0, 1}, {k, k, 0}};
  // The plane cuts a right triangle with legs of 5 off a 40 × 30 face... its corner is (20, 15), 5 above the plane's
  // point.
  EXPECT_NEAR(volume_mm3(block({40, 30, 20}, {{"bevel", SawFlat{edge}, {}, {}}})), 24000 - 12.5 * 20, within(24000));
}

TEST(Volume, OfACornerSawnOffAskewIsASixth) {
  const double k = std::sqrt(1.0 / 3);
  const geometry::Placement corner{{10, 10, 4}, {std::sqrt(0.5), -std::sqrt(0.5), 0}, {k, k, k}};
  // Legs of 6 along each edge from the corner (10, 10, 10).
  EXPECT_NEAR(volume_mm3(block({20, 20, 20}, {{"corner", SawFlat{corner}, {}, {}}})), 8000 - 216.0 / 6, within(8000));
}

TEST(Volume, OfWhatIsCutToAnOutlineIsTheOutline) {
  const geometry::Loop outline = geometry::rounded_rectangle({-18, -13}, {18, 13}, 5);
  const Part cut = block({40, 30, 10}, {{"outline", CutTo{back(-5), geometry::region(outline)}, {}, {}}});
  EXPECT_NEAR(volume_mm3(cut), (36 * 26 - (4 - pi) * 25) * 10, within(12000));
}

TEST(Volume, OfAPocketWithAnIslandLeavesTheIsland) {
  const geometry::Profile ring = geometry::region(geometry::circle({0, 0}, 9), {geometry::circle({0, 0}, 4)});
  const Part part =
      block({40, 40, 20}, {{"ring", Rout{front(10), ring, 6.0}, {}, {}}, drill("through", front(10), {6, 0}, 2)});
  EXPECT_NEAR(volume_mm3(part), 32000 - pi * (81 - 16) * 6 - pi * 14, within(32000));
}

// By Pappus: the ring that is broken off a hole's edge is a triangle of leg²/2 with its centroid at r + leg/3; off a
// round outline at r − leg/3.
TEST(Volume, OfAnEasedHoleAndOfAnEasedDisc) {
  const Part hole = block({40, 40, 20}, {drill("hole", front(10), {1, 2}, 20),
                                         {"ease", Ease{front(10), geometry::circle({1, 2}, 10), 2, true}, {}, {}}});
  EXPECT_NEAR(volume_mm3(hole), 32000 - pi * 100 * 20 - 2 * pi * (10 + 2.0 / 3) * 2, within(32000));
  const Part disc =
      made_of("disc", Rod{&water(), 20, 8}, {{"ease", Ease{back(), geometry::circle({0, 0}, 10), 2, false}, {}, {}}});
  EXPECT_NEAR(volume_mm3(disc), pi * 100 * 8 - 2 * pi * (10 - 2.0 / 3) * 2, within(2500));
}

// Straight sides lose leg²/2 a unit length; the four quarter rounds together one whole ring.
TEST(Volume, OfAnEasedRoundedPlate) {
  const geometry::Loop outline = geometry::rounded_rectangle({-20, -15}, {20, 15}, 6);
  const Part plate = block({40, 30, 10}, {{"outline", CutTo{front(5), geometry::region(outline)}, {}, {}},
                                          {"ease", Ease{front(5), outline, 1.5, false}, {}, {}}});
  const double area = 40 * 30 - (4 - pi) * 36, straight = 2 * (28 + 18);
  EXPECT_NEAR(volume_mm3(plate), area * 10 - straight * 1.125 - 2 * pi * (6 - 0.5) * 1.125, within(12000));
}

TEST(Volume, OfAnEasedRectangularWindowAddsTheSides) {
  const geometry::Loop outline = geometry::rectangle({-10, -6}, {10, 6});
  const Part plate =
      block({40, 30, 10}, {cut_out("window", front(5), outline), {"ease", Ease{front(5), outline, 1, true}, {}, {}}});
  EXPECT_NEAR(volume_mm3(plate), 12000 - 240 * 10 - 2 * (20 + 12) * 0.5, within(12000));
}

TEST(Volume, DoesNotDependOnWhereTheBodyStands) {
  const std::vector<Operation> work{drill("a", front(20), {3, 1}, 10, 9),
                                    drill("b", top(20), {4, 2}, 6),
                                    {"saw", SawFlat{{{0, 18, 18}, {1, 0, 0}, {0, 0.6, 0.8}}}, {}, {}}};
  const Part part = block({40, 40, 40}, work);
  const double alone = volume_mm3(part);
  for (const geometry::Placement& at : {geometry::Placement{{7, -3, 11}, {0, 1, 0}, {0, 0, 1}},
                                        geometry::Placement{{1, 2, 3}, {0, 0, 1}, {-1, 0, 0}}}) {
    const Part whole{"whole", BuiltUp{{member(part, at)}, {}, {}}};
    EXPECT_NEAR(volume_mm3(whole), alone, 1e-7 * alone);
  }
}

TEST(Volume, IsNoNumberWhereNoAxisWillDo) {
  const geometry::Placement askew{{0, 0, 0}, {0.8, 0, -0.6}, {0.6, 0, 0.8}};
  Part leaning{"leaning", BuiltUp{{member(made_of("rod", Rod{&water(), 5, 50}), askew)}, {}, {}}};
  EXPECT_NEAR(volume_mm3(leaning), pi * 6.25 * 50, 1e-2) << "square to y, so slices along y are rectangles";
  const geometry::Placement worse{
      {0, 0, 0}, {std::sqrt(0.5), -std::sqrt(0.5), 0}, {std::sqrt(1.0 / 3), std::sqrt(1.0 / 3), std::sqrt(1.0 / 3)}};
  leaning = {"leaning", BuiltUp{{member(made_of("rod", Rod{&water(), 5, 50}), worse)}, {}, {}}};
  EXPECT_TRUE(std::isnan(volume_mm3(leaning)));
}

TEST(Mass, OfThreadedRodGoesByTheMeanDiameter) {
  const support::HandPlan hand;
  const Part rod = made_of("rod", Rod{&hand.steel, 20, 1000, &hand.m20});
  // π/4 · 18.376² · 1000 mm³ · 7.85e-6; shops' lists say 2.08 kg a metre (from memory).
  EXPECT_NEAR(mass_kg(rod), pi / 4 * 18.376 * 18.376 * 1000 * 7.85e-6, 1e-9);
  EXPECT_NEAR(mass_kg(rod), 2.08, 0.01);
  EXPECT_NEAR(volume_mm3(rod), pi * 100 * 1000, 1e-3);
}

TEST(Mass, OfABoughtPieceIsTheCatalogues) {
  Bought stock{"bearing", "", &water(), {cylinder(20, 0, 5)}, {}};
  EXPECT_NEAR(mass_kg(bought("bearing", stock)), pi * 100 * 5 * 1e-6, 1e-12);
  stock.mass_kg = 0.25;
  EXPECT_EQ(mass_kg(bought("bearing", stock)), 0.25);
}

}  // namespace
}  // namespace visewright::parts
