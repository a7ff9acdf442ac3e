// Figures of single gears.
#include <array>
#include <cmath>
#include <numbers>

#include "formulas/gear_measure.h"
#include "formulas/involute.h"
#include "published/figure.h"
#include "published/gears.h"

namespace visewright::published {
namespace {

using formulas::SpurGear;

const std::string standard_table = "gear maker's technical reference, table of standard spur gears";
const std::string metric_gears = "Elements of Metric Gear Technology";

void add_involutes(std::vector<Figure>& all) {
  constexpr std::array<std::array<double, 2>, 9> table{{{10, 0.00179406},
                                                        {14.5, 0.00554484},
                                                        {15, 0.00614980},
                                                        {17.5, 0.00986617},
                                                        {20, 0.01490438},
                                                        {22.5, 0.02151448},
                                                        {24, 0.02634966},
                                                        {25, 0.02997535},
                                                        {30, 0.05375149}}};
  for (const auto& [deg, printed] : table) {
    all.push_back({"involute table", std::to_string(deg) + " deg", "inv", printed, 8, Known::computed,
                   formulas::involute(deg * degree)});
  }
  all.push_back({"handbook value of the profile-shifted spur gear table", "20 deg", "inv", 0.014904, 6, Known::sighted,
                 formulas::involute(20 * degree)});
  all.push_back({"involute table", "inv 0.0300", "angle, deg", 25.00649, 5, Known::computed,
                 formulas::inverse_involute(0.03) / degree});
}

void add_circles(std::vector<Figure>& all) {
  const SpurGear small = gear(12, 3);
  const SpurGear large = gear(24, 3);
  const auto row = [&](const char* what, double printed, int decimals, Known known, double computed) {
    all.push_back({standard_table, "m 3, 20 deg, z 12/24", what, printed, decimals, known, computed});
  };
  row("db 1, mm", 33.8289, 4, Known::sighted, base_diameter_mm(small));
  row("db 2, mm", 67.6579, 4, Known::sighted, base_diameter_mm(large));
  row("d 1, mm", 36, 3, Known::from_memory, pitch_diameter_mm(small));
  row("d 2, mm", 72, 3, Known::from_memory, pitch_diameter_mm(large));
  row("da 1, mm", 42, 3, Known::from_memory, tip_diameter_mm(small));
  row("da 2, mm", 78, 3, Known::from_memory, tip_diameter_mm(large));
  row("df 1, mm", 28.5, 3, Known::from_memory, root_diameter_mm(small));
  row("df 2, mm", 64.5, 3, Known::from_memory, root_diameter_mm(large));
  row("base pitch, mm", 8.85639, 5, Known::from_memory, base_pitch_mm(small));
}

void add_spans(std::vector<Figure>& all) {
  const SpurGear shifted = gear(24, 3, 0.4);
  const std::string g4 = metric_gears + ", span table";
  all.push_back(
      {g4, "m 3, z 24, x +0.4", "teeth to span", 3.78787, 5, Known::from_memory, teeth_to_span_exactly(shifted)});
  all.push_back({g4, "m 3, z 24, x +0.4", "whole teeth to span", 4, 0, Known::from_memory,
                 static_cast<double>(teeth_to_span(shifted))});
  all.push_back(
      {g4, "m 3, z 24, x +0.4, k 4", "span, mm", 32.8266, 4, Known::from_memory, span_over_teeth_mm(shifted, 4)});
  const SpurGear plain = gear(20, 2);
  const double span = span_over_teeth_mm(plain, 3);
  const std::string g5 = "page on span measurement over teeth";
  all.push_back({g5, "m 2, z 20, k 3", "span, mm", 15.321, 3, Known::sighted, span});
  all.push_back({g5, "m 2, z 20, k 3", "diameter where the jaws touch, mm", 40.590, 3, Known::computed,
                 std::hypot(base_diameter_mm(plain), span)});
  all.push_back({g5, "m 2, z 20", "base pitch, mm", 5.904, 3, Known::computed, base_pitch_mm(plain)});
  struct Span {
    int teeth, spanned;
    double printed;
  };
  for (const Span& s :
       {Span{12, 2, 4.59626}, Span{17, 2, 4.66629}, Span{20, 3, 7.66044}, Span{24, 3, 7.71646}, Span{30, 4, 10.75263},
        Span{32, 4, 10.78064}, Span{40, 5, 13.84481}, Span{48, 6, 16.90899}, Span{60, 7, 20.02919}}) {
    const std::string inputs = "m 1, z " + std::to_string(s.teeth);
    all.push_back({"span table", inputs, "span, mm", s.printed, 5, Known::computed,
                   span_over_teeth_mm(gear(s.teeth, 1), s.spanned)});
    all.push_back({"span table", inputs, "whole teeth to span", static_cast<double>(s.spanned), 0, Known::computed,
                   static_cast<double>(teeth_to_span(gear(s.teeth, 1)))});
  }
}

void add_pins(std::vector<Figure>& all) {
  all.push_back({metric_gears + ", over-pin tables", "m 1, z 20, Dp 1.7", "over pins, mm", 22.2941, 4,
                 Known::from_memory, over_pins_mm(gear(20, 1), 1.7)});
  // The pin that touches at the reference circle, of the same table.
  const double ideal = ideal_pin_mm(gear(20, 1));
  const auto phi_rad = [](double pin_mm) {
    return std::acos(base_diameter_mm(gear(20, 1)) / (over_pins_mm(gear(20, 1), pin_mm) - pin_mm));
  };
  const auto pins = [&](const char* inputs, const char* what, double printed, int decimals, double computed,
                        double allowed = 0) {
    all.push_back(
        {metric_gears + ", over-pin tables", inputs, what, printed, decimals, Known::from_memory, computed, allowed});
  };
  // The handbook goes on from its rounded angles: 1.72445 is exact.
  pins("m 1, z 20", "ideal pin, mm", 1.7245, 4, ideal, 1e-4);
  pins("m 1, z 20, ideal pin", "phi, rad", 0.4276057, 7, phi_rad(ideal));
  pins("m 1, z 20, Dp 1.7", "inv phi", 0.0268197, 7, formulas::involute(phi_rad(1.7)));
  pins("m 1, z 20, Dp 1.7", "phi, deg", 24.1350, 4, phi_rad(1.7) / degree);
  all.push_back({"over-pin table", "m 1, z 21, Dp 1.7", "over pins, mm", 23.23594, 5, Known::computed,
                 over_pins_mm(gear(21, 1), 1.7)});
  all.push_back({"over-pin table", "m 1, z 17, Dp 1.7", "over pins, mm", 19.21118, 5, Known::computed,
                 over_pins_mm(gear(17, 1), 1.7)});
  constexpr std::array<std::array<double, 2>, 4> inch_pins{
      {{20, 22.39002}, {25, 27.35105}, {30, 32.41020}, {40, 42.42172}}};
  for (const auto& [teeth, printed] : inch_pins) {
    const int z = static_cast<int>(teeth);
    all.push_back({"over-pin table, pin 1.728 m", "m 1, z " + std::to_string(z), "over pins, mm", printed, 5,
                   Known::computed, over_pins_mm(gear(z, 1), 1.728)});
  }
}

void add_thicknesses(std::vector<Figure>& all) {
  const SpurGear big = gear(12, 10, 0.3);
  const double s = tooth_thickness_mm(big);
  const formulas::ChordalMeasure chord = chordal_measure(big);
  const auto g8 = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({metric_gears + ", Table 10-1 chordal thickness", "m 10, z 12, x +0.3, ha 13", what, printed,
                   decimals, Known::sighted, computed});
  };
  g8("thickness, mm", 17.8918, 4, s);
  g8("half angle, deg", 8.54270, 5, s / pitch_diameter_mm(big) / degree);
  g8("chordal thickness, mm", 17.8256, 4, chord.thickness_mm);
  g8("chordal addendum, mm", 13.6657, 4, chord.height_mm);
  // A rack is a gear of ever so many teeth.
  const SpurGear rack = gear(100000, 3);
  const std::string racks = metric_gears + ", Table 10-2 chordal thickness of racks";
  all.push_back(
      {racks, "m 3, 20 deg", "chordal thickness, mm", 4.7124, 4, Known::sighted, chordal_measure(rack).thickness_mm});
  all.push_back(
      {racks, "m 3, 20 deg", "chordal height, mm", 3.0000, 4, Known::sighted, chordal_measure(rack).height_mm});
  const SpurGear plain = gear(20, 2);
  const auto g13 = [&](const char* what, double printed, double diameter_mm) {
    all.push_back({"thickness at a diameter", "m 2, z 20", what, printed, 6, Known::computed,
                   thickness_at_mm(plain, diameter_mm)});
  };
  g13("at 40, mm", 3.141593, 40);
  g13("at 42, mm", 2.410001, 42);
  g13("at the tip, 44, mm", 1.389760, 44);
  g13("at the base circle, mm", 3.512353, base_diameter_mm(plain));
  all.push_back({"tip thickness after shift", "m 3, z 12, x 0.6, da 44.840", "at the tip, mm", 1.26380, 5,
                 Known::computed, thickness_at_mm(gear(12, 3, 0.6), 44.840)});
}

void add_undercut(std::vector<Figure>& all) {
  constexpr std::array<double, 9> shifts{0.5321, 0.4736, 0.4151, 0.3566, 0.2981, 0.2396, 0.1812, 0.1227, 0.0642};
  for (std::size_t i = 0; i < shifts.size(); ++i) {
    const int teeth = static_cast<int>(i) + 8;
    all.push_back({"shift against undercut, rack straight to one module", "20 deg, z " + std::to_string(teeth), "x",
                   shifts[i], 4, Known::computed, least_shift_without_undercut(sharp(teeth, 20))});
  }
  const std::string book = "Mechanical Engineering Design, 9th ed., section 13-7";
  all.push_back({book, "20 deg", "teeth with a rack", 17.097, 3, Known::from_memory,
                 least_teeth_without_undercut(sharp(18, 20))});
  all.push_back({book, "14.5 deg", "teeth with a rack", 31.903, 3, Known::from_memory,
                 least_teeth_without_undercut(sharp(32, 14.5))});
  all.push_back({book, "25 deg", "teeth with a rack", 11.198, 3, Known::from_memory,
                 least_teeth_without_undercut(sharp(12, 25))});
  // ISO 53:1998 table 1: the rounding of profile A is the one that leaves the flank straight to one module, and that of
  // profile D nearly fills the space between the flanks; the standard prints 0.38 and 0.39.
  all.push_back({"ISO 53:1998 table 1, profile A", "20 deg", "depth of the straight flank, modules", 1.00, 2,
                 Known::from_memory,
                 least_shift_without_undercut(gear(1000, 1)) + 500 * std::pow(std::sin(20 * degree), 2)});
  SpurGear deep = gear(30, 1);
  deep.dedendum_factor = 1.4;
  deep.tip_radius_factor = 1;
  all.push_back({"full rounding at the depth of ISO 53:1998 profile D", "20 deg, hf* 1.4", "radius, modules", 0.39394,
                 5, Known::computed, rack_tip_radius_mm(deep)});
}

}  // namespace

std::vector<Figure> gear_figures() {
  std::vector<Figure> all;
  add_involutes(all);
  add_circles(all);
  add_spans(all);
  add_pins(all);
  add_thicknesses(all);
  add_undercut(all);
  return all;
}

}  // namespace visewright::published
