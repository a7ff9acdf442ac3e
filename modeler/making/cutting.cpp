#include "making/cutting.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>

#include "making/lengths.h"
#include "making/rules.h"
#include "making/sheets.h"
#include "standards/designation.h"
#include "units/text.h"

namespace visewright::making {
namespace {

using layout::StockPiece;

/// What must be bought weighs so much more than what is on hand that no offcut is spared for it.
constexpr double bought_weight = 1000;
/// Lengths that bar and rod are sold in; threaded rod from a metre on. One long piece is rather bought than two short
/// ones: each counts as this much longer.
constexpr double sold_lengths_mm[] = {250, 500, 1000, 2000, 3000, 6000};
constexpr double shortest_thread_mm = 1000, each_piece_mm = 20;
constexpr int most_rows = 4;
constexpr double usable_mm = 30, step_mm = 10;

double up_to(double value, double step) { return step * std::ceil(value / step - 1e-9); }

/// Pieces that come from the same stock: rods and bars by material and section, panels by material.
using GroupKey = std::tuple<std::string, std::string, long long, long long>;

GroupKey key_of(const NeededPiece& p) {
  const bool panel = p.kind == "board" || p.kind == "sheet";
  const auto tenths = [](double mm) { return std::llround(mm * 10); };
  return {p.kind, p.material, panel ? 0 : tenths(p.section_mm), panel ? 0 : tenths(p.thickness_mm)};
}

class Yard {
 public:
  Yard(const std::vector<Workpiece>& work, const layout::Plan& plan) : work_(work), plan_(plan) {
    result_.pieces = needed_pieces(work, plan);
  }

  Cutting run() {
    std::vector<GroupKey> order;
    std::map<GroupKey, std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < result_.pieces.size(); ++i) {
      const GroupKey key = key_of(result_.pieces[i]);
      if (groups[key].empty()) order.push_back(key);
      groups[key].push_back(i);
    }
    for (const GroupKey& key : order) {
      const bool panel = std::get<0>(key) == "board" || std::get<0>(key) == "sheet";
      panel ? cut_panel_group(groups[key]) : cut_length_group(groups[key]);
    }
    buy_what_is_cut();
    buy_hardware();
    return std::move(result_);
  }

 private:
  const NeededPiece& piece(std::size_t i) const { return result_.pieces[i]; }

  std::vector<std::size_t> on_hand_for(const std::vector<std::size_t>& group) const {
    std::vector<std::size_t> found;
    for (std::size_t s = 0; s < plan_.workshop.stock.size(); ++s)
      if (std::any_of(group.begin(), group.end(),
                      [&](std::size_t i) { return suits(plan_.workshop.stock[s], piece(i)); }))
        found.push_back(s);
    return found;
  }

  // ---- lengths

  void cut_length_group(const std::vector<std::size_t>& group) {
    std::vector<LengthWanted> wanted;
    std::vector<std::vector<std::size_t>> waiting;  // pieces of each length
    double longest = 0;
    for (const std::size_t i : group) {
      const double length = piece(i).size_mm[0];
      longest = std::max(longest, length);
      const auto same = std::find_if(wanted.begin(), wanted.end(), [&](const LengthWanted& w) {
        return std::llround(w.length_mm * 1000) == std::llround(length * 1000);
      });
      const auto at = static_cast<std::size_t>(same - wanted.begin());
      if (same == wanted.end()) {
        wanted.push_back({length, 0});
        waiting.emplace_back();
      }
      ++wanted[at].count;
      waiting[at].push_back(i);
    }
    const std::vector<std::size_t> hand = on_hand_for(group);
    std::vector<LengthStock> stock;
    for (const std::size_t s : hand)
      stock.push_back({plan_.workshop.stock[s].size_mm[0], plan_.workshop.stock[s].count, 1});
    for (const double length : lengths_to_buy(longest, piece(group.front()).threaded))
      stock.push_back({length, -1, bought_weight * (1 + each_piece_mm / length)});
    const LengthPlan cuts = cut_lengths(wanted, stock, metal_cuts.kerf_mm, metal_cuts.end_trim_mm);
    CutBound bound = bound_of(piece(group.front()), group.size());
    std::vector<int> used(stock.size(), 0);
    for (const BarCut& bar : cuts.bars) {
      for (int n = 0; n < bar.times; ++n) {
        const bool bought = bar.stock >= hand.size();
        CutStock cut = opened(piece(group.front()), stock[bar.stock].length_mm,
                              bought ? std::nullopt : std::optional(hand[bar.stock]), ++used[bar.stock]);
        lay_out(cut, bar, waiting);
        bound.opened += stock[bar.stock].length_mm;
        bound.from_stock += bought ? 0 : static_cast<int>(cut.pieces.size());
        result_.stock.push_back(std::move(cut));
      }
    }
    for (const std::size_t i : group) bound.least += piece(i).size_mm[0];
    bound.proved = cuts.proved;
    close(bound, group, hand);
  }

