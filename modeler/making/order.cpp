#include "making/order.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "making/outlines.h"
#include "units/text.h"

namespace visewright::making {
namespace {

using geometry::Box;

/// Operations that stand for what a bought piece has already.
constexpr std::string_view comes_with_the_piece = "lightening hole";

std::string sizes(std::vector<double> mm, units::LengthUnit unit) {
  std::string text;
  for (const double size : mm) text += (text.empty() ? "" : " × ") + units::write_length(units::mm(size), unit);
  return text;
}

std::vector<double> longest_first(const geometry::Vector& size) {
  std::vector<double> list(size.begin(), size.end());
  std::sort(list.begin(), list.end(), std::greater<>());
  return list;
}

struct PlaceOf {
  Step& step;

  void on(const parts::Face& face, geometry::Point at) const {
    step.face = face.name;
    step.at_mm = at;
  }
  void outlined(const parts::Face& face, const geometry::Profile& outline) const {
    if (const auto round = as_circle(outline)) {
      on(face, round->centre);
      step.size_mm = 2 * round->radius_mm;
      return;
    }
    Box all = geometry::box(outline.outer.front());
    for (const geometry::Loop& loop : outline.outer) {
      const Box one = geometry::box(loop);
      all = {{std::min(all.low.x, one.low.x), std::min(all.low.y, one.low.y)},
             {std::max(all.high.x, one.high.x), std::max(all.high.y, one.high.y)}};
    }
    on(face, 0.5 * (all.low + all.high));
    const auto [narrow, wide] = std::minmax({all.high.x - all.low.x, all.high.y - all.low.y});
    step.size_mm = narrow;
    step.length_mm = wide;
  }

  void operator()(const parts::Drill& d) const {
    on(d.face, d.at);
    step.size_mm = step.tool.wanted_mm;
    step.depth_mm = d.depth;
    step.flat_floor = d.flat;
  }
  void operator()(const parts::Rout& r) const {
    outlined(r.face, r.outline);
    step.depth_mm = r.depth;
  }
  void operator()(const parts::CutOut& c) const { outlined(c.face, c.outline); }
  void operator()(const parts::CutTo& c) const { outlined(c.face, c.outline); }
  void operator()(const parts::SawFlat&) const {}
  void operator()(const parts::Turn& t) const {
    const Box box = geometry::box(t.half_section.outer.front());
    step.size_mm = 2 * box.low.x;
    step.along_mm = {box.low.y, box.high.y};
  }
  void operator()(const parts::Grind&) const {}
  void operator()(const parts::Ease& e) const {
    step.face = e.face.name;
    step.size_mm = e.leg_mm;
  }
  void operator()(const parts::CutThread& t) const {
    on(t.face, t.at);
    step.depth_mm = t.length_mm;
  }
  void operator()(const parts::Print&) const {}
  void operator()(const parts::Mark& m) const { on(m.face, m.at); }
  void operator()(const parts::Treat&) const {}
};

/// The face that an operation goes in from, if it goes right through there.
struct ThroughFace {
  const parts::Face* operator()(const parts::Drill& d) const { return d.depth ? nullptr : &d.face; }
  const parts::Face* operator()(const parts::Rout& r) const { return r.depth ? nullptr : &r.face; }
  const parts::Face* operator()(const parts::CutOut& c) const { return &c.face; }
  const parts::Face* operator()(const parts::CutTo& c) const { return &c.face; }
  const parts::Face* operator()(const parts::SawFlat&) const { return nullptr; }
  const parts::Face* operator()(const parts::Turn&) const { return nullptr; }
  const parts::Face* operator()(const parts::Grind&) const { return nullptr; }
  const parts::Face* operator()(const parts::Ease&) const { return nullptr; }
  const parts::Face* operator()(const parts::CutThread&) const { return nullptr; }
  const parts::Face* operator()(const parts::Print&) const { return nullptr; }
  const parts::Face* operator()(const parts::Mark&) const { return nullptr; }
  const parts::Face* operator()(const parts::Treat&) const { return nullptr; }
};

class Foreman {
 public:
  Foreman(const layout::Plan& plan, const OwnedTools& owned, const standards::Catalogue& catalogue)
      : plan_(plan), owned_(owned), catalogue_(catalogue) {}

  PartSteps steps_of(const Workpiece& work) const {
    PartSteps part{work.part->name,
                   work.material == nullptr ? "" : work.material->name,
                   work.of,
                   work.count,
                   work.piece == nullptr,
                   {}};
    if (work.piece != nullptr) {
      if (auto first = std::visit(StockStep{plan_, work}, work.piece->stock)) part.steps.push_back(std::move(*first));
    } else {
      add_joins(work, part.steps);
    }
    for (const std::size_t i : work_order(work))
      if (!work.operations[i].name.starts_with(comes_with_the_piece))
        part.steps.push_back(worked(work.operations[i], work));
    return part;
  }

 private:
  /// The piece as it comes to the bench; nothing for what is printed, stands already or is used as it is bought.
  struct StockStep {
    const layout::Plan& plan;
    const Workpiece& work;

