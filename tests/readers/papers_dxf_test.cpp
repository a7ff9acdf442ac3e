// Templates as DXF, read by a public reader (ezdxf). Expected places and sizes are those of the Plan.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "readers/papers_made.h"

namespace visewright::tests {
namespace {

using geometry::Point;
using nlohmann::json;

constexpr double micrometre = 1e-3;

std::string with(std::string design, const std::string& lines) { return design.append("\n" + lines + "\n"); }

constexpr const char* uneven = R"(
title = "uneven"
[train]
teeth = [24, 18, 30, 20, 24]
module = 3
[screw]
thread = "M20"
[front_jaw]
dog_holes = { diameter = 19, depth = 60, positions = [-120] }
)";

/// Middles of the level arms of the crosses.
std::vector<Point> crosses(const json& dxf) {
  std::vector<Point> list;
  for (const json& e : dxf["entities"]) {
    if (e["kind"] != "LINE" || e["layer"] != "MARK") continue;
    const double ax = e["a"][0], ay = e["a"][1], bx = e["b"][0], by = e["b"][1];
    if (std::abs(ay - by) < 1e-9 && std::abs(bx - ax - 10) < 1e-6) list.push_back({(ax + bx) / 2, ay});
  }
  return list;
}

bool has(const std::vector<Point>& list, Point p) {
  return std::any_of(list.begin(), list.end(), [&](Point q) { return geometry::distance(p, q) < micrometre; });
}

std::map<std::string, int> counted(const json& dxf, const std::string& kind) {
  std::map<std::string, int> counts;
  for (const json& e : dxf["entities"])
    if (e["kind"] == kind) ++counts[e["layer"].get<std::string>()];
  return counts;
}

TEST(PapersDxfSlow, EveryFileIsReadWithoutErrorOrFix) {
  const Papers papers(preset("joinery-bench"));
  int read = 0;
  for (const outputs::File& file : papers.files) {
    if (!file.path.ends_with(".dxf")) continue;
    const json dxf = papers.dxf(file.path.substr(std::string("papers/templates/").size()));
    EXPECT_EQ(dxf["version"], "AC1015") << file.path;
    EXPECT_EQ(dxf["units"], 4) << file.path;
    EXPECT_EQ(dxf["errors"], 0) << file.path;
    EXPECT_EQ(dxf["fixes"], 0) << file.path;
    for (const json& name : dxf["layers"]) {
      EXPECT_THAT(name.get<std::string>(), testing::MatchesRegex("[A-Za-z0-9_-]+"));
      EXPECT_LE(name.get<std::string>().size(), 31u);
    }
    for (const json& e : dxf["entities"]) {
      if (e["kind"] == "LWPOLYLINE") {
        EXPECT_TRUE(e["closed"]) << file.path;
      }
    }
    ++read;
  }
  EXPECT_GE(read, 18);
}

TEST(PapersDxfSlow, TheGearLayerHasItsHolesPocketsAndEdge) {
  const Papers papers(preset("joinery-bench"));
  const layout::Plan& plan = papers.plan();
  const json dxf = papers.dxf("gear-layer-front.dxf");
  // Seven pockets that run into each other: one closed outline of 2 · 7 arcs less what the cusps take; two relief holes
  // at each of six cusps; two rows of eight pilot holes.
  EXPECT_EQ(counted(dxf, "CIRCLE")["HOLE-12_0-THROUGH"], 12);
  EXPECT_EQ(counted(dxf, "CIRCLE")["HOLE-3_0-DEEP-22_0"], 16);
  EXPECT_EQ(counted(dxf, "LWPOLYLINE")["CUT-THROUGH"], 1);
  // The outline's arcs, taken back from their bulges, are the pockets of the plan.
  std::size_t arcs = 0;
  for (const json& e : dxf["entities"]) {
    if (e["kind"] != "LWPOLYLINE" || e["layer"] != "CUT-THROUGH") continue;
    const json& points = e["points"];
    for (std::size_t i = 0; i < points.size(); ++i) {
      const double bulge = points[i][2];
      ASSERT_NE(bulge, 0);
      const json& next = points[(i + 1) % points.size()];
      const Point a{points[i][0], points[i][1]}, b{next[0], next[1]};
      const double chord = geometry::distance(a, b), angle = 4 * std::atan(bulge);
      const double radius = chord / (2 * std::sin(angle / 2));
      const Point left{-(b.y - a.y) / chord, (b.x - a.x) / chord};
      const Point centre = 0.5 * (a + b) + radius * std::cos(angle / 2) * left;
      EXPECT_NEAR(2 * radius, plan.train.gears[0].pocket.mm(), 2 * micrometre);
      EXPECT_TRUE(std::any_of(plan.train.gears.begin(), plan.train.gears.end(), [&](const layout::Gear& g) {
        return std::abs(g.centre_x.mm() - centre.x) < micrometre && std::abs(centre.y) < micrometre;
      }));
      ++arcs;
    }
  }
  EXPECT_GE(arcs, 12u);
}

TEST(PapersDxfSlow, SharedCentresAgreeToAMicrometreAndBacksAreMirrored) {
  const Papers papers(uneven);
  const layout::Plan& plan = papers.plan();
  const auto front = [&](const char* name) { return crosses(papers.dxf(name)); };
  const auto backing = front("front-jaw-backing-front.dxf"), layer = front("gear-layer-front.dxf"),
             cover = front("cover-front.dxf"), behind = front("cover-back.dxf"), master = front("master-hole-pattern.dxf"),
             rear = front("rear-jaw-front.dxf"), rear_behind = front("rear-jaw-back.dxf"), lining = front("rear-lining-front.dxf");
  int compared = 0;
  for (const layout::Hole& hole : plan.screws.holes) {
    for (const auto& list : {backing, layer, cover, master, rear, lining}) {
      EXPECT_TRUE(has(list, hole.at)) << hole.name;
      ++compared;
    }
    for (const auto& list : {behind, rear_behind}) {
      EXPECT_TRUE(has(list, {-hole.at.x, hole.at.y})) << hole.name;
      ++compared;
    }
  }
  int one_sided = 0;
  for (const layout::Hole& hole : plan.axles.holes) {
    for (const auto& list : {backing, layer, cover, master}) {
      EXPECT_TRUE(has(list, hole.at)) << hole.name;
      ++compared;
    }
    EXPECT_TRUE(has(behind, {-hole.at.x, hole.at.y}));
    const bool mirror_too = std::any_of(plan.axles.holes.begin(), plan.axles.holes.end(),
                                        [&](const layout::Hole& other) { return std::abs(other.at.x + hole.at.x) < 1e-3; });
    if (mirror_too) continue;
    ++one_sided;
    EXPECT_FALSE(has(behind, hole.at)) << "not mirrored: " << hole.name;
    EXPECT_FALSE(has(cover, {-hole.at.x, hole.at.y}));
  }
  EXPECT_GE(one_sided, 2) << "the design is meant to be one-sided";
  EXPECT_GE(compared, 28);
}

TEST(PapersDxfSlow, AHoleAtThePersonsLeftIsAtTheLeftFromAbove) {
  const Papers papers(uneven);
  const auto top = crosses(papers.dxf("front-jaw-top.dxf"));
  ASSERT_EQ(top.size(), 1u);
  EXPECT_NEAR(top[0].x, -120, micrometre);
}

TEST(PapersDxfSlow, TheCoverHasItsOutlineAndExtents) {
  const Papers papers(preset("joinery-bench"));
  const layout::CoverPlan& cover = papers.plan().cover;
  const json dxf = papers.dxf("cover-back.dxf");
  EXPECT_NEAR(dxf["low"][0].get<double>(), -cover.right.mm(), micrometre);
  EXPECT_NEAR(dxf["high"][0].get<double>(), -cover.left.mm(), micrometre);
  EXPECT_NEAR(dxf["low"][1].get<double>(), cover.bottom.mm(), micrometre);
  EXPECT_NEAR(dxf["high"][1].get<double>(), cover.top.mm(), micrometre);
  int seats = 0;
  for (const json& e : dxf["entities"])
    if (e["kind"] == "CIRCLE" && e["layer"].get<std::string>().starts_with("RECESS")) {
      EXPECT_NEAR(2 * e["radius"].get<double>(), cover.seat.mm(), micrometre);
      ++seats;
    }
  EXPECT_EQ(seats, 2);
}

TEST(PapersDxfSlow, KerfAndCutterLieOnTheSideOfTheWasteAndSaySo) {
  const Papers papers(with(uneven, "[accuracy]\nkerf = 0.2\ncutter = 4\n"));
  const layout::CoverPlan& cover = papers.plan().cover;
  const json plain = papers.dxf("cover-front.dxf"), kerf = papers.dxf("cover-front-kerf-0_2.dxf"),
             cutter = papers.dxf("cover-front-cutter-4_0.dxf");
  EXPECT_NEAR(kerf["low"][0].get<double>(), cover.left.mm() - 0.1, micrometre);   // outside of the outline
  EXPECT_NEAR(cutter["high"][1].get<double>(), cover.top.mm() + 2, micrometre);
  const auto smallest = [](const json& dxf) {
    double least = 1e9;
    for (const json& e : dxf["entities"])
      if (e["kind"] == "CIRCLE" && e["layer"].get<std::string>().find("THROUGH") != std::string::npos)
        least = std::min(least, e["radius"].get<double>());
    return least;
  };
  EXPECT_NEAR(smallest(kerf), smallest(plain) - 0.1, micrometre);  // inside of the holes
  for (const json* file : {&kerf, &cutter}) {
    const bool said = std::any_of((*file)["entities"].begin(), (*file)["entities"].end(), [](const json& e) {
      return e["kind"] == "TEXT" && e["text"].get<std::string>().starts_with("ALREADY COMPENSATED");
    });
    EXPECT_TRUE(said);
    EXPECT_EQ((*file)["errors"], 0);
  }
}

TEST(PapersDxfSlow, FailingChecksAreNamed) {
  const Papers papers(uneven);
  outputs::Facts facts = papers.facts();
  static constexpr reasons::Rule rule{"bench.legs", "", "", "", ""};
  const std::vector<reasons::Finding> findings{reasons::judged(rule, 1, 2, reasons::Unit::mm, reasons::Better::larger, reasons::Verdict::fail)};
  facts.findings = findings;
  base::Silence silence;
  const std::vector<outputs::File> files = outputs::papers::templates(facts, {}, silence).value();
  for (const outputs::File& file : files) {
    if (file.path.ends_with(".pdf")) continue;
    EXPECT_THAT(file.bytes, testing::HasSubstr("Not ready to build: 1 check fails: bench.legs")) << file.path;
  }
}

}  // namespace
}  // namespace visewright::tests
