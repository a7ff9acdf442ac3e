#include "parts/slices.h"

#include <algorithm>
#include <iterator>
#include <span>

#include "geometry/joined.h"
#include "geometry/measure.h"
#include "geometry/meetings.h"

namespace visewright::parts {
namespace {

using geometry::Arc;
using geometry::Box;
using geometry::Edge;
using geometry::Line;
using geometry::Loop;
using geometry::Point;
using geometry::Profile;

/// Area of the union of regions. A region with holes is its outside less its holes, as far as the others leave them:
/// |X ∪ (O − H)| = |X ∪ O| − |X ∪ H| + |X|.
double united_area_mm2(std::vector<Loop> plain, std::span<const Profile> holed) {
  if (holed.empty()) return geometry::joined_area_mm2(plain);
  const Profile& first = holed.front();
  const std::span<const Profile> rest = holed.subspan(1);
  std::vector<Loop> outside = plain, holes = plain;
  outside.insert(outside.end(), first.outer.begin(), first.outer.end());
  holes.insert(holes.end(), first.holes.begin(), first.holes.end());
  return united_area_mm2(std::move(outside), rest) - united_area_mm2(std::move(holes), rest) +
         united_area_mm2(std::move(plain), rest);
}

bool covers(const Loop& loop, const Loop& inner) {
  const Box a = geometry::box(loop), b = geometry::box(inner);
  if (b.low.x < a.low.x || b.low.y < a.low.y || b.high.x > a.high.x || b.high.y > a.high.y) return false;
  const auto is_exact = [](const Edge& e) { return std::holds_alternative<Line>(e) || std::holds_alternative<Arc>(e); };
  for (const Edge& e : loop.edges())
    for (const Edge& f : inner.edges())
      if (!is_exact(e) || !is_exact(f) || !geometry::meetings(e, f).empty()) return false;
  return geometry::contains(loop, geometry::start(inner.edges().front()));
}

double united_area_mm2(std::span<const Profile> regions) {
  std::vector<Loop> plain;
  for (const Profile& region : regions)
    if (region.holes.empty()) plain.insert(plain.end(), region.outer.begin(), region.outer.end());
  // The bevel round a hole is a ring whose own hole has gone already: such a ring counts as a disc.
  std::vector<Profile> holed;
  std::vector<Loop> discs;
  for (const Profile& region : regions) {
    if (region.holes.empty()) continue;
    Profile kept{region.outer, {}};
    for (const Loop& hole : region.holes)
      if (std::none_of(plain.begin(), plain.end(), [&](const Loop& l) { return covers(l, hole); }))
        kept.holes.push_back(hole);
    if (kept.holes.empty()) {
      discs.insert(discs.end(), kept.outer.begin(), kept.outer.end());
    } else {
      holed.push_back(std::move(kept));
    }
  }
  plain.insert(plain.end(), discs.begin(), discs.end());
  return united_area_mm2(std::move(plain), holed);
}

Box around(const Profile& profile) {
  Box all = geometry::box(profile.outer.front());
  for (const Loop& loop : profile.outer) {
    const Box one = geometry::box(loop);
    all = {{std::min(all.low.x, one.low.x), std::min(all.low.y, one.low.y)},
           {std::max(all.high.x, one.high.x), std::max(all.high.y, one.high.y)}};
  }
  return all;
}

constexpr Box nothing_yet{{1e300, 1e300}, {-1e300, -1e300}};

Box both(const Box& a, const Box& b) {
  return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
          {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}

/// Whether some edge of a region's outline comes near a box.
bool edge_near(const Profile& profile, const Box& near) {
  const auto close = [&](const Edge& edge) {
    return geometry::overlap(geometry::box(edge), near, geometry::same_point_mm);
  };
  for (const Loop& loop : profile.outer)
    if (std::any_of(loop.edges().begin(), loop.edges().end(), close)) return true;
  return false;
}

}  // namespace

bool Slices::possible() const {
  const auto can = [](const Sliceable& s) { return s.possible(); };
  return std::all_of(added_.begin(), added_.end(), can) && std::all_of(removed_.begin(), removed_.end(), can);
}

std::ptrdiff_t Slices::changing() const {
  const auto does = [](const Sliceable& s) { return s.changes(); };
  return std::count_if(added_.begin(), added_.end(), does) + std::count_if(removed_.begin(), removed_.end(), does);
}

std::vector<double> Slices::breaks() const {
  std::vector<double> all;
  for (const Sliceable& s : added_) all.insert(all.end(), s.breaks().begin(), s.breaks().end());
  const auto [lowest, highest] = std::minmax_element(all.begin(), all.end());
  const double low = *lowest, high = *highest;
  const auto keep = [&](const std::vector<double>& heights) {
    std::copy_if(heights.begin(), heights.end(), std::back_inserter(all),
                 [=](double z) { return z > low && z < high; });
  };
  for (const Sliceable& s : removed_) {
    keep(s.breaks());
    for (const Sliceable& whole : added_) keep(s.passes_over(whole));
  }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end(), [](double a, double b) { return b - a < 1e-9; }), all.end());
  return all;
}

