// Figures of two gears in mesh.
#include <array>
#include <cmath>
#include <tuple>

#include "formulas/gear_measure.h"
#include "formulas/involute.h"
#include "published/figure.h"
#include "published/gears.h"

namespace visewright::published {
namespace {

using formulas::Mesh;
using formulas::SpurGear;

double operating_deg(const Mesh& mesh) { return operating_pressure_angle_rad(mesh) / degree; }

/// The sum of shifts that takes up the play of unshifted gears at this distance.
double sum_of_shifts(const Mesh& unshifted) {
  const double angle = unshifted.first.pressure_angle_rad;
  return normal_backlash_mm(unshifted) / (2 * unshifted.first.module_mm * std::sin(angle));
}

/// Working pitch diameter of the first gear.
double working_mm(const SpurGear& one, const Mesh& mesh) {
  return base_diameter_mm(one) / std::cos(operating_pressure_angle_rad(mesh));
}

void add_shifted_pair(std::vector<Figure>& all) {
  SpurGear small = gear(12, 3, 0.6);
  SpurGear large = gear(24, 3, 0.36);
  const double distance = tight_centre_distance_mm(small, large);
  const double y = distance / 3 - 18;
  // That table tops the gears: each addendum loses y less the sum of the shifts.
  small.addendum_factor = large.addendum_factor = 1 + y - 0.96;
  const Mesh mesh{small, large, distance};
  const auto row = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"gear maker's technical reference, table of profile-shifted gears, shifts given",
                   "m 3, z 12/24, x 0.6/0.36", what, printed, decimals, Known::from_memory, computed});
  };
  row("inv of the operating angle", 0.034316, 6, formulas::involute(operating_pressure_angle_rad(mesh)));
  row("operating angle, deg", 26.0886, 4, operating_deg(mesh));
  row("y", 0.83329, 5, y);
  row("centre distance, mm", 56.4999, 4, distance);
  row("ha 1, mm", 4.420, 3, (tip_diameter_mm(small) - pitch_diameter_mm(small)) / 2);
  row("ha 2, mm", 3.700, 3, (tip_diameter_mm(large) - pitch_diameter_mm(large)) / 2);
  row("tooth height, mm", 6.370, 3, (tip_diameter_mm(small) - root_diameter_mm(small)) / 2);
  row("da 1, mm", 44.840, 3, tip_diameter_mm(small));
  row("da 2, mm", 79.400, 3, tip_diameter_mm(large));
  row("df 1, mm", 32.100, 3, root_diameter_mm(small));
  row("df 2, mm", 66.660, 3, root_diameter_mm(large));
}

void add_given_distance(std::vector<Figure>& all) {
  const Mesh plain{gear(12, 3), gear(24, 3), 56.5};
  Mesh topped{gear(12, 3, 0.6), gear(24, 3, 0.36), 56.5};
  topped.first.addendum_factor = topped.second.addendum_factor = 1 + 56.5 / 3 - 18 - 0.96;
  const auto row = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"table page of profile-shifted external spur gears, centre distance given",
                   "m 3, z 12/24, aw 56.500", what, printed, decimals, Known::sighted, computed});
  };
  row("operating angle, deg", 26.0888, 4, operating_deg(plain));
  row("sum of shifts", 0.960, 3, sum_of_shifts(plain));
  row("dw 1, mm", 37.667, 3, working_mm(plain.first, plain));
  row("dw 2, mm", 75.333, 3, working_mm(plain.second, plain));
  row("da 1, mm", 44.840, 3, tip_diameter_mm(topped.first));
  row("da 2, mm", 79.400, 3, tip_diameter_mm(topped.second));
  row("df 1, mm", 32.100, 3, root_diameter_mm(topped.first));
  row("df 2, mm", 66.660, 3, root_diameter_mm(topped.second));
  row("contact ratio", 1.202, 3, contact_ratio(topped));
}

