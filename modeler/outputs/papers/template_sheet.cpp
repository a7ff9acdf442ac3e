#include "outputs/papers/template_sheet.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "geometry/joined.h"
#include "outputs/data/notice.h"
#include "outputs/data/stock_words.h"
#include "outputs/papers/labels.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::papers {
namespace {

using geometry::Box;
using geometry::Loop;
using geometry::Point;

constexpr double label_mm = 2.6, arm_mm = 5, crop_mm = 40;

bool flat(const parts::Stock& stock) {
  return std::holds_alternative<parts::Board>(stock) || std::holds_alternative<parts::Sheet>(stock) ||
         std::holds_alternative<parts::Bar>(stock) || std::holds_alternative<parts::Offcut>(stock) ||
         std::holds_alternative<parts::Existing>(stock) || std::holds_alternative<parts::Printed>(stock);
}

bool all_flat(const parts::Part& part) {
  if (const auto* piece = std::get_if<parts::Piece>(&part.made)) return flat(piece->stock);
  const auto& members = std::get<parts::BuiltUp>(part.made).members;
  return std::all_of(members.begin(), members.end(), [](const parts::Member& m) { return all_flat(*m.part); });
}

class Template {
 public:
  Template(const Facts& facts, const FaceJob& face) : facts_(facts), face_(face) {}

  Sheet made() {
    sheet_.title = face_.job->name + ", " + std::string(face_.face.name);
    draw_work();
    draw_stock();
    draw_neighbours();
    draw_marks();
    add_notice(facts_, sheet_);
    add_remarks();
    label_sides();
    label_holes();
    return std::move(sheet_);
  }

 private:
  std::size_t read_only() { return sheet_.layer("READ-ONLY", Pen::read_only, "for reading; nothing is cut along it"); }
  std::size_t mark() { return sheet_.layer("MARK", Pen::mark, "centres to punch, names and sizes"); }
  std::size_t cut_through() { return sheet_.layer("CUT-THROUGH", Pen::cut, "cut right through along the line"); }

  std::size_t layer_of(const Feature& f) {
    const bool whole = through(f, face_.thickness_mm);
    if (f.from_behind && !whole) return read_only();
    if (f.kind == Feature::Kind::hole) {
      const std::string size = length(*f.diameter_mm, facts_.show);
      if (whole) return sheet_.layer("HOLE-" + digits(*f.diameter_mm) + "-THROUGH", Pen::hole, "hole of " + size + " right through");
      return sheet_.layer("HOLE-" + digits(*f.diameter_mm) + "-DEEP-" + digits(*f.depth), Pen::hole,
                          "hole of " + size + ", " + length(*f.depth, facts_.show) + " deep");
    }
    if (f.kind == Feature::Kind::recess && !whole)
      return sheet_.layer("RECESS-" + digits(*f.depth) + "-DEEP", Pen::recess,
                          "recess " + length(*f.depth, facts_.show) + " deep with a flat floor");
    return cut_through();
  }

  /// Cut-outs are joined, so that nothing is cut twice; the joining keeps arcs as arcs.
  void draw_work() {
    std::vector<Loop> cut;
    for (const Feature& f : face_.features) {
      const std::size_t on = layer_of(f);
      const Waste waste = f.kind == Feature::Kind::outline ? Waste::outside : Waste::inside;
      for (const Loop& loop : f.profile.outer) {
        if (f.kind == Feature::Kind::cut_out) cut.push_back(loop);
        else sheet_.outline(on, loop, sheet_.layers[on].name == "READ-ONLY" ? Waste::none : waste);
      }
    }
    if (cut.empty()) return;
    const auto union_of = geometry::joined(cut);
    const std::size_t on = cut_through();
    if (!union_of) {
      for (const Loop& loop : cut) sheet_.outline(on, loop, Waste::inside);
      return;
    }
    for (const Loop& loop : union_of->outer) sheet_.outline(on, loop, Waste::inside);
    for (const Loop& loop : union_of->holes) sheet_.outline(on, loop, Waste::outside);
  }

  /// Whether the face stands in the frame of the shared patterns.
  bool screw_line() const {
    return std::any_of(face_.features.begin(), face_.features.end(), [](const Feature& f) { return f.operation->pattern == "screws"; });
  }
  bool has_outline() const {
    return std::any_of(face_.features.begin(), face_.features.end(), [](const Feature& f) { return f.kind == Feature::Kind::outline; });
  }
  bool exists() const { return face_.job->piece != nullptr && std::holds_alternative<parts::Existing>(face_.job->piece->stock); }
  bool sheet_stock() const { return face_.job->piece != nullptr && std::holds_alternative<parts::Sheet>(face_.job->piece->stock); }

