// Which operation has to wait for which.
#include <algorithm>
#include <cmath>

#include "geometry/measure.h"
#include "making/order.h"
#include "making/outlines.h"

namespace visewright::making {
namespace {

constexpr double never = 1e9;
/// A centre point needs this much wood round it.
constexpr double round_a_point_mm = 2, same_axis_mm = 1e-6;

/// A hole as a cutter with a centre point makes it, or an outline that takes material away; depth from its face.
struct Opening {
  const parts::Face* face = nullptr;
  std::optional<geometry::Point> centre;  // needed by the tool
  double radius_mm = 0;
  const geometry::Profile* outline = nullptr;  // of what is not round
  double depth_mm = never;
};

struct OpeningOf {
  std::optional<Opening> operator()(const parts::Drill& d) const {
    return Opening{&d.face, d.at, d.diameter_mm / 2, nullptr, d.depth.value_or(never)};
  }
  std::optional<Opening> operator()(const parts::Rout& r) const {
    return outlined(r.face, r.outline, r.depth.value_or(never));
  }
  std::optional<Opening> operator()(const parts::CutOut& c) const { return outlined(c.face, c.outline, never); }
  std::optional<Opening> operator()(const parts::CutTo&) const { return std::nullopt; }
  std::optional<Opening> operator()(const parts::SawFlat&) const { return std::nullopt; }
  std::optional<Opening> operator()(const parts::Turn&) const { return std::nullopt; }
  std::optional<Opening> operator()(const parts::Grind&) const { return std::nullopt; }
  std::optional<Opening> operator()(const parts::Ease&) const { return std::nullopt; }
  std::optional<Opening> operator()(const parts::CutThread&) const { return std::nullopt; }
  std::optional<Opening> operator()(const parts::Print&) const { return std::nullopt; }
  std::optional<Opening> operator()(const parts::Mark&) const { return std::nullopt; }
  std::optional<Opening> operator()(const parts::Treat&) const { return std::nullopt; }

  static Opening outlined(const parts::Face& face, const geometry::Profile& outline, double depth) {
    if (const auto round = as_circle(outline)) return {&face, round->centre, round->radius_mm, nullptr, depth};
    return {&face, std::nullopt, 0, &outline, depth};
  }
};

bool covers(const Opening& opening, geometry::Point p) {
  if (opening.outline != nullptr) return geometry::contains(*opening.outline, p);
  return geometry::distance(*opening.centre, p) <= opening.radius_mm + round_a_point_mm;
}

/// Later in the day: edges are broken when all cuts are made, and finish goes on last.
int rank(const parts::Operation& operation) {
  if (std::holds_alternative<parts::Treat>(operation.work)) return 2;
  return std::holds_alternative<parts::Ease>(operation.work) ? 1 : 0;
}

bool is_cross_hole(const parts::Operation& operation) {
  const auto* drill = std::get_if<parts::Drill>(&operation.work);
  return drill != nullptr && std::abs(drill->face.datum.z_axis[2]) < 0.5;
}

bool same_place(const parts::Drill& drill, const parts::CutThread& thread) {
  return drill.face.name == thread.face.name && geometry::distance(drill.at, thread.at) < same_axis_mm;
}

bool must_wait(const parts::Operation& later, const parts::Operation& earlier, const Workpiece& work) {
  if (rank(later) != rank(earlier)) return rank(later) > rank(earlier);
  if (std::holds_alternative<parts::Turn>(earlier.work) && is_cross_hole(later)) return true;
  const auto* thread = std::get_if<parts::CutThread>(&later.work);
  const auto* drill = std::get_if<parts::Drill>(&earlier.work);
  if (thread != nullptr && drill != nullptr) return same_place(*drill, *thread);
  return takes_centre(later, earlier, work) && !takes_centre(earlier, later, work);
}

}  // namespace

bool takes_centre(const parts::Operation& first, const parts::Operation& second, const Workpiece& work) {
  const auto taking = std::visit(OpeningOf{}, first.work), standing = std::visit(OpeningOf{}, second.work);
  if (!taking || !standing || !standing->centre) return false;
  const geometry::Placement &from = taking->face->datum, &to = standing->face->datum;
  const double facing = geometry::dot(from.z_axis, to.z_axis);
  const geometry::Vector centre =
      geometry::to_inside(from, geometry::to_outside(to, {standing->centre->x, standing->centre->y, 0}));
  const geometry::Point at{centre[0], centre[1]};
  if (std::abs(facing) < 1 - 1e-9 || !covers(*taking, at)) return false;
  // How far below the standing hole's face the material goes; from behind only what comes right through reaches it.
  double reach = taking->depth_mm == never ? never : facing > 0 ? taking->depth_mm + centre[2] : 0;
  const double floor = std::min(standing->depth_mm, work.through_mm(*standing->face));
  if (reach >= work.through_mm(*standing->face)) reach = never;
  if (!taking->centre || geometry::distance(*taking->centre, at) > same_axis_mm) return reach > 0;
  if (standing->depth_mm == never && reach == never) return taking->radius_mm > standing->radius_mm;
  return reach > floor;
}

std::vector<std::size_t> work_order(const Workpiece& work) {
  const std::size_t n = work.operations.size();
  std::vector<bool> done(n, false);
  std::vector<std::size_t> order;
  const auto free_now = [&](std::size_t i) {
    for (std::size_t j = 0; j < n; ++j)
      if (!done[j] && j != i && must_wait(work.operations[i], work.operations[j], work)) return false;
    return true;
  };
  while (order.size() < n) {
    std::size_t next = n;
    for (std::size_t i = 0; i < n && next == n; ++i)
      if (!done[i] && free_now(i)) next = i;
    // A circle of waiting operations cannot be untied: the part's own order decides.
    for (std::size_t i = 0; i < n && next == n; ++i)
      if (!done[i]) next = i;
    done[next] = true;
    order.push_back(next);
  }
  return order;
}

}  // namespace visewright::making