  static std::vector<double> lengths_to_buy(double longest_mm, bool threaded) {
    std::vector<double> lengths;
    for (const double sold : sold_lengths_mm)
      if (longest_mm <= sold - metal_cuts.end_trim_mm && (!threaded || sold >= shortest_thread_mm))
        lengths.push_back(sold);
    if (lengths.empty()) lengths.push_back(up_to(longest_mm + metal_cuts.end_trim_mm, step_mm));
    return lengths;
  }

  CutStock opened(const NeededPiece& like, double length_mm, std::optional<std::size_t> on_hand, int number) const {
    CutStock cut;
    cut.kind = like.kind;
    cut.material = like.material;
    cut.on_hand = on_hand;
    cut.number = number;
    cut.size_mm = {length_mm};
    if (on_hand)
      cut.size_mm = plan_.workshop.stock[*on_hand].size_mm;
    else if (like.kind == "bar")
      cut.size_mm = {length_mm, like.section_mm, like.thickness_mm};
    else
      cut.size_mm = {length_mm, like.section_mm};
    return cut;
  }

  /// One piece behind the other from the trimmed end, the longest first.
  void lay_out(CutStock& cut, const BarCut& bar, std::vector<std::vector<std::size_t>>& waiting) const {
    std::vector<std::size_t> on_bar;
    for (std::size_t w = 0; w < bar.pieces.size(); ++w) {
      for (int n = 0; n < bar.pieces[w]; ++n) {
        on_bar.push_back(waiting[w].front());
        waiting[w].erase(waiting[w].begin());
      }
    }
    std::stable_sort(on_bar.begin(), on_bar.end(),
                     [&](std::size_t a, std::size_t b) { return piece(a).size_mm[0] > piece(b).size_mm[0]; });
    double at = metal_cuts.end_trim_mm / 2, used = 0;
    for (const std::size_t i : on_bar) {
      const double length = piece(i).size_mm[0];
      cut.pieces.push_back({i, piece(i).part, {at, 0}, {length, 0}, false});
      at += length + metal_cuts.kerf_mm;
      used += length;
    }
    const double left = cut.size_mm[0] - metal_cuts.end_trim_mm / 2 - at;
    if (left >= usable_mm) cut.left_mm.push_back({left});
    cut.used_share = used / cut.size_mm[0];
  }

  // ---- panels