  /// The stock's own edges: cut from a sheet, else there already. Of the bench only what is near the work.
  void draw_stock() {
    if (has_outline()) return;
    Box near = geometry::box(face_.features.front().profile.outer.front());
    for (const Feature& f : face_.features) near = around(near, geometry::box(f.profile.outer.front()));
    near = {near.low - Point{crop_mm, crop_mm}, near.high + Point{crop_mm, crop_mm}};
    for (const auto& [name, stock] : face_.blanks) {
      if (stock.high.x - stock.low.x < 1e-6 || stock.high.y - stock.low.y < 1e-6) continue;
      if (sheet_stock()) {
        sheet_.outline(cut_through(), geometry::rectangle(stock.low, stock.high), Waste::outside);
        shown_ = stock;
        continue;
      }
      if (!exists()) {
        sheet_.outline(read_only(), geometry::rectangle(stock.low, stock.high));
        shown_ = shown_.high == shown_.low ? stock : around(shown_, stock);
        continue;
      }
      shown_ = {{std::max(near.low.x, stock.low.x), std::max(near.low.y, stock.low.y)},
                {std::min(near.high.x, stock.high.x), std::min(near.high.y, stock.high.y)}};
      draw_edge_between(stock);
    }
  }

  /// The edges of a stock box, as far as they run inside what is shown.
  void draw_edge_between(const Box& stock) {
    const Point a = shown_.low, b = shown_.high;
    if (stock.low.y >= a.y) sheet_.line(read_only(), {a.x, stock.low.y}, {b.x, stock.low.y});
    if (stock.high.y <= b.y) sheet_.line(read_only(), {a.x, stock.high.y}, {b.x, stock.high.y});
    if (stock.low.x >= a.x) sheet_.line(read_only(), {stock.low.x, a.y}, {stock.low.x, b.y});
    if (stock.high.x <= b.x) sheet_.line(read_only(), {stock.high.x, a.y}, {stock.high.x, b.y});
  }

  /// Bars that lie on this face in the vise, such as the nut blocks: where to set them.
  void draw_neighbours() {
    const geometry::Placement here = geometry::inverse(in_vise(facts_.assembly, face_));
    for (const assembly::Pair& pair : facts_.assembly.declared) {
      if (!std::holds_alternative<assembly::Touching>(pair.fit)) continue;
      const auto& a = facts_.assembly.placed[pair.a];
      const auto& b = facts_.assembly.placed[pair.b];
      if (a.part != face_.job->part && b.part != face_.job->part) continue;
      const assembly::Placed& other = a.part == face_.job->part ? b : a;
      for (const Job& job : jobs(*facts_.assembly.parts[other.part], other.part))
        if (job.piece != nullptr && std::holds_alternative<parts::Bar>(job.piece->stock))
          draw_neighbour(job, geometry::combined(here, geometry::combined(other.shut, job.in_part)), other.name);
    }
  }
  void draw_neighbour(const Job& job, const geometry::Placement& at, const std::string& name) {
    const geometry::Vector a = geometry::to_outside(at, job.blanks.front().extent.low_mm),
                           b = geometry::to_outside(at, job.blanks.front().extent.high_mm);
    if (std::min(std::abs(a[2]), std::abs(b[2])) > 1e-6) return;
    const Point low{std::min(a[0], b[0]), std::min(a[1], b[1])}, high{std::max(a[0], b[0]), std::max(a[1], b[1])};
    const bool lies_on_it = low.x > shown_.low.x && low.y > shown_.low.y && high.x < shown_.high.x && high.y < shown_.high.y;
    if (!lies_on_it) return;
    sheet_.outline(read_only(), geometry::rectangle(low, high));
    sheet_.write(read_only(), low + Point{1.5, 1.5}, name, label_mm);
  }

  void draw_marks() {
    std::vector<Point> done;
    for (const Feature& f : face_.features) {
      if (f.kind == Feature::Kind::outline) continue;
      const auto same = [&](Point p) { return geometry::distance(p, f.centre) < 1e-6; };
      if (std::any_of(done.begin(), done.end(), same)) continue;
      done.push_back(f.centre);
      sheet_.cross(mark(), f.centre, arm_mm);
    }
    if (shown_.high == shown_.low) shown_ = box(sheet_);
    // The datum: the part's own axes, where they pass the face.
    const std::size_t on = read_only();
    if (shown_.low.x < 0 && shown_.high.x > 0) sheet_.line(on, {0, shown_.low.y - 6}, {0, shown_.high.y + 6});
    if (shown_.low.y < 0 && shown_.high.y > 0) sheet_.line(on, {shown_.low.x - 6, 0}, {shown_.high.x + 6, 0});
  }

