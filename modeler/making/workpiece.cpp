#include "making/workpiece.h"

#include <algorithm>

namespace visewright::making {
namespace {

using parts::BuiltUp;
using parts::Part;
using parts::Piece;

struct FormOf {
  Form operator()(const parts::Board&) const { return Form::board; }
  Form operator()(const parts::Sheet&) const { return Form::sheet; }
  Form operator()(const parts::Rod&) const { return Form::round; }
  Form operator()(const parts::Bar&) const { return Form::bar; }
  Form operator()(const parts::HexBar&) const { return Form::round; }
  Form operator()(const parts::Bought&) const { return Form::bought; }
  Form operator()(const parts::Printed&) const { return Form::printed; }
  Form operator()(const parts::Offcut&) const { return Form::offcut; }
  Form operator()(const parts::Existing&) const { return Form::existing; }
};

/// The piece that the first member begins with.
const Piece* first_piece(const Part& part) {
  if (const auto* piece = std::get_if<Piece>(&part.made)) return piece;
  const auto& members = std::get<BuiltUp>(part.made).members;
  return members.empty() ? nullptr : first_piece(*members.front().part);
}

/// The boxes of what a part is before anything is taken away.
void set_boxes(Workpiece& work) {
  for (const parts::Body& body : parts::bodies(*work.part))
    if (!body.added.empty()) work.boxes.push_back(parts::extent(body.added));
  if (work.boxes.empty()) return;
  work.low_mm = work.boxes.front().low_mm;
  work.high_mm = work.boxes.front().high_mm;
  for (const parts::Extent& box : work.boxes) {
    for (std::size_t i = 0; i < 3; ++i) {
      work.low_mm[i] = std::min(work.low_mm[i], box.low_mm[i]);
      work.high_mm[i] = std::max(work.high_mm[i], box.high_mm[i]);
    }
  }
}

/// The box of a box in the coordinates of a face.
parts::Extent seen_from(const parts::Face& face, const geometry::Vector& low_mm, const geometry::Vector& high_mm) {
  parts::Extent seen{geometry::to_inside(face.datum, low_mm), geometry::to_inside(face.datum, low_mm)};
  for (int corner = 1; corner < 8; ++corner) {
    const geometry::Vector at =
        geometry::to_inside(face.datum, {(corner & 1) ? high_mm[0] : low_mm[0], (corner & 2) ? high_mm[1] : low_mm[1],
                                         (corner & 4) ? high_mm[2] : low_mm[2]});
    for (std::size_t i = 0; i < 3; ++i) {
      seen.low_mm[i] = std::min(seen.low_mm[i], at[i]);
      seen.high_mm[i] = std::max(seen.high_mm[i], at[i]);
    }
  }
  return seen;
}

class Collector {
 public:
  Collector(const assembly::Assembly& assembly, std::span<const std::string> finished)
      : assembly_(assembly), finished_(finished) {}

  std::vector<Workpiece> run() {
    std::vector<int> placed(assembly_.parts.size(), 0);
    for (const assembly::Placed& p : assembly_.placed) ++placed[p.part];
    for (std::uint32_t i = 0; i < assembly_.parts.size(); ++i) {
      of_ = i;
      if (placed[i] > 0) add(*assembly_.parts[i], placed[i], false);
    }
    return std::move(result_);
  }

 private:
  void add(const Part& part, int count, bool made) {
    made = made || std::find(finished_.begin(), finished_.end(), part.name) != finished_.end();
    Workpiece work;
    work.part = &part;
    work.of = of_;
    work.count = count;
    work.made = made;
    if (const auto* built = std::get_if<BuiltUp>(&part.made)) {
      add_members(*built, count, made);
      work.operations = built->after;
    } else {
      work.piece = &std::get<Piece>(part.made);
      work.operations = work.piece->operations;
    }
    if (const Piece* first = first_piece(part)) {
      work.form = std::visit(FormOf{}, first->stock);
      work.material = &parts::material(first->stock);
    }
    set_boxes(work);
    result_.push_back(work);
  }

  /// A part that is a member several times is one workpiece, made as often.
  void add_members(const BuiltUp& built, int count, bool made) {
    std::vector<const Part*> seen;
    for (const parts::Member& member : built.members) {
      if (std::find(seen.begin(), seen.end(), member.part.get()) != seen.end()) continue;
      seen.push_back(member.part.get());
      const auto times = std::count_if(built.members.begin(), built.members.end(),
                                       [&](const parts::Member& m) { return m.part == member.part; });
      add(*member.part, count * static_cast<int>(times), made);
    }
  }

  const assembly::Assembly& assembly_;
  std::span<const std::string> finished_;
  std::vector<Workpiece> result_;
  std::uint32_t of_ = 0;
};

}  // namespace

double Workpiece::through_mm(const parts::Face& face) const {
  return std::max(0.0, -seen_from(face, low_mm, high_mm).low_mm[2]);
}

double Workpiece::through_mm(const parts::Face& face, geometry::Point at) const {
  double deepest = 0;
  for (const parts::Extent& box : boxes) {
    const parts::Extent seen = seen_from(face, box.low_mm, box.high_mm);
    const bool below =
        seen.low_mm[0] <= at.x && at.x <= seen.high_mm[0] && seen.low_mm[1] <= at.y && at.y <= seen.high_mm[1];
    if (below) deepest = std::max(deepest, -seen.low_mm[2]);
  }
  return deepest;
}

std::vector<Workpiece> workpieces(const assembly::Assembly& assembly, std::span<const std::string> finished) {
  return Collector(assembly, finished).run();
}

}  // namespace visewright::making