  void cut_panel_group(const std::vector<std::size_t>& group) {
    const std::vector<std::size_t> hand = on_hand_for(group);
    const SawCuts& saw = piece(group.front()).kind == "board" ? wood_cuts : sheet_cuts;
    std::vector<PanelWanted> wanted;
    for (const std::size_t i : group) {
      PanelWanted w{piece(i).size_mm[0], piece(i).size_mm[1], piece(i).grain, {}};
      for (std::size_t s = 0; s < hand.size(); ++s)
        if (suits(plan_.workshop.stock[hand[s]], piece(i))) w.from.push_back(s);
      if (w.from.empty()) w.from.push_back(hand.size());  // none on hand: a kind that is not there
      wanted.push_back(std::move(w));
    }
    std::vector<PanelStock> stock;
    for (const std::size_t s : hand) {
      const auto& size = plan_.workshop.stock[s].size_mm;
      stock.push_back({size[0], size[1], plan_.workshop.stock[s].count, size[2]});  // thin stock before thick
    }
    const PanelPlan cuts = cut_panels(wanted, stock, saw.kerf_mm, saw.end_trim_mm / 2);
    CutBound bound = bound_of(piece(group.front()), group.size());
    std::vector<int> used(stock.size(), 0);
    for (const PanelCut& panel : cuts.panels) {
      CutStock cut = opened(piece(group.front()), 0, hand[panel.stock], ++used[panel.stock]);
      lay_out(cut, panel, group);
      bound.opened += cut.size_mm[0] * cut.size_mm[1];
      bound.from_stock += static_cast<int>(cut.pieces.size());
      result_.stock.push_back(std::move(cut));
    }
    std::vector<std::size_t> missing;
    for (const std::size_t w : cuts.left_over) missing.push_back(group[w]);
    buy_panels(missing, bound);
    for (const std::size_t i : group) bound.least += piece(i).size_mm[0] * piece(i).size_mm[1];
    bound.proved = cuts.proved && missing.empty();
    close(bound, group, hand);
  }

  void lay_out(CutStock& cut, const PanelCut& panel, const std::vector<std::size_t>& group) const {
    double used = 0;
    for (const PanelPiece& p : panel.pieces) {
      cut.pieces.push_back({group[p.wanted], piece(group[p.wanted]).part, p.at_mm, p.size_mm, p.turned});
      used += p.size_mm[0] * p.size_mm[1];
    }
    for (const auto& left : panel.left_mm)
      if (std::min(left[2], left[3]) >= usable_mm) cut.left_mm.push_back({left[2], left[3], cut.size_mm[2]});
    cut.used_share = used / (cut.size_mm[0] * cut.size_mm[1]);
  }

  /// One piece of stock for all missing pieces of a thickness: as wide as the widest, as long as the nest of them.
  void buy_panels(const std::vector<std::size_t>& missing, CutBound& bound) {
    std::vector<double> thicknesses;
    for (const std::size_t i : missing)
      if (std::find(thicknesses.begin(), thicknesses.end(), piece(i).thickness_mm) == thicknesses.end())
        thicknesses.push_back(piece(i).thickness_mm);
    for (const double thickness : thicknesses) {
      std::vector<std::size_t> alike;
      for (const std::size_t i : missing)
        if (piece(i).thickness_mm == thickness) alike.push_back(i);
      buy_panel(alike, bound);
    }
  }

  struct Nest {
    PanelStock sheet;
    PanelPlan cuts;
    [[nodiscard]] double area() const { return sheet.along_mm * sheet.across_mm; }
    [[nodiscard]] double longest() const { return std::max(sheet.along_mm, sheet.across_mm); }
  };

