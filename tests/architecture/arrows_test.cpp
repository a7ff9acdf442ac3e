// The arrows of the layout, read off the sources themselves.
#include <algorithm>
#include <iostream>

#include "architecture/layout_table.h"

namespace visewright::architecture {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const std::set<std::string> code{".h", ".cpp"};

TEST(Arrows, HoldForEveryInclude) {
  std::size_t files = 0;
  std::set<std::string> folders;
  for (const char* root : {"modeler", "cli"}) {
    for (const Source& source : sources_below(root, code)) {
      EXPECT_THAT(wrong_includes(source.path, source.text), IsEmpty());
      folders.insert(source.path.substr(0, source.path.find('/', std::string_view("modeler/").size())));
      ++files;
    }
  }
  // An empty list of files would pass anything.
  EXPECT_GE(files, 60U);
  EXPECT_GE(folders.size(), 15U);
}

struct Planted {
  const char* path;
  const char* line;
  std::size_t wrong;
};

// Each wrong include stands beside a near miss that is allowed.
TEST(Arrows, CatchWhatIsPlanted) {
  const std::vector<Planted> all{
      {"modeler/geometry/area.cpp", "#include \"layout/plan.h\"", 1},
      {"modeler/parts/area.cpp", "#include \"layout/plan.h\"", 0},
      {"modeler/geometry/area.cpp", "// #include \"layout/plan.h\"", 0},
      {"modeler/geometry/area.cpp", "  #  include \"layout/plan.h\"  // because", 1},
      {"modeler/geometry/area.cpp", "#include \"../layout/plan.h\"", 1},
      {"modeler/geometry/area.cpp", "#include \"loop.h\"", 1},
      {"modeler/geometry/area.cpp", "#include \"geometry/loop.h\"", 0},
      {"modeler/geometry/deeper/area.cpp", "#include \"kernel/solid.h\"", 1},
      {"modeler/base/fault.cpp", "#include \"units/text.h\"", 1},
      {"modeler/units/text.cpp", "#include \"base/fault.h\"", 0},
      {"modeler/formulas/lewis.h", "#include \"units/text.h\"", 1},
      {"modeler/analysis/screws.cpp", "#include \"making/order.h\"", 1},
      {"modeler/analysis/screws.cpp", "#include \"design/design.h\"", 1},
      {"modeler/outputs/data/size.cpp", "#include \"design/design.h\"", 0},
      {"modeler/outputs/data/size.cpp", "#include \"pipeline/publish.h\"", 1},
      {"modeler/outputs/papers/sheet.cpp", "#include \"outputs/page/page.h\"", 1},
      {"modeler/outputs/page/page.cpp", "#include \"outputs/papers/sheet.h\"", 0},
      {"modeler/outputs/papers/sheet.cpp", "#include \"outputs/file.h\"", 0},
      {"modeler/outputs/odds/sheet.cpp", "#include \"outputs/papers/sheet.h\"", 1},
      {"modeler/outputs/all.cpp", "#include \"outputs/page/page.h\"", 0},
      {"modeler/solids/drill.cpp", "#include <gp_Pnt.hxx>", 1},
      {"modeler/solids/drill.cpp", "#include \"gp_Pnt.hxx\"", 1},
      {"modeler/kernel/solid.cpp", "#include <gp_Pnt.hxx>", 0},
      {"modeler/design/read.cpp", "#include <toml++/toml.h>", 1},
      {"modeler/reading/toml.cpp", "#include <toml++/toml.h>", 0},
      {"modeler/pipeline/front_door.cpp", "#include <spdlog/spdlog.h>", 1},
      {"modeler/pipeline/front_door.cpp", "#include <CLI/CLI.hpp>", 1},
      {"cli/main.cpp", "#include <CLI/CLI.hpp>", 0},
      {"cli/main.cpp", "#include \"cli/program.h\"", 0},
      {"cli/main.cpp", "#include \"outputs/file.h\"", 1},
      {"cli/main.cpp", "#include \"pipeline/front_door.h\"", 0},
      {"modeler/solids/far.cpp", "#include <fcl/fcl.h>", 1},
      {"modeler/design/read.cpp", "#include \"standards_files.h\"", 1},
      {"modeler/wibble/far.cpp", "", 1},
  };
  for (const Planted& planted : all) {
    const std::string text = std::string("#pragma once\n") + planted.line + "\nint x;\n";
    EXPECT_EQ(wrong_includes(planted.path, text).size(), planted.wrong) << planted.path << ": " << planted.line;
  }
}

TEST(Arrows, NeverRunInACircle) {
  for (const auto& [folder, allowed] : may_include()) {
    for (const std::string& other : allowed) {
      EXPECT_FALSE(may_include().at(other).contains(folder)) << folder << " and " << other;
      for (const std::string& further : may_include().at(other)) {
        EXPECT_FALSE(may_include().at(further).contains(folder)) << folder << ", " << other << " and " << further;
      }
    }
  }
}

TEST(Arrows, KeepTheKernelOutOfWhatIsTestedWithoutIt) {
  const std::set<std::string> with_kernel{"kernel", "solids", "fitup", "outputs", "pipeline", "cli"};
  for (const auto& [folder, allowed] : may_include()) {
    if (with_kernel.contains(folder)) continue;
    for (const std::string& other : allowed)
      EXPECT_FALSE(with_kernel.contains(other)) << folder << " includes " << other;
  }
}

TEST(Arrows, AreTheLinksToo) {
  const std::vector<Source> lists = sources_below("modeler", {".txt"});
  ASSERT_EQ(lists.size(), 1U);
  std::map<std::string, std::set<std::string>> wanted = may_include();
  wanted.erase("cli");
  const std::map<std::string, std::set<std::string>> linked = linked_folders(lists.front().text);
  for (const auto& [folder, allowed] : wanted) {
    ASSERT_TRUE(linked.contains(folder)) << folder << " is no target";
    EXPECT_EQ(linked.at(folder), allowed) << "links of " << folder;
  }
  EXPECT_EQ(linked.size(), wanted.size());
}

TEST(Arrows, ReadsLinksAsTheyAreWritten) {
  EXPECT_THAT(linked_folders("visewright_folder(a FOLDERS b\n  c PRIVATE fmt::fmt)\nvisewright_folder(b PUBLIC x)"),
              ElementsAre(testing::Pair("a", ElementsAre("b", "c")), testing::Pair("b", IsEmpty())));
}

TEST(Files, StayShortEnoughToRead) {
  constexpr long wished = 400, allowed = 450;
  std::size_t seen = 0;
  for (const char* root : {"modeler", "cli", "tests"}) {
    for (const Source& source : sources_below(root, {".h", ".cpp", ".cmake", ".sh", ".py", ".ts", ".js"})) {
      const long lines = std::count(source.text.begin(), source.text.end(), '\n');
      if (lines > wished) std::cout << source.path << " has " << lines << " lines\n";
      EXPECT_LE(lines, allowed) << source.path;
      ++seen;
    }
  }
  EXPECT_GE(seen, 80U);
}

/// Names that say nothing about what is inside.
bool says_nothing(const std::string& name) {
  static const std::set<std::string> empty_names{"core", "common", "util",    "utils",
                                                 "misc", "helper", "helpers", "stuff"};
  const std::string stem = name.substr(0, name.find('.'));
  return empty_names.contains(stem) ||
         std::any_of(empty_names.begin(), empty_names.end(),
                     [&](const std::string& word) { return stem.ends_with("_" + word) && word != "core"; });
}

TEST(Files, HaveNamesThatSaySomething) {
  EXPECT_TRUE(says_nothing("utils.h"));
  EXPECT_TRUE(says_nothing("core"));
  EXPECT_TRUE(says_nothing("string_utils.cpp"));
  EXPECT_FALSE(says_nothing("rear_jaw_core.cpp"));  // a jaw's panel core is a thing
  std::size_t seen = 0;
  for (const char* root : {"modeler", "cli", "tests", "presets"}) {
    for (const auto& entry :
         std::filesystem::recursive_directory_iterator(std::filesystem::path(VISEWRIGHT_SOURCE_DIR) / root)) {
      const std::string path = entry.path().generic_string();
      if (path.find("/node_modules") != std::string::npos) continue;
      EXPECT_FALSE(says_nothing(entry.path().filename().string())) << path;
      ++seen;
    }
  }
  EXPECT_GE(seen, 100U);
}

}  // namespace
}  // namespace visewright::architecture
