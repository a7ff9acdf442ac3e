#include "fitup/walls.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

#include "fitup/nearness.h"
#include "fitup/rules.h"

namespace visewright::fitup {
namespace {

using geometry::dot;
using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

enum class Kind : std::uint8_t { pocket, relief, dog, screw, other };

/// What one operation takes out of the material.
struct Hollow {
  std::string name;
  Kind kind;
  double diameter = 0;  // of a hole, or the width of a slot
  Element element;
};
/// What lies beyond one face.
struct Outside {
  std::string name;
  Vector normal;
  Element element;
  bool sawn = false;
};

constexpr double far_mm = 4000;

std::string face_of(const Vector& n) {
  static constexpr std::string_view names[3][2] = {{"left", "right"}, {"bottom", "top"}, {"back", "front"}};
  for (std::size_t i = 0; i < 3; ++i)
    if (std::abs(n[i]) > 0.999) return std::string(names[i][n[i] > 0 ? 1 : 0]);
  return "bevel";
}

class Reader {
 public:
  explicit Reader(const layout::Plan& plan) : plan_(plan) {}

  void read(const parts::Part& part, const Placement& at) {
    if (const auto* piece = std::get_if<parts::Piece>(&part.made)) return read(*piece, at);
    const auto& built = std::get<parts::BuiltUp>(part.made);
    for (const parts::Member& member : built.members) read(*member.part, geometry::combined(at, member.at));
    std::vector<Drum> whole = blanks_;
    for (const parts::Operation& operation : built.after) read(operation, at, whole);
  }

  /// Faces: half spaces beyond each side of each blank, less all blanks; and what was sawn off.
  std::vector<Outside> outsides() const {
    std::vector<Outside> all = sawn_;
    for (const Drum& blank : blanks_) {
      if (!blank.block) continue;
      const Vector middle = geometry::to_outside(blank.frame, {(blank.flat.low.x + blank.flat.high.x) / 2, (blank.flat.low.y + blank.flat.high.y) / 2, (blank.from_mm + blank.to_mm) / 2});
      const Vector half{(blank.flat.high.x - blank.flat.low.x) / 2, (blank.flat.high.y - blank.flat.low.y) / 2, (blank.to_mm - blank.from_mm) / 2};
      const Vector axes[3]{blank.frame.x_axis, blank.frame.y_axis(), blank.frame.z_axis};
      for (std::size_t i = 0; i < 3; ++i)
        for (const double side : {-1.0, 1.0}) {
          const Vector normal = geometry::times(side, axes[i]);
          const std::size_t u = (i + 1) % 3, v = (i + 2) % 3;
          all.push_back({face_of(normal), normal, beyond({geometry::plus(middle, geometry::times(half[i], normal)), axes[u], normal}, half[u], half[v]), false});
        }
    }
    for (Outside& o : all) o.element.removed.insert(o.element.removed.end(), o.sawn ? fillers_.begin() : blanks_.begin(), o.sawn ? fillers_.end() : blanks_.end());
    return all;
  }

  const std::vector<Hollow>& hollows() const { return hollows_; }

 private:
  /// What lies straight before a face.
  static Element beyond(const Placement& plane, double half_x = far_mm, double half_y = far_mm) {
    Element e{drum(geometry::region(geometry::rectangle({-half_x, -half_y}, {half_x, half_y})), plane, 0, far_mm), {}, {}};
    e.box = box(e.added);
    return e;
  }

  void read(const parts::Piece& piece, const Placement& at) {
    std::vector<Drum> own;
    for (const parts::Shape& shape : parts::blank(piece.stock).added)
      for (Drum& d : outer_drums(parts::placed(shape, at))) own.push_back(std::move(d));
    const bool offcut = std::holds_alternative<parts::Offcut>(piece.stock);
    (offcut ? fillers_ : blanks_).insert((offcut ? fillers_ : blanks_).end(), own.begin(), own.end());
    for (const parts::Operation& operation : piece.operations) read(operation, at, own);
  }

