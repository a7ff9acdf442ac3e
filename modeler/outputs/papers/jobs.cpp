#include "outputs/papers/jobs.h"

#include <algorithm>
#include <cmath>

#include "outputs/papers/sheet.h"
#include "parts/faces.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Box;
using geometry::Loop;
using geometry::Placement;
using geometry::Point;
using geometry::Profile;
using parts::Face;
using parts::Operation;

void collect(const parts::Part& part, const Placement& at, std::uint32_t index, std::vector<Job>& list);

parts::Extent extent_of(const parts::Piece& piece, const Placement& at) {
  std::vector<parts::Shape> shapes = parts::blank(piece.stock).added;
  for (const Operation& operation : piece.operations)
    for (parts::Shape& shape : parts::added(operation)) shapes.push_back(std::move(shape));
  for (parts::Shape& shape : shapes) shape = parts::placed(shape, at);
  return parts::extent(shapes);
}

void add_blanks(const parts::Part& part, const Placement& at, std::vector<Blank>& list) {
  if (const auto* piece = std::get_if<parts::Piece>(&part.made)) {
    list.push_back({part.name, extent_of(*piece, at)});
    return;
  }
  for (const parts::Member& member : std::get<parts::BuiltUp>(part.made).members)
    add_blanks(*member.part, geometry::combined(at, member.at), list);
}

void collect(const parts::Part& part, const Placement& at, std::uint32_t index, std::vector<Job>& list) {
  Job job{part.name, index, nullptr, &part, {}, {}, at};
  add_blanks(part, {}, job.blanks);
  if (const auto* piece = std::get_if<parts::Piece>(&part.made)) {
    job.piece = piece;
    job.operations = piece->operations;
  } else {
    const auto& built = std::get<parts::BuiltUp>(part.made);
    for (const parts::Member& member : built.members) {
      const bool known = std::any_of(list.begin(), list.end(), [&](const Job& j) { return j.name == member.part->name; });
      if (!known) collect(*member.part, geometry::combined(at, member.at), index, list);
    }
    job.operations = built.after;
  }
  if (!job.operations.empty()) list.push_back(std::move(job));
}

struct Drawn {
  std::vector<std::pair<Face, Feature>>& list;
  const Operation& operation;

  void add(const Face& face, Feature::Kind kind, Profile profile, parts::Depth depth) const {
    Feature feature{kind, &operation, std::move(profile), depth, {}, {}, false, false};
    const Loop& loop = feature.profile.outer.front();
    const Box all = geometry::box(loop);
    feature.centre = 0.5 * (all.low + all.high);
    const auto* arc = loop.edges().size() == 1 ? std::get_if<geometry::Arc>(&loop.edges().front()) : nullptr;
    if (arc != nullptr) {
      feature.diameter_mm = 2 * geometry::distance(arc->centre, arc->a);
      feature.centre = arc->centre;
    }
    list.emplace_back(face, std::move(feature));
  }
  void operator()(const parts::Drill& w) const {
    add(w.face, w.flat ? Feature::Kind::recess : Feature::Kind::hole,
        geometry::region(geometry::circle(w.at, w.diameter_mm / 2)), w.depth);
    list.back().second.flat = w.flat;
  }
  void operator()(const parts::Rout& w) const {
    add(w.face, Feature::Kind::recess, w.outline, w.depth);
    list.back().second.flat = true;
  }
  void operator()(const parts::CutOut& w) const { add(w.face, Feature::Kind::cut_out, w.outline, {}); }
  void operator()(const parts::CutTo& w) const { add(w.face, Feature::Kind::outline, w.outline, {}); }
  /// Printed from the rear up: the holes of the last layer open to the front, those of others show from behind.
  void operator()(const parts::Print& w) const {
    if (w.layers.empty()) return;
    const Face front = parts::front(w.layers.back().to_mm);
    Profile outer{w.layers.back().profile.outer, {}};
    add(front, Feature::Kind::outline, std::move(outer), {});
    double deepest = 0;
    for (const parts::Layer& layer : w.layers) deepest = std::max(deepest, layer.to_mm);
    for (auto layer = w.layers.rbegin(); layer != w.layers.rend(); ++layer)
      for (const Loop& hole : layer->profile.holes) {
        const bool open_in_front = layer == w.layers.rbegin();
        add(front, open_in_front ? Feature::Kind::cut_out : Feature::Kind::recess, geometry::region(hole),
            open_in_front ? parts::Depth{} : parts::Depth{layer->to_mm - w.layers.front().from_mm});
        list.back().second.from_behind = !open_in_front;
      }
  }
  void operator()(const parts::SawFlat&) const {}
  void operator()(const parts::Turn&) const {}
  void operator()(const parts::Grind&) const {}
  void operator()(const parts::Ease&) const {}
  void operator()(const parts::CutThread&) const {}
  void operator()(const parts::Mark&) const {}
  void operator()(const parts::Treat&) const {}
};