void add_inch_examples(std::vector<Figure>& all) {
  constexpr double inch = 25.4;
  const SpurGear pinion = gear(16, inch / 2);
  const SpurGear wheel = gear(40, inch / 2);
  const std::string design = "Mechanical Engineering Design, 9th ed., Example 13-1";
  const auto pair = [&](const char* what, double printed, int decimals, double computed, double allowed = 0) {
    all.push_back({design, "P 2/in, z 16/40", what, printed, decimals, Known::from_memory, computed, allowed});
  };
  const double standard = tight_centre_distance_mm(pinion, wheel);
  const Mesh spread{pinion, wheel, standard + inch / 4};
  pair("centre distance, in", 14, 2, standard / inch);
  pair("rb 1, in", 3.76, 2, base_diameter_mm(pinion) / 2 / inch);
  pair("rb 2, in", 9.40, 2, base_diameter_mm(wheel) / 2 / inch);
  pair("dw 1 after spreading by 0.25 in, in", 8.143, 3, working_mm(pinion, spread) / inch);
  pair("dw 2 after spreading by 0.25 in, in", 20.357, 3, working_mm(wheel, spread) / inch);
  // The book goes on with its rounded radii, which costs it 0.04 deg; the exact angle is 22.6005.
  pair("operating angle after spreading, deg", 22.56, 2, operating_deg(spread), 0.05);
  all.push_back({"exact answer of that example", "P 2/in, z 16/40", "operating angle after spreading, deg", 22.6005, 4,
                 Known::computed, operating_deg(spread)});

  const SpurGear small = gear(19, inch / 6);
  const SpurGear large = gear(37, inch / 6);
  const auto machine = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back(
        {"Machine Design, Example 12-1", "P 6/in, z 19/37", what, printed, decimals, Known::from_memory, computed});
  };
  const double distance = tight_centre_distance_mm(small, large);
  machine("d 1, in", 3.167, 3, pitch_diameter_mm(small) / inch);
  machine("d 2, in", 6.167, 3, pitch_diameter_mm(large) / inch);
  machine("base pitch, in", 0.4920, 4, base_pitch_mm(small) / inch);
  machine("centre distance, in", 4.667, 3, distance / inch);
  machine("tooth height, in", 0.375, 3, (tip_diameter_mm(small) - root_diameter_mm(small)) / 2 / inch);
  machine("contact ratio", 1.62, 2, contact_ratio(Mesh{small, large, distance}));
  machine("length of action, in", 0.798, 3, contact_ratio(Mesh{small, large, distance}) * base_pitch_mm(small) / inch);
  machine("operating angle after spreading by 2 %, deg", 22.89, 2, operating_deg(Mesh{small, large, 1.02 * distance}));
}

bool runs_clear(int a, int b, double angle_deg) {
  const SpurGear first = gear(a, 1, 0, angle_deg);
  const SpurGear second = gear(b, 1, 0, angle_deg);
  return free_of_interference(Mesh{first, second, tight_centre_distance_mm(first, second)});
}

int least_equal_pair(double angle_deg) {
  int teeth = 4;
  while (!runs_clear(teeth, teeth, angle_deg)) ++teeth;
  return teeth;
}

int largest_mate(int pinion) {
  int teeth = pinion;
  while (runs_clear(pinion, teeth + 1, 20)) ++teeth;
  return teeth;
}

void add_interference(std::vector<Figure>& all) {
  const std::string book = "Mechanical Engineering Design, 9th ed., section 13-7";
  constexpr std::array<std::array<double, 2>, 3> pairs{{{20, 13}, {14.5, 23}, {25, 9}}};
  for (const auto& [deg, teeth] : pairs) {
    const bool printed = deg == 20;
    all.push_back({printed ? book : "interference formula of equal gears", std::to_string(deg) + " deg",
                   "least equal pair", teeth, 0, printed ? Known::from_memory : Known::computed,
                   static_cast<double>(least_equal_pair(deg))});
  }
  constexpr std::array<std::array<int, 2>, 5> mates{{{13, 16}, {14, 26}, {15, 45}, {16, 101}, {17, 1309}}};
  for (const auto& [pinion, mate] : mates) {
    all.push_back({book, "20 deg, pinion " + std::to_string(pinion), "largest mate", static_cast<double>(mate), 0,
                   Known::from_memory, static_cast<double>(largest_mate(pinion))});
  }
}

void add_contact_ratios(std::vector<Figure>& all) {
  struct Pair {
    int first, second;
    double printed;
  };
  for (const Pair& p :
       {Pair{12, 12, 1.4203}, Pair{15, 15, 1.4814}, Pair{17, 17, 1.5148}, Pair{18, 18, 1.5298}, Pair{20, 20, 1.5568},
        Pair{24, 24, 1.6019}, Pair{25, 25, 1.6117}, Pair{30, 30, 1.6535}, Pair{32, 32, 1.6676}, Pair{36, 36, 1.6924},
        Pair{40, 40, 1.7135}, Pair{48, 48, 1.7475}, Pair{60, 60, 1.7847}, Pair{20, 40, 1.6352}, Pair{12, 24, 1.5111}}) {
    const SpurGear a = gear(p.first, 1);
    const SpurGear b = gear(p.second, 1);
    all.push_back({"contact ratios of standard pairs",
                   "20 deg, z " + std::to_string(p.first) + "/" + std::to_string(p.second), "contact ratio", p.printed,
                   4, Known::computed, contact_ratio(Mesh{a, b, tight_centre_distance_mm(a, b)})});
  }
}