  void add_remarks() {
    sheet_.remarks.push_back(face_words(facts_.assembly, face_));
    sheet_.remarks.push_back("Datum: " + across_name() + " and " + up_name() + ", both marked. Set them out first and lay the template on them." +
                             (screw_line() ? " They are the same on every part that shares these holes." : ""));
    if (face_.job->piece != nullptr) {
      const data::StockWords stock = data::stock_words(face_.job->piece->stock);
      std::string text = "Of " + stock.material + ", " + length(face_.thickness_mm, facts_.show) + " from this face to the far one.";
      if (!exists()) text += " Measure the stock: depths hold for this thickness.";
      sheet_.remarks.push_back(text);
    }
    std::string others;
    for (const parts::Operation& operation : face_.job->operations) {
      const bool shown = std::any_of(face_.features.begin(), face_.features.end(), [&](const Feature& f) { return f.operation == &operation; });
      if (!shown) others += (others.empty() ? "" : "; ") + operation.name;
    }
    if (!others.empty()) sheet_.remarks.push_back("Not on this sheet: " + others + ".");
  }

  void label_sides() {
    const geometry::Placement at = in_vise(facts_.assembly, face_);
    const geometry::Vector x = at.x_axis, y = at.y_axis();
    const auto word = [](const geometry::Vector& v, double sign) { return std::string(way_words(geometry::times(sign, v))); };
    const Point middle = 0.5 * (shown_.low + shown_.high);
    const std::size_t on = mark();
    sheet_.write(on, {shown_.low.x - 3, middle.y + 8}, word(x, -1), 3.5, Anchor::middle, units::pi / 2);
    sheet_.write(on, {shown_.high.x + 3, middle.y + 8}, word(x, 1), 3.5, Anchor::middle, -units::pi / 2);
    sheet_.write(on, {middle.x + 28, shown_.high.y + 3}, word(y, 1), 3.5);
    sheet_.write(on, {middle.x + 28, shown_.low.y - 6}, word(y, -1), 3.5);
    if (inside(shown_.low.x, shown_.high.x)) sheet_.write(on, {1.5, shown_.high.y + 3}, across_name(), label_mm);
    if (!inside(shown_.low.y, shown_.high.y)) {
      const double edge = std::abs(shown_.high.y) < std::abs(shown_.low.y) ? shown_.high.y + 1.2 : shown_.low.y - 3.4;
      sheet_.write(on, {shown_.low.x + 4, edge}, up_name(), label_mm);
    } else if (shown_.high.x - shown_.low.x > 200) {
      sheet_.write(on, {shown_.low.x + 1.5, 1.2}, up_name(), label_mm);
    }
    if (screw_line() && !exists()) sheet_.write(on, {shown_.low.x + 4, shown_.high.y + 3}, "reference edge: top", label_mm);
  }
  static bool inside(double low, double high) { return low < -1e-6 && high > 1e-6; }
  /// What x = 0 and y = 0 are on this face.
  std::string across_name() const {
    const geometry::Placement at = in_vise(facts_.assembly, face_);
    return std::abs(at.origin_mm[0]) < 1e-6 && std::abs(at.x_axis[0]) > 0.999 ? "middle line" : "datum line";
  }
  std::string up_name() const {
    if (!inside(shown_.low.y, shown_.high.y)) return "datum edge";
    return screw_line() ? "screw line" : "level datum line";
  }

  void label_holes() {
    std::vector<Label> labels;
    for (const Feature& f : face_.features) {
      if (f.kind == Feature::Kind::outline) continue;
      const auto same = [&](const Label& l) { return geometry::distance(l.at, f.centre) < 1e-6; };
      auto label = std::find_if(labels.begin(), labels.end(), same);
      if (label == labels.end()) {
        const Box b = geometry::box(f.profile.outer.front());
        label = labels.insert(labels.end(), {f.centre, (b.high.y - b.low.y) / 2, {name_of(f, facts_.plan)}});
      }
      label->clear_mm = std::max(label->clear_mm, f.diameter_mm.value_or(0) / 2);
      std::string text = size_words(f, face_.thickness_mm, facts_.show);
      if (!f.diameter_mm) {
        const Box b = geometry::box(f.profile.outer.front());
        text = length(b.high.x - b.low.x, facts_.show) + " × " + length(b.high.y - b.low.y, facts_.show) + ", " + text;
      }
      text += ": " + std::string(tool_words(f, facts_.plan.workshop.owned));
      if (std::find(label->lines.begin(), label->lines.end(), text) == label->lines.end()) label->lines.push_back(text);
    }
    place(sheet_, mark(), labels, label_mm, {shown_.low, shown_.high});
  }

  const Facts& facts_;
  const FaceJob& face_;
  Sheet sheet_;
  Box shown_{};
};

}  // namespace

bool takes_template(const Job& job) {
  if (job.piece != nullptr) return flat(job.piece->stock);
  return all_flat(*job.of);
}

void add_notice(const Facts& facts, Sheet& sheet) {
  std::string notice = data::failing_notice(facts.findings);
  if (!notice.empty()) sheet.remarks.insert(sheet.remarks.begin(), notice + ".");
}

Sheet template_sheet(const Facts& facts, const FaceJob& face) { return Template(facts, face).made(); }

}  // namespace visewright::outputs::papers