  /// As wide as so many rows of the widest piece. One behind the other the pieces always fit; what the nest does not
  /// need is taken off the length.
  Nest nest(const std::vector<std::size_t>& alike, int rows) const {
    const SawCuts& saw = piece(alike.front()).kind == "board" ? wood_cuts : sheet_cuts;
    std::vector<PanelWanted> wanted;
    PanelStock sheet{saw.end_trim_mm, 0, 1, 1};
    for (const std::size_t i : alike) {
      wanted.push_back({piece(i).size_mm[0], piece(i).size_mm[1], true, {}});
      sheet.along_mm += piece(i).size_mm[0] + saw.kerf_mm;
      sheet.across_mm = std::max(sheet.across_mm, piece(i).size_mm[1]);
    }
    sheet.across_mm = up_to(rows * (sheet.across_mm + saw.kerf_mm) - saw.kerf_mm, step_mm);
    Nest found{sheet, cut_panels(wanted, {&sheet, 1}, saw.kerf_mm, saw.end_trim_mm / 2)};
    double end = 0;
    for (const PanelPiece& p : found.cuts.panels.front().pieces) end = std::max(end, p.at_mm[0] + p.size_mm[0]);
    sheet.along_mm = up_to(end + saw.end_trim_mm / 2, step_mm);
    PanelPlan shorter = cut_panels(wanted, {&sheet, 1}, saw.kerf_mm, saw.end_trim_mm / 2);
    return shorter.left_over.empty() ? Nest{sheet, std::move(shorter)} : found;
  }

  /// Sheets may be as wide as they like; boards are bought as wide as the widest piece.
  void buy_panel(const std::vector<std::size_t>& alike, CutBound& bound) {
    const int rows = piece(alike.front()).kind == "board" ? 1 : std::min(most_rows, static_cast<int>(alike.size()));
    Nest best = nest(alike, 1);
    for (int n = 2; n <= rows; ++n) {
      Nest other = nest(alike, n);
      if (std::make_pair(std::llround(other.area()), other.longest()) <
          std::make_pair(std::llround(best.area()), best.longest()))
        best = std::move(other);
    }
    CutStock cut;
    cut.kind = piece(alike.front()).kind;
    cut.material = piece(alike.front()).material;
    cut.size_mm = {best.sheet.along_mm, best.sheet.across_mm, piece(alike.front()).thickness_mm};
    lay_out(cut, best.cuts.panels.front(), alike);
    bound.opened += best.area();
    result_.stock.push_back(std::move(cut));
  }

  // ---- lists

  static CutBound bound_of(const NeededPiece& like, std::size_t pieces) {
    const bool panel = like.kind == "board" || like.kind == "sheet";
    return {like.kind,
            like.material,
            panel ? 0 : like.thickness_mm,
            panel ? 0 : like.section_mm,
            static_cast<int>(pieces),
            0,
            0,
            0,
            false};
  }

  void close(const CutBound& bound, const std::vector<std::size_t>& group, const std::vector<std::size_t>& hand) {
    result_.bounds.push_back(bound);
    // Of what is not on the rack at all nothing is short: it stands in the list to buy.
    if (hand.empty() && !is_too_thin(group)) return;
    reasons::Finding finding =
        reasons::judged(rules::stock, bound.from_stock, bound.pieces, reasons::Unit::count, reasons::Better::larger,
                        reasons::Verdict::caution, missing_parts(group));
    if (finding.verdict != reasons::Verdict::pass) finding.advice = what_is_short(bound, group, hand);
    result_.findings.push_back(std::move(finding));
  }

  /// Panels of the kind and material are there, but of no thickness that would do.
  bool is_too_thin(const std::vector<std::size_t>& group) const {
    const NeededPiece& like = piece(group.front());
    return (like.kind == "board" || like.kind == "sheet") &&
           std::any_of(plan_.workshop.stock.begin(), plan_.workshop.stock.end(), [&](const StockPiece& s) {
             return s.kind == like.kind && standards::name_key(s.material) == standards::name_key(like.material);
           });
  }

  bool from_rack(std::size_t i) const {
    return std::any_of(result_.stock.begin(), result_.stock.end(), [&](const CutStock& cut) {
      return cut.on_hand &&
             std::any_of(cut.pieces.begin(), cut.pieces.end(), [&](const CutPiece& p) { return p.piece == i; });
    });
  }

