#include "fitup/gaps.h"

#include <algorithm>
#include <functional>

#include "fitup/nearness.h"
#include "fitup/rules.h"

namespace visewright::fitup {
namespace {

using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;
using Choose = std::function<bool(const Stand&)>;

/// Named gaps are measured up to here; a larger one is told as this much, mm.
constexpr double farthest_mm = 500;
/// The part of a wheel beyond this share of its radius is its rim.
constexpr double rim_share = 0.8;

class Gaps {
 public:
  Gaps(const layout::Plan& plan, const assembly::Assembly& assembly, const std::vector<Stand>& all) : plan_(plan), assembly_(assembly), all_(all) {}

  std::vector<Finding> run() {
    const double general = plan_.gaps.moving_to_fixed.mm();
    between(rules::jaw_to_bench, any({"front jaw", "front lining"}), any({"bench top"}), general);
    const Choose screws = any({"lead screw, left", "lead screw, right"});
    for (const auto& obstacle : plan_.bench.obstacles) between(rules::screw_to_obstacle, screws, any({obstacle.name}), general);
    between(rules::stop_to_apron, any({"end-stop pin, left", "end-stop pin, right"}), any({"apron", "apron doubler"}), general);
    rim_to_cover();
    const auto wheel = [&](const char* side) { return any({std::string("hand wheel, ") + side, std::string("grip, ") + side}); };
    between(rules::rim_to_rim, wheel("left"), wheel("right"), plan_.gaps.rim_to_rim.mm());
    wheel_to_bench_top();
    const Choose gears = [&](const Stand& s) { return name(s).starts_with("gear "); };
    between(rules::cover_to_gears, any({"cover"}), gears, 0, true);
    between(rules::gear_to_wood, gears, [&](const Stand& s) { return s.name == "gear layer"; }, plan_.train.gear_to_wood.mm());
    return std::move(found_);
  }

 private:
  const std::string& name(const Stand& s) const { return assembly_.placed[s.placed].name; }
  Choose any(std::vector<std::string> names) const {
    return [this, names = std::move(names)](const Stand& s) { return std::find(names.begin(), names.end(), name(s)) != names.end(); };
  }

  /// `must_clear`: touching is a failure too.
  void between(const reasons::Rule& rule, const Choose& one, const Choose& two, double limit_mm, bool must_clear = false) {
    std::vector<const Stand*> first, second;
    for (const Stand& s : all_) {
      if (one(s)) first.push_back(&s);
      if (two(s)) second.push_back(&s);
    }
    report(rule, first, second, limit_mm, must_clear);
  }

  void report(const reasons::Rule& rule, const std::vector<const Stand*>& first, const std::vector<const Stand*>& second, double limit_mm, bool must_clear = false) {
    if (first.empty() || second.empty()) return;
    Nearness least{farthest_mm, false, false, 0, {}, {}, false};
    const Stand *a = first.front(), *b = second.front();
    for (const Stand* p : first) {
      for (const Stand* q : second) {
        const auto& placed = assembly_.placed[p->placed];
        const Nearness n = nearness(*p, *q, motion(placed, assembly_.placed[q->placed]), {0, assembly_.opening_max_mm},
                                    placed.group == assembly::Group::fixed, least.distance + contact_mm);
        if (!(n.overlap && !least.overlap) && n.distance >= least.distance) continue;
        least = n;
        least.grip_out = p->grip_out || q->grip_out;
        a = p;
        b = q;
      }
    }
    const bool touches = must_clear && least.distance <= skin_mm;
    Finding f = judged(rule, least.overlap || touches ? -skin_mm : least.distance, limit_mm, Unit::mm, Better::larger, Verdict::fail, {name(*a), name(*b)},
                       reasons::Where{least.opening_mm, least.grip_out, least.distance < farthest_mm ? std::optional(least.a) : std::nullopt});
    if (least.overlap || touches) f.measured = 0;
    f.certified = !least.overlap;
    found_.push_back(std::move(f));
  }

  /// Hub and web stand nearer to the cover by intent: the rim alone, with the grip.
  void rim_to_cover() {
    const Choose wheels = [&](const Stand& s) { return name(s).starts_with("hand wheel") || name(s).starts_with("grip, "); };
    std::vector<Stand> rims;
    for (const Stand& s : all_) {
      if (!wheels(s)) continue;
      Stand rim = s;
      if (name(s).starts_with("hand wheel")) keep_rim(rim);
      rims.push_back(std::move(rim));
    }
    std::vector<const Stand*> first, second;
    for (const Stand& s : rims) first.push_back(&s);
    for (const Stand& s : all_)
      if (name(s) == "cover") second.push_back(&s);
    report(rules::rim_to_cover, first, second, plan_.gaps.rim_to_cover.mm());
  }

  void keep_rim(Stand& s) const {
    const double far = plan_.wheel.diameter.mm() / 2 * rim_share;
    std::vector<Element> turned;
    std::vector<Stack> stacks;
    for (std::size_t i = 0; i < s.turned.size(); ++i) {
      const double middle = (s.turned[i].box.low[0] + s.turned[i].box.high[0]) / 2;
      if (s.turned[i].box.high[0] - middle < far) continue;
      turned.push_back(s.turned[i]);
      stacks.push_back(s.turned_out[i]);
    }
    s.turned = std::move(turned);
    s.turned_out = std::move(stacks);
  }

  void wheel_to_bench_top() {
    const Stand *highest = nullptr, *top = nullptr;
    for (const Stand& s : all_) {
      if (name(s) == "bench top") top = &s;
      if (!name(s).starts_with("hand wheel") && !name(s).starts_with("grip, ")) continue;
      if (!highest || s.turned_box.high[2] > highest->turned_box.high[2]) highest = &s;
    }
    if (!highest || !top) return;
    Finding f = judged(rules::wheel_to_bench_top, top->still_box.high[2] - highest->turned_box.high[2], 0, Unit::mm, Better::larger, Verdict::fail,
                       {name(*highest), name(*top)}, reasons::Where{0, highest->grip_out, std::nullopt});
    f.certified = true;
    found_.push_back(std::move(f));
  }

  const layout::Plan& plan_;
  const assembly::Assembly& assembly_;
  const std::vector<Stand>& all_;
  std::vector<Finding> found_;
};

}  // namespace

std::vector<Finding> named_gap_findings(const layout::Plan& plan, const assembly::Assembly& assembly, const std::vector<Stand>& all) {
  return Gaps(plan, assembly, all).run();
}

std::span<const reasons::Rule* const> named_gaps() {
  static constexpr const reasons::Rule* all[] = {&rules::jaw_to_bench, &rules::screw_to_obstacle, &rules::stop_to_apron,  &rules::rim_to_cover,
                                                 &rules::rim_to_rim,   &rules::wheel_to_bench_top, &rules::cover_to_gears, &rules::gear_to_wood};
  return all;
}

}  // namespace visewright::fitup
