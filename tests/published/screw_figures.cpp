// Figures of screws that press. Examples in pounds and inches are worked in those: the formulas hold in any units.
#include <cmath>
#include <numbers>

#include "formulas/power_screw.h"
#include "formulas/thread_profile.h"
#include "published/figure.h"

namespace visewright::published {
namespace {

using formulas::Engagement;
using formulas::PowerScrew;

constexpr double degree = std::numbers::pi / 180;

double lead_deg(const PowerScrew& screw) { return formulas::lead_angle_rad(screw.lead_mm, screw.mean_mm) / degree; }

void add_double_square_thread(std::vector<Figure>& all) {
  const auto row = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"Mechanical Engineering Design, 9th ed., Example 8-1",
                   "square 32 x 4, two starts, f 0.08, collar 0.08 on 40, 6.4 kN", what, printed, decimals,
                   Known::from_memory, computed});
  };
  constexpr double force = 6400;
  const PowerScrew screw{8, 30, 0, 0.08};
  const double raise = raising_torque_nmm(screw, force);
  const double lower = lowering_torque_nmm(screw, force);
  const double collar = formulas::collar_torque_nmm(force, 0.08, 40);
  row("thread torque to raise, N m", 15.94, 2, raise / 1000);
  row("collar torque, N m", 10.24, 2, collar / 1000);
  row("torque to raise, N m", 26.18, 2, (raise + collar) / 1000);
  row("thread torque to lower, N m", -0.466, 3, lower / 1000);
  row("torque to lower, N m", 9.77, 2, (lower + collar) / 1000);
  row("efficiency", 0.311, 3, formulas::screw_efficiency(8, force, raise + collar));
  const formulas::ScrewStress body = formulas::screw_stress({force, raise + collar, 0}, 28);
  row("torsion of the body, MPa", 6.07, 2, body.torsion_mpa);
  row("axial stress of the body, MPa", 10.39, 2, body.axial_mpa);
  const Engagement first_turn{32, 30, 28, 4};
  const double first = formulas::first_turn_share * force;
  row("pressure on the first turn, MPa", 12.9, 1, flank_pressure_mpa(first_turn, first));
  const double bending = thread_bending_mpa(first_turn, first);
  row("bending of the first turn, MPa", 41.5, 1, bending);
  row("von Mises at the foot of the first turn, MPa", 48.7, 1,
      formulas::thread_foot_von_mises_mpa(bending, -body.axial_mpa, body.torsion_mpa));
}

void add_acme_examples(std::vector<Figure>& all) {
  const auto power = [&](const char* what, double printed, int decimals, Known known, double computed,
                         double allowed = 0) {
    all.push_back({"Machine Elements in Mechanical Design, 4th ed., Example 17-1", "Acme 1-1/2 - 4, f 0.15, 12500 lb",
                   what, printed, decimals, known, computed, allowed});
  };
  const PowerScrew acme{0.25, 1.3429, 14.5 * degree, 0.15};
  const double raise = raising_torque_nmm(acme, 12500);
  power("lead angle, deg", 3.39, 2, Known::sighted, lead_deg(acme));
  // The book rounds the cosine and the tangent first: 1814.4 is exact.
  power("torque to raise, lb in", 1809, 0, Known::sighted, raise, 9);
  power("efficiency, %", 27.5, 1, Known::sighted, 100 * formulas::screw_efficiency(0.25, 12500, raise), 0.2);
  power("torque to lower, lb in", 796, 0, Known::from_memory, lowering_torque_nmm(acme, 12500));

  // The book takes the flank angle square to the thread, which here makes it 14.36 deg, and rounds as it goes.
  const auto jack = [&](const char* what, double printed, int decimals, double computed, double allowed = 0) {
    all.push_back({"Fundamentals of Machine Component Design, screw-jack sample problem",
                   "Acme 1 in, two starts, p 0.2, f 0.12, collar 0.09 on 1.5, 1000 lb", what, printed, decimals,
                   Known::from_memory, computed, allowed});
  };
  const PowerScrew twin{0.4, 0.9, 14.5 * degree, 0.12};
  const double collar = formulas::collar_torque_nmm(1000, 0.09, 1.5);
  const double up = raising_torque_nmm(twin, 1000);
  jack("lead angle, deg", 8.05, 2, lead_deg(twin));
  jack("thread torque to raise, lb in", 121.5, 1, up, 0.1);
  jack("collar torque, lb in", 67.5, 1, collar);
  jack("torque to raise, lb in", 189.0, 1, up + collar, 0.1);
  jack("thread torque to lower, lb in", -7.8, 1, lowering_torque_nmm(twin, 1000), 0.1);
  jack("torque to lower, lb in", 59.7, 1, lowering_torque_nmm(twin, 1000) + collar, 0.1);
  jack("efficiency, %", 33.7, 1, 100 * formulas::screw_efficiency(0.4, 1000, up + collar));
  jack("efficiency without collar, %", 52.4, 1, 100 * formulas::screw_efficiency(0.4, 1000, up));
}

