// What follows from a Plan: the figures a maker asks for before cutting. Forces in N, torques in N·mm, stresses in MPa.
#pragma once

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "analysis/spacing.h"
#include "formulas/gear_measure.h"
#include "formulas/play.h"
#include "formulas/power_screw.h"
#include "reasons/finding.h"

namespace visewright::analysis {

/// One rod that could be taken instead, all else as it is; the collar's friction grows with the rod.
struct RodChoice {
  std::string thread;
  bool taken = false;
  double clamp_n = 0, top_hold_mpa = 0, turns = 0, self_locking = 0;
};

/// From the hand to the jaw. The work is narrow and stands in the middle, or over one screw.
struct DriveFigures {
  double hand_torque_nmm = 0;
  double thread_nmm_per_n = 0, collar_nmm_per_n = 0, collar_friction_diameter_mm = 0;  // of one screw
  formulas::PowerScrew screw;
  formulas::Drive drive;
  double clamp_middle_n = 0, clamp_left_n = 0, clamp_right_n = 0;
  double self_locking = 0, efficiency = 0;
  double turns = 0;  // of the wheel, from shut to the greatest opening
  double dead_turn_rad = 0, tooth_step_mm = 0, finest_step_mm = 0, skew_from_backlash_mm = 0;
  double tangential_n = 0;    // on a tooth, when the whole hand torque goes through one mesh
  double stuck_push_n = 0;    // of both screws, when a stuck jaw is forced open
  std::vector<RodChoice> rods;
  [[nodiscard]] double greatest_clamp_n() const { return std::max({clamp_middle_n, clamp_left_n, clamp_right_n}); }
};

/// A screw when the work stands in the middle, near the top of the jaw.
struct ScrewFigures {
  double clamp_force_n = 0, torque_nmm = 0;
  formulas::ScrewStress stress;
};

struct DroopFigures {
  formulas::Droop own, leaned_on;
  double lean_mpa = 0;           // in the screws when leaned on at the greatest opening
  double top_edge_mm = 0;        // how far the jaws part at the top, work of 25 mm at mid-throat
  double sway_mm = 0;
};

/// How a finished gear is measured.
struct GearMeasures {
  formulas::SpanMeasure span;
  formulas::PinMeasure pins;
  formulas::ChordalMeasure chord;
  double tip_thickness_modules = 0;
};

struct JawFigures {
  double front_bow_mm = 0, rear_bow_mm = 0;
  double skew_inside_mm = 0;   // work halfway between the middle and a screw
  double skew_outside_mm = 0;  // work at the end of the jaw
  double cover_load_n = 0;     // held back by the cover then
};

struct MovementFigures {
  double jaw_top_mm = 0, pocket_mm = 0, cover_play_needed_mm = 0, cover_play_mm = 0, backlash_lost_mm = 0;
};

/// One thing that can give way. Its stress grows in proportion with the clamp force.
struct StrengthRow {
  const reasons::Rule* rule = nullptr;
  std::string_view when;  // the load case
  double stress = 0, allowed = 0, strength = 0;
  reasons::Unit unit = reasons::Unit::mpa;
  double allowed_at_n = 0, gives_at_n = 0;  // clamp force
  std::vector<std::string> parts;
  std::vector<reasons::Term> with;
};

/// Something that gives way by another load than the clamp force.
struct LeftOut {
  std::string_view name, because;
};

struct Figures {
  double moving_mass_kg = 0;
  DriveFigures drive;
  std::array<ScrewFigures, 2> screws;
  DroopFigures droop;
  std::vector<GearMeasures> gears;  // left to right
  JawFigures jaws;
  MovementFigures movement;
  std::vector<StrengthRow> strength;  // weakest first
  std::vector<LeftOut> left_out;
  SpacingFigures spacing;
};

}  // namespace visewright::analysis
