#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "outputs/data/notice.h"
#include "outputs/facets/gltf.h"
#include "outputs/handoff/pack.h"
#include "outputs/handoff/printing.h"
#include "solids/solid_set.h"

namespace visewright::outputs::handoff {
namespace {

using facets::Gltf;
using facets::GltfPlace;
using geometry::Vector;

/// For looking at: about as fine as a screen shows.
constexpr double view_deflection_mm = 0.1, printed_error_mm = 0.03;
/// The most that anything turns from key to key. Above half a turn the shorter way round is the wrong one.
constexpr double key_turn_rad = units::pi / 2;
/// Time from shut to open, s.
constexpr double opening_time_s = 20;

std::array<double, 4> quaternion(const geometry::Placement& at) {
  const Vector x = at.x_axis, y = at.y_axis(), z = at.z_axis;
  // The largest of the four is worked out first; the others follow without loss.
  const std::array<double, 4> squares{1 + x[0] - y[1] - z[2], 1 - x[0] + y[1] - z[2], 1 - x[0] - y[1] + z[2], 1 + x[0] + y[1] + z[2]};
  const auto largest = static_cast<std::size_t>(std::max_element(squares.begin(), squares.end()) - squares.begin());
  const double s = 2 * std::sqrt(squares[largest]);
  switch (largest) {
    case 0: return {s / 4, (x[1] + y[0]) / s, (z[0] + x[2]) / s, (y[2] - z[1]) / s};
    case 1: return {(x[1] + y[0]) / s, s / 4, (y[2] + z[1]) / s, (z[0] - x[2]) / s};
    case 2: return {(z[0] + x[2]) / s, (y[2] + z[1]) / s, s / 4, (x[1] - y[0]) / s};
    default: return {(y[2] - z[1]) / s, (z[0] - x[2]) / s, (x[1] - y[0]) / s, s / 4};
  }
}

std::array<double, 3> metres(const Vector& mm) { return {mm[0] / 1000, mm[1] / 1000, mm[2] / 1000}; }

facets::GltfMaterial look(const standards::MaterialRow& row) {
  facets::GltfMaterial made{row.name, {row.red, row.green, row.blue}, 0, 0.8, 1};
  if (row.kind == standards::MaterialKind::metal) made.metallic = 1, made.roughness = 0.4;
  if (row.kind == standards::MaterialKind::plastic) made.roughness = 0.45;
  const bool clear = row.name == "acrylic" || row.name == "polycarbonate";
  if (clear) made.opacity = 0.4;
  return made;
}

/// The skin of a printed part from its own outlines, which is quicker than the kernel's and has fewer facets; nothing
/// for other parts, and for prints that do not stand on the level of their frame.
std::optional<kernel::Facets> printed_skin(const parts::Part& part) {
  const auto* piece = std::get_if<parts::Piece>(&part.made);
  if (piece == nullptr) return std::nullopt;
  for (const parts::Operation& operation : piece->operations) {
    const auto* print = std::get_if<parts::Print>(&operation.work);
    if (print == nullptr || print->layers.empty() || print->layers.front().from_mm != 0) continue;
    const auto body = printed_body(*print, 0, 0, part.name, printed_error_mm);
    if (!body) continue;
    kernel::Facets facets{{}, body->skin.mesh.triangles};
    for (const Vector& p : body->skin.mesh.points)
      facets.points.push_back({static_cast<float>(p[0]), static_cast<float>(p[1]), static_cast<float>(p[2])});
    return facets;
  }
  return std::nullopt;
}

/// What turns about one axis at one rate.
struct Axis {
  std::size_t node = 0;
  Vector about_mm{};
  double rad_per_mm = 0;
};

class Scene {
 public:
  explicit Scene(const Facts& facts) : facts_(facts) {
    // The format's Y is up and its Z looks at the eye: a quarter turn about X.
    root_ = gltf_.add_node(std::string(facts.title), std::nullopt, {{0, 0, 0}, {-std::sqrt(0.5), 0, 0, std::sqrt(0.5)}});
    fixed_ = gltf_.add_node("fixed", root_, {});
    moving_ = gltf_.add_node("moving", root_, {shift(facts.pose.opening_mm), {0, 0, 0, 1}});
    meshes_.resize(facts.assembly.parts.size());
  }

  base::Result<std::string> file() {
    for (const assembly::Placed& placed : facts_.assembly.placed)
      if (auto done = place(placed); !done) return base::passed_on(std::move(done.error()));
    animate();
    const std::string notice = data::failing_notice(facts_.findings);
    if (!notice.empty()) gltf_.note("notice", notice);
    gltf_.note("for", std::string(data::planning_note));
    return gltf_.to_bytes("visewright " + std::string(facts_.program_version));
  }

 private:
  static std::array<double, 3> shift(double opening_mm) { return {0, -opening_mm / 1000, 0}; }
  /// Anticlockwise as the person sees it, so about the axis that points out of the bench.
  static std::array<double, 4> turn(double angle_rad) { return {0, -std::sin(angle_rad / 2), 0, std::cos(angle_rad / 2)}; }

