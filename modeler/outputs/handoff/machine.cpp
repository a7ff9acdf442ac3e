#include <algorithm>
#include <cmath>
#include <memory>
#include <optional>
#include <span>

#include "outputs/data/notice.h"
#include "outputs/data/stock_words.h"
#include "outputs/exchange/step_products.h"
#include "outputs/handoff/machining_list.h"
#include "outputs/handoff/pack.h"
#include "outputs/papers/document.h"
#include "outputs/papers/dxf.h"
#include "outputs/papers/template_sheet.h"
#include "outputs/papers/words.h"

namespace visewright::outputs::handoff {
namespace {

using papers::CautionText;
using papers::Paragraph;

/// Hears the wish to stop and keeps the rest to itself: the job's own progress has been told already.
class Quiet final : public base::Watcher {
 public:
  explicit Quiet(const base::Watcher& watcher) : watcher_(watcher) {}
  void step(std::string_view, double) override {}
  void note(std::string_view) override {}
  [[nodiscard]] bool wants_stop() const noexcept override { return watcher_.wants_stop(); }

 private:
  const base::Watcher& watcher_;
};

/// Solids of pieces and wholes in their own frames: those of the vise where they stand there as they are, else made anew,
/// since work after the joint has not been done to a single piece yet.
class Solids {
 public:
  static base::Result<Solids> of(const Facts& facts, std::span<const Machined> machined, const base::Watcher& watcher) {
    Solids solids;
    std::vector<std::shared_ptr<const parts::Part>> anew;
    for (const Machined& one : machined) {
      const making::Workpiece& work = *one.work;
      const auto& whole = facts.assembly.parts[work.of];
      const bool stands = whole.get() == work.part;
      solids.places_.push_back({stands, stands ? work.of : anew.size()});
      if (!stands) anew.emplace_back(whole, work.part);  // keeps the whole that it is a member of
    }
    Quiet quiet(watcher);
    auto made = solids::SolidSet::of(anew, quiet);
    if (!made) return base::passed_on(std::move(made.error()));
    solids.anew_ = std::move(*made);
    solids.vise_ = facts.solids;
    return solids;
  }
  [[nodiscard]] std::vector<solids::BodySolid> bodies(std::size_t machined) const {
    const auto [stands, index] = places_[machined];
    const auto list = (stands ? *vise_ : *anew_).bodies(index);
    return {list.begin(), list.end()};
  }

 private:
  std::vector<std::pair<bool, std::size_t>> places_;
  std::optional<solids::SolidSet> anew_;
  const solids::SolidSet* vise_ = nullptr;
};

base::Result<std::string> step_file(const Facts& facts, const Machined& part, std::vector<solids::BodySolid> bodies) {
  const geometry::Placement to_table = geometry::inverse(part.set_ups.front().table);
  kernel::StepDocument document(exchange::header(facts, part.stem + ".step", "one part, datum corner at the origin, machining face up"));
  const auto on_table = [&](solids::BodySolid& body) -> const solids::BodySolid& {
    body.solid = kernel::moved(body.solid, to_table);
    return body;
  };
  if (bodies.size() == 1) {
    exchange::add(document, part.item, part.work->part->name, on_table(bodies.front()));
  } else {
    const auto whole = document.add_assembly(part.item, part.work->part->name);
    for (std::size_t i = 0; i < bodies.size(); ++i) {
      solids::BodySolid& body = bodies[i];
      const auto one = exchange::add(document, part.item + "-" + std::to_string(i + 1), body.name, on_table(body));
      document.place(whole, one, {}, body.name);
    }
  }
  return document.to_bytes(exchange::schema(facts));
}

/// What a machine follows, and the stock's edge to read by; words and marks stay on the templates.
papers::Sheet flat_sheet(const Facts& facts, const Machined& part, const SetUp& set_up) {
  const papers::Sheet full = papers::template_sheet(facts, set_up.face);
  papers::Sheet sheet;
  sheet.title = full.title;
  for (const papers::Curve& curve : full.curves) {
    const papers::Layer& layer = full.layers[curve.layer];
    const bool machined = layer.name.starts_with("HOLE") || layer.name.starts_with("RECESS") || layer.name.starts_with("CUT");
    if (!machined) continue;
    papers::Curve same = curve;
    same.layer = sheet.layer(layer.name, layer.pen, layer.meaning);
    sheet.curves.push_back(std::move(same));
  }
  const std::size_t stock = sheet.layer("STOCK", papers::Pen::read_only, "edge of the stock; nothing is cut along it");
  sheet.outline(stock, geometry::rectangle({0, 0}, {set_up.length_mm, set_up.width_mm}));
  const std::string notice = data::failing_notice(facts.findings);
  std::string words = part.item + " " + part.work->part->name + ", " + std::string(set_up.face.face.name) + ", " + std::string(word(set_up.side)) + "; mm; origin: low left corner of the stock";
  if (!notice.empty()) words += "; " + notice;
  sheet.write(stock, {0, -8}, words, 3.5);
  return sheet;
}

class Machining {
 public:
  explicit Machining(const Facts& facts) : facts_(facts), parts_(machined_parts(facts)) {}