  /// Parts whose pieces are not all on the rack; all of them when none is missing.
  std::vector<std::string> missing_parts(const std::vector<std::size_t>& group) const {
    std::vector<std::string> missing, all;
    const auto note = [](std::vector<std::string>& list, const std::string& name) {
      if (std::find(list.begin(), list.end(), name) == list.end()) list.push_back(name);
    };
    for (const std::size_t i : group) {
      note(all, piece(i).part);
      if (!from_rack(i)) note(missing, piece(i).part);
    }
    return missing.empty() ? all : missing;
  }

  std::string what_is_short(const CutBound& bound, const std::vector<std::size_t>& group,
                            const std::vector<std::size_t>& hand) const {
    const std::string what = bound.kind + " of " + bound.material;
    if (hand.empty()) return "no " + what + " in stock has the thickness: buy what the cut list says";
    double longest_stock = 0, longest_missing = 0;
    for (const std::size_t s : hand) longest_stock = std::max(longest_stock, plan_.workshop.stock[s].size_mm[0]);
    for (const std::size_t i : group)
      if (!from_rack(i)) longest_missing = std::max(longest_missing, piece(i).size_mm[0]);
    const double trim = bound.kind == "board" ? wood_cuts.end_trim_mm : 0,
                 short_mm = longest_missing + trim - longest_stock;
    if (short_mm <= 1e-9) return "the " + what + " in stock does not reach for all: buy what the cut list says";
    return "the longest " + what + " is " + units::write_length(units::mm(short_mm), plan_.unit) +
           " short: buy what the cut list says";
  }

  void buy(const std::string& kind, const std::string& material, const std::vector<double>& size_mm, int count,
           const std::vector<std::string>& parts) {
    auto same = std::find_if(result_.to_buy.begin(), result_.to_buy.end(), [&](const Purchase& p) {
      return p.kind == kind && p.material == material && p.size_mm == size_mm;
    });
    if (same == result_.to_buy.end()) same = result_.to_buy.insert(same, {kind, material, size_mm, 0, {}});
    same->count += count;
    for (const std::string& part : parts)
      if (std::find(same->parts.begin(), same->parts.end(), part) == same->parts.end()) same->parts.push_back(part);
  }

  void buy_what_is_cut() {
    for (const CutStock& cut : result_.stock) {
      if (cut.on_hand) continue;
      std::vector<std::string> parts;
      for (const CutPiece& p : cut.pieces) parts.push_back(p.part);
      buy(cut.kind, cut.material, cut.size_mm, 1, parts);
    }
  }

  /// Whole pieces by their designation; shares of one piece count together.
  void buy_hardware() {
    struct Line {
      std::string designation;
      int shares = 0, share_of = 1;
      std::vector<std::string> parts;
    };
    std::vector<Line> lines;
    for (const Workpiece& w : work_) {
      const auto* bought = w.piece == nullptr ? nullptr : std::get_if<parts::Bought>(&w.piece->stock);
      if (bought == nullptr || w.made) continue;
      auto line =
          std::find_if(lines.begin(), lines.end(), [&](const Line& l) { return l.designation == bought->designation; });
      if (line == lines.end()) line = lines.insert(line, {bought->designation, 0, bought->share_of, {}});
      line->shares += w.count;
      line->parts.push_back(w.part->name);
    }
    for (const Line& line : lines) {
      const int needed = (line.shares + line.share_of - 1) / line.share_of,
                missing = needed - in_stock(line.designation);
      if (missing > 0) buy("bought", line.designation, {}, missing, line.parts);
    }
  }

  int in_stock(const std::string& designation) const {
    const std::string key = standards::designation_key(designation);
    int count = 0;
    for (const StockPiece& s : plan_.workshop.stock)
      if (standards::designation_key(s.kind) == key || standards::designation_key(s.material) == key) count += s.count;
    return count;
  }

  const std::vector<Workpiece>& work_;
  const layout::Plan& plan_;
  Cutting result_;
};

}  // namespace

Cutting cut_stock(const std::vector<Workpiece>& pieces, const layout::Plan& plan) { return Yard(pieces, plan).run(); }

}  // namespace visewright::making
