#include "design/keys.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "design/reading_designs.h"

namespace visewright::design {
namespace {

// What the design file may hold, table by table, typed out by hand.
const std::map<std::string, std::string> known_keys{
    {"", "title units opening axis_depth date"},
    {"train",
     "teeth module diametral_pitch pressure_angle profile_shift backlash face_width centre_distances material made_by"},
    {"screw", "thread hand length strength_class"},
    {"collar", "nut washer thrust_washer pin"},
    {"rear_nut", "kind"},
    {"rear_nut.bar", "thickness height length"},
    {"drive", "at hand_force"},
    {"drive.wheel", "diameter bore hub grip"},
    {"front_jaw", "wood length below_axis top_offset backing gear_layer hand_grips toe_in"},
    {"front_jaw.bevel", "height depth"},
    {"front_jaw.dog_holes", "diameter depth positions"},
    {"rear_jaw", "core cap thickness length height"},
    {"rear_jaw.mounting", "screw count"},
    {"cover", "material thickness"},
    {"lining", "material thickness"},
    {"axle", "material diameter"},
    {"bracket", "material thickness top_leg down_leg width"},
    {"bench.top", "thickness depth length material"},
    {"bench.apron", "thickness height setback doubler"},
    {"bench.obstacle", "name from to"},
    {"gaps", "gear_to_wood gear_axial moving_to_fixed rim_to_cover rim_to_rim web end_float"},
    {"accuracy",
     "marking mark_error drill_wander template_error template_scale hole_allowance kerf cutter moisture_swing "
     "temperature_swing"},
    {"assume",
     "thread_friction collar_friction mesh_efficiency screw_modulus_mpa wood_modulus_mpa wood_strength_mpa "
     "gear_strength_mpa cover_strength_mpa panel_modulus_mpa wood_crushing_mpa pin_strength_mpa weld_strength_mpa "
     "wood_share tooth_share cover_share withdrawal_share nut_play gear_run_out lean_force"},
    {"shop", "preset drills hole_saws flat_bits cutters print_bed laser_bed"},
    {"stock", "kind material size count price"},
    {"measured", "axle_centres backing gear_layer cover rod_diameter nut_across_flats made"},
};

TEST(Keys, AreTheseAndNoOthers) {
  std::map<std::string, std::string> found;
  for (const KeyRow& row : keys()) {
    std::string& list = found[std::string(row.table)];
    list.append(list.empty() ? "" : " ").append(row.key);
  }
  EXPECT_EQ(found, known_keys);
}

TEST(Keys, StandOnceAndEachTableTogether) {
  std::set<std::string> seen;
  std::size_t counted = 0;
  for (const TableRow& table : tables()) counted += keys_of(table.name).size();
  EXPECT_EQ(counted, keys().size()) << "a table is torn apart or not listed";
  for (const KeyRow& row : keys()) {
    EXPECT_TRUE(seen.insert(dotted(row.table, row.key)).second) << row.table << "." << row.key;
    EXPECT_NE(table_row(row.table), nullptr) << row.table;
    EXPECT_EQ(key_row(row.table, row.key), &row);
  }
}

TEST(Keys, SayWhatTheyMeanWithoutAFullStop) {
  for (const KeyRow& row : keys()) {
    for (const std::string_view words : {row.example, row.left_out, row.meaning}) {
      EXPECT_FALSE(words.empty()) << row.table << "." << row.key;
      EXPECT_FALSE(words.ends_with('.')) << row.table << "." << row.key;
    }
    EXPECT_LE(row.range.least, row.range.most);
  }
}

TEST(Keys, ExamplesReadInBothUnits) {
  // An example is shown in messages and in the README, so each must be good where it is told to be used.
  for (const KeyRow& row : keys()) {
    for (const char* unit : {"mm", "in"}) {
      std::map<std::string, std::map<std::string, std::string>> file;
      file[""]["units"] = std::string("\"") + unit + "\"";
      file["train"] = {{"teeth", "[30, 30, 30]"}, {"module", "3"}};
      file["screw"] = {{"thread", "\"M20\""}};
      for (const KeyRow& sibling : keys_of(row.table)) {
        if (sibling.required) file[std::string(row.table)][std::string(sibling.key)] = sibling.example;
      }
      if (row.key == "diametral_pitch") file["train"].erase("module");
      if (row.key != "units") file[std::string(row.table)][std::string(row.key)] = row.example;
      std::string text;
      for (const auto& [table, values] : file) {
        if (!table.empty()) text += heading(table) + "\n";
        for (const auto& [key, value] : values) text += key + " = " + value + "\n";
      }
      EXPECT_EQ(as_text(faults_of(text)), "") << text;
    }
  }
}

TEST(Keys, PutAndGetTheSameField) {
  // Each key must be tied to a field of its own: what one key puts, no other key sees.
  for (const KeyRow& row : keys()) {
    Design design;
    const TableRow& table = *table_row(row.table);
    if (table.repeated()) table.add(design);
    const auto state = [&] {
      std::map<std::string, int> given;
      for (const KeyRow& other : keys()) {
        if (table_row(other.table)->repeated() && table_row(other.table)->count(design) == 0) continue;
        std::visit(
            [&](const auto& slot) {
              const auto got = slot.get(design, 0);
              given[dotted(other.table, other.key)] = got ? static_cast<int>(got->place.line) : -1;
            },
            other.binding);
      }
      return given;
    };
    std::map<std::string, int> wanted = state();
    std::visit([&](const auto& slot) { slot.put(design, 0, {{}, base::Place{0, 77, 1}}); }, row.binding);
    if (row.key != "units") wanted[dotted(row.table, row.key)] = 77;
    EXPECT_EQ(state(), wanted) << row.table << "." << row.key;
  }
}

TEST(Keys, PageHoldsEveryKeyOnce) {
  const std::string page = key_table_markdown();
  std::size_t rows = 0;
  for (std::size_t at = page.find("\n| `"); at != std::string::npos; at = page.find("\n| `", at + 1)) ++rows;
  EXPECT_EQ(rows, keys().size());
  EXPECT_THAT(page, testing::HasSubstr("| `backlash` | a length from 0 mm to 5 mm | `\"0.45 mm\"` |"));
  EXPECT_THAT(page, testing::HasSubstr("**`[[bench.obstacle]]`**"));
  EXPECT_EQ(page, key_table_markdown());
}

}  // namespace
}  // namespace visewright::design
