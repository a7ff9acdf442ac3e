#include "fitup/removal.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>

#include "fitup/nearness.h"
#include "fitup/rules.h"

namespace visewright::fitup {
namespace {

using assembly::Group;
using geometry::dot;

bool runs_along(const Drum& d, const Vector& way) {
  const auto parallel = [&](const Vector& v) { return std::abs(std::abs(dot(v, way)) - 1) < 1e-12; };
  return parallel(d.frame.z_axis) || (d.block && (parallel(d.frame.x_axis) || parallel(d.frame.y_axis())));
}

/// An element drawn out along a way. That it stands clear where it is, is known: when all of it runs along the way, each
/// slab passes only what lies beyond it. Hollows across the way are passed over: what fills them would be
/// run through.
class Drawn {
 public:
  Drawn(const Element& e, const Vector& way, double by_mm)
      : element_(e), way_(way), by_mm_(by_mm),
        beyond_only_(runs_along(e.added, way) && std::all_of(e.removed.begin(), e.removed.end(), [&](const Drum& r) { return runs_along(r, way); })) {
    box_ = e.box;
    for (std::size_t i = 0; i < 3; ++i) (way[i] > 0 ? box_.high[i] : box_.low[i]) += by_mm * way[i];
  }

  const Box3& box() const { return box_; }
  const Stack& along_the_way() {
    if (!stack_) {
      stack_ = stack(element_, frame_along(way_));
      for (Slab& slab : stack_->slabs) {
        if (beyond_only_) slab.from = slab.to;
        slab.to += by_mm_;
      }
    }
    return *stack_;
  }
  /// What a whole drum passes, to be looked at along other axes.
  std::optional<Element> passed() const {
    const double along = dot(element_.added.frame.z_axis, way_);
    if (!beyond_only_ || !element_.removed.empty() || std::abs(along) < 0.5) return std::nullopt;
    Element result{element_.added, {}, box_};
    Drum& d = result.added;
    if (along > 0) d.from_mm = d.to_mm, d.to_mm += by_mm_;
    else d.to_mm = d.from_mm, d.from_mm -= by_mm_;
    return result;
  }

 private:
  const Element& element_;
  Vector way_;
  double by_mm_;
  bool beyond_only_;
  Box3 box_;
  std::optional<Stack> stack_;
};

std::vector<Drawn> drawn(const std::vector<const Stand*>& stands, const Vector& way, double by_mm) {
  std::vector<Drawn> all;
  for (const Stand* s : stands)
    for (const Element& e : s->still) all.emplace_back(e, way, by_mm);
  return all;
}

class Apart {
  using Index = std::uint32_t;

 public:
  Apart(const assembly::Assembly& assembly, const std::vector<Stand>& all) : assembly_(assembly) {
    of_.resize(assembly.placed.size());
    boxes_.resize(assembly.placed.size());
    for (const Stand& s : all) {
      if (s.grip_out) continue;
      of_[s.placed].push_back(&s);
      boxes_[s.placed].include(s.still_box);
      if (assembly.placed[s.placed].group != Group::fixed) moving_.include(s.still_box);
    }
    partners_.resize(assembly.placed.size());
    held_by_.resize(assembly.placed.size());
    for (const auto& pair : assembly.declared) {
      partners_[pair.a].push_back(pair.b);
      partners_[pair.b].push_back(pair.a);
      if (holds(pair)) {
        held_by_[pair.a].push_back(pair.b);
        held_by_[pair.b].push_back(pair.a);
      }
      if (std::holds_alternative<assembly::Meshing>(pair.fit)) meshing_.insert({std::min(pair.a, pair.b), std::max(pair.a, pair.b)});
    }
  }