  void read(const parts::Operation& operation, const Placement& at, const std::vector<Drum>& material) {
    if (const auto* saw = std::get_if<parts::SawFlat>(&operation.work)) {
      const Placement plane = geometry::combined(at, saw->plane);
      sawn_.push_back({face_of(plane.z_axis), plane.z_axis, beyond(plane), true});
      return;
    }
    const auto* hole = std::get_if<parts::Drill>(&operation.work);
    const bool cut = std::holds_alternative<parts::CutOut>(operation.work), routed = std::holds_alternative<parts::Rout>(operation.work);
    if (!hole && !cut && !routed) return;
    for (const parts::Shape& shape : parts::taken_away(operation, far_mm)) {
      for (Drum d : inner_drums(parts::placed(shape, at))) {
        // Only where there is material: tools stand proud of faces and run right through.
        double from = 1e300, to = -1e300;
        const double base = dot(d.frame.origin_mm, d.frame.z_axis);
        for (const Drum& m : material) {
          const Reach r = reach(m, d.frame.z_axis);
          from = std::min(from, r.from - base);
          to = std::max(to, r.to - base);
        }
        d.from_mm = std::max(d.from_mm, from);
        d.to_mm = std::min(d.to_mm, to);
        if (d.to_mm - d.from_mm <= contact_mm) continue;
        Element e{std::move(d), {}, {}};
        e.box = box(e.added);
        const double across = std::min(e.added.flat.high.x - e.added.flat.low.x, e.added.flat.high.y - e.added.flat.low.y);
        hollows_.push_back({operation.name, kind(operation, cut), hole ? hole->diameter_mm : across, std::move(e)});
      }
    }
  }

  Kind kind(const parts::Operation& operation, bool cut) const {
    if (operation.pattern == plan_.dogs.name) return Kind::dog;
    if (operation.pattern == plan_.cusps.name) return Kind::relief;
    if (operation.pattern == plan_.cover_edge.name || operation.name.starts_with("pilot")) return Kind::screw;
    const bool train = operation.pattern == plan_.screws.name || operation.pattern == plan_.axles.name;
    return cut && train && operation.name.starts_with("pocket") ? Kind::pocket : Kind::other;
  }