  std::size_t material(const standards::MaterialRow& row) {
    const auto [at, is_new] = materials_.try_emplace(row.name, 0);
    if (is_new) at->second = gltf_.add_material(look(row));
    return at->second;
  }

  /// The bodies of a part, each a mesh of its own material.
  base::Result<void> prepare(std::uint32_t part) {
    if (!meshes_[part].empty()) return {};
    const auto bodies = facts_.solids->bodies(part);
    if (const auto own = printed_skin(*facts_.assembly.parts[part]); own && bodies.size() == 1) {
      meshes_[part].push_back(gltf_.add_mesh(*own, material(*bodies[0].material), bodies[0].name));
      return {};
    }
    for (const solids::BodySolid& body : bodies) {
      const auto skin = kernel::facets(body.solid, view_deflection_mm, body.name);
      if (!skin) return base::passed_on(skin.error());
      meshes_[part].push_back(gltf_.add_mesh(*skin, material(*body.material), body.name));
    }
    return {};
  }

  std::size_t axis_node(const assembly::Placed& placed) {
    for (const Axis& axis : axes_)
      if (axis.about_mm == placed.turn_about_mm && axis.rad_per_mm == placed.turn_rad_per_mm) return axis.node;
    const GltfPlace at{metres(placed.turn_about_mm), turn(placed.turn_rad_per_mm * facts_.pose.opening_mm)};
    axes_.push_back({gltf_.add_node("turns with " + placed.name, moving_, at), placed.turn_about_mm, placed.turn_rad_per_mm});
    return axes_.back().node;
  }

  base::Result<void> place(const assembly::Placed& placed) {
    if (auto done = prepare(placed.part); !done) return done;
    std::size_t parent = placed.group == assembly::Group::fixed ? fixed_ : moving_;
    geometry::Placement where = assembly::at(placed, {0, facts_.pose.grip_out});
    if (placed.group == assembly::Group::turning) {
      parent = axis_node(placed);
      where = geometry::shifted(where, geometry::times(-1, placed.turn_about_mm));
    }
    const GltfPlace at{metres(where.origin_mm), quaternion(where)};
    const std::vector<std::size_t>& bodies = meshes_[placed.part];
    if (bodies.size() == 1) {
      gltf_.add_node(placed.name, parent, at, bodies.front());
      return {};
    }
    const std::size_t whole = gltf_.add_node(placed.name, parent, at);
    for (std::size_t i = 0; i < bodies.size(); ++i)
      gltf_.add_node(facts_.solids->bodies(placed.part)[i].name, whole, {}, bodies[i]);
    return {};
  }

  void animate() {
    const double travel = facts_.assembly.opening_max_mm;
    double fastest = 0;
    for (const Axis& axis : axes_) fastest = std::max(fastest, std::abs(axis.rad_per_mm));
    const auto steps = static_cast<std::size_t>(std::max(1.0, std::ceil(fastest * travel / key_turn_rad - 1e-9)));
    std::vector<float> times;
    std::vector<facets::GltfMovement> movements{{moving_, false, {}}};
    for (const Axis& axis : axes_) movements.push_back({axis.node, true, {}});
    for (std::size_t k = 0; k <= steps; ++k) {
      const double share = static_cast<double>(k) / static_cast<double>(steps), opening = share * travel;
      times.push_back(static_cast<float>(share * opening_time_s));
      const auto [x, y, z] = shift(opening);
      movements[0].values.push_back({x, y, z, 0});
      for (std::size_t i = 0; i < axes_.size(); ++i) movements[i + 1].values.push_back(turn(axes_[i].rad_per_mm * opening));
    }
    gltf_.set_animation("opening", std::move(times), std::move(movements));
  }

  const Facts& facts_;
  Gltf gltf_;
  std::size_t root_ = 0, fixed_ = 0, moving_ = 0;
  std::map<std::string, std::size_t> materials_;
  std::vector<std::vector<std::size_t>> meshes_;
  std::vector<Axis> axes_;
};

}  // namespace

base::Result<Pack> viewer_pack(const Facts& facts, base::Watcher& watcher) {
  if (watcher.wants_stop()) return base::fault(base::Cause::interrupted, "handoff", "stopped before the model to look at was written", "start again");
  auto bytes = Scene(facts).file();
  if (!bytes) return base::passed_on(std::move(bytes.error()));
  Pack pack{"For whoever wants to look at it",
            "Open the file with any program or web page that shows glTF 2.0. It can be played: the jaw opens and screws and gears turn with it, at the ratio that the thread and the teeth give.",
            {}};
  pack.files.push_back({"handoff/viewer/assembly.glb", std::move(*bytes), "the whole vise to turn about and to play, metres, glTF 2.0", std::nullopt});
  return pack;
}

}  // namespace visewright::outputs::handoff
