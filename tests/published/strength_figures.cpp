// Figures of the strength of teeth.
#include <array>
#include <string>

#include "formulas/gear_strength.h"
#include "published/figure.h"

namespace visewright::published {
namespace {

void add_form_factors(std::vector<Figure>& all) {
  constexpr std::array<std::array<double, 2>, 25> table{
      {{12, 0.245},  {13, 0.261},  {14, 0.277},  {15, 0.290}, {16, 0.296}, {17, 0.303}, {18, 0.309},
       {19, 0.314},  {20, 0.322},  {21, 0.328},  {22, 0.331}, {24, 0.337}, {26, 0.346}, {28, 0.353},
       {30, 0.359},  {34, 0.371},  {38, 0.384},  {43, 0.397}, {50, 0.409}, {60, 0.422}, {75, 0.435},
       {100, 0.447}, {150, 0.460}, {300, 0.472}, {400, 0.480}}};
  for (const auto& [teeth, printed] : table) {
    all.push_back({"Mechanical Engineering Design, Table 14-2", "z " + std::to_string(static_cast<int>(teeth)), "Y",
                   printed, 3, Known::sighted, formulas::lewis_form_factor(teeth)});
  }
  all.push_back({"Mechanical Engineering Design, Table 14-2", "rack", "Y", 0.485, 3, Known::sighted,
                 formulas::lewis_form_factor(1e9)});
  // Another book's table, worked out by other hands; where both have a count they differ by up to 0.002.
  constexpr std::array<std::array<double, 2>, 9> plastic{{{14, 0.276},
                                                          {15, 0.289},
                                                          {17, 0.302},
                                                          {18, 0.308},
                                                          {20, 0.320},
                                                          {21, 0.327},
                                                          {22, 0.330},
                                                          {24, 0.336},
                                                          {28, 0.352}}};
  for (const auto& [teeth, printed] : plastic) {
    all.push_back({"rating of plastic gears, Table 1", "z " + std::to_string(static_cast<int>(teeth)), "Y", printed, 3,
                   Known::sighted, formulas::lewis_form_factor(teeth), 0.0021});
  }
  all.push_back({"page on a curve through form factors", "z 20", "Y", 0.3192, 4, Known::sighted,
                 formulas::lewis_form_factor(20), 0.003});
}

void add_bending(std::vector<Figure>& all) {
  // In pounds and inches. The factor for the speed of cut teeth, (1200 + V)/1200, is the example's own.
  const auto row = [&](const char* what, double printed, int decimals, double computed, double allowed = 0) {
    all.push_back({"Mechanical Engineering Design, Example 14-1", "P 8/in, z 16, face 1.5 in, 10 kpsi, 1200 rev/min",
                   what, printed, decimals, Known::from_memory, computed, allowed});
  };
  const double factor = formulas::lewis_form_factor(16);
  const formulas::ToothLoad tooth{0, 1.5, 1.0 / 8, factor};
  const double speed = 3.14159265 * 2 * 1200 / 12;
  const double force = formulas::tooth_capacity_n(tooth, 10000) / ((1200 + speed) / 1200);
  row("Y", 0.296, 3, factor);
  // The book rounds the factor for speed to 1.52 first; 364.27 is exact.
  row("tangential load, lbf", 365, 0, force, 1.1);
  row("power, hp", 6.95, 2, force * speed / 33000, 0.021);

  const auto check = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"tooth formula worked out apart", "m 2, z 24, b 12, 20 MPa", what, printed, decimals,
                   Known::computed, computed});
  };
  const double capacity = formulas::tooth_capacity_n({0, 12, 2, formulas::lewis_form_factor(24)}, 20);
  check("tangential force, N", 161.76, 2, capacity);
  check("torque, N mm", 3882.24, 2, capacity * 24);
}

}  // namespace

std::vector<Figure> strength_figures() {
  std::vector<Figure> all;
  add_form_factors(all);
  add_bending(all);
  return all;
}

}  // namespace visewright::published