bool Slices::changes(double low, double high) const {
  if (std::any_of(added_.begin(), added_.end(), [=](const Sliceable& s) { return s.changes(low, high); })) return true;
  Box whole = nothing_yet;
  for (const Sliceable& s : added_)
    for (const Profile& p : s.slice((low + high) / 2, {})) whole = both(whole, around(p));
  return std::any_of(removed_.begin(), removed_.end(),
                     [&](const Sliceable& s) { return s.changes(low, high) && s.reaches(whole, low, high); });
}

double Slices::united(const std::vector<Region>& regions) const {
  std::vector<std::size_t> key;
  std::vector<Profile> profiles;
  for (const Region& r : regions) {
    key.push_back(r.number);
    profiles.push_back(r.profile);
  }
  const bool same = std::find(key.begin(), key.end(), 0) == key.end();
  if (same)
    if (const auto found = known_.find(key); found != known_.end()) return found->second;
  const double area = united_area_mm2(profiles);
  if (same) known_.emplace(std::move(key), area);
  return area;
}

/// Area of a group of regions, as far as it lies in those that are there.
double Slices::shared(const std::vector<Region>& there, std::vector<Region> gone) const {
  const double own = united(gone);
  Box box = nothing_yet;
  for (const Region& r : gone) box = both(box, around(r.profile));
  if (there.size() == 1 && there.front().profile.holes.empty() && !edge_near(there.front().profile, box))
    return geometry::contains(there.front().profile, box.low) ? own : 0;
  const double here = united(there);
  gone.insert(gone.end(), there.begin(), there.end());
  return here + own - united(gone);
}

double Slices::area_mm2(double z) const {
  std::vector<Region> there, gone;
  std::size_t number = 0;
  Box window = nothing_yet;
  for (const Sliceable& shape : added_) {
    ++number;
    for (Profile& p : shape.slice(z, {})) {
      window = both(window, around(p));
      there.push_back({std::move(p), shape.drum() ? number : 0});
    }
  }
  if (there.empty()) return 0;
  const Point margin{1, 1};
  window = {window.low - margin, window.high + margin};
  for (const Sliceable& shape : removed_) {
    ++number;
    for (Profile& p : shape.slice(z, window))
      if (geometry::overlap(window, around(p))) gone.push_back({std::move(p), shape.drum() ? number : 0});
  }
  // What does not come near each other is taken away group by group.
  double area = united(there);
  while (!gone.empty()) {
    std::vector<Region> group{std::move(gone.front())};
    gone.erase(gone.begin());
    for (std::size_t i = 0; i < group.size(); ++i) {
      const Box box = around(group[i].profile);
      const auto apart = [&](const Region& r) {
        return !geometry::overlap(box, around(r.profile), geometry::same_point_mm);
      };
      const auto near = std::stable_partition(gone.begin(), gone.end(), apart);
      std::move(near, gone.end(), std::back_inserter(group));
      gone.erase(near, gone.end());
    }
    area -= shared(there, std::move(group));
  }
  return area;
}

}  // namespace visewright::parts