void add_square_examples(std::vector<Figure>& all) {
  const std::string book = "A Textbook of Machine Design, chapter 17";
  const auto row = [&](const char* inputs, const char* what, double printed, int decimals, double computed,
                       double allowed = 0) {
    all.push_back({book, inputs, what, printed, decimals, Known::from_memory, computed, allowed});
  };
  // The book rounds tan of the lead angle to 0.08 here.
  const PowerScrew wheel{12.5, 50, 0, 0.15};
  const double turn = raising_torque_nmm(wheel, 10000) + formulas::collar_torque_nmm(10000, 0.18, 60);
  const char* const by_wheel = "square, dm 50, p 12.5, f 0.15, collar 0.18 on 60, 10 kN, 100 N each hand";
  row(by_wheel, "force at the mean radius, N", 2328, 0, raising_torque_nmm(wheel, 10000) / 25, 5);
  row(by_wheel, "diameter of the wheel, m", 1.122, 3, turn / 100 / 1000, 0.002);

  const PowerScrew bolt{5, 24, 0, 0.1};
  const double nut = raising_torque_nmm(bolt, 10000) + formulas::collar_torque_nmm(10000, 0.16, 50);
  const char* const by_spanner = "square, dm 24, p 5, f 0.1, nut face 0.16 on 50, 10 kN, spanner 0.5 m";
  row(by_spanner, "torque, N m", 60.09, 2, nut / 1000);
  row(by_spanner, "force on the spanner, N", 120.2, 1, nut / 500);

  const PowerScrew lever{40, 100, 0, 0.15};
  const double collar = formulas::collar_torque_nmm(18000, 0.20, 175);
  const char* const by_lever = "square, dm 100, p 20, two starts, f 0.15, collar 0.20 on 175, 18 kN, lever 400";
  row(by_lever, "force to raise, N", 1423, 0, (raising_torque_nmm(lever, 18000) + collar) / 400, 1);
  row(by_lever, "force to lower, N", 838, 0, (lowering_torque_nmm(lever, 18000) + collar) / 400);

  const double motor = formulas::raising_torque_nmm({6, 37, 0, 0.1}, 75000);
  const char* const by_motor = "square 40 x 6, f 0.1, 75 kN, 300 mm/min";
  row(by_motor, "torque, N m", 211.46, 2, motor / 1000, 0.05);
  row(by_motor, "power, kW", 1.108, 3, motor / 1000 * 2 * std::numbers::pi * 50 / 60 / 1000, 0.002);

  // The answer is rounded to a multiple of ten.
  all.push_back({"statics text, section 5.6.1 problem 2", "square, 2 threads/in, dm 2 in, f 0.2, 10000 lb",
                 "torque to raise, lb in", 2840, -1, Known::sighted,
                 formulas::raising_torque_nmm({0.5, 2, 0, 0.2}, 10000)});
}