  base::Result<Pack> pack(base::Watcher& watcher) {
    Pack pack{"For whoever has a CNC machine or a machine shop",
              "One STEP file a part: it lies on its datum face, the datum corner at the origin, the face with most work up. The DXF files hold the same work flat, with the depth in the name of the layer; the table lists every feature. Sizes are those of the finished part, without compensation for the cutter.",
              {}};
    const auto solids = Solids::of(facts_, parts_, watcher);
    if (!solids) return base::passed_on(solids.error());
    for (std::size_t at = 0; at < parts_.size(); ++at) {
      const Machined& part = parts_[at];
      if (watcher.wants_stop()) return base::fault(base::Cause::interrupted, "handoff", "stopped before all parts were written", "start again");
      auto step = step_file(facts_, part, solids->bodies(at));
      if (!step) return base::passed_on(std::move(step.error()));
      const std::string path = "handoff/cnc/" + part.stem, name = part.work->part->name;
      pack.files.push_back({path + ".step", std::move(*step), name + " as a solid, in machining position", part.work->of});
      for (std::size_t i = 0; i < part.set_ups.size(); ++i) {
        const SetUp& set_up = part.set_ups[i];
        if (set_up.face.features.empty() || !papers::takes_template(part.job)) continue;
        const std::string ending = i == 0 ? "" : "_" + papers::slug(std::string(word(set_up.side)) + " " + std::string(set_up.face.face.name));
        pack.files.push_back({path + ending + ".dxf", papers::dxf(flat_sheet(facts_, part, set_up)), name + ", " + std::string(set_up.face.face.name) + ", " + std::string(word(set_up.side)) + ": outlines by depth", part.work->of});
      }
    }
    if (parts_.empty()) return pack;
    pack.files.push_back({"handoff/cnc/machining.csv", machining_csv(facts_, parts_), "every feature: place from the datum corner, size, depth, fit and tolerance", std::nullopt});
    pack.files.push_back({"handoff/cnc/stock.md", sheet(), "stock to prepare, how often, how each part is held, and what a round cutter leaves", std::nullopt});
    return pack;
  }

 private:
  std::string mm(double value) const { return papers::length(value, facts_.show); }

  static std::string grain(const making::Workpiece& work) {
    if (work.piece == nullptr) return "";
    if (std::holds_alternative<parts::Board>(work.piece->stock)) return "along its length";
    const auto* sheet = std::get_if<parts::Sheet>(&work.piece->stock);
    return sheet != nullptr && sheet->grain ? "along its length" : "";
  }

  std::string allowance(const making::Workpiece& work, const data::StockWords& words) const {
    if (work.piece == nullptr) return "joined from the pieces before it";
    if (!words.rough_mm.empty()) return data::rough_cell(words, facts_.show);
    if (work.form == making::Form::sheet) return "finished size and a margin for holding down";
    if (work.form == making::Form::round || work.form == making::Form::bar)
      return "finished size, sawn " + data::cell(making::metal_cuts.piece_allowance_mm, facts_.show) + " longer";
    return "";
  }

