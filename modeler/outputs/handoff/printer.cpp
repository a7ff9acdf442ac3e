#include <algorithm>
#include <cmath>

#include "formulas/spur_gear.h"
#include "outputs/data/items.h"
#include "outputs/data/notice.h"
#include "outputs/facets/stl.h"
#include "outputs/facets/three_mf.h"
#include "outputs/handoff/pack.h"
#include "outputs/handoff/printing.h"
#include "outputs/papers/document.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::handoff {
namespace {

using papers::CautionText;
using papers::Document;
using papers::Paragraph;
using papers::Table;

/// What most printers carry, mm; and how many lines the tip of a tooth wants to be wide. Common practice, no source.
constexpr double usual_nozzle_mm = 0.4, lines_in_tip = 2;

class Printing {
 public:
  explicit Printing(const Facts& facts) : facts_(facts), sheet_(papers::document(facts, "Print list: " + std::string(facts.title))) {}

  Pack pack() {
    for (const making::Workpiece& work : facts_.work.pieces) {
      if (work.made || work.form != making::Form::printed || work.piece == nullptr) continue;
      for (const parts::Operation& operation : work.piece->operations)
        if (const auto* print = std::get_if<parts::Print>(&operation.work)) add(work, *print);
    }
    if (printed_.rows.size() > 1) add_test_piece();
    if (printed_.rows.size() > 1) finish_sheet();
    return {"For whoever prints the gears",
            "STL and 3MF hold the same bodies; take whichever the printer's program reads. They lie as they are printed. Print the test piece first and try the bearing, the nut and a tooth in it.",
            std::move(files_)};
  }

 private:
  std::string mm(double value) const { return papers::length(value, facts_.show); }
  double chamfer() const { return first_layer_chamfer_mm(facts_.plan.train.module.mm()); }

  std::string item_of(const parts::Part& part) const {
    for (const data::Item& item : data::items(facts_.assembly))
      if (item.part == &part) return item.number;
    return {};
  }

  void add(const making::Workpiece& work, const parts::Print& print) {
    const std::string item = item_of(*work.part);
    const auto body = printed_body(print, facts_.plan.accuracy.hole_allowance.mm(), chamfer(), work.part->name);
    if (!body) {
      // The part itself is sound; only this way of drawing it is not. The sheet says so, the STEP file remains.
      failed_.push_back(work.part->name + " is not here: " + body.error().front().wrong + ". Print it from the STEP file and enlarge its holes.");
      return;
    }
    const std::string stem = file_stem(item, work.part->name);
    write(*body, stem, item, work.part->name, *work.material, work.of);
    const auto listed = std::find_if(facts_.work.prints.begin(), facts_.work.prints.end(), [&](const making::PrintItem& p) { return p.part == work.part->name; });
    std::string how = "as drawn";
    if (listed != facts_.work.prints.end())
      how = listed->orientation + ", " + std::to_string(listed->wall_lines) + " walls, " + units::write_number(100 * listed->infill, 0) + " % filled";
    printed_.rows.push_back({item, work.part->name, std::to_string(work.count), work.material->name, how, stem});
    add_holes(work.part->name, *body);
  }

  void add_test_piece() {
    const auto body = test_piece(facts_.plan, chamfer());
    if (!body) {
      failed_.push_back("There is no test piece: " + body.error().front().wrong + ".");
      return;
    }
    write(*body, "test-piece", "", "test piece", *facts_.plan.train.material, std::nullopt);
    printed_.rows.push_back({"", "test piece", "1", facts_.plan.train.material->name, "print it first, same settings", "test-piece"});
    add_holes("test piece", *body);
  }

  void write(const PrintedBody& body, const std::string& stem, const std::string& item, const std::string& name, const standards::MaterialRow& material, std::optional<std::uint32_t> part) {
    const std::string path = "handoff/printer/" + stem, program = "visewright " + std::string(facts_.program_version);
    std::string remark = "Holes are drawn larger by " + mm(facts_.plan.accuracy.hole_allowance.mm()) + "; do not enlarge them again.";
    if (const std::string notice = data::failing_notice(facts_.findings); !notice.empty()) remark = notice + ". " + remark;
    files_.push_back({path + ".stl", facets::stl(body.skin.mesh, program + " " + name), name + " to print, facets in millimetres", part});
    files_.push_back({path + ".3mf", facets::three_mf(body.skin.mesh, {name, item, material.name, material.red, material.green, material.blue, remark, program}),
                      name + " to print, with unit, name and material", part});
  }

