// The solids of a couple that the stacks could not clear.
#include <algorithm>
#include <cmath>

#include "fitup/couple.h"

namespace visewright::fitup {
namespace {

using kernel::Solid;

/// Openings at which a couple is measured at most. A couple that is still open then is reported as not proved.
constexpr int most_poses = 48;

Vector out_by(double mm) { return geometry::times(mm, out_axis().z_axis); }

base::Result<Solid> drum_solid(const Drum& d, std::string_view label) { return kernel::prism(*d.profile, d.frame, d.from_mm, d.to_mm, label); }

/// All that a turning body passes through, at opening 0.
base::Result<Solid> turned_solid(const Stand& s, std::string_view label) {
  std::vector<Solid> rings;
  for (const Element& e : s.turned) {
    auto ring = drum_solid(e.added, label);
    if (!ring) return ring;
    std::vector<Solid> gone;
    for (const Drum& r : e.removed) {
      auto tool = drum_solid(r, label);
      if (!tool) return tool;
      gone.push_back(std::move(*tool));
    }
    if (!gone.empty()) ring = kernel::cut(*ring, gone, label);
    if (!ring) return ring;
    rings.push_back(std::move(*ring));
  }
  if (rings.size() == 1) return rings.front();
  return kernel::fused(rings, label);
}

struct Found {
  double common_mm3 = 0;
  double distance_mm = 1e300;
};

class Asker {
 public:
  Asker(Couple& c, const std::vector<Stand>& all, const assembly::Assembly& assembly, const solids::SolidSet& solids)
      : c_(c), all_(all), assembly_(assembly), solids_(solids) {
    label_ = assembly.placed[c.a].name + " and " + assembly.placed[c.b].name;
  }

  base::Result<int> run() {
    const bool slide = c_.motion == Motion::slide || c_.motion == Motion::turn_and_slide;
    // The opening that the stacks think worst comes first, as the parts really stand there.
    auto first = at(c_.where.opening_mm, false);
    if (!first) return base::passed_on(std::move(first.error()));
    c_.proved.clear();
    if (first->common_mm3 > overlap_mm3) return done(false);
    c_.gap_mm = 1e300;
    if (slide) {
      waiting_.push_back({0, assembly_.opening_max_mm});
      while (!waiting_.empty() && poses_ < most_poses) {
        const Slide stretch = waiting_.back();
        waiting_.pop_back();
        if (auto looked = look(stretch); !looked) return base::passed_on(std::move(looked.error()));
        if (failed_) return done(false);
      }
      std::sort(c_.proved.begin(), c_.proved.end(), [](const Stretch& p, const Stretch& q) { return p.from_mm < q.from_mm; });
      return done(waiting_.empty());
    }
    auto found = at(0, true);
    if (!found) return base::passed_on(std::move(found.error()));
    note(*found, 0);
    if (failed_) return done(false);
    c_.proved.push_back({0, assembly_.opening_max_mm, found->distance_mm});
    return done(true);
  }

 private:
  base::Result<int> done(bool certified) {
    c_.certified = certified;
    if (c_.common_mm3 > overlap_mm3) c_.gap_mm = 0;
    return poses_;
  }

  /// The gap in the middle of a stretch proves as much to both sides as it is larger than it must be.
  base::Result<void> look(Slide stretch) {
    const double middle = (stretch.from + stretch.to) / 2, half = (stretch.to - stretch.from) / 2;
    auto found = at(middle, true);
    if (!found) return base::passed_on(std::move(found.error()));
    note(*found, middle);
    if (failed_) return {};
    const double sure = found->distance_mm - c_.limit_mm;
    const double from = std::max(stretch.from, middle - sure), to = std::min(stretch.to, middle + sure);
    if (half <= shortest_stretch_mm / 2 || sure >= half) {
      c_.proved.push_back({stretch.from, stretch.to, std::max(c_.limit_mm, found->distance_mm - half)});
      return {};
    }
    if (to > from) c_.proved.push_back({from, to, c_.limit_mm});
    waiting_.push_back({to, stretch.to});
    waiting_.push_back({stretch.from, from});
    return {};
  }

  void note(const Found& found, double opening) {
    if (found.common_mm3 <= overlap_mm3 && found.distance_mm >= c_.gap_mm) return;
    c_.gap_mm = std::min(c_.gap_mm, found.distance_mm);
    c_.exact = true;
    c_.where.opening_mm = opening;
    failed_ = found.common_mm3 > overlap_mm3 || found.distance_mm < c_.limit_mm - contact_mm;
  }

  base::Result<Found> at(double opening, bool turned) {
    ++poses_;
    Found found;
    for (const auto& [i, k] : c_.near) {
      auto a = solid(all_[i], opening, turned), b = solid(all_[k], opening, turned);
      if (!a) return base::passed_on(std::move(a.error()));
      if (!b) return base::passed_on(std::move(b.error()));
      auto shared = kernel::common(*a, *b, label_);
      if (!shared) return base::passed_on(std::move(shared.error()));
      if (*shared) {
        auto measures = kernel::measures(**shared, label_);
        if (!measures) return base::passed_on(std::move(measures.error()));
        found.common_mm3 += measures->volume_mm3;
        if (measures->volume_mm3 > overlap_mm3 && measures->volume_mm3 > c_.common_mm3) c_.common = **shared;
      }
      if (found.common_mm3 > overlap_mm3) continue;
      auto distance = kernel::distance_mm(*a, *b, label_);
      if (!distance) return base::passed_on(std::move(distance.error()));
      found.distance_mm = std::min(found.distance_mm, *distance);
    }
    if (found.common_mm3 > overlap_mm3) found.distance_mm = 0;
    c_.common_mm3 = std::max(c_.common_mm3, found.common_mm3);
    return found;
  }

  base::Result<Solid> solid(const Stand& s, double opening, bool turned) {
    const assembly::Placed& placed = assembly_.placed[s.placed];
    const bool whole_turn = turned && !s.turned.empty() && (c_.motion == Motion::turn || c_.motion == Motion::turn_and_slide);
    if (!whole_turn) return kernel::moved(solids_.bodies(placed.part)[s.body].solid, assembly::at(placed, {opening, s.grip_out}));
    auto swept = turned_solid(s, label_);
    if (!swept) return swept;
    return kernel::moved(*swept, {out_by(opening), {1, 0, 0}, {0, 0, 1}});
  }

  Couple& c_;
  const std::vector<Stand>& all_;
  const assembly::Assembly& assembly_;
  const solids::SolidSet& solids_;
  std::string label_;
  std::vector<Slide> waiting_;
  bool failed_ = false;
  int poses_ = 0;
};

}  // namespace

base::Result<int> ask_solids(Couple& c, const std::vector<Stand>& all, const assembly::Assembly& assembly, const solids::SolidSet& solids) {
  if (solids.size() < assembly.parts.size())
    return base::fault(base::Cause::own_mistake, "check", "a pair of parts has to be held against each other and there are no solids", "build the solids first");
  return Asker(c, all, assembly, solids).run();
}

}  // namespace visewright::fitup
