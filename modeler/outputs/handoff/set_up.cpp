#include "outputs/handoff/set_up.h"

#include <algorithm>
#include <array>
#include <cmath>


#include "outputs/data/items.h"
#include "outputs/handoff/pack.h"

namespace visewright::outputs::handoff {
namespace {

using geometry::Placement;
using geometry::Vector;

/// The box of a box in a frame.
parts::Extent seen_in(const Placement& frame, const Vector& low, const Vector& high) {
  parts::Extent seen{geometry::to_inside(frame, low), geometry::to_inside(frame, low)};
  for (const double x : {low[0], high[0]})
    for (const double y : {low[1], high[1]})
      for (const double z : {low[2], high[2]}) {
        const Vector at = geometry::to_inside(frame, {x, y, z});
        for (std::size_t i = 0; i < 3; ++i)
          seen.low_mm[i] = std::min(seen.low_mm[i], at[i]), seen.high_mm[i] = std::max(seen.high_mm[i], at[i]);
      }
  return seen;
}

/// The table's frame with the directions of `way`, long side along x.
SetUp laid(const making::Workpiece& work, Placement way) {
  parts::Extent box = seen_in(way, work.low_mm, work.high_mm);
  if (box.high_mm[1] - box.low_mm[1] > box.high_mm[0] - box.low_mm[0] + 1e-6) {
    way.x_axis = way.y_axis();
    box = seen_in(way, work.low_mm, work.high_mm);
  }
  SetUp set_up;
  set_up.table = {geometry::to_outside(way, box.low_mm), way.x_axis, way.z_axis};
  set_up.length_mm = box.high_mm[0] - box.low_mm[0];
  set_up.width_mm = box.high_mm[1] - box.low_mm[1];
  set_up.height_mm = box.high_mm[2] - box.low_mm[2];
  return set_up;
}

/// A worked face, in the coordinates of the table.
SetUp on_table(const making::Workpiece& work, const papers::FaceJob& face) {
  SetUp set_up = laid(work, face.face.datum);
  const double height = geometry::to_inside(set_up.table, face.face.datum.origin_mm)[2];
  const parts::Face here{face.face.name, {geometry::to_outside(set_up.table, {0, 0, height}), set_up.table.x_axis, set_up.table.z_axis}};
  set_up.face = {face.job, here, {}, {}, face.thickness_mm};
  for (const papers::Feature& feature : face.features) set_up.face.features.push_back(papers::seen_on(feature, face.face, here));
  for (const papers::Blank& blank : face.job->blanks) {
    const parts::Extent box = seen_in(here.datum, blank.extent.low_mm, blank.extent.high_mm);
    set_up.face.blanks.emplace_back(blank.name, geometry::Box{{box.low_mm[0], box.low_mm[1]}, {box.high_mm[0], box.high_mm[1]}});
  }
  return set_up;
}

std::ptrdiff_t work_on(const papers::FaceJob& face) {
  return std::count_if(face.features.begin(), face.features.end(), [](const papers::Feature& f) { return !f.from_behind; });
}

/// Directions for a part without a worked face: thinnest way up, longest along x.
Placement flat_way(const making::Workpiece& work) {
  std::array<std::size_t, 3> axes{0, 1, 2};
  const auto size = [&](std::size_t i) { return std::llround((work.high_mm[i] - work.low_mm[i]) * 1e6); };
  std::stable_sort(axes.begin(), axes.end(), [&](std::size_t a, std::size_t b) { return size(a) > size(b); });
  Placement way;
  way.x_axis = way.z_axis = {0, 0, 0};
  way.x_axis[axes[0]] = 1;
  way.z_axis[axes[2]] = 1;
  return way;
}

/// Offcuts are what a saw took off another part: nothing is left to do to them.
bool machined(const making::Workpiece& work) {
  if (work.made || work.part->making == parts::Making::existing) return false;
  if (work.piece == nullptr) return true;
  return work.part->making == parts::Making::made && work.form != making::Form::bought && work.form != making::Form::printed && work.form != making::Form::offcut && work.form != making::Form::existing;
}

papers::Job job_of(const Facts& facts, const making::Workpiece& work) {
  for (papers::Job& job : papers::jobs(*facts.assembly.parts[work.of], work.of))
    if (job.of == work.part) return std::move(job);
  return {work.part->name, work.of, work.piece, work.part, work.operations, {}, {}};
}

void set_up(Machined& part) {
  std::vector<papers::FaceJob> faces = papers::faces(part.job);
  std::erase_if(faces, [](const papers::FaceJob& f) { return work_on(f) == 0; });
  if (faces.empty()) {
    if (part.work->piece == nullptr) return;
    part.set_ups.push_back(laid(*part.work, flat_way(*part.work)));
    part.set_ups.back().face.job = nullptr;
    return;
  }
  std::stable_sort(faces.begin(), faces.end(), [](const auto& a, const auto& b) { return work_on(a) > work_on(b); });
  const Vector up = faces.front().face.datum.z_axis;
  const auto side = [&](const papers::FaceJob& f) {
    const double along = geometry::dot(f.face.datum.z_axis, up);
    return along > 0.5 ? SetUp::Side::first : along < -0.5 ? SetUp::Side::turned_over : SetUp::Side::on_edge;
  };
  std::stable_sort(faces.begin(), faces.end(), [&](const auto& a, const auto& b) { return side(a) < side(b); });
  for (const papers::FaceJob& face : faces) {
    part.set_ups.push_back(on_table(*part.work, face));
    part.set_ups.back().side = side(face);
  }
}

}  // namespace

std::string_view word(SetUp::Side side) {
  switch (side) {
    case SetUp::Side::first: return "first side";
    case SetUp::Side::turned_over: return "turned over";
    case SetUp::Side::on_edge: break;
  }
  return "on edge";
}

std::vector<Machined> machined_parts(const Facts& facts) {
  std::vector<Machined> list;
  const std::vector<data::Item> items = data::items(facts.assembly);
  // Set-ups point at the jobs, which must not move any more.
  list.reserve(facts.work.pieces.size());
  for (const making::Workpiece& work : facts.work.pieces) {
    if (!machined(work)) continue;
    Machined& part = list.emplace_back(Machined{&work, job_of(facts, work), {}, {}, {}});
    for (const data::Item& item : items)
      if (item.part == work.part) part.item = item.number;
    part.stem = file_stem(part.item, work.part->name);
    set_up(part);
    if (part.set_ups.empty()) list.pop_back();
  }
  return list;
}

}  // namespace visewright::outputs::handoff
