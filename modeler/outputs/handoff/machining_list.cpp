#include "outputs/handoff/machining_list.h"

#include <algorithm>
#include <cmath>

#include "making/corners.h"
#include "outputs/data/bill_files.h"
#include "outputs/data/notice.h"
#include "outputs/handoff/fits.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::handoff {
namespace {

using papers::Feature;

struct Line {
  std::string item, part, set_up, face, feature, shape;
  std::string diameter, length, width, depth, through, x, y, z, fit, with, low, high, radius, cutter, remark, notice;
};

std::string number(double mm) { return units::write_number(mm, 4); }

std::string csv(const Line& l) {
  std::string text;
  for (const std::string* field : {&l.item, &l.part, &l.set_up, &l.face, &l.feature, &l.shape, &l.diameter, &l.length, &l.width, &l.depth, &l.through, &l.x, &l.y, &l.z, &l.fit, &l.with, &l.low, &l.high, &l.radius, &l.cutter, &l.remark, &l.notice}) {
    if (field != &l.item) text += ',';
    text += data::csv_field(*field);
  }
  return text + "\r\n";
}

constexpr std::string_view heading =
    "item,part,set_up,face,feature,shape,diameter_mm,length_mm,width_mm,depth_mm,through,x_mm,y_mm,z_mm,fit,fits_with,"
    "lower_deviation_mm,upper_deviation_mm,smallest_inside_radius_mm,largest_cutter_mm,remark,notice\r\n";

/// What is done to a part without a place on a face; empty for what has one, and for marks and treatment.
struct ShapeWord {
  std::string_view operator()(const parts::SawFlat&) const { return "sawn flat"; }
  std::string_view operator()(const parts::Turn&) const { return "turned"; }
  std::string_view operator()(const parts::Grind&) const { return "ground flat"; }
  std::string_view operator()(const parts::Ease&) const { return "eased edge"; }
  std::string_view operator()(const parts::CutThread&) const { return "thread"; }
  std::string_view operator()(const parts::Drill&) const { return {}; }
  std::string_view operator()(const parts::Rout&) const { return {}; }
  std::string_view operator()(const parts::CutOut&) const { return {}; }
  std::string_view operator()(const parts::CutTo&) const { return {}; }
  std::string_view operator()(const parts::Print&) const { return {}; }
  std::string_view operator()(const parts::Mark&) const { return {}; }
  std::string_view operator()(const parts::Treat&) const { return {}; }
};

std::string_view shape_of(const Feature& f) {
  switch (f.kind) {
    case Feature::Kind::hole: return "hole";
    case Feature::Kind::recess: return f.diameter_mm ? "round recess" : "recess";
    case Feature::Kind::cut_out: return f.diameter_mm ? "round opening" : "opening";
    case Feature::Kind::outline: break;
  }
  return "outline";
}

class Listing {
 public:
  Listing(const Facts& facts, std::span<const Machined> parts) : facts_(facts), parts_(parts), notice_(data::failing_notice(facts.findings)) {}

  std::string text() const {
    std::string all(heading);
    for (const Machined& part : parts_) {
      int number_of = 0;
      for (const SetUp& set_up : part.set_ups) {
        if (set_up.face.features.empty()) continue;
        ++number_of;
        for (const Feature& f : set_up.face.features)
          if (!f.from_behind) all += csv(line(part, set_up, number_of, f));
      }
      for (const parts::Operation& operation : part.work->operations) {
        const std::string_view shape = std::visit(ShapeWord{}, operation.work);
        if (!shape.empty()) all += csv(line_without_place(part, operation, shape));
      }
    }
    return all;
  }

 private:
  Line begun(const Machined& part, const std::string& feature, std::string_view shape) const {
    Line line;
    line.item = part.item;
    line.part = part.work->part->name;
    line.feature = feature;
    line.shape = shape;
    line.notice = notice_;
    return line;
  }

  Line line_without_place(const Machined& part, const parts::Operation& operation, std::string_view shape) const {
    Line line = begun(part, operation.name, shape);
    if (const auto* ease = std::get_if<parts::Ease>(&operation.work)) line.width = number(ease->leg_mm), line.face = ease->face.name;
    if (const auto* thread = std::get_if<parts::CutThread>(&operation.work)) {
      line.depth = number(thread->length_mm);
      line.face = thread->face.name;
      line.remark = thread->designation;
    }
    return line;
  }

  Line line(const Machined& part, const SetUp& set_up, int number_of, const Feature& f) const {
    Line line = begun(part, f.operation->name, shape_of(f));
    line.set_up = std::to_string(number_of);
    line.face = set_up.face.face.name;
    const double through = part.work->through_mm(set_up.face.face, f.centre);
    const bool whole = !f.depth || *f.depth >= through - 1e-6;
    line.depth = number(whole ? through : *f.depth);
    line.through = whole ? "through" : "blind";
    line.x = number(f.centre.x);
    line.y = number(f.centre.y);
    line.z = number(geometry::to_inside(set_up.table, set_up.face.face.datum.origin_mm)[2]);
    const geometry::Box box = geometry::box(f.profile.outer.front());
    if (f.diameter_mm) line.diameter = number(*f.diameter_mm);
    else line.length = number(box.high.x - box.low.x), line.width = number(box.high.y - box.low.y);
    add_fit(line, part, set_up, f, whole ? through : *f.depth);
    add_corner(line, f);
    if (set_up.side != SetUp::Side::first) line.remark += (line.remark.empty() ? "" : "; ") + std::string("part ") + std::string(word(set_up.side));
    if (f.flat && !whole) line.remark += (line.remark.empty() ? "" : "; ") + std::string("flat floor");
    return line;
  }

  void add_fit(Line& line, const Machined& part, const SetUp& set_up, const Feature& f, double depth_mm) const {
    const geometry::Box box = geometry::box(f.profile.outer.front());
    const double size_mm = std::min(box.high.x - box.low.x, box.high.y - box.low.y);
    HoleFit fit{"", "", -tolerance_mm(Grade::general, size_mm), tolerance_mm(Grade::general, size_mm)};
    if (f.diameter_mm) {
      const geometry::Placement on_face = geometry::combined(set_up.face.face.datum, {{f.centre.x, f.centre.y, 0}, {1, 0, 0}, {0, 0, 1}});
      fit = hole_fit(facts_, part.work->of, geometry::combined(part.job.in_part, on_face), *f.diameter_mm, depth_mm);
    }
    line.fit = fit.fit;
    line.with = fit.with;
    line.low = number(fit.low_mm);
    line.high = number(fit.high_mm);
  }

  /// The cutter that reaches every inside corner. In a round hole any cutter below its diameter does.
  void add_corner(Line& line, const Feature& f) const {
    const auto radius = making::smallest_inside_radius_mm(f.profile, f.kind != Feature::Kind::outline);
    if (!radius) return;
    line.radius = number(*radius);
    line.cutter = number(2 * *radius);
    if (*radius < 1e-9) {
      line.cutter.clear();
      line.remark = "sharp inside corner: no round cutter reaches it, finish it by hand";
      return;
    }
    for (const making::Corner& corner : facts_.work.corners)
      if (!corner.reached && corner.part == line.part && corner.operation == line.feature)
        line.remark = "the thinnest cutter at hand, " + number(2 * corner.cutter_radius_mm) + " mm, does not reach this corner";
  }

  const Facts& facts_;
  std::span<const Machined> parts_;
  std::string notice_;
};

}  // namespace

std::string machining_csv(const Facts& facts, std::span<const Machined> parts) { return Listing(facts, parts).text(); }

}  // namespace visewright::outputs::handoff