void add_backlash(std::vector<Figure>& all) {
  struct Spread {
    double module_mm;
    int teeth;
    double farther_mm, angle_deg, normal_mm, reference_mm, ratio;
  };
  for (const Spread& s : {Spread{2, 30, 0.10, 20.26030, 0.068832, 0.073249, 1.6043},
                          Spread{2, 30, 0.20, 20.51659, 0.138509, 0.147399, 1.5557},
                          Spread{2, 40, 0.20, 20.38894, 0.138088, 0.146950, 1.6154},
                          Spread{2, 24, 0.20, 20.64328, 0.138929, 0.147845, 1.5044},
                          Spread{2.5, 32, 0.25, 20.48477, 0.173005, 0.184108, 1.5697},
                          Spread{3, 20, 0.30, 20.76902, 0.209019, 0.222433, 1.4596}}) {
    const SpurGear one = gear(s.teeth, s.module_mm);
    const Mesh mesh{one, one, s.module_mm * s.teeth + s.farther_mm};
    const auto row = [&](const char* what, double printed, int decimals, double computed) {
      all.push_back({"backlash from a centre-distance error",
                     "m " + std::to_string(s.module_mm) + ", z " + std::to_string(s.teeth) + ", farther by " +
                         std::to_string(s.farther_mm),
                     what, printed, decimals, Known::computed, computed});
    };
    row("operating angle, deg", s.angle_deg, 5, operating_deg(mesh));
    row("normal backlash, mm", s.normal_mm, 6, normal_backlash_mm(mesh));
    row("backlash on the reference circle, mm", s.reference_mm, 6, backlash_mm(mesh));
    row("contact ratio", s.ratio, 4, contact_ratio(mesh));
  }
  // The handbook's rule is the slope at the tight distance: so much farther for each unit of backlash.
  constexpr std::array<std::array<double, 2>, 2> slopes{{{20, 1.374}, {14.5, 1.933}}};
  for (const auto& [deg, printed] : slopes) {
    constexpr double little = 1e-5;
    const SpurGear one = gear(30, 2, 0, deg);
    all.push_back({"Elements of Metric Gear Technology, equations 14-1 to 14-3", std::to_string(deg) + " deg",
                   "distance for a unit of backlash", printed, 3, Known::sighted,
                   little / backlash_mm(Mesh{one, one, 60 + little})});
  }
}

void add_tight_mesh(std::vector<Figure>& all) {
  const SpurGear thin = gear(30, 2, -0.05 / (4 * std::tan(20 * degree)));
  const double distance = tight_centre_distance_mm(thin, thin);
  const auto row = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"tight mesh formula, teeth 0.05 mm thin through shift", "m 2, z 30/30", what, printed, decimals,
                   Known::computed, computed});
  };
  row("inv of the operating angle", 0.01407105, 8,
      formulas::involute(operating_pressure_angle_rad(Mesh{thin, thin, distance})));
  row("operating angle, deg", 19.63230, 5, operating_deg(Mesh{thin, thin, distance}));
  row("centre distance, mm", 59.86141, 5, distance);
  row("thickness, mm", std::numbers::pi - 0.05, 6, tooth_thickness_mm(thin));
}

// The table of that report gives the formula's values rounded up.
void add_least_backlash(std::vector<Figure>& all) {
  struct Row {
    double module_mm, distance_mm, printed;
  };
  for (const Row& r : {Row{1.5, 50, 0.09}, Row{1.5, 100, 0.11}, Row{2, 50, 0.10}, Row{2, 100, 0.12}, Row{2, 200, 0.15},
                       Row{3, 50, 0.12}, Row{3, 100, 0.14}, Row{3, 200, 0.17}, Row{3, 400, 0.24}, Row{5, 100, 0.18}}) {
    all.push_back({"ISO/TR 10064-2 table A.1",
                   "m " + std::to_string(r.module_mm) + ", a " + std::to_string(r.distance_mm),
                   "least normal backlash rounded up, mm", r.printed, 2, Known::from_memory,
                   std::ceil(100 * formulas::machined_backlash_mm(r.module_mm, r.distance_mm) - 1e-9) / 100});
  }
}

}  // namespace

std::vector<Figure> mesh_figures() {
  std::vector<Figure> all;
  add_shifted_pair(all);
  add_given_distance(all);
  add_inch_examples(all);
  add_interference(all);
  add_contact_ratios(all);
  add_backlash(all);
  add_tight_mesh(all);
  add_least_backlash(all);
  return all;
}

}  // namespace visewright::published