  Removal run() {
    std::vector<Index> waiting;
    for (Index p = 0; p < of_.size(); ++p) {
      here_.insert(p);
      if (!existing(p)) waiting.push_back(p);
    }
    std::stable_sort(waiting.begin(), waiting.end(), [&](Index a, Index b) { return boxes_[a].low[1] < boxes_[b].low[1]; });
    Removal result;
    const auto take_off = [&](const std::vector<Index>& unit, const Vector& way) {
      for (const Index p : unit) {
        result.order.push_back({p, way});
        here_.erase(p);
        waiting.erase(std::find(waiting.begin(), waiting.end(), p));
      }
    };
    for (bool more = true; more;) {
      more = false;
      for (const bool as_unit : {false, true}) {
        const std::vector<Index> asked = waiting;
        for (const Index p : asked) {
          if (more && as_unit) break;  // single parts first, whenever one has become free
          if (!here_.contains(p)) continue;
          const std::vector<Index> unit = as_unit ? unit_of(p) : std::vector<Index>{p};
          if (as_unit && unit.size() == 1) continue;
          if (const auto way = way_out(unit)) {
            take_off(unit, *way);
            more = true;
          }
        }
      }
    }
    std::sort(waiting.begin(), waiting.end());
    for (const Index p : waiting) result.shut_by[p] = shut_by_[{p}];
    result.stuck = std::move(waiting);
    return result;
  }

 private:
  /// Whether a pair can leave as one: neither stands already nor moves against the other, and they hold each other.
  bool holds(const assembly::Pair& pair) const {
    const auto& fit = pair.fit;
    const bool fixed = assembly_.placed[pair.a].group == Group::fixed;
    const bool joined = std::holds_alternative<assembly::Press>(fit) || std::holds_alternative<assembly::Threaded>(fit) ||
                        std::holds_alternative<assembly::Bonded>(fit) || (fixed && std::holds_alternative<assembly::Touching>(fit));
    return joined && !existing(pair.a) && !existing(pair.b) && motion(assembly_.placed[pair.a], assembly_.placed[pair.b]) == Motion::none;
  }

  bool existing(Index p) const { return assembly_.parts[assembly_.placed[p].part]->making == parts::Making::existing; }

  /// A part with all that is pressed, pinned, screwed or glued to it, and to those, of what is still here.
  std::vector<Index> unit_of(Index first) const {
    std::vector<Index> unit{first};
    for (std::size_t i = 0; i < unit.size(); ++i)
      for (const Index other : held_by_[unit[i]])
        if (here_.contains(other) && std::find(unit.begin(), unit.end(), other) == unit.end()) unit.push_back(other);
    return unit;
  }

  std::optional<Vector> way_out(const std::vector<Index>& unit) {
    std::vector<Vector> ways{{0, -1, 0}, {0, 1, 0}};
    const auto add = [&](const Vector& v) {
      for (const double side : {1.0, -1.0}) {
        const Vector way = geometry::times(side, v);
        if (std::none_of(ways.begin(), ways.end(), [&](const Vector& known) { return dot(known, way) > 1 - 1e-12; })) ways.push_back(way);
      }
    };
    add(of_[unit.front()].front()->at.z_axis);
    add(Vector{0, 0, 1});
    auto& shut = shut_by_[unit];
    shut.resize(ways.size(), nobody);
    for (std::size_t i = 0; i < ways.size(); ++i) {
      // What stood in the way and still stands there is not tried again.
      if (shut[i] != nobody && here_.contains(shut[i])) continue;
      shut[i] = in_the_way(unit, ways[i]);
      if (shut[i] == nobody) return ways[i];
    }
    return std::nullopt;
  }

  /// How far parts must go until they have left what holds them.
  double leaves(const std::vector<Index>& unit, const Vector& way) const {
    Box3 own, held;
    for (const Index p : unit) {
      own.include(boxes_[p]);
      held.include(boxes_[p]);
      if (assembly_.placed[p].group != Group::fixed && std::abs(way[1]) > 0.5) held.include(moving_);
      else for (const Index other : partners_[p])
        if (!existing(other)) held.include(boxes_[other]);
    }
    const auto end = [&](const Box3& b, bool far) {
      double sum = 0;
      for (std::size_t i = 0; i < 3; ++i) sum += far == (way[i] > 0) ? way[i] * b.high[i] : way[i] * b.low[i];
      return sum;
    };
    return end(held, true) - end(own, false);
  }

  static constexpr Index nobody = 0xffffffff;

  /// The first part that stands in the way, or nobody.
  Index in_the_way(const std::vector<Index>& unit, const Vector& way) const {
    const double by = leaves(unit, way);
    for (const Index p : unit)
      if (const Index found = in_the_way(p, unit, way, by); found != nobody) return found;
    return nobody;
  }