void add_computed(std::vector<Figure>& all) {
  const auto row = [&](const char* inputs, const char* what, double printed, int decimals, double computed) {
    all.push_back({"screw formulas worked out apart", inputs, what, printed, decimals, Known::computed, computed});
  };
  struct Thread {
    const char* name;
    double lead, mean, half_flank_deg;
    double at_12, at_15, at_20, efficiency, lower, limit;
  };
  const double inch = 25.4;
  for (const Thread& t :
       {Thread{"Tr16x4", 4, 14, 15, 1.5235, 1.7484, 2.1260, 0.3641, 0.4441, 0.0878},
        Thread{"Tr20x4", 4, 18, 15, 1.7703, 2.0568, 2.5373, 0.3095, 0.7527, 0.0683},
        Thread{"Tr24x5", 5, 21.5, 15, 2.1511, 2.4938, 3.0687, 0.3191, 0.8637, 0.0715},
        Thread{"M16x2", 2, 14.701, 30, 1.3449, 1.6035, 2.0362, 0.1985, 0.9477, 0.0375},
        Thread{"M20x2.5", 2.5, 18.376, 30, 1.6811, 2.0043, 2.5452, 0.1985, 1.1846, 0.0375},
        Thread{"3/4-6 Acme", inch / 6, formulas::acme_thread(0.75 * inch, 6).mean_mm, 14.5, 1.7403, 2.0103, 2.4633,
               0.3351, 0.6303, 0.0770},
        Thread{"3/4-10 UNC", inch / 10, 0.6850 * inch, 30, 1.6201, 1.9266, 2.4395, 0.2098, 1.0937, 0.0402}}) {
    const auto with = [&](double friction) { return PowerScrew{t.lead, t.mean, t.half_flank_deg * degree, friction}; };
    row(t.name, "raise a kilonewton at f 0.12, N m", t.at_12, 4, raising_torque_nmm(with(0.12), 1));
    row(t.name, "raise a kilonewton at f 0.15, N m", t.at_15, 4, raising_torque_nmm(with(0.15), 1));
    row(t.name, "raise a kilonewton at f 0.20, N m", t.at_20, 4, raising_torque_nmm(with(0.20), 1));
    row(t.name, "efficiency at f 0.15", t.efficiency, 4,
        formulas::screw_efficiency(t.lead, 1, raising_torque_nmm(with(0.15), 1)));
    row(t.name, "lower a kilonewton at f 0.15, N m", t.lower, 4, lowering_torque_nmm(with(0.15), 1));
    row(t.name, "friction to hold", t.limit, 4, friction_to_hold(with(0)));
  }
  const PowerScrew metric{2.5, formulas::metric_thread(20, 2.5).mean_mm, 30 * degree, 0.15};
  row("M20x2.5, f 0.15, collar 0.15 on 30, 7.5 N m", "force, kN", 1.7629, 4,
      formulas::force_from_torque_n(metric, 7500, 0.15, 30) / 1000);
  const formulas::ScrewStress body = formulas::screw_stress({5000, 10000, 0}, formulas::metric_thread(20, 2.5).root_mm);
  row("M20, 5 kN, 10 N m", "axial stress, MPa", 22.203, 2, body.axial_mpa);
  row("M20, 5 kN, 10 N m", "torsion, MPa", 10.490, 2, body.torsion_mpa);
  row("M20, 5 kN, 10 N m", "von Mises, MPa", 28.689, 2, body.von_mises_mpa);
  const Engagement nut{20, 18, 15.5, 30};
  row("Tr20x4, 5 kN, nut 30", "shear in the screw's thread, MPa", 6.845, 3, screw_thread_shear_mpa(nut, 5000));
  row("Tr20x4, 5 kN, nut 30", "shear in the nut's thread, MPa", 5.305, 3, nut_thread_shear_mpa(nut, 5000));
  const PowerScrew press{4, 18, 0, 0.09};
  row("square 20 x 4, f 0.09, 5 kN", "thread torque to raise, N m", 7.279, 3, raising_torque_nmm(press, 5000) / 1000);
  row("square 20 x 4, f 0.09, collar 0.09 on 30, 5 kN", "torque to lower, N m", 7.611, 3,
      (lowering_torque_nmm(press, 5000) + formulas::collar_torque_nmm(5000, 0.09, 30)) / 1000);
  const Engagement two_turns{1.5, 1.375, 1.25, 0.5};
  row("square 1.5 x 0.25 in, 1500 lbf, two turns", "bending of the thread, psi", 4583.7, 1,
      thread_bending_mpa(two_turns, 1500));
  const formulas::ScrewStress inches = formulas::screw_stress({1500, 235, 0}, 1.25);
  row("square 1.5 x 0.25 in, 1500 lbf, 235 lb in", "axial stress, psi", 1222.3, 1, inches.axial_mpa);
  row("square 1.5 x 0.25 in, 1500 lbf, 235 lb in", "torsion, psi", 612.8, 1, inches.torsion_mpa);
}

}  // namespace

std::vector<Figure> screw_figures() {
  std::vector<Figure> all;
  add_double_square_thread(all);
  add_acme_examples(all);
  add_square_examples(all);
  add_computed(all);
  return all;
}

}  // namespace visewright::published
