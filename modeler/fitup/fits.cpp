#include "fitup/fits.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "fitup/rules.h"

namespace visewright::fitup {
namespace {

using reasons::Better;
using reasons::Finding;
using reasons::judged;
using reasons::Unit;
using reasons::Verdict;

/// Sizes that are meant to be equal may differ by this, mm.
constexpr double equal_mm = 1e-3;
/// ISO 4032: nuts of style 1 are at least about this many diameters high.
constexpr double engaged_diameters = 0.8;

struct Judge {
  const Couple& couple;
  Coaxial seat;
  std::vector<std::string> names;

  bool round() const { return seat.play < 1e300; }
  std::optional<Finding> of(const reasons::Rule& rule, double measured, double limit, Unit unit, Better better, Verdict otherwise) const {
    Finding f = judged(rule, measured, limit, unit, better, otherwise, names, couple.where);
    f.certified = couple.certified;
    f.proved_mm = stretches(couple);
    return f;
  }
  std::optional<Finding> touches(const reasons::Rule& rule) const {
    if (couple.motion != Motion::none) return std::nullopt;
    return of(rule, couple.gap_mm, equal_mm, Unit::mm, Better::smaller, Verdict::fail);
  }
  std::optional<Finding> operator()(const assembly::Clear&) const { return std::nullopt; }
  std::optional<Finding> operator()(const assembly::Meshing&) const { return std::nullopt; }
  std::optional<Finding> operator()(const assembly::Sliding&) const {
    return of(rules::sliding, round() ? std::max(0.0, seat.play) : couple.gap_mm, 0, Unit::mm, Better::larger, Verdict::fail);
  }
  std::optional<Finding> operator()(const assembly::Press&) const {
    return of(rules::press, round() ? std::abs(seat.play) : couple.gap_mm, equal_mm, Unit::mm, Better::smaller, Verdict::fail);
  }
  std::optional<Finding> operator()(const assembly::Threaded&) const {
    const bool meets = round() && std::abs(seat.play) <= equal_mm;
    const double engaged = meets ? std::min(seat.facing_first, seat.facing_last) / seat.shaft : 0;
    return of(rules::threaded, engaged, engaged_diameters, Unit::one, Better::larger, Verdict::fail);
  }
  std::optional<Finding> operator()(const assembly::Touching&) const { return touches(rules::touching); }
  std::optional<Finding> operator()(const assembly::Bonded&) const { return touches(rules::bonded); }
};

/// How far a passing finding is from its limit.
double margin(const Finding& f) { return f.better == Better::larger ? f.measured - f.limit : f.limit - f.measured; }

}  // namespace

std::optional<Finding> fit_finding(const Couple& c, const std::vector<Stand>& all, const assembly::Assembly& assembly) {
  if (!c.fit || c.common_mm3 > overlap_mm3) return std::nullopt;
  Coaxial best;
  const bool needs_seat = std::holds_alternative<assembly::Sliding>(*c.fit) || std::holds_alternative<assembly::Press>(*c.fit) ||
                          std::holds_alternative<assembly::Threaded>(*c.fit);
  if (needs_seat)
    for (const auto& [i, k] : c.near) best.take(seat(all[i], all[k], c.motion, {0, assembly.opening_max_mm}, c.a_fixed));
  return std::visit(Judge{c, best, {assembly.placed[c.a].name, assembly.placed[c.b].name}}, *c.fit);
}

std::vector<Finding> worst_of_each_kind(std::vector<Finding> all) {
  std::vector<Finding> result;
  std::vector<std::pair<const reasons::Rule*, std::size_t>> nearest;  // in the order in which the kinds first appear
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].verdict != Verdict::pass) {
      result.push_back(all[i]);
      continue;
    }
    const auto known = std::find_if(nearest.begin(), nearest.end(), [&](const auto& n) { return n.first == all[i].rule; });
    if (known == nearest.end()) nearest.push_back({all[i].rule, i});
    else if (margin(all[i]) < margin(all[known->second]) - 1e-9) known->second = i;
  }
  for (const auto& [rule, i] : nearest) result.push_back(all[i]);
  return result;
}

}  // namespace visewright::fitup