bool parallel(const Face& a, const Face& b) {
  return std::abs(std::abs(geometry::dot(a.datum.z_axis, b.datum.z_axis)) - 1) < 1e-9;
}
bool opposite(const Face& a, const Face& b) { return geometry::dot(a.datum.z_axis, b.datum.z_axis) < 0; }

Box shown(const parts::Extent& extent, const Face& face) {
  const Point a = parts::on(face, extent.low_mm), b = parts::on(face, extent.high_mm);
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

double along(const Face& face, const geometry::Vector& v) { return geometry::dot(face.datum.z_axis, v); }

}  // namespace

std::vector<Job> jobs(const parts::Part& part, std::uint32_t index) {
  std::vector<Job> list;
  collect(part, {}, index, list);
  return list;
}

Feature seen_on(Feature feature, const Face& from, const Face& to) {
  const auto carried = [&](Point p) {
    return parts::on(to, geometry::to_outside(from.datum, {p.x, p.y, 0}));
  };
  const Point origin = carried({0, 0}), x = carried({1, 0}) - origin;
  const bool turned_over = opposite(from, to);
  const auto loop = [&](const Loop& l) {
    if (!turned_over) return geometry::moved(l, std::atan2(x.y, x.x), origin);
    return geometry::moved(geometry::mirrored(l), std::atan2(-x.y, -x.x), origin);
  };
  for (Loop& l : feature.profile.outer) l = loop(l);
  for (Loop& l : feature.profile.holes) l = loop(l);
  feature.centre = carried(feature.centre);
  if (turned_over) feature.from_behind = !feature.from_behind;
  return feature;
}

std::vector<std::pair<Face, Feature>> features(const Job& job) {
  std::vector<std::pair<Face, Feature>> all;
  for (const Operation& operation : job.operations) std::visit(Drawn{all, operation}, operation.work);
  return all;
}

std::vector<FaceJob> faces(const Job& job) {
  const std::vector<std::pair<Face, Feature>> all = features(job);
  std::vector<FaceJob> result;
  for (const auto& [face, feature] : all) {
    const auto same = [&](const FaceJob& f) {
      return f.face.name == face.name &&
             std::abs(along(f.face, f.face.datum.origin_mm) - along(f.face, face.datum.origin_mm)) < 1e-6;
    };
    if (std::none_of(result.begin(), result.end(), same)) result.push_back({&job, face, {}, {}, 0});
  }
  for (FaceJob& face : result) {
    for (const auto& [from, feature] : all)
      if (parallel(from, face.face)) face.features.push_back(seen_on(feature, from, face.face));
    double high = -1e300, low = 1e300;
    for (const Blank& blank : job.blanks) {
      face.blanks.emplace_back(blank.name, shown(blank.extent, face.face));
      for (const auto* corner : {&blank.extent.low_mm, &blank.extent.high_mm})
        high = std::max(high, along(face.face, *corner)), low = std::min(low, along(face.face, *corner));
    }
    face.thickness_mm = high - low;
  }
  return result;
}

}  // namespace visewright::outputs::papers
