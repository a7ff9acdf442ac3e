// Files for a machine shop: solids read by our own STEP reader, positions against the patterns of the plan.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "readers/handoff_made.h"
#include "readers/step_bodies.h"
#include "readers/step_products.h"

namespace visewright::tests {
namespace {

using nlohmann::json;
using readers::StepFile;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<json> rows(const Handoff& made, const std::string& part, const std::string& feature) {
  std::vector<json> list;
  const json table = made.read("csv", "cnc/machining.csv");
  for (const json& row : table["rows"])
    if (row["part"] == part && row["feature"].get<std::string>().starts_with(feature)) list.push_back(row);
  return list;
}

double number(const json& row, const char* key) { return std::stod(row[key].get<std::string>()); }

/// The measures of one kind in a file, with the exponents of their units: {value, {exponent by unit}}.
struct Measure {
  double value = 0;
  std::map<std::string, double> exponents;
};
std::vector<Measure> measures(const StepFile& file, std::string_view item) {
  std::vector<Measure> list;
  for (const readers::Instance* one : file.all("MEASURE_REPRESENTATION_ITEM")) {
    const readers::Record* record = one->find("MEASURE_REPRESENTATION_ITEM");
    if (readers::parameter(record, 0).text != item) continue;
    Measure found;
    const readers::Value& value = readers::parameter(record, 1);
    found.value = value.items.empty() ? value.number : value.items[0].number;
    const readers::Instance* unit = file.step(one, "MEASURE_REPRESENTATION_ITEM", 2);
    for (const readers::Value& element : readers::parameter(unit->find("DERIVED_UNIT"), 0).items) {
      const readers::Instance* at = file.at(element);
      const readers::Record* si = file.step(at, "DERIVED_UNIT_ELEMENT", 0)->find("SI_UNIT");
      found.exponents[readers::parameter(si, 0).text + readers::parameter(si, 1).text] = readers::parameter(at->find("DERIVED_UNIT_ELEMENT"), 1).number;
    }
    list.push_back(std::move(found));
  }
  return list;
}

TEST(HandoffMachineSlow, EveryStepFileIsSoundAndLiesOnTheTable) {
  int files = 0, weighed = 0, flat = 0;
  for (const std::string& name : small_bench().named("cnc/", ".step")) {
    SCOPED_TRACE(name);
    const StepFile file = readers::read_step(small_bench().bytes(name));
    EXPECT_THAT(file.problems, IsEmpty());
    const readers::Products products = readers::read_products(file);
    EXPECT_THAT(products.problems, IsEmpty());
    ASSERT_EQ(products.roots().size(), 1u);
    const readers::Product& root = products.products[products.roots()[0]];
    // "cnc/07_cover.step": the item and the name of the product.
    const std::string item = name.substr(4, name.find('_') - 4);
    EXPECT_EQ(item, (root.id.find('.') == 1 || root.id.size() == 1 ? "0" : "") + root.id);
    // Where eased pockets run into each other the edges are hyperbolas, which the reader cannot follow.
    const bool hyperbolas = !file.all("HYPERBOLA").empty();
    const auto bodies = readers::read_bodies(file);
    EXPECT_GE(bodies.size(), 1u);
    const auto volumes = measures(file, "volume measure");
    ASSERT_EQ(volumes.size(), bodies.size());
    EXPECT_EQ(measures(file, "surface area measure").size(), bodies.size());
    for (const Measure& volume : volumes) EXPECT_EQ(volume.exponents, (std::map<std::string, double>{{"MILLIMETRE", 3}}));
    if (!hyperbolas) {
      double read = 0, said = 0;
      bool all = true;
      for (const readers::Body& body : bodies) {
        EXPECT_THAT(body.problems, IsEmpty());
        all = all && body.volume_mm3.has_value();
        read += body.volume_mm3.value_or(0);
      }
      for (const Measure& volume : volumes) said += volume.value;
      if (all) {
        EXPECT_NEAR(said / read, 1, 1e-6);
        ++weighed;
      }
    }
    const auto densities = measures(file, "density measure");  // one for each material of the file
    EXPECT_GE(densities.size(), 1u);
    std::size_t with_density = 0;
    for (const readers::Instance* property : file.all("PROPERTY_DEFINITION"))
      with_density += readers::parameter(property->find("PROPERTY_DEFINITION"), 1).text == "density";
    EXPECT_EQ(with_density, bodies.size());
    for (const Measure& density : densities) {
      EXPECT_EQ(density.exponents, (std::map<std::string, double>{{"GRAM", 1}, {"CENTIMETRE", -3}}));
      EXPECT_GT(density.value, 0.3);
      EXPECT_LT(density.value, 9);
    }
    readers::Triple low{1e9, 1e9, 1e9};
    for (const readers::Instance* vertex : file.all("VERTEX_POINT")) {
      const auto at = readers::triple_of(file.step(vertex, "VERTEX_POINT", 1));
      for (std::size_t i = 0; i < 3; ++i) low[i] = std::min(low[i], (*at)[i]);
    }
    for (const double x : low) EXPECT_GT(x, -1e-6);
    // Boards, sheets and bars have a corner there; what is round touches the table between its corners, and rounded
    // corners leave no point in the corner itself.
    if (root.name == "front jaw backing" || root.name == "rear jaw" || root.name == "rear lining" || root.name == "nut bar" || root.name == "cover") {
      for (const double x : low) EXPECT_NEAR(x, 0, 1e-6);
      ++flat;
    }
    ++files;
  }
  EXPECT_GE(files, 18);
  EXPECT_GE(weighed, 14);
  EXPECT_EQ(flat, 5);
}

// Steel is 7.85 g/cm³, beech 0.72: the rows of the catalogue.
TEST(HandoffMachineSlow, DensitiesAreThoseOfTheMaterial) {
  const auto density = [](const std::string& ending) {
    const StepFile file = readers::read_step(small_bench().bytes(small_bench().named("cnc/", ending).at(0)));
    return measures(file, "density measure").at(0).value;
  };
  EXPECT_NEAR(density("_axle.step"), 7.85, 1e-9);
  EXPECT_NEAR(density("_front-jaw-backing.step"), 0.72, 1e-9);
}

TEST(HandoffMachineSlow, NothingBoughtPrintedOrStandingHasAFile) {
  const json table = small_bench().read("csv", "cnc/machining.csv");
  std::set<std::string> parts;
  for (const json& row : table["rows"]) parts.insert(row["part"]);
  for (const char* name : {"drive gear", "idler gear", "hand wheel", "bench top", "mounting screw"}) EXPECT_FALSE(parts.count(name)) << name;
  EXPECT_THAT(small_bench().named("cnc/", "gear.step"), IsEmpty());
  EXPECT_THAT(small_bench().named("cnc/", "bench-top.step"), IsEmpty());
  // One file a part: no two with the same name behind the item.
  std::set<std::string> names;
  for (const std::string& file : small_bench().named("cnc/", ".step")) EXPECT_TRUE(names.insert(file.substr(file.find('_'))).second) << file;
}

// Every feature that follows a shared pattern, at the pattern's place from the low left corner. From the front the
// corner is half the jaw's length to the left and the part below the screw line down; from behind left is right.
TEST(HandoffMachineSlow, PositionsAreThoseOfThePatterns) {
  const Handoff made(uneven_design);
  const layout::Plan& plan = made.plan();
  const layout::FrontJawPlan& jaw = plan.front_jaw;
  const double half = jaw.length.mm() / 2, below = jaw.below.mm();
  int compared = 0;
  const auto meet = [&](const std::string& part, const std::string& feature, double x, double y) {
    const auto found = rows(made, part, feature);
    ASSERT_EQ(found.size(), 1u) << part << ": " << feature;
    EXPECT_NEAR(number(found[0], "x_mm"), x, 1e-3) << part << ": " << feature;
    EXPECT_NEAR(number(found[0], "y_mm"), y, 1e-3) << part << ": " << feature;
    ++compared;
  };
  for (std::size_t i = 0; i < plan.train.gears.size(); ++i) meet("gear layer", "pocket for gear " + std::to_string(i + 1), plan.train.gears[i].centre_x.mm() + half, below);
  for (const layout::Hole& hole : plan.axles.holes) {
    meet("front jaw backing", "hole for " + hole.name, hole.at.x + half, hole.at.y + below);
    meet("cover", hole.name == "" ? "" : (rows(made, "cover", "screw hole, " + hole.name).empty() ? "screw slot, " : "screw hole, ") + hole.name, hole.at.x - plan.cover.left.mm(), hole.at.y - plan.cover.bottom.mm());
  }
  for (const layout::Hole& hole : plan.cusps.holes) meet("gear layer", "relief hole, " + hole.name, hole.at.x + half, hole.at.y + below);
  for (const layout::Hole& hole : plan.screws.holes) {
    meet("front jaw backing", "thrust recess, " + hole.name, hole.at.x + half, hole.at.y + below);
    // The seats are routed from behind, with the sheet turned over.
    meet("cover", "bearing seat, " + hole.name, plan.cover.right.mm() - hole.at.x, hole.at.y - plan.cover.bottom.mm());
    EXPECT_THAT(rows(made, "cover", "bearing seat, " + hole.name)[0]["remark"].get<std::string>(), HasSubstr("turned over"));
  }
  for (const layout::Hole& hole : plan.rear_mounting.holes) {
    const auto found = rows(made, "rear jaw", "counterbore, " + hole.name);
    ASSERT_GE(found.size(), 1u);  // "mount 1" begins "mount 10" too
    EXPECT_NEAR(number(found[0], "x_mm"), hole.at.x + plan.rear_jaw.length.mm() / 2, 1e-3);
    ++compared;
  }
  // The one dog hole is 120 left of the middle, seen from above with the person below.
  const auto dog = rows(made, "front jaw", "hole for dog");
  ASSERT_EQ(dog.size(), 1u);
  EXPECT_NEAR(number(dog[0], "x_mm"), half - 120, 1e-3);
  EXPECT_EQ(dog[0]["through"], "blind");
  EXPECT_NEAR(number(dog[0], "depth_mm"), 60, 1e-9);
  EXPECT_GE(compared, 25);
}

TEST(HandoffMachineSlow, FeaturesSayFitCornerAndCutter) {
  const json seat = rows(small_bench(), "cover", "bearing seat").at(0);
  EXPECT_THAT(seat["fits_with"].get<std::string>(), HasSubstr("outer ring"));
  EXPECT_NEAR(number(seat, "lower_deviation_mm"), 0, 1e-9);
  EXPECT_EQ(seat["through"], "blind");
  const json bush = rows(small_bench(), "front jaw backing", "bore for the bush").at(0);
  EXPECT_EQ(bush["fits_with"], "front bush");
  EXPECT_EQ(bush["fit"], "press");
  EXPECT_NEAR(number(bush, "upper_deviation_mm"), 0.021, 1e-9);  // IT7 at 22 mm (ISO 286-1, step 18 to 30)
  EXPECT_EQ(bush["through"], "through");
  const json slot = rows(small_bench(), "cover", "screw slot, edge 1").at(0);
  const double wide = std::min(number(slot, "length_mm"), number(slot, "width_mm"));
  EXPECT_NEAR(number(slot, "smallest_inside_radius_mm"), wide / 2, 1e-9);
  EXPECT_NEAR(number(slot, "largest_cutter_mm"), wide, 1e-9);
  const json lining = rows(small_bench(), "rear lining", "hole for the screw").at(0);
  EXPECT_NE(lining["fits_with"], "front bush");  // it only touches the lining's face
}

TEST(HandoffMachineSlow, FlatOutlinesHaveDepthInTheirLayers) {
  const auto names = small_bench().named("cnc/", "front-jaw-backing.dxf");
  ASSERT_EQ(names.size(), 1u);
  const json dxf = json::parse(said_by("/usr/bin/python3 " VISEWRIGHT_SOURCE_DIR "/tests/readers/papers_read_dxf.py " + small_bench().path(names[0])));
  EXPECT_EQ(dxf["errors"], 0);
  EXPECT_EQ(dxf["fixes"], 0);
  std::set<std::string> layers;
  int holes = 0;
  for (const json& e : dxf["entities"]) {
    layers.insert(e["layer"]);
    holes += e["kind"] == "CIRCLE" && e["layer"] == "HOLE-8_0-DEEP-20_0";
  }
  // One idler axle of 8, its hole 20 deep; two bushes of 22 through; two recesses for washers of 3.
  EXPECT_EQ(holes, 1);
  EXPECT_TRUE(layers.count("HOLE-22_0-THROUGH"));
  EXPECT_TRUE(layers.count("RECESS-3_0-DEEP"));
  EXPECT_NEAR(dxf["low"][0].get<double>(), 0, 1e-3);
  EXPECT_NEAR(dxf["high"][0].get<double>(), 300, 1e-3);
}

TEST(HandoffSlow, TheGuideNamesEveryFileAndBytesRepeat) {
  const std::string& guide = small_bench().bytes("README.md");
  for (const outputs::File& file : small_bench().files) {
    if (file.path == "handoff/README.md") continue;
    std::string shown = file.path.substr(8);
    for (std::size_t at = 0; (at = shown.find('_', at)) != std::string::npos; at += 2) shown.insert(at, "\\");
    EXPECT_THAT(guide, HasSubstr("| " + shown + " |"));
    EXPECT_FALSE(file.what.empty()) << file.path;
  }
  base::Silence silence;
  const auto again = outputs::handoff::write_handoff(small_bench().facts(), silence).value();
  ASSERT_EQ(again.size(), small_bench().files.size());
  for (std::size_t i = 0; i < again.size(); ++i) EXPECT_TRUE(again[i].bytes == small_bench().files[i].bytes) << again[i].path;
}

TEST(HandoffSlow, FailingChecksAreNamed) {
  outputs::Facts facts = small_bench().facts();
  static constexpr reasons::Rule rule{"bench.legs", "", "", "", ""};
  const std::vector<reasons::Finding> findings{reasons::judged(rule, 1, 2, reasons::Unit::mm, reasons::Better::larger, reasons::Verdict::fail)};
  facts.findings = findings;
  base::Silence silence;
  const auto files = outputs::handoff::write_handoff(facts, silence).value();
  for (const outputs::File& file : files) {
    if (file.path.ends_with(".stl")) continue;  // triangles and nothing else
    EXPECT_THAT(file.bytes, testing::AnyOf(HasSubstr("bench.legs"), HasSubstr("1 findings fail"))) << file.path;
  }
}

}  // namespace
}  // namespace visewright::tests
