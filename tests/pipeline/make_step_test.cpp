// One preset made whole, its model file read back by a reader that shares no line with the kernel.
#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <set>
#include <stdexcept>

#include "base/watcher.h"
#include "parts/part.h"
#include "pipeline/front_door.h"
#include "pipeline/presets.h"
#include "pipeline/study.h"
#include "readers/step_bodies.h"
#include "readers/step_curves.h"
#include "readers/step_products.h"
#include "readers/step_surfaces.h"
#include "support/scratch_folder.h"
#include "units/quantity.h"

namespace visewright::pipeline {
namespace {

namespace fs = std::filesystem;
using readers::StepFile;
using testing::IsEmpty;
using units::pi;

/// A design worked through into a folder of its own.
class Made {
 public:
  explicit Made(const std::string& design) {
    support::write_file(scratch_ / "design.toml", design);
    base::Silence silence;
    MakeJob job;
    job.design = (scratch_ / "design.toml").string();
    job.folder = folder().string();
    answer = make(job, silence);
  }
  [[nodiscard]] fs::path folder() const { return scratch_ / "vise"; }
  [[nodiscard]] std::string design() const { return (scratch_ / "design.toml").string(); }
  [[nodiscard]] StepFile step() const { return readers::read_step(support::read_file(folder() / "assembly.step")); }

  base::Result<Answer> answer = Answer{};

