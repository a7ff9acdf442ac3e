#include "formulas/gear_measure.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "formulas/involute.h"

namespace visewright::formulas {
namespace {

constexpr double pi = std::numbers::pi;

double square(double x) { return x * x; }

/// From where the line of action touches the base circle to this diameter, along that line.
double reach_mm(const SpurGear& gear, double diameter_mm) {
  return std::sqrt(std::max(0.0, square(diameter_mm) - square(base_diameter_mm(gear)))) / 2;
}

bool on_flanks(const SpurGear& gear, double diameter_mm) {
  return form_diameter_mm(gear) <= diameter_mm && diameter_mm <= tip_diameter_mm(gear);
}

/// Half the angle that a tooth space takes on the base circle.
double base_space_rad(const SpurGear& gear) {
  return pi / gear.teeth - tooth_thickness_mm(gear) / pitch_diameter_mm(gear) - involute(gear.pressure_angle_rad);
}

/// The rack's rounded tip as it cuts the foot of a tooth, seen from the gear. The middle of the tooth space lies at
/// angle 0; the rack rolls on the pitch circle without slipping.
class RackTip {
 public:
  explicit RackTip(const SpurGear& gear)
      : gear_{gear},
        pitch_radius_mm_{pitch_diameter_mm(gear) / 2},
        radius_mm_{rack_tip_radius_mm(gear)},
        depth_mm_{(gear.dedendum_factor - gear.shift) * gear.module_mm - radius_mm_},
        aside_mm_{gear.module_mm * pi / 4 + gear.thinning_mm / 2 -
                  (gear.dedendum_factor * gear.module_mm - radius_mm_) * std::tan(gear.pressure_angle_rad) -
                  radius_mm_ / std::cos(gear.pressure_angle_rad)} {}

  struct Cut {
    double diameter_mm;
    double beyond_rad;  // how far the cut goes past the involute into the tooth; meant outside the base circle only
  };

  /// What the rounding cuts, from the bottom of the space at share 0 to where the straight flank takes over at 1.
  [[nodiscard]] Cut at(double share) const {
    const double last = depth_mm_ / std::tan(gear_.pressure_angle_rad);
    const double along = last * share;  // the centre of the rounding from the rolling point, along the rack
    const double roll_rad = (aside_mm_ - along) / pitch_radius_mm_;
    // The cut lies where the line from the rolling point through the centre leaves the rounding.
    const double stretch = 1 + radius_mm_ / std::hypot(along, depth_mm_);
    const double x = pitch_radius_mm_ - depth_mm_ * stretch;
    const double y = along * stretch;
    const double diameter_mm = 2 * std::hypot(x, y);
    const double flank_rad = pi / gear_.teeth - thickness_at_mm(gear_, diameter_mm) / diameter_mm;
    return {diameter_mm, roll_rad + std::atan2(y, x) - flank_rad};
  }