  std::vector<std::string> row(const Machined& part) const {
    std::string set_ups;
    for (const SetUp& s : part.set_ups)
      if (!s.face.features.empty()) set_ups += (set_ups.empty() ? "" : "; ") + std::string(s.face.face.name) + ", " + std::string(word(s.side));
    if (set_ups.empty()) set_ups = "none: cut to size or turned";
    data::StockWords words;
    if (part.work->piece != nullptr) words = data::stock_words(part.work->piece->stock);
    return {part.stem, part.work->part->name, std::to_string(part.work->count), part.work->material->name,
            data::size_cell(words, facts_.show), allowance(*part.work, words), grain(*part.work), set_ups};
  }

  std::string sheet() const {
    papers::Document text = papers::document(facts_, "Parts to machine: " + std::string(facts_.title));
    text.blocks.push_back(CautionText{"Hold small and thin parts down well and stand clear of the cutter; wear eye and ear protection; take off the dust of panels and hardwood at the cutter. Sharp edges are left on metal. The maker's handbook of the machine comes first."});
    papers::Table table{{{"file", "part", "count", "material", "finished, " + std::string(data::unit_word(facts_.show)), "stock with allowance", "grain", "set-ups"}}};
    for (const Machined& part : parts_) table.rows.push_back(row(part));
    text.blocks.push_back(std::move(table));
    text.blocks.push_back(Paragraph{"Turned over: like a page, left to right; then the low left corner is the one that was low right before. On edge: the named face up. Every set-up has its own lines in machining.csv, and flat parts their own DXF, both from the low left corner of the stock as it lies then. What is sawn off another part, such as landing blocks, is not machined and has no file."});
    add_assumed(text);
    add_beds(text);
    add_corners(text);
    return papers::markdown(text);
  }

  /// Materials that the design leaves out.
  void add_assumed(papers::Document& text) const {
    std::string assumed;
    for (const reasons::Choice& choice : facts_.plan.ledger.choices()) {
      const bool material = choice.name.ends_with(".material") || choice.name.ends_with(".wood") || choice.name.ends_with(".core") || choice.name.ends_with(".cap");
      if (!material || choice.basis == reasons::Basis::given || choice.name == "train.material") continue;
      assumed += (assumed.empty() ? "" : ", ") + choice.name + " = " + choice.text;
    }
    if (!assumed.empty()) text.blocks.push_back(Paragraph{"Materials that the design leaves out are assumed: " + assumed + ". Give them there if others are to be used."});
  }

  void add_beds(papers::Document& text) const {
    const auto longest = std::max_element(parts_.begin(), parts_.end(), [](const Machined& a, const Machined& b) { return a.set_ups.front().length_mm < b.set_ups.front().length_mm; });
    text.blocks.push_back(Paragraph{"The longest part is " + longest->work->part->name + ", " + mm(longest->set_ups.front().length_mm) + " long. The design does not say how large the router's bed is: compare, and move the part along in two clampings where it does not fit."});
    for (const making::OnBed& on : facts_.work.beds)
      if (on.bed == making::OnBed::Bed::laser && std::llround(on.scale * 1e9) < 1'000'000'000)
        text.blocks.push_back(CautionText{on.part + " is larger than the laser's bed, which holds " + units::write_number(100 * on.scale, 0) + " % of it: have it cut elsewhere or saw it."});
  }

  void add_corners(papers::Document& text) const {
    for (const making::Corner& corner : facts_.work.corners)
      if (!corner.reached)
        text.blocks.push_back(CautionText{corner.part + ", " + corner.operation + ": the inside corner has a radius of " + mm(corner.radius_mm) + "; a round cutter of " + mm(2 * corner.cutter_radius_mm) + " leaves " + mm(corner.cutter_radius_mm) + ". Take a thinner cutter or finish it by hand."});
  }

  const Facts& facts_;
  std::vector<Machined> parts_;
};

}  // namespace

base::Result<Pack> machine_pack(const Facts& facts, base::Watcher& watcher) { return Machining(facts).pack(watcher); }

}  // namespace visewright::outputs::handoff