 private:
  support::ScratchFolder scratch_;
};

std::string bench() { return std::string(preset_named("small-instrument-bench").value().text); }

std::string bench_with_one_dog_left() {
  std::string text = bench();
  const std::string before = "dog_holes = { diameter = 12, depth = 45 }";
  const auto at = text.find(before);
  if (at == std::string::npos) throw std::runtime_error("the preset's dog holes are written otherwise");
  return text.replace(at, before.size(), "dog_holes = { diameter = 12, depth = 45, positions = [-40] }");
}

/// Made once a process, by whichever test comes first.
const Made& made() {
  static const Made once(bench());
  return once;
}

const readers::Product& product(const readers::Products& all, std::string_view name) {
  const auto found =
      std::find_if(all.products.begin(), all.products.end(), [&](const auto& p) { return p.name == name; });
  if (found == all.products.end()) throw std::runtime_error("no product " + std::string(name));
  return *found;
}

TEST(MakeStepSlow, WritesEveryFileTheSameTwice) {
  ASSERT_TRUE(made().answer);
  EXPECT_EQ(made().answer->exit, 0) << made().answer->out;
  const Made again(bench());
  const auto first = support::everything_below(made().folder()), second = support::everything_below(again.folder());
  ASSERT_EQ(first.size(), second.size());
  std::set<std::string> files;
  for (const auto& [path, bytes] : first) {
    EXPECT_TRUE(second.at(path) == bytes) << path;
    if (bytes != "(folder)" && path != "manifest.json") files.insert(path);
  }
  std::set<std::string> listed;
  const auto manifest = nlohmann::json::parse(first.at("manifest.json"));
  for (const auto& entry : manifest.at("files")) listed.insert(entry.at("path").get<std::string>());
  EXPECT_EQ(listed, files);
  EXPECT_TRUE(files.count("assembly.step"));
  base::Silence silence;
  const auto verified = verify({made().folder().string(), false}, silence);
  ASSERT_TRUE(verified);
  EXPECT_EQ(verified->exit, 0) << verified->out;
}

TEST(MakeStepSlow, HasOneSoundTreeInMillimetres) {
  ASSERT_TRUE(made().answer);
  const StepFile file = made().step();
  EXPECT_THAT(file.problems, IsEmpty());  // every reference among them
  ASSERT_EQ(file.header.size(), 3u);      // ISO 10303-21 asks for these three, in this order
  EXPECT_EQ(file.header[0].name, "FILE_DESCRIPTION");
  EXPECT_EQ(file.header[1].name, "FILE_NAME");
  EXPECT_EQ(file.header[2].name, "FILE_SCHEMA");
  EXPECT_EQ(file.schema().rfind("AUTOMOTIVE_DESIGN", 0), 0u);

  // Contexts may be written once a shape; all must name the same unit of length, a millimetre.
  std::set<std::string> lengths;
  for (const readers::Instance* context : file.all("GLOBAL_UNIT_ASSIGNED_CONTEXT")) {
    for (const readers::Value& value : readers::parameter(context->find("GLOBAL_UNIT_ASSIGNED_CONTEXT"), 0).items) {
      const readers::Instance* unit = file.at(value);
      ASSERT_NE(unit, nullptr);
      if (!unit->is("LENGTH_UNIT")) continue;  // densities have a centimetre of their own, outside the contexts
      const readers::Record* si = unit->find("SI_UNIT");
      ASSERT_NE(si, nullptr);
      for (const readers::Value& word : si->values)
        if (word.kind == readers::Value::Kind::enumeration) lengths.insert(word.text);
    }
  }
  EXPECT_EQ(lengths, (std::set<std::string>{"MILLI", "METRE"}));

  const readers::Products found = readers::read_products(file);
  EXPECT_THAT(found.problems, IsEmpty());
  base::Silence silence;
  const auto study = sized(made().design(), silence);
  ASSERT_TRUE(study);
  const assembly::Assembly& vise = (*study)->assembly;
  std::set<std::uint32_t> placed;
  for (const auto& one : vise.placed) placed.insert(one.part);
  std::size_t expected = 3 + vise.placed.size();  // fixed, moving and turning come first
  for (const std::uint32_t part : placed) {
    const std::size_t bodies = parts::bodies(*vise.parts[part]).size();
    if (bodies > 1) expected += bodies;
  }
  EXPECT_EQ(file.all("NEXT_ASSEMBLY_USAGE_OCCURRENCE").size(), expected);
  EXPECT_EQ(found.uses.size(), expected);

  const std::size_t root = found.by_id("vise").value(), turning = found.by_id("turning").value();
  EXPECT_EQ(found.roots(), std::vector{root});
  std::vector<std::string> below_root, over_turning;
  for (const readers::Use& use : found.uses) {
    if (use.parent == root) below_root.push_back(found.products[use.child].id);
    if (use.child == turning) over_turning.push_back(found.products[use.parent].id);
  }
  EXPECT_EQ(below_root, (std::vector<std::string>{"fixed", "moving"}));
  EXPECT_EQ(over_turning, std::vector<std::string>{"moving"});
}

/// The instances that a solid is made of.
std::set<std::uint64_t> below(const StepFile& file, std::uint64_t from) {
  std::set<std::uint64_t> seen;
  std::vector<std::uint64_t> next{from};
  const auto follow = [&](const auto& self, const readers::Value& value) -> void {
    if (value.kind == readers::Value::Kind::reference) next.push_back(value.reference);
    for (const readers::Value& item : value.items) self(self, item);
  };
  while (!next.empty()) {
    const std::uint64_t id = next.back();
    next.pop_back();
    if (!seen.insert(id).second) continue;
    for (const readers::Record& record : file.at(id)->records)
      for (const readers::Value& value : record.values) follow(follow, value);
  }
  return seen;
}

double ring_mm3(double outside, double bore, double length) {
  return pi / 4 * (outside * outside - bore * bore) * length;
}

TEST(MakeStepSlow, HoldsClosedSolidsOfTheRightSize) {
  ASSERT_TRUE(made().answer);
  const StepFile file = made().step();
  const readers::Products found = readers::read_products(file);
  std::map<std::uint64_t, readers::Body> bodies;
  for (readers::Body& body : readers::read_bodies(file)) {
    // Each edge twice in opposite senses, each loop closed, each corner and edge on its surfaces.
    // Where eased pockets run into each other the edges are hyperbolas, which the reader cannot follow.
    bool hyperbolas = false;
    for (const std::uint64_t id : below(file, body.id)) hyperbolas = hyperbolas || file.at(id)->is("HYPERBOLA");
    if (hyperbolas) {
      EXPECT_EQ(body.id, product(found, "gear layer").solids.at(0));
    } else {
      EXPECT_THAT(body.problems, IsEmpty()) << body.id;
    }
    if (body.volume_mm3 && !hyperbolas) {
      EXPECT_GT(*body.volume_mm3, 0) << body.id;
      EXPECT_LT(body.spread_mm3, 1e-6 * *body.volume_mm3 + 1e-3) << body.id;
    }
    const std::uint64_t id = body.id;
    bodies.emplace(id, std::move(body));
  }
  std::size_t held = 0;
  for (const auto& one : found.products) held += one.solids.size();
  EXPECT_EQ(bodies.size(), held);

  const auto volume = [&](std::string_view name) {
    const readers::Product& one = product(found, name);
    EXPECT_EQ(one.solids.size(), 1u) << name;
    return bodies.at(one.solids.at(0)).volume_mm3.value();
  };
  // The large washer for M16 is 50 by 17 by 3 (ISO 7093-1, as the catalogue carries it).
  EXPECT_NEAR(volume("thrust washer"), ring_mm3(50, 17, 3), 1e-6);
  // Bushes run on the rod with 0.15 of play. The rear one is as long as the 30 jaw; the front one as the 30 backing
  // less the washer's recess of 3.
  EXPECT_NEAR(volume("rear bush"), ring_mm3(22, 16.15, 30), 1e-6);
  EXPECT_NEAR(volume("front bush"), ring_mm3(22, 16.15, 27), 1e-6);
  // The axle of 8 carries a bearing of 7 in the middle of the gear; the spacer before it slides on with 0.2 of play and
  // reaches from the joint at 33 over the gap of 1.5 to the bearing's seat in the gear, 6.5 deep.
  EXPECT_NEAR(volume("spacer, rear"), ring_mm3(12.2, 8.2, 8), 1e-6);
  // 20 in the wood and 28.7 before it, with a blind core hole of 4 by 12, flat at its end.
  EXPECT_NEAR(volume("axle"), pi / 4 * (64 * 48.7 - 16 * 12), 1e-6);
}

/// Distance of a point from the flank of a tooth that stands on +x, after turning the point's tooth there: along the
/// tangent of the base circle it is the base radius times the lag in angle. `half_rad` is half the tooth's angle at
/// the base circle.
double off_flank_mm(double x, double y, double base_mm, double half_rad, int teeth) {
  const double pitch = 2 * pi / teeth;
  const double angle = std::atan2(y, x), from_centre = std::abs(angle - pitch * std::round(angle / pitch));
  const double t = std::sqrt(std::max(0.0, (x * x + y * y) / (base_mm * base_mm) - 1));
  return base_mm * std::abs(half_rad - (t - std::atan(t)) - from_centre);
}

// 40 teeth of module 2 at 20°: the base radius is 40·cos 20°, and an unshifted tooth, thinned by half the backlash,
// is π − backlash/2 thick on the pitch circle.
TEST(MakeStepSlow, KeepsInvolutesWithinAMicrometre) {
  ASSERT_TRUE(made().answer);
  constexpr int teeth = 40;
  const double alpha = 20 * pi / 180, base_mm = 40 * std::cos(alpha), thick = pi - 0.35 / 2;
  const double half = thick / 80 + std::tan(alpha) - alpha;
  const StepFile file = made().step();
  const readers::Products found = readers::read_products(file);
  const std::set<std::uint64_t> inside = below(file, product(found, "idler gear").solids.at(0));
  int right = 0, left = 0;
  double worst = 0;
  for (const readers::Instance* edge : file.all("EDGE_CURVE")) {
    if (!inside.count(edge->id)) continue;
    const auto curve = readers::curve_of(file, file.step(edge, "EDGE_CURVE", 3));
    ASSERT_TRUE(curve.has_value());
    if (curve->kind != readers::Curve::Kind::spline) continue;
    const auto a = curve->at(curve->spline.first()).point, b = curve->at(curve->spline.last()).point;
    // The trochoids of the roots end far below the tips.
    if (std::max(std::hypot(a[0], a[1]), std::hypot(b[0], b[1])) < 41) continue;
    std::vector<double> knots = curve->spline.knots;
    knots.erase(std::unique(knots.begin(), knots.end()), knots.end());
    for (std::size_t k = 0; k + 1 < knots.size(); ++k)
      for (int i = 1; i < 10; ++i) {
        const auto p = curve->at(knots[k] + i * (knots[k + 1] - knots[k]) / 10).point;
        worst = std::max(worst, off_flank_mm(p[0], p[1], base_mm, half, teeth));
      }
    const double angle = std::atan2(a[1] + b[1], a[0] + b[0]);
    (angle > 2 * pi / teeth * std::round(angle / (2 * pi / teeth)) ? left : right)++;
  }
  EXPECT_LT(worst, 1e-3);
  EXPECT_EQ(right, 3 * teeth);  // at the front face, the rear face, and between the two layers of the print
  EXPECT_EQ(left, 3 * teeth);
}

/// X of each upright cylinder of radius 6 in the front jaw, through the placements of the file.
std::vector<double> dogs_x(const StepFile& file) {
  const readers::Products found = readers::read_products(file);
  std::set<long> places;  // in micrometres: a hole may be two half cylinders
  for (std::size_t i = 0; i < found.products.size(); ++i) {
    const readers::Product& one = found.products[i];
    if (one.name != "front jaw backing") continue;
    for (const std::uint64_t solid : one.solids)
      for (const std::uint64_t id : below(file, solid)) {
        const readers::Instance* instance = file.at(id);
        if (!instance->is("CYLINDRICAL_SURFACE")) continue;
        const auto surface = readers::surface_of(file, instance);
        if (!surface || std::abs(surface->radius - 6) > 1e-9) continue;
        for (const readers::Frame& where : found.everywhere(i)) {
          const readers::Frame seen = readers::combined(where, surface->frame);
          if (std::abs(std::abs(seen.z[2]) - 1) < 1e-9) places.insert(std::lround(seen.origin[0] * 1000));
        }
      }
  }
  std::vector<double> all;
  for (const long place : places) all.push_back(static_cast<double>(place) / 1000);
  return all;
}

// A hole that the person wants at the left is at the left in the model and in the picture: nothing is mirrored.
TEST(MakeStepSlow, PutsTheLeftDogHoleLeft) {
  ASSERT_TRUE(made().answer);
  const Made lopsided(bench_with_one_dog_left());
  ASSERT_TRUE(lopsided.answer);
  EXPECT_EQ(dogs_x(lopsided.step()), std::vector{-40.0});
  const std::vector<double> usual = dogs_x(made().step());
  ASSERT_GE(usual.size(), 2u);
  EXPECT_NEAR(usual.front() + usual.back(), 0, 1e-6);
  EXPECT_NE(support::read_file(lopsided.folder() / "picture.svg"), support::read_file(made().folder() / "picture.svg"));
}

}  // namespace
}  // namespace visewright::pipeline
