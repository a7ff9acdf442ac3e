#include "formulas/thread_profile.h"

#include <cmath>
#include <numbers>

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double inch_mm = 25.4;

/// Height of the sharp 60° triangle.
double triangle_mm(double pitch_mm) { return std::numbers::sqrt3 / 2 * pitch_mm; }

}  // namespace

double circle_area_mm2(double diameter_mm) noexcept { return pi / 4 * diameter_mm * diameter_mm; }

double lead_angle_rad(double lead_mm, double mean_mm) noexcept { return std::atan(lead_mm / (pi * mean_mm)); }

ThreadProfile metric_thread(double major_mm, double pitch_mm) noexcept {
  const double height = triangle_mm(pitch_mm);
  ThreadProfile thread;
  thread.major_mm = major_mm;
  thread.mean_mm = major_mm - 0.75 * height;
  thread.nut_minor_mm = major_mm - 1.25 * height;
  thread.root_mm = major_mm - 17.0 / 12.0 * height;
  thread.nut_major_mm = major_mm;
  thread.stress_area_mm2 = circle_area_mm2((thread.mean_mm + thread.root_mm) / 2);
  thread.half_flank_rad = pi / 6;
  return thread;
}

double trapezoidal_clearance_mm(double pitch_mm) noexcept {
  if (pitch_mm < 2) return 0.15;
  if (pitch_mm <= 5) return 0.25;
  return pitch_mm <= 12 ? 0.5 : 1;
}

ThreadProfile trapezoidal_thread(double major_mm, double pitch_mm) noexcept {
  const double clearance = trapezoidal_clearance_mm(pitch_mm);
  ThreadProfile thread;
  thread.major_mm = major_mm;
  thread.mean_mm = major_mm - pitch_mm / 2;
  thread.nut_minor_mm = major_mm - pitch_mm;
  thread.root_mm = thread.nut_minor_mm - 2 * clearance;
  thread.nut_major_mm = major_mm + 2 * clearance;
  thread.stress_area_mm2 = circle_area_mm2((thread.mean_mm + thread.root_mm) / 2);
  thread.half_flank_rad = pi / 12;
  return thread;
}

ThreadProfile unified_thread(double major_mm, double threads_per_inch) noexcept {
  const double pitch = inch_mm / threads_per_inch;
  ThreadProfile thread = metric_thread(major_mm, pitch);
  thread.stress_area_mm2 = circle_area_mm2(major_mm - 9.0 / 8.0 * triangle_mm(pitch));
  return thread;
}

ThreadProfile acme_thread(double major_mm, double threads_per_inch) noexcept {
  const double pitch = inch_mm / threads_per_inch;
  const double allowance = (threads_per_inch > 10 ? 0.010 : 0.020) * inch_mm;
  ThreadProfile thread;
  thread.major_mm = major_mm;
  thread.mean_mm = major_mm - pitch / 2;
  thread.nut_minor_mm = major_mm - pitch;
  thread.root_mm = thread.nut_minor_mm - allowance;
  thread.nut_major_mm = major_mm + allowance;
  thread.stress_area_mm2 = circle_area_mm2((thread.mean_mm + thread.nut_minor_mm) / 2);
  thread.half_flank_rad = 14.5 * pi / 180;
  return thread;
}

}  // namespace visewright::formulas
