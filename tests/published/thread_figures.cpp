// Figures of screw threads.
#include <array>
#include <numbers>

#include "formulas/thread_profile.h"
#include "published/figure.h"

namespace visewright::published {
namespace {

using formulas::ThreadProfile;

constexpr double inch = 25.4;

double lead_deg(double lead_mm, const ThreadProfile& thread) {
  return formulas::lead_angle_rad(lead_mm, thread.mean_mm) * 180 / std::numbers::pi;
}

void add_metric(std::vector<Figure>& all) {
  struct Row {
    const char* name;
    double d, pitch, mean, nut_minor, root, exact_area, area;
    int area_decimals;
    double lead;
  };
  constexpr std::array<Row, 11> rows{{{"M8", 8, 1.25, 7.188, 6.647, 6.466, 36.61, 36.6, 1, 3.168},
                                      {"M10", 10, 1.5, 9.026, 8.376, 8.160, 57.99, 58.0, 1, 3.028},
                                      {"M12", 12, 1.75, 10.863, 10.106, 9.853, 84.27, 84.3, 1, 2.935},
                                      {"M14", 14, 2, 12.701, 11.835, 11.546, 115.44, 115, 0, 2.869},
                                      {"M16", 16, 2, 14.701, 13.835, 13.546, 156.67, 157, 0, 2.480},
                                      {"M18", 18, 2.5, 16.376, 15.294, 14.933, 192.47, 192, 0, 2.782},
                                      {"M20", 20, 2.5, 18.376, 17.294, 16.933, 244.79, 245, 0, 2.480},
                                      {"M22", 22, 2.5, 20.376, 19.294, 18.933, 303.40, 303, 0, 2.236},
                                      {"M24", 24, 3, 22.051, 20.752, 20.319, 352.50, 353, 0, 2.480},
                                      {"M27", 27, 3, 25.051, 23.752, 23.319, 459.41, 459, 0, 2.183},
                                      {"M30", 30, 3.5, 27.727, 26.211, 25.706, 560.59, 561, 0, 2.301}}};
  for (const Row& r : rows) {
    const ThreadProfile t = formulas::metric_thread(r.d, r.pitch);
    const std::string name = r.name;
    all.push_back({"ISO 724", name, "d2, mm", r.mean, 3, Known::sighted, t.mean_mm});
    all.push_back({"ISO 898-1", name, "stress area, mm2", r.area, r.area_decimals, Known::sighted, t.stress_area_mm2});
    all.push_back({"profile of ISO 68-1", name, "d1, mm", r.nut_minor, 3, Known::computed, t.nut_minor_mm});
    all.push_back({"profile of ISO 68-1", name, "d3, mm", r.root, 3, Known::computed, t.root_mm});
    all.push_back(
        {"profile of ISO 68-1", name, "stress area, mm2", r.exact_area, 2, Known::computed, t.stress_area_mm2});
    all.push_back({"profile of ISO 68-1", name, "lead angle, deg", r.lead, 3, Known::computed, lead_deg(r.pitch, t)});
  }
}

void add_trapezoidal(std::vector<Figure>& all) {
  struct Row {
    const char* name;
    double d, pitch, mean, nut_major, root, nut_minor, area, root_area, lead;
    bool row_sighted, root_sighted;
  };
  constexpr std::array<Row, 13> rows{{{"Tr 12x3", 12, 3, 10.5, 12.5, 8.5, 9.0, 70.9, 56.7, 5.197, true, true},
                                      {"Tr 14x3", 14, 3, 12.5, 14.5, 10.5, 11.0, 103.9, 86.6, 4.369, true, true},
                                      {"Tr 16x4", 16, 4, 14.0, 16.5, 11.5, 12.0, 127.7, 103.9, 5.197, false, true},
                                      {"Tr 18x4", 18, 4, 16.0, 18.5, 13.5, 14.0, 170.9, 143.1, 4.550, false, false},
                                      {"Tr 20x4", 20, 4, 18.0, 20.5, 15.5, 16.0, 220.4, 188.7, 4.046, false, false},
                                      {"Tr 22x5", 22, 5, 19.5, 22.5, 16.5, 17.0, 254.5, 213.8, 4.666, false, false},
                                      {"Tr 24x5", 24, 5, 21.5, 24.5, 18.5, 19.0, 314.2, 268.8, 4.234, false, false},
                                      {"Tr 26x5", 26, 5, 23.5, 26.5, 20.5, 21.0, 380.1, 330.1, 3.874, false, false},
                                      {"Tr 28x5", 28, 5, 25.5, 28.5, 22.5, 23.0, 452.4, 397.6, 3.571, false, false},
                                      {"Tr 30x6", 30, 6, 27.0, 31.0, 23.0, 24.0, 490.9, 415.5, 4.046, false, false},
                                      {"Tr 32x6", 32, 6, 29.0, 33.0, 25.0, 26.0, 572.6, 490.9, 3.768, false, false},
                                      {"Tr 34x6", 34, 6, 31.0, 35.0, 27.0, 28.0, 660.5, 572.6, 3.525, false, false},
                                      {"Tr 36x6", 36, 6, 33.0, 37.0, 29.0, 30.0, 754.8, 660.5, 3.312, false, false}}};
  for (const Row& r : rows) {
    const ThreadProfile t = formulas::trapezoidal_thread(r.d, r.pitch);
    const std::string name = r.name;
    const Known known = r.row_sighted ? Known::sighted : Known::computed;
    all.push_back({"ISO 2904", name, "d2, mm", r.mean, 2, known, t.mean_mm});
    all.push_back({"ISO 2904", name, "D4, mm", r.nut_major, 2, known, t.nut_major_mm});
    all.push_back({"ISO 2904", name, "D1, mm", r.nut_minor, 2, known, t.nut_minor_mm});
    all.push_back(
        {"ISO 2904", name, "d3, mm", r.root, 2, r.root_sighted ? Known::sighted : Known::computed, t.root_mm});
    all.push_back({"profile of ISO 2901", name, "stress area, mm2", r.area, 1, Known::computed, t.stress_area_mm2});
    all.push_back({"profile of ISO 2901", name, "core area, mm2", r.root_area, 1, Known::computed,
                   formulas::circle_area_mm2(t.root_mm)});
    all.push_back({"profile of ISO 2901", name, "lead angle, deg", r.lead, 3, Known::computed, lead_deg(r.pitch, t)});
  }
}

void add_unified(std::vector<Figure>& all) {
  struct Row {
    const char* name;
    double d, n, mean, nut_minor, root, area;
    int area_decimals;
    double area_mm2;
  };
  constexpr std::array<Row, 8> rows{{{"3/8-16 UNC", 0.375, 16, 0.3344, 0.3073, 0.2983, 0.0775, 4, 50.0},
                                     {"7/16-14 UNC", 0.4375, 14, 0.3911, 0.3602, 0.3499, 0.1063, 4, 68.6},
                                     {"1/2-13 UNC", 0.5, 13, 0.4500, 0.4167, 0.4056, 0.1419, 4, 91.5},
                                     {"9/16-12 UNC", 0.5625, 12, 0.5084, 0.4723, 0.4603, 0.1819, 4, 117.4},
                                     {"5/8-11 UNC", 0.625, 11, 0.5660, 0.5266, 0.5135, 0.226, 3, 145.8},
                                     {"3/4-10 UNC", 0.75, 10, 0.6850, 0.6417, 0.6273, 0.334, 3, 215.8},
                                     {"7/8-9 UNC", 0.875, 9, 0.8028, 0.7547, 0.7387, 0.462, 3, 297.9},
                                     {"1-8 UNC", 1, 8, 0.9188, 0.8647, 0.8466, 0.606, 3, 390.8}}};
  const std::string standard = "ASME B1.1";
  for (const Row& r : rows) {
    const ThreadProfile t = formulas::unified_thread(r.d * inch, r.n);
    all.push_back({standard, r.name, "pitch diameter, in", r.mean, 4, Known::sighted, t.mean_mm / inch});
    all.push_back({standard, r.name, "nut minor, in", r.nut_minor, 4, Known::sighted, t.nut_minor_mm / inch});
    all.push_back(
        {standard, r.name, "screw minor with the flat root, in", r.root, 4, Known::sighted, t.root_mm / inch});
    all.push_back({standard, r.name, "stress area, in2", r.area, r.area_decimals, Known::sighted,
                   t.stress_area_mm2 / inch / inch});
    all.push_back(
        {"profile of ASME B1.1", r.name, "stress area, mm2", r.area_mm2, 1, Known::computed, t.stress_area_mm2});
  }
}

void add_acme(std::vector<Figure>& all) {
  struct Row {
    const char* name;
    double d, n, mean, nut_minor, root, nut_major, area, lead;
    bool sighted;
  };
  constexpr std::array<Row, 7> rows{{{"1/2-10 Acme", 0.5, 10, 0.4500, 0.4000, 0.3800, 0.520, 0.1419, 4.046, true},
                                     {"5/8-8 Acme", 0.625, 8, 0.5625, 0.5000, 0.4800, 0.645, 0.2217, 4.046, true},
                                     {"3/4-6 Acme", 0.75, 6, 0.6667, 0.5833, 0.5633, 0.770, 0.3068, 4.550, true},
                                     {"7/8-6 Acme", 0.875, 6, 0.7917, 0.7083, 0.6883, 0.895, 0.4418, 3.834, true},
                                     {"1-5 Acme", 1, 5, 0.9000, 0.8000, 0.7800, 1.020, 0.5675, 4.046, true},
                                     {"1-1/8-5 Acme", 1.125, 5, 1.0250, 0.9250, 0.9050, 1.145, 0.7466, 3.554, true},
                                     {"1-1/4-5 Acme", 1.25, 5, 1.1500, 1.0500, 1.0300, 1.270, 0.9503, 3.169, false}}};
  for (const Row& r : rows) {
    const ThreadProfile t = formulas::acme_thread(r.d * inch, r.n);
    const Known known = r.sighted ? Known::sighted : Known::computed;
    all.push_back({"profile of ASME B1.5", r.name, "E, in", r.mean, 4, Known::computed, t.mean_mm / inch});
    all.push_back({"profile of ASME B1.5", r.name, "K, in", r.nut_minor, 4, Known::computed, t.nut_minor_mm / inch});
    all.push_back({"ASME B1.5", r.name, "screw minor, greatest of 2G, in", r.root, 4, known, t.root_mm / inch});
    all.push_back({"ASME B1.5", r.name, "nut major, least, in", r.nut_major, 3, known, t.nut_major_mm / inch});
    all.push_back({"profile of ASME B1.5", r.name, "stress area, in2", r.area, 4, Known::computed,
                   t.stress_area_mm2 / inch / inch});
    all.push_back(
        {"profile of ASME B1.5", r.name, "lead angle, deg", r.lead, 3, Known::computed, lead_deg(inch / r.n, t)});
  }
}

}  // namespace

std::vector<Figure> thread_figures() {
  std::vector<Figure> all;
  add_metric(all);
  add_trapezoidal(all);
  add_unified(all);
  add_acme(all);
  return all;
}

}  // namespace visewright::published
