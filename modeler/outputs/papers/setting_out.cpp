#include "outputs/papers/setting_out.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "outputs/data/notice.h"
#include "outputs/papers/legend.h"
#include "outputs/papers/lettering.h"
#include "outputs/papers/svg.h"
#include "outputs/papers/template_sheet.h"
#include "outputs/papers/tiles.h"
#include "outputs/papers/words.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

constexpr double sixty_fourth_mm = 25.4 / 64;

double zero_x(const layout::Plan& plan) { return -std::max(plan.front_jaw.length.mm(), plan.rear_jaw.length.mm()) / 2; }

std::string signed_number(double value, int decimals) {
  const std::string text = units::write_number(value, decimals);
  return value > 0 && text != "0" ? "+" + text : text;
}

void add(std::vector<RodMark>& marks, const std::string& name, double x, double zero) {
  const double rod = x - zero;
  const auto same = std::find_if(marks.begin(), marks.end(), [&](const RodMark& m) { return std::abs(m.rod_mm - rod) < 1e-6; });
  if (same != marks.end()) {
    same->name += ", " + name;
    return;
  }
  const long nearest = std::lround(rod / sixty_fourth_mm);
  marks.push_back({name, rod, x, nearest, static_cast<double>(nearest) * sixty_fourth_mm - rod});
}

/// The rod as a strip: a tick a mark, its reading along the tick.
Sheet rod_sheet(const Facts& facts, const std::vector<RodMark>& marks) {
  Sheet sheet;
  sheet.title = "setting-out rod";
  add_notice(facts, sheet);
  sheet.remarks.push_back("As the person sees it, zero at the person's left. Lay a lath on it, carry the marks over with a square, and mark every part from the lath.");
  const std::size_t mark = sheet.layer("MARK", Pen::mark, "marks to carry over"),
                    edge = sheet.layer("READ-ONLY", Pen::read_only, "for reading");
  const double end = marks.back().rod_mm;
  sheet.line(edge, {0, 0}, {end, 0});
  sheet.line(edge, {0, 30}, {end, 30});
  double free_from = -1e9;
  for (const RodMark& each : marks) {
    sheet.line(mark, {each.rod_mm, 0}, {each.rod_mm, 30});
    const std::string reading = facts.show == units::LengthUnit::inch ? inch_reading(each.sixty_fourths) + " in" : units::write_number(each.rod_mm, 2);
    // Readings stand upright along their ticks; where ticks crowd, the words move on and a slanting line leads back.
    const double at = std::max(each.rod_mm, free_from);
    free_from = at + 3.6;
    sheet.line(mark, {each.rod_mm, 30}, {at, 36});
    sheet.write(mark, {at + 0.9, 37}, reading + "  " + each.name, 2.6, Anchor::left, units::pi / 2);
  }
  return sheet;
}

std::string markdown(const Facts& facts, const std::vector<RodMark>& marks) {
  std::string text = "# Setting-out rod\n\n";
  if (const std::string notice = data::failing_notice(facts.findings); !notice.empty()) text += "**" + notice + "**\n\n";
  text += std::string(facts.title) + ". Distances along the jaw from the left end of the longer jaw, as the person at the vise sees it, and from the "
          "middle line (right is positive). Each is counted from the one datum, so that errors do not add up. The inch "
          "reading is the nearest 1/64 in; the last column is what it is too long (+) or too short (-).\n\n"
          "| mark | from the left end, mm | from the middle, mm | nearest 1/64, in | rounding, mm |\n|---|---:|---:|---:|---:|\n";
  for (const RodMark& m : marks)
    text += "| " + m.name + " | " + units::write_number(m.rod_mm, 2) + " | " + signed_number(m.middle_mm, 2) + " | " + inch_reading(m.sixty_fourths) +
            " | " + signed_number(m.rounding_mm, 3) + " |\n";
  return text + "\n" + std::string(data::planning_note) + "\n";
}

}  // namespace

std::vector<RodMark> rod_marks(const layout::Plan& plan) {
  std::vector<RodMark> marks;
  const double zero = zero_x(plan);
  const auto ends = [&](const std::string& of, double left, double right) {
    add(marks, of + ", left end", left, zero);
    add(marks, of + ", right end", right, zero);
  };
  ends("front jaw", -plan.front_jaw.length.mm() / 2, plan.front_jaw.length.mm() / 2);
  ends("rear jaw", -plan.rear_jaw.length.mm() / 2, plan.rear_jaw.length.mm() / 2);
  ends("cover", plan.cover.left.mm(), plan.cover.right.mm());
  add(marks, "middle line", 0, zero);
  for (const layout::Hole& hole : plan.screws.holes) add(marks, "screw, " + hole.name, hole.at.x, zero);
  for (const layout::Pattern* pattern : {&plan.shaft_hole, &plan.axles, &plan.cusps, &plan.dogs, &plan.cover_edge, &plan.rear_mounting})
    for (const layout::Hole& hole : pattern->holes) add(marks, hole.name, hole.at.x, zero);
  for (const layout::Hole& hole : plan.screws.holes)
    for (const double side : {-1.0, 1.0})
      add(marks, "nut block bolt, " + hole.name, hole.at.x + side * plan.rear_nut.bolt_offset.mm(), zero);
  for (std::size_t i = 0; i < plan.bracket.x.size(); ++i) add(marks, "bracket " + std::to_string(i + 1), plan.bracket.x[i].mm(), zero);
  std::stable_sort(marks.begin(), marks.end(), [](const RodMark& a, const RodMark& b) { return a.rod_mm < b.rod_mm - 1e-9; });
  return marks;
}

std::string inch_reading(long n) {
  const long whole = n / 64, rest = n % 64, common = std::gcd(rest, 64L);
  if (rest == 0) return std::to_string(whole);
  const std::string fraction = std::to_string(rest / common) + "/" + std::to_string(64 / common);
  return whole == 0 ? fraction : std::to_string(whole) + "-" + fraction;
}

base::Result<std::vector<File>> write_setting_out(const Facts& facts, base::Watcher& watcher) {
  watcher.step("setting out the rod", 0.97);
  if (facts.plan.screws.holes.empty()) return std::vector<File>{};
  const std::vector<RodMark> marks = rod_marks(facts.plan);
  const Sheet sheet = rod_sheet(facts, marks);
  const PageWords words{sheet.title, data::failing_notice(facts.findings), std::string(facts.title) + ", visewright " + std::string(facts.program_version)};
  auto pages = pdf(full_size_pages(sheet, words, facts.paper), {sheet.title, std::string(facts.header_time), "visewright"});
  if (!pages) return base::passed_on(std::move(pages.error()));
  const Sheet with_words = with_legend(sheet);
  return std::vector<File>{
      {"papers/setting-out.md", markdown(facts, marks), "every centre from one datum, in mm and 1/64 in", std::nullopt},
      {"papers/setting-out.svg", svg(with_words, whole(with_words, 8)), "the setting-out rod, full size", std::nullopt},
      {"papers/setting-out.pdf", std::move(*pages), "the setting-out rod, to print full size", std::nullopt}};
}

}  // namespace visewright::outputs::papers