  void add_holes(const std::string& name, const PrintedBody& body) {
    for (const PrintedHole& hole : body.holes)
      holes_.rows.push_back({name, hole.round ? "round" : "hexagon, across flats", mm(hole.from_mm) + " to " + mm(hole.to_mm), mm(hole.designed_mm), mm(hole.drawn_mm)});
    chamfer_ = std::min(chamfer_, body.skin.chamfer_mm);
  }

  void finish_sheet() {
    const double allowance = facts_.plan.accuracy.hole_allowance.mm();
    add_cautions();
    sheet_.blocks.push_back(printed_);
    sheet_.blocks.push_back(Paragraph{"Holes as designed (as in the STEP file) and as drawn in the print files, which are larger by " + mm(allowance) +
                                      " because printed holes come out small. Measure the test piece; if its holes are off, change hole_allowance in the design by the difference. Heights count from the bed."});
    sheet_.blocks.push_back(holes_);
    sheet_.blocks.push_back(Paragraph{chamfer_ > 0 ? "The edges on the bed are broken by " + mm(chamfer_) + ", since the first layer spreads."
                                                   : "The edges on the bed are sharp, since the teeth are too fine to be broken: file off what the first layer spreads."});
    sheet_.blocks.push_back(Paragraph{"The flanks stray less than " + mm(0.005) + " from the involute."});
    files_.push_back({"handoff/printer/print-list.md", papers::markdown(sheet_), "what to print, how often and how; sizes of holes as designed and as drawn", std::nullopt});
  }

  double narrowest_tip_mm() const {
    double least = 1e9;
    const layout::Train& train = facts_.plan.train;
    for (const layout::Gear& gear : train.gears)
      least = std::min(least, formulas::tip_thickness_mm({gear.teeth.value, train.module.mm(), units::in_radians(train.pressure_angle.value), gear.shift.value, gear.thinning.mm()}));
    return least;
  }

  void caution(std::string text) { sheet_.blocks.push_back(CautionText{std::move(text)}); }

  void add_cautions() {
    for (const std::string& text : failed_) caution(text);
    const auto& train = facts_.design.train;
    if (!train.material) caution("The design names no plastic; " + facts_.plan.train.material->name + " is assumed. Give train.material.");
    if (!train.made_by) caution("The design does not say how the gears are made; printing is assumed. Give train.made_by.");
    else if (train.made_by->value != "printed") caution("The design wants the gears " + train.made_by->value + "; these files are for a printer all the same.");
    const double tip = narrowest_tip_mm(), widest = tip / lines_in_tip;
    const std::string nozzle = "The tips of the teeth are " + mm(tip) + " wide and want two lines: a nozzle of at most " + mm(widest) + ".";
    if (widest < usual_nozzle_mm - 1e-9)
      caution(nozzle + " The usual one of " + mm(usual_nozzle_mm) + " is too wide; take a finer one or a larger module. Common practice.");
    else
      sheet_.blocks.push_back(Paragraph{nozzle + " The usual one of " + mm(usual_nozzle_mm) + " will do. Common practice."});
    for (const making::OnBed& on : facts_.work.beds) {
      if (on.bed != making::OnBed::Bed::print || std::llround(on.scale * 1e9) >= 1'000'000'000) continue;
      caution(on.part + " is larger than the bed, which holds " + units::write_number(100 * on.scale, 0) + " % of it: have it printed on a larger printer, or take fewer teeth, a smaller module or a smaller face width.");
    }
  }

  const Facts& facts_;
  Document sheet_;
  Table printed_{{{"item", "part", "count", "material", "how", "file"}}};
  Table holes_{{{"part", "hole", "at height", "designed", "drawn"}}};
  std::vector<std::string> failed_;
  std::vector<File> files_;
  double chamfer_ = 1e9;
};

}  // namespace

base::Result<Pack> printer_pack(const Facts& facts, base::Watcher&) { return Printing(facts).pack(); }

}  // namespace visewright::outputs::handoff