  Index in_the_way(Index p, const std::vector<Index>& unit, const Vector& way, double by) const {
    Box3 passed = boxes_[p];
    for (std::size_t i = 0; i < 3; ++i) (way[i] > 0 ? passed.high[i] : passed.low[i]) += by * way[i];
    const bool out = std::abs(std::abs(way[1]) - 1) < 1e-12;
    std::vector<Drawn> still;
    for (const Index other : here_) {
      if (gap_mm(passed, boxes_[other]) > 0 || std::find(unit.begin(), unit.end(), other) != unit.end()) continue;
      // Teeth run the way out: gears that mesh slide past each other.
      if (out && meshing_.contains({std::min(p, other), std::max(p, other)})) continue;
      if (out) {
        if (shut_outwards(p, other, {std::min(0.0, -way[1] * by), std::max(0.0, -way[1] * by)})) return other;
        continue;
      }
      if (still.empty()) still = drawn(of_[p], way, by);
      if (shut(still, other, way)) return other;
    }
    return nobody;
  }

  bool turns(Index p) const { return assembly_.placed[p].group == Group::turning; }

  /// Along the way out the stacks are at hand and slide. What turns is drawn out as what it passes through in a turn, if
  /// that clears; as it stands only past what turns with it.
  bool shut_outwards(Index p, Index other, Slide slide) const {
    const bool as_it_stands = motion(assembly_.placed[p], assembly_.placed[other]) == Motion::none;
    if (turns(p) && !shut_outwards(p, other, slide, true)) return false;
    return !turns(p) || as_it_stands ? shut_outwards(p, other, slide, false) : true;
  }
  bool shut_outwards(Index p, Index other, Slide slide, bool turned) const {
    for (const Stand* mine : of_[p]) {
      const auto& elements = turned ? mine->turned : mine->still;
      const auto& stacks = turned ? mine->turned_out : mine->still_out;
      for (std::size_t i = 0; i < elements.size(); ++i) {
        Box3 passed = elements[i].box;
        passed.low[1] -= slide.to;
        passed.high[1] -= slide.from;
        for (const Stand* its : of_[other])
          for (std::size_t k = 0; k < its->still.size(); ++k)
            if (gap_mm(passed, its->still[k].box) <= 0 && approach(stacks[i], its->still_out[k], slide, contact_mm).overlap) return true;
      }
    }
    return false;
  }

  bool shut(std::vector<Drawn>& moving, Index other, const Vector& way) const {
    for (Drawn& moves : moving)
      for (const Stand* s : of_[other])
        for (const Element& stands : s->still) {
          if (gap_mm(moves.box(), stands.box) > 0) continue;
          if (!approach(moves.along_the_way(), stack(stands, frame_along(way)), {}, contact_mm).overlap) continue;
          const auto passed = moves.passed();
          if (!passed || between(*passed, stands, contact_mm).overlap) return true;
        }
    return false;
  }

  const assembly::Assembly& assembly_;
  std::vector<std::vector<const Stand*>> of_;
  std::vector<Box3> boxes_;
  Box3 moving_;
  std::vector<std::vector<Index>> partners_, held_by_;
  std::set<std::pair<Index, Index>> meshing_;
  std::set<Index> here_;
  std::map<std::vector<Index>, std::vector<Index>> shut_by_;  // for each unit and way: who stood in it
};

}  // namespace

Removal taken_apart(const assembly::Assembly& assembly, const std::vector<Stand>& all) { return Apart(assembly, all).run(); }

std::vector<reasons::Finding> removal_findings(const assembly::Assembly& assembly, const std::vector<Stand>& all) {
  const Removal removal = taken_apart(assembly, all);
  std::vector<std::string> names;
  for (const std::uint32_t p : removal.stuck) names.push_back(assembly.placed[p].name);
  const auto count = static_cast<double>(names.size());
  reasons::Finding f = reasons::judged(rules::removal, count, 0, reasons::Unit::count, reasons::Better::smaller,
                                       reasons::Verdict::fail, std::move(names), reasons::Where{0, false, std::nullopt});
  f.certified = true;
  return {std::move(f)};
}

}  // namespace visewright::fitup
