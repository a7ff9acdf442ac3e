#include "fitup/couple.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace visewright::fitup {
namespace {

using assembly::Group;

using Both = std::pair<std::uint32_t, std::uint32_t>;

/// The box of all the places that a stand passes on the whole travel, as the other sees it.
Box3 passed(const Stand& s, bool turning, double travel_mm) {
  Box3 box = turning && !s.turned.empty() ? s.turned_box : s.still_box;
  box.low[1] -= travel_mm;
  return box;
}

bool turns(Motion m) { return m == Motion::turn || m == Motion::turn_and_slide; }
bool slides(Motion m) { return m == Motion::slide || m == Motion::turn_and_slide; }

/// The gap that a pair must keep: its own, the general one between moving and fixed, or none.
double wanted_gap(const assembly::Assembly& assembly, const Couple& c) {
  if (c.fit) {
    const auto* clear = std::get_if<assembly::Clear>(&*c.fit);
    return clear ? clear->least_mm : 0;
  }
  return slides(c.motion) ? assembly.moving_to_fixed_mm : 0;
}

Couple couple_of(const assembly::Assembly& assembly, const std::map<Both, const assembly::Fit*>& fits, Both pair) {
  Couple c;
  c.a = pair.first;
  c.b = pair.second;
  if (const auto fit = fits.find(pair); fit != fits.end()) c.fit = *fit->second;
  c.motion = motion(assembly.placed[c.a], assembly.placed[c.b]);
  c.a_fixed = assembly.placed[c.a].group == Group::fixed;
  c.limit_mm = wanted_gap(assembly, c);
  return c;
}

/// Bisects a stretch until it is proved or a failure is found; false at a failure.
bool proved(Couple& c, const std::vector<Stand>& all, Slide stretch, double range_mm) {
  const Nearness n = over(c, all, stretch, range_mm);
  if (!n.overlap && n.distance >= c.limit_mm - contact_mm) {
    c.proved.push_back({stretch.from, stretch.to, n.distance});
    return true;
  }
  if (!slides(c.motion) || stretch.to - stretch.from <= shortest_stretch_mm) return false;
  const double middle = (stretch.from + stretch.to) / 2;
  return proved(c, all, {stretch.from, middle}, range_mm) && proved(c, all, {middle, stretch.to}, range_mm);
}

}  // namespace

std::vector<Couple> couples(const assembly::Assembly& assembly, const std::vector<Stand>& all, double range_mm) {
  std::map<Both, const assembly::Fit*> fits;
  std::map<Both, Couple> found;
  for (const auto& pair : assembly.declared) {
    const Both both{std::min(pair.a, pair.b), std::max(pair.a, pair.b)};
    fits[both] = &pair.fit;
  }
  for (const auto& [both, fit] : fits) found.emplace(both, couple_of(assembly, fits, both));
  // Boxes in the order of their left sides: only those that overlap along x are held against each other.
  std::vector<std::uint32_t> order(all.size());
  const auto left = [&](std::uint32_t i) { return std::min(all[i].still_box.low[0], all[i].turned.empty() ? 1e300 : all[i].turned_box.low[0]); };
  const auto right = [&](std::uint32_t i) { return std::max(all[i].still_box.high[0], all[i].turned.empty() ? -1e300 : all[i].turned_box.high[0]); };
  for (std::uint32_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::uint32_t i, std::uint32_t k) { return left(i) < left(k); });
  for (std::size_t m = 0; m < order.size(); ++m) {
    const double reach = right(order[m]) + range_mm;
    for (std::size_t n = m + 1; n < order.size() && left(order[n]) <= reach; ++n) {
      const std::uint32_t i = std::min(order[m], order[n]), k = std::max(order[m], order[n]);
      const Stand &one = all[i], &two = all[k];
      if (one.placed == two.placed) continue;
      const Both both{one.placed, two.placed};
      const assembly::Placed &pa = assembly.placed[both.first], &pb = assembly.placed[both.second];
      const Motion how = motion(pa, pb);
      const auto travel = [&](const assembly::Placed& p) { return slides(how) && p.group != Group::fixed ? assembly.opening_max_mm : 0.0; };
      if (gap_mm(passed(one, turns(how), travel(pa)), passed(two, turns(how), travel(pb))) > range_mm) continue;
      auto c = found.find(both);
      if (c == found.end()) c = found.emplace(both, couple_of(assembly, fits, both)).first;
      c->second.near.push_back({i, k});
    }
  }
  std::vector<Couple> result;
  for (auto& [both, c] : found) {
    std::sort(c.near.begin(), c.near.end());
    result.push_back(std::move(c));
  }
  return result;
}

Nearness over(const Couple& c, const std::vector<Stand>& all, Slide openings, double within_mm) {
  Nearness best{within_mm, true, false, openings.from, {}, {}, false};
  for (const auto& [i, k] : c.near) {
    const Nearness n = nearness(all[i], all[k], c.motion, openings, c.a_fixed, best.overlap ? within_mm : best.distance + contact_mm);
    const bool worse = n.overlap ? !best.overlap : !best.overlap && n.distance < best.distance;
    if (!worse) continue;
    best = n;
    best.grip_out = all[i].grip_out || all[k].grip_out;
  }
  return best;
}

bool prove(Couple& c, const std::vector<Stand>& all, double travel_mm, double range_mm) {
  const double within = std::max(range_mm, c.limit_mm);
  const Nearness whole = over(c, all, {0, travel_mm}, within);
  c.gap_mm = whole.distance;
  c.exact = whole.exact && whole.distance < within;
  c.where = {whole.opening_mm, whole.grip_out, std::nullopt};
  if (whole.distance < within) c.where.at_mm = {whole.a[0], whole.a[1], whole.a[2]};
  c.proved.clear();
  c.certified = proved(c, all, {0, travel_mm}, within);
  // A gap that is known and too small needs no second opinion.
  return c.certified || (!whole.overlap && whole.exact);
}

std::vector<std::array<double, 2>> stretches(const Couple& couple) {
  std::vector<std::array<double, 2>> joined;
  for (const Stretch& stretch : couple.proved) {
    if (!joined.empty() && stretch.from_mm <= joined.back()[1] + 1e-9)
      joined.back()[1] = std::max(joined.back()[1], stretch.to_mm);
    else
      joined.push_back({stretch.from_mm, stretch.to_mm});
  }
  return joined;
}

}  // namespace visewright::fitup
