#include "analysis/strength.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace visewright::analysis {

StrengthRow row_of(Stressed s) {
  StrengthRow row;
  row.rule = &s.rule;
  row.when = s.when;
  row.stress = s.stress;
  row.allowed = s.allowed;
  row.strength = s.strength;
  row.unit = s.unit;
  const double at = s.stress > 0 ? s.clamp_n / s.stress : std::numeric_limits<double>::infinity();
  row.allowed_at_n = at * s.allowed;
  row.gives_at_n = at * s.strength;
  row.parts = std::move(s.parts);
  row.with = std::move(s.with);
  row.with.push_back({"clamp", s.clamp_n, reasons::Unit::newton});
  return row;
}

Rows strength_rows(const layout::Plan& plan, const DriveFigures& drive, const JawFigures& jaws) {
  Rows rows;
  add_train_rows(plan, drive, rows);
  add_screw_rows(plan, drive, rows);
  add_jaw_rows(plan, drive, jaws, rows);
  add_mounting_rows(plan, drive, rows);
  std::stable_sort(rows.begin(), rows.end(), [](const StrengthRow& a, const StrengthRow& b) {
    return std::round(a.gives_at_n * 1e6) < std::round(b.gives_at_n * 1e6);
  });
  return rows;
}

std::vector<LeftOut> left_out_of_strength() {
  return {{"cover.forced_open", "grows with the hand's torque on a stuck jaw, not with the clamp force"},
          {"screw.leaned_on", "grows with a person's weight and the opening"},
          {"jaw.droop", "grows with the jaw's weight and the opening"},
          {"bench.apron_section", "is wood left in the bench, whatever the vise does"}};
}

reasons::Finding finding_of(const StrengthRow& row) {
  const auto otherwise = row.stress > row.strength ? reasons::Verdict::fail : reasons::Verdict::caution;
  auto finding = reasons::judged(*row.rule, row.stress, row.allowed, row.unit, reasons::Better::smaller, otherwise, row.parts);
  finding.with = row.with;
  return finding;
}

}  // namespace visewright::analysis
