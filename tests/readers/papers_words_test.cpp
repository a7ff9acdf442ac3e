// Every sheet of every preset: words stand clear of each other and on the page. Places in the drawings are the Plan's.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "outputs/data/stock_words.h"
#include "outputs/papers/assembly_section.h"
#include "outputs/papers/part_drawing.h"
#include "outputs/papers/pattern_sheet.h"
#include "outputs/papers/setting_out.h"
#include "outputs/papers/template_sheet.h"
#include "readers/papers_made.h"

namespace visewright::tests {
namespace {

using namespace outputs::papers;
using geometry::Box;

class Study {
 public:
  explicit Study(const std::string& design) {
    support::write_file(scratch_ / "design.toml", design);
    base::Silence silence;
    auto study = pipeline::sized((scratch_ / "design.toml").string(), silence);
    if (!study) throw std::runtime_error(study.error().front().key + " " + study.error().front().wrong);
    study_ = std::move(*study);
  }
  [[nodiscard]] outputs::Facts facts() const { return pipeline::facts(*study_, std::nullopt); }

 private:
  support::ScratchFolder scratch_;
  std::unique_ptr<pipeline::Study> study_;
};

std::vector<Job> all_jobs(const assembly::Assembly& assembly) {
  std::vector<Job> list;
  for (std::uint32_t i = 0; i < assembly.parts.size(); ++i)
    for (Job& job : jobs(*assembly.parts[i], i)) list.push_back(std::move(job));
  return list;
}

/// Pairs of words that lie over each other by more than a hair, as text.
std::vector<std::string> overlaps(const Sheet& sheet) {
  std::vector<std::string> found;
  std::vector<Box> boxes;
  for (const Words& words : sheet.words) boxes.push_back(box(words));
  for (std::size_t i = 0; i < boxes.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (!sheet.words[i].text.empty() && !sheet.words[j].text.empty() && geometry::overlap(boxes[i], boxes[j], -0.3))
        found.push_back(sheet.title + ": \"" + sheet.words[i].text + "\" on \"" + sheet.words[j].text + "\"");
  return found;
}

TEST(PapersWordsSlow, NoWordsLieOverOthersOnTemplates) {
  int sheets = 0;
  for (const pipeline::Preset& preset : pipeline::presets()) {
    const Study study{std::string(preset.text)};
    const outputs::Facts facts = study.facts();
    EXPECT_THAT(overlaps(pattern_sheet(facts)), testing::IsEmpty());
    for (const Job& job : all_jobs(facts.assembly)) {
      if (!takes_template(job)) continue;
      for (const FaceJob& face : faces(job)) {
        EXPECT_THAT(overlaps(template_sheet(facts, face)), testing::IsEmpty()) << preset.name;
        ++sheets;
      }
    }
  }
  EXPECT_GE(sheets, 60);
}

TEST(PapersWordsSlow, NoWordsLieOverOthersOnDrawingsAndAllIsOnThePage) {
  int sheets = 0;
  for (const pipeline::Preset& preset : pipeline::presets()) {
    const Study study{std::string(preset.text)};
    const outputs::Facts facts = study.facts();
    std::vector<Sheet> pages{assembly_section(facts, Projection::first_angle)};
    for (const Job& job : all_jobs(facts.assembly))
      for (const Projection projection : {Projection::first_angle, Projection::third_angle})
        for (Sheet& page : part_drawing(facts, job, projection)) pages.push_back(std::move(page));
    for (const Sheet& page : pages) {
      EXPECT_THAT(overlaps(page), testing::IsEmpty()) << preset.name;
      const Box border = geometry::box(page.curves.front().edges.front());
      const Box all = box(page);
      EXPECT_GE(all.low.x, 10) << page.title << " " << preset.name;
      EXPECT_GE(all.low.y, 9.9) << page.title << " " << preset.name;
      EXPECT_LE(all.high.x, border.high.x + 0.1) << page.title << " " << preset.name;
      EXPECT_LE(all.high.y, 287.1) << page.title << " " << preset.name;
      ++sheets;
    }
  }
  EXPECT_GE(sheets, 200);
}

TEST(PapersWords, OrdinatesAndExtentsAreThePlans) {
  const Study study(preset("joinery-bench"));
  const outputs::Facts facts = study.facts();
  for (const Job& job : all_jobs(facts.assembly)) {
    if (job.name != "gear layer") continue;
    const std::vector<Sheet> pages = part_drawing(facts, job);
    ASSERT_GE(pages.size(), 2u);
    std::vector<std::string> words;
    for (const Words& each : pages[0].words) words.push_back(each.text);
    for (const auto* pattern : {&facts.plan.screws, &facts.plan.axles, &facts.plan.cusps, &facts.plan.cover_edge})
      for (const layout::Hole& hole : pattern->holes) {
        EXPECT_THAT(words, testing::Contains(outputs::data::cell(hole.at.x, facts.show))) << hole.name;
        EXPECT_THAT(words, testing::Contains(outputs::data::cell(hole.at.y, facts.show))) << hole.name;
      }
    EXPECT_THAT(words, testing::Contains(outputs::data::cell(facts.plan.front_jaw.above.mm(), facts.show)));
    EXPECT_THAT(words, testing::Contains(outputs::data::cell(-facts.plan.front_jaw.below.mm(), facts.show)));
    EXPECT_THAT(words, testing::Contains("as the person sees it"));
    EXPECT_THAT(words, testing::Contains("from above"));
  }
}

TEST(PapersWords, TheRodCountsFromOneEndAndShowsItsRounding) {
  const Study study(preset("joinery-bench"));
  const layout::Plan& plan = study.facts().plan;
  const std::vector<RodMark> marks = rod_marks(plan);
  const double zero = -std::max(plan.front_jaw.length.mm(), plan.rear_jaw.length.mm()) / 2;
  int screws = 0;
  for (const RodMark& mark : marks) {
    EXPECT_NEAR(mark.rod_mm - mark.middle_mm, -zero, 1e-9);
    EXPECT_NEAR(mark.rod_mm + mark.rounding_mm, static_cast<double>(mark.sixty_fourths) * 25.4 / 64, 1e-9);
    EXPECT_LE(std::abs(mark.rounding_mm), 25.4 / 128 + 1e-9);
    for (const layout::Hole& hole : plan.screws.holes)
      if (mark.name.find("screw, " + hole.name) != std::string::npos && std::abs(mark.middle_mm - hole.at.x) < 1e-9) ++screws;
  }
  EXPECT_EQ(screws, 2);
  EXPECT_EQ(inch_reading(0), "0");
  EXPECT_EQ(inch_reading(64), "1");
  EXPECT_EQ(inch_reading(96), "1-1/2");
  EXPECT_EQ(inch_reading(807), "12-39/64");
}

}  // namespace
}  // namespace visewright::tests