 private:
  SpurGear gear_;
  double pitch_radius_mm_;
  double radius_mm_;
  double depth_mm_;  // of the centre of the rounding below the pitch line
  double aside_mm_;  // of that centre from the middle of the rack's tooth
};

/// The outermost diameter where the rounding's cut leaves the involute.
double undercut_end_mm(const SpurGear& gear) {
  constexpr int steps = 256;
  const RackTip tip{gear};
  const double base = base_diameter_mm(gear);
  const auto cuts_flank = [&](double share) {
    const RackTip::Cut cut = tip.at(share);
    return cut.diameter_mm > base && cut.beyond_rad > 0;
  };
  double end = base;
  for (int i = 0; i < steps; ++i) {
    double in = static_cast<double>(i) / steps;
    double out = static_cast<double>(i + 1) / steps;
    if (cuts_flank(in) == cuts_flank(out)) continue;
    if (cuts_flank(out)) std::swap(in, out);
    for (int halving = 0; halving < 40; ++halving) {
      const double middle = (in + out) / 2;
      (cuts_flank(middle) ? in : out) = middle;
    }
    end = std::max(end, tip.at(in).diameter_mm);
  }
  return end;
}

/// Room between the start of the first gear's involute and the reach of the second gear's tip.
double room_on_first_mm(const Mesh& mesh) {
  const double tangent = mesh.centre_distance_mm * std::sin(operating_pressure_angle_rad(mesh));
  const double needed = tangent - reach_mm(mesh.second, tip_diameter_mm(mesh.second));
  return needed - reach_mm(mesh.first, form_diameter_mm(mesh.first));
}

}  // namespace

SpanMeasure span_measure(const SpurGear& gear, int teeth_spanned) noexcept {
  SpanMeasure measure;
  measure.teeth = teeth_spanned;
  measure.span_mm = span_over_teeth_mm(gear, teeth_spanned);
  measure.contact_diameter_mm = std::hypot(base_diameter_mm(gear), measure.span_mm);
  measure.on_flanks = on_flanks(gear, measure.contact_diameter_mm);
  return measure;
}

SpanMeasure span_measure(const SpurGear& gear) noexcept { return span_measure(gear, teeth_to_span(gear)); }

double ideal_pin_mm(const SpurGear& gear) noexcept {
  const double eta_rad = base_space_rad(gear);
  const double touching = pitch_diameter_mm(gear) + 2 * gear.shift * gear.module_mm;
  const double phi_rad = std::tan(std::acos(std::min(1.0, base_diameter_mm(gear) / touching))) + eta_rad;
  return base_diameter_mm(gear) * (involute(phi_rad) + eta_rad);
}

PinMeasure pin_measure(const SpurGear& gear, double pin_mm) noexcept {
  const double base = base_diameter_mm(gear);
  const double phi_rad = inverse_involute(pin_mm / base - base_space_rad(gear));
  PinMeasure measure;
  measure.pin_mm = pin_mm;
  measure.size_mm = over_pins_mm(gear, pin_mm);
  measure.contact_diameter_mm = std::hypot(base, base * std::tan(phi_rad) - pin_mm);
  measure.on_flanks = pin_mm <= base * std::tan(phi_rad) && on_flanks(gear, measure.contact_diameter_mm);
  measure.stands_proud = base / std::cos(phi_rad) + pin_mm > tip_diameter_mm(gear);
  return measure;
}

PinMeasure pin_measure(const SpurGear& gear) noexcept {
  constexpr double step_mm = 0.5;
  constexpr double luck = 1e-9;  // a pin that comes out at a size stays at it
  return pin_measure(gear, step_mm * std::ceil(ideal_pin_mm(gear) / step_mm - luck));
}

ChordalMeasure chordal_measure(const SpurGear& gear) noexcept {
  const double d = pitch_diameter_mm(gear);
  const double half_rad = tooth_thickness_mm(gear) / d;
  return {d * std::sin(half_rad), (tip_diameter_mm(gear) - d * std::cos(half_rad)) / 2};
}

double tip_thickness_modules(const SpurGear& gear) noexcept { return tip_thickness_mm(gear) / gear.module_mm; }

double form_diameter_mm(const SpurGear& gear) noexcept {
  if (undercut(gear)) return undercut_end_mm(gear);
  // The depth of the straight flank less the shift, from the shift that just avoids undercut.
  const double sine = std::sin(gear.pressure_angle_rad);
  const double spare = gear.shift - least_shift_without_undercut(gear);
  return std::hypot(base_diameter_mm(gear), 2 * gear.module_mm * spare / sine);
}

double active_profile_start_mm(const Mesh& mesh) noexcept {
  const double tangent = mesh.centre_distance_mm * std::sin(operating_pressure_angle_rad(mesh));
  const double from_base = tangent - reach_mm(mesh.second, tip_diameter_mm(mesh.second));
  return std::hypot(base_diameter_mm(mesh.first), 2 * from_base);
}

double flank_room_mm(const Mesh& mesh) noexcept {
  return std::min(room_on_first_mm(mesh), room_on_first_mm({mesh.second, mesh.first, mesh.centre_distance_mm}));
}

double printed_backlash_mm(double module_mm) noexcept { return 0.10 * module_mm + 0.15; }

double machined_backlash_mm(double module_mm, double centre_distance_mm) noexcept {
  return 2.0 / 3.0 * (0.06 + 0.0005 * centre_distance_mm + 0.03 * module_mm);
}

}  // namespace visewright::formulas