    static Step step(std::string text, std::initializer_list<std::string_view> names) {
      Step s;
      s.kind = Step::Kind::stock;
      s.text = std::move(text);
      for (const std::string_view name : names) s.cautions.push_back(caution(name));
      return s;
    }
    std::optional<Step> operator()(const parts::Board& b) const {
      const std::vector<double> finished{b.size_mm[0], std::max(b.size_mm[1], b.size_mm[2]),
                                         std::min(b.size_mm[1], b.size_mm[2])};
      return step("saw " + sizes({b.rough_mm.begin(), b.rough_mm.end()}, plan.unit) +
                      ", grain along the length, then plane to " + sizes(finished, plan.unit),
                  {"saw", "wood dust"});
    }
    std::optional<Step> operator()(const parts::Sheet& s) const {
      return step(
          "cut to " + sizes(longest_first(s.size_mm), plan.unit) + (s.grain ? ", face grain along the length" : ""),
          {"saw"});
    }
    std::optional<Step> operator()(const parts::Rod& r) const {
      return step("saw from rod ⌀" + sizes({r.diameter_mm}, plan.unit) + ", face both ends to " +
                      sizes({r.length_mm}, plan.unit),
                  {});
    }
    std::optional<Step> operator()(const parts::Bar& b) const {
      return step("saw from bar, file the ends to " + sizes(longest_first(b.size_mm), plan.unit), {});
    }
    std::optional<Step> operator()(const parts::HexBar& b) const {
      return step("saw from hexagon bar " + sizes({b.across_flats_mm}, plan.unit) +
                      " across flats, face both ends to " + sizes({b.length_mm}, plan.unit),
                  {});
    }
    std::optional<Step> operator()(const parts::Bought& b) const {
      const auto is_sawn = [&](const standards::NutRow* nut) {
        return nut != nullptr && nut->designation == b.designation;
      };
      if (b.share_of < 2 || (!is_sawn(plan.rear_nut.nut[0]) && !is_sawn(plan.rear_nut.nut[1]))) return std::nullopt;
      return step("saw the " + b.designation + " across into " + std::to_string(b.share_of) +
                      " equal pieces, face the cuts square to the thread to " +
                      sizes({plan.rear_nut.length.mm()}, plan.unit) + ", run a tap or the rod through",
                  {"tapping"});
    }
    std::optional<Step> operator()(const parts::Printed&) const { return std::nullopt; }
    std::optional<Step> operator()(const parts::Offcut& o) const {
      return step("cut " + sizes({o.shape.to_mm - o.shape.from_mm}, plan.unit) + " from the offcut of the " + o.of,
                  {"saw"});
    }
    std::optional<Step> operator()(const parts::Existing&) const { return std::nullopt; }
  };

  static void add_joins(const Workpiece& work, std::vector<Step>& steps) {
    const auto& built = std::get<parts::BuiltUp>(work.part->made);
    for (const parts::Joint& joint : built.joints) {
      Step step;
      step.kind = Step::Kind::join;
      std::string names;
      for (const parts::Member& member : built.members) names += (names.empty() ? "" : " + ") + member.part->name;
      step.text = joined_text(joint) + names;
      for (const std::string_view name : join_cautions(joint.kind)) step.cautions.push_back(caution(name));
      steps.push_back(std::move(step));
    }
  }

  static std::string joined_text(const parts::Joint& joint) {
    switch (joint.kind) {
      case parts::Joint::Kind::glued: return "glue and clamp: ";
      case parts::Joint::Kind::welded:
        return "weld, " + std::to_string(joint.beads.size()) + (joint.beads.size() == 1 ? " bead: " : " beads: ");
      case parts::Joint::Kind::pressed: return "press together: ";
      case parts::Joint::Kind::pinned: return "pin together: ";
      case parts::Joint::Kind::screwed: return "screw together: ";
    }
    return "";
  }

  static std::vector<std::string_view> join_cautions(parts::Joint::Kind kind) {
    switch (kind) {
      case parts::Joint::Kind::glued: return {"glue"};
      case parts::Joint::Kind::welded: return {"welding", "plated steel", "weld heat"};
      case parts::Joint::Kind::pressed: return {"press"};
      case parts::Joint::Kind::pinned:
      case parts::Joint::Kind::screwed: return {};
    }
    return {};
  }

  Step worked(const parts::Operation& operation, const Workpiece& work) const {
    Step step;
    step.kind = Step::Kind::operation;
    step.text = operation.name;
    step.operation = &operation;
    step.tool = choose_tool(tool_for(operation, work, catalogue_), owned_, catalogue_);
    std::visit(PlaceOf{step}, operation.work);
    if (step.along_mm)
      step.along_mm = {std::max((*step.along_mm)[0], work.low_mm[2]), std::min((*step.along_mm)[1], work.high_mm[2])};
    if (const parts::Face* face = std::visit(ThroughFace{}, operation.work))
      step.through_mm = step.at_mm ? work.through_mm(*face, *step.at_mm) : work.through_mm(*face);
    if (work.material == nullptr) return step;
    const bool turned = step.tool.kind == standards::ToolKind::lathe_tool;
    // A thread is cut as slowly as the lathe goes.
    if (!std::holds_alternative<parts::CutThread>(operation.work))
      step.speed = speed_for(step.tool.kind, turned ? work.high_mm[0] - work.low_mm[0] : step.tool.size_mm,
                             *work.material, catalogue_);
    step.cautions = cautions_for(step.tool.kind, *work.material);
    if (work.form == Form::existing) step.cautions.push_back(caution("bench work"));
    return step;
  }

  const layout::Plan& plan_;
  const OwnedTools& owned_;
  const standards::Catalogue& catalogue_;
};

}  // namespace

std::vector<PartSteps> order_of_work(const std::vector<Workpiece>& pieces, const layout::Plan& plan,
                                     const OwnedTools& owned, const standards::Catalogue& catalogue) {
  const Foreman foreman(plan, owned, catalogue);
  std::vector<PartSteps> all;
  for (const Workpiece& work : pieces) {
    if (work.made) continue;
    PartSteps steps = foreman.steps_of(work);
    if (!steps.steps.empty()) all.push_back(std::move(steps));
  }
  return all;
}

}  // namespace visewright::making