  const layout::Plan& plan_;
  std::vector<Drum> blanks_, fillers_;
  std::vector<Hollow> hollows_;
  std::vector<Outside> sawn_;
};

const reasons::Rule* rule_of(const Hollow& a, const Hollow& b) {
  if (a.kind == Kind::screw || b.kind == Kind::screw) return &rules::wall_screw;
  if (a.kind == Kind::dog || b.kind == Kind::dog) return &rules::wall_dog;
  return &rules::wall_other;
}
const reasons::Rule* rule_to_face(const Hollow& a) {
  switch (a.kind) {
    case Kind::pocket:
    case Kind::relief: return &rules::wall_pocket;
    case Kind::dog: return &rules::wall_dog_face;
    case Kind::screw: return &rules::wall_screw;
    case Kind::other: return &rules::wall_other;
  }
  return &rules::wall_other;
}

/// The screw's or the dog's hole of two.
double hole_of(const Hollow& a, const Hollow& b) {
  if (a.kind == Kind::screw && b.kind == Kind::screw) return std::max(a.diameter, b.diameter);
  for (const Kind kind : {Kind::screw, Kind::dog})
    for (const Hollow* h : {&a, &b})
      if (h->kind == kind) return h->diameter;
  return 0;
}

/// Hollows of two members that both open where these are joined: beside each other there is no wall, only the joint.
bool end_to_end(const Drum& a, const Drum& b) {
  const Reach one = reach(a, a.frame.z_axis), two = reach(b, a.frame.z_axis);
  return std::abs(std::max(one.from, two.from) - std::min(one.to, two.to)) <= skin_mm;
}

std::optional<Wall> wall(const Hollow& a, const Hollow& b, double within_mm) {
  if (gap_mm(a.element.box, b.element.box) >= within_mm) return std::nullopt;
  // Relief holes open into the pockets; what else they come near is near a pocket too, but for screws and dogs.
  const auto small = [](Kind k) { return k == Kind::screw || k == Kind::dog; };
  if ((a.kind == Kind::relief && !small(b.kind)) || (b.kind == Kind::relief && !small(a.kind))) return std::nullopt;
  const bool one_way = std::abs(dot(a.element.added.frame.z_axis, b.element.added.frame.z_axis)) > 0.5;
  if (one_way && end_to_end(a.element.added, b.element.added)) return std::nullopt;
  const Approach found = between(a.element, b.element, within_mm);
  if (found.distance >= within_mm || (one_way && found.distance <= skin_mm)) return std::nullopt;
  return Wall{rule_of(a, b), a.name, b.name, found.distance, hole_of(a, b), found.a};
}

std::optional<Wall> wall(const Hollow& a, const Outside& face, double within_mm) {
  // Where a hollow comes in or goes out there is no wall; a bevel is no way out of a pocket, but of a dog hole it may be.
  const double along = std::abs(dot(a.element.added.frame.z_axis, face.normal));
  if (face.sawn ? a.kind != Kind::pocket : along > 0.1) return std::nullopt;
  const Approach found = between(a.element, face.element, within_mm);
  if (found.distance >= within_mm) return std::nullopt;
  return Wall{rule_to_face(a), a.name, face.name, found.distance, hole_of(a, a), found.a};
}

/// Wood beside a screw, in diameters of its hole.
constexpr double beside_screw_diameters = 1.5;

/// A wall beside a dog hole that is thinner than the web, yet no thinner than half the hole, is no more than a caution.
Finding finding_of(const Wall& w, const std::string& part, double web_mm) {
  const bool screw = w.rule == &rules::wall_screw;
  const bool holds = screw ? w.left_mm > 0 : w.hole_mm > 0 && w.left_mm >= w.hole_mm / 2 - skin_mm;
  return judged(*w.rule, screw ? w.left_mm / w.hole_mm : w.left_mm, screw ? beside_screw_diameters : web_mm, screw ? Unit::one : Unit::mm, Better::larger,
                holds ? Verdict::caution : Verdict::fail, {part, w.first, w.second});
}

}  // namespace

std::vector<Wall> walls(const parts::Part& part, const layout::Plan& plan, double within_mm) {
  Reader reader(plan);
  reader.read(part, {});
  const auto& hollows = reader.hollows();
  std::vector<Wall> all;
  const auto keep = [&](std::optional<Wall> w) {
    if (w) all.push_back(std::move(*w));
  };
  const std::vector<Outside> faces = reader.outsides();
  for (std::size_t i = 0; i < hollows.size(); ++i) {
    for (std::size_t k = i + 1; k < hollows.size(); ++k) keep(wall(hollows[i], hollows[k], within_mm));
    for (const Outside& face : faces) keep(wall(hollows[i], face, within_mm));
  }
  std::stable_sort(all.begin(), all.end(), [](const Wall& a, const Wall& b) { return a.left_mm < b.left_mm; });
  // A hole through two members is two hollows with the same walls: the nearest of them is told.
  std::set<std::pair<std::string, std::string>> told;
  std::vector<Wall> result;
  for (Wall& w : all)
    if (told.insert({w.first, w.second}).second) result.push_back(std::move(w));
  return result;
}

std::vector<Finding> wall_findings(const layout::Plan& plan, const assembly::Assembly& assembly) {
  std::vector<Finding> result;
  const double web = plan.gaps.web.mm();
  std::vector<const parts::Part*> done;
  for (const auto& placed : assembly.placed) {
    const parts::Part& part = *assembly.parts[placed.part];
    if (part.name != "front jaw" && part.name != "rear jaw" && part.name != "cover") continue;
    if (std::find(done.begin(), done.end(), &part) != done.end()) continue;
    done.push_back(&part);
    std::vector<const reasons::Rule*> told;
    for (const Wall& w : walls(part, plan, 4 * web)) {
      Finding f = finding_of(w, placed.name, web);
      const bool first = std::find(told.begin(), told.end(), w.rule) == told.end();
      if (!first && f.verdict == Verdict::pass) continue;
      told.push_back(w.rule);
      result.push_back(std::move(f));
    }
  }
  return result;
}

}  // namespace visewright::fitup
