#include "outputs/papers/shop_lists.h"

#include <algorithm>

#include "making/making.h"
#include "outputs/data/stock_words.h"
#include "outputs/papers/board_picture.h"
#include "outputs/papers/document.h"
#include "outputs/papers/order_of_work.h"
#include "outputs/papers/words.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

using Rows = std::vector<std::vector<std::string>>;

std::string sizes(const std::vector<double>& mm, units::LengthUnit show) {
  std::string text;
  for (const double each : mm) text += (text.empty() ? "" : " × ") + data::cell(each, show);
  return text;
}
std::string joined(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}
std::string unit(const Facts& facts) { return std::string(data::unit_word(facts.show)); }

class Lists {
 public:
  Lists(const Facts& facts, const making::Work& work) : facts_(facts), work_(work) {}

  std::vector<File> files() {
    add_cut_list();
    add_hardware();
    add_welds();
    add_prints();
    add(order_of_work(facts_, work_), "order-of-work", "the order of work, with cautions");
    return std::move(files_);
  }

 private:
  void add(const Document& d, const std::string& name, const std::string& what) {
    files_.push_back({"papers/" + name + ".md", markdown(d), what, std::nullopt});
    files_.push_back({"papers/" + name + ".html", html(d), what + ", to read and print", std::nullopt});
  }

  void add_cut_list() {
    const making::Cutting& cutting = work_.cutting;
    if (cutting.pieces.empty()) return;
    Document d = document(facts_, "Cut list");
    d.blocks.emplace_back(Paragraph{"Sizes to saw, in " + unit(facts_) + ", with the saw's kerf between the pieces. Measure each board before sawing; a board with cracks at its ends is shorter than it looks."});
    Rows rows{{"part", "stock", "material", "length", "width", "thickness", "grain"}};
    for (const making::NeededPiece& p : cutting.pieces) {
      const double thickness = p.thickness_mm > 0 ? p.thickness_mm : p.section_mm;
      rows.push_back({p.part, p.kind, p.material, data::cell(p.size_mm[0], facts_.show), p.size_mm[1] > 0 ? data::cell(p.size_mm[1], facts_.show) : p.section_mm > 0 && p.thickness_mm > 0 ? data::cell(p.section_mm, facts_.show) : "",
                      data::cell(thickness, facts_.show), p.grain ? "along the length" : ""});
    }
    d.blocks.emplace_back(Table{std::move(rows)});
    d.blocks.emplace_back(Heading{2, "Where each piece is cut from"});
    for (std::size_t i = 0; i < cutting.stock.size(); ++i) {
      const making::CutStock& stock = cutting.stock[i];
      const std::string title = std::to_string(i + 1) + ". " + stock.kind + ", " + stock.material + ", " + sizes(stock.size_mm, facts_.show) + " " + unit(facts_) + (stock.on_hand ? ", on hand" : ", to buy");
      const std::string file = "stock/stock-" + std::to_string(i + 1) + ".svg";
      files_.push_back({"papers/" + file, board_picture(facts_, stock), "where the pieces lie on stock " + std::to_string(i + 1), std::nullopt});
      d.blocks.emplace_back(Figure{file, title});
      std::string left;
      for (const std::vector<double>& rest : stock.left_mm) left += (left.empty() ? "" : "; ") + sizes(rest, facts_.show);
      if (!left.empty()) d.blocks.emplace_back(Paragraph{"Left over: " + left + " " + unit(facts_) + "."});
    }
    add(d, "cut-list", "what to saw, and from what");
  }

  void add_hardware() {
    if (work_.cutting.to_buy.empty()) return;
    Document d = document(facts_, "Hardware and stock to buy");
    d.blocks.emplace_back(Paragraph{"Measure nuts, washers, rod and bearings before cutting wood to them; makes differ. Do not mix hot-dip galvanized parts with plain ones: their threads are cut to other sizes."});
    Rows rows{{"kind", "what", "size, " + unit(facts_), "number", "for"}};
    for (const making::Purchase& p : work_.cutting.to_buy) rows.push_back({p.kind, p.material, sizes(p.size_mm, facts_.show), std::to_string(p.count), joined(p.parts)});
    d.blocks.emplace_back(Table{std::move(rows)});
    add(d, "hardware", "what to buy");
  }

  void add_welds() {
    if (work_.welds.empty()) return;
    Document d = document(facts_, "Weld list");
    d.blocks.emplace_back(CautionText{"Weld only with training and the right guards for eyes, skin and lungs. Grind plating off first: its fumes are poisonous. Keep fire from sawdust, and look again an hour later."});
    Rows rows{{"part", "number off", "joins", "beads on each", "leg, " + unit(facts_), "throat, " + unit(facts_), "length, " + unit(facts_), "ground flush"}};
    for (const making::WeldItem& w : work_.welds)
      rows.push_back({w.part, std::to_string(w.parts), joined(w.joins), std::to_string(w.beads), data::cell(w.leg_mm, facts_.show), data::cell(w.throat_mm, facts_.show), data::cell(w.length_mm, facts_.show), w.ground_flush ? "yes" : "no"});
    d.blocks.emplace_back(Table{std::move(rows)});
    add(d, "welds", "beads to weld");
  }

  void add_prints() {
    if (work_.prints.empty()) return;
    Document d = document(facts_, "Print list");
    Rows rows{{"part", "number", "material", "how it lies", "size on the bed, " + unit(facts_), "walls", "infill", "holes drawn larger by, " + unit(facts_), "mass of one, g"}};
    for (const making::PrintItem& p : work_.prints)
      rows.push_back({p.part, std::to_string(p.count), p.material, p.orientation, sizes(p.size_mm, facts_.show), std::to_string(p.wall_lines), units::write_number(100 * p.infill, 0) + " %",
                      data::cell(p.hole_allowance_mm, facts_.show), units::write_number(1000 * p.mass_kg, 0)});
    d.blocks.emplace_back(Table{std::move(rows)});
    d.blocks.emplace_back(Paragraph{"The allowance is in the print files alone; the solid model has the true holes. Print one gear of each kind first and try the hardware in it."});
    add(d, "prints", "what to print, and how");
  }

  const Facts& facts_;
  const making::Work& work_;
  std::vector<File> files_;
};

}  // namespace

base::Result<std::vector<File>> write_shop_lists(const Facts& facts, base::Watcher& watcher) {
  watcher.step("writing the shop lists", 0.98);
  if (facts.plan.screws.holes.empty()) return std::vector<File>{};
  return Lists(facts, facts.work).files();
}

}  // namespace visewright::outputs::papers
