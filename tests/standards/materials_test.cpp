#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "standards/known_catalogue.h"
#include "units/text.h"

namespace visewright::standards {
namespace {

struct WoodFigures {
  std::string name;
  double specific_gravity, modulus_psi_e6, bending_psi, crushing_psi;
  double radial, tangential;  // fraction of width a percent of moisture
};

/// Wood Handbook FPL-GTR-190 tables 5-3b and 13-5 (12 % moisture, inch-pound table: sighted for beech, ash and birch
/// except bending, the rest from memory). The rows hold the metric figures, so this is a second route to them.
TEST(Materials, WoodsOfTheWoodHandbook) {
  const std::vector<WoodFigures> published{
      {"white oak", 0.68, 1.78, 15200, 1070, 0.0018, 0.0037},
      {"red oak", 0.63, 1.82, 14300, 1010, 0.0016, 0.0037},
      {"hard maple", 0.63, 1.83, 15800, 1470, 0.0017, 0.0035},
      {"American beech", 0.64, 1.72, 14900, 1010, 0.0019, 0.0043},
      {"ash", 0.60, 1.74, 15000, 1160, 0.0017, 0.0027},
      {"Douglas fir", 0.48, 1.95, 12400, 800, 0.0017, 0.0027},
      {"yellow birch", 0.62, 2.01, 16600, 970, 0.0026, 0.0034},
  };
  constexpr double psi_in_mpa = 0.00689476;
  for (const WoodFigures& wood : published) {
    SCOPED_TRACE(wood.name);
    const MaterialRow* row = known().material(wood.name);
    ASSERT_NE(row, nullptr);
    EXPECT_EQ(row->kind, MaterialKind::wood);
    // Density at 12 % is 1.12 times the specific gravity on oven-dry weight.
    EXPECT_NEAR(row->density_g_cm3, 1.12 * wood.specific_gravity, 0.001);
    EXPECT_NEAR(row->modulus_mpa.value(), wood.modulus_psi_e6 * 1e6 * psi_in_mpa, 60);
    EXPECT_NEAR(row->bending_strength_mpa.value(), wood.bending_psi * psi_in_mpa, 0.6);
    EXPECT_NEAR(row->crushing_across_mpa.value(), wood.crushing_psi * psi_in_mpa, 0.06);
    EXPECT_NEAR(row->movement_radial.value(), 100 * wood.radial, 1e-9);
    EXPECT_NEAR(row->movement_tangential.value(), 100 * wood.tangential, 1e-9);
  }
}

/// Ranges published for panels and plastics (typical; sighted for acrylic and the printed plastics).
TEST(Materials, PanelsAndPlasticsAreInTheirPublishedRanges) {
  const auto within = [](const char* name, double density_from, double density_to, double modulus_from,
                         double modulus_to) {
    const MaterialRow* row = known().material(name);
    ASSERT_NE(row, nullptr) << name;
    EXPECT_GE(row->density_g_cm3, density_from) << name;
    EXPECT_LE(row->density_g_cm3, density_to) << name;
    EXPECT_GE(row->modulus_mpa.value(), modulus_from) << name;
    EXPECT_LE(row->modulus_mpa.value(), modulus_to) << name;
  };
  within("birch plywood", 0.68, 0.68, 10000, 10000);
  within("MDF", 0.70, 0.80, 2400, 3000);
  within("PLA", 1.22, 1.26, 3000, 4000);
  within("PETG", 1.25, 1.29, 2000, 3000);
  within("polycarbonate", 1.20, 1.20, 2300, 2400);
  within("acrylic", 1.19, 1.19, 2800, 3300);
  within("acetal", 1.41, 1.42, 2600, 2800);
  within("steel", 7.85, 7.85, 200000, 210000);
  // Extruded acrylic sheet: 72e-6 per kelvin (sighted). Steel S235: yield 235 MPa (from memory).
  EXPECT_NEAR(known().material("acrylic")->expansion_per_kelvin.value(), 72e-6, 1e-12);
  EXPECT_NEAR(known().material("steel")->bending_strength_mpa.value(), 235, 1e-9);
}

TEST(Materials, EnoughOfEachKind) {
  std::map<MaterialKind, int> count;
  for (const MaterialRow& row : known().materials()) ++count[row.kind];
  EXPECT_GE(count[MaterialKind::wood], 10);
  EXPECT_GE(count[MaterialKind::panel], 4);
  EXPECT_GE(count[MaterialKind::plastic], 3);
  EXPECT_GE(count[MaterialKind::metal], 3);
}

/// Wood swells more along the rings than across them, and everything that moves says both.
TEST(Materials, WoodHasWhatTheChecksNeed) {
  for (const MaterialRow& row : known().materials()) {
    if (row.kind != MaterialKind::wood) continue;
    EXPECT_TRUE(row.modulus_mpa && row.bending_strength_mpa && row.crushing_across_mpa && row.expansion_per_kelvin)
        << row.name;
    EXPECT_GT(row.movement_tangential.value(), row.movement_radial.value()) << row.name;
  }
}

/// A picture must tell two materials apart: no two colours closer than a step that an eye sees side by side.
TEST(Materials, ColoursAreDistinct) {
  const auto rows = known().materials();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    for (std::size_t j = i + 1; j < rows.size(); ++j) {
      const double apart =
          std::hypot(rows[i].red - rows[j].red, rows[i].green - rows[j].green, rows[i].blue - rows[j].blue);
      EXPECT_GT(apart, 0.02) << rows[i].name << " and " << rows[j].name;
    }
  }
}

/// ASME B18.6.1: shank 0.060 + 0.013 N inches for number N.
TEST(WoodScrews, NumberedShanksFollowTheirFormula) {
  for (const int number : {8, 10, 12, 14}) {
    int seen = 0;
    for (const WoodScrewRow& row : known().wood_screws()) {
      if (!row.designation.starts_with("wood screw #" + std::to_string(number) + " ")) continue;
      ++seen;
      EXPECT_NEAR(units::in_inches(row.shank), 0.060 + 0.013 * number, 1e-9) << row.designation;
    }
    EXPECT_GT(seen, 0) << number;
  }
}

/// Metric designations say shank and length.
TEST(WoodScrews, DesignationsSayShankAndLength) {
  for (const WoodScrewRow& row : known().wood_screws()) {
    EXPECT_LT(row.shank, row.head) << row.designation;
    EXPECT_LT(row.head, row.length) << row.designation;
    if (row.designation.find("in") != std::string::npos) continue;
    EXPECT_EQ(row.designation, "wood screw " + units::write_number(units::in_mm(row.shank), 2) + " x " +
                                   units::write_number(units::in_mm(row.length), 2));
  }
}

}  // namespace
}  // namespace visewright::standards
