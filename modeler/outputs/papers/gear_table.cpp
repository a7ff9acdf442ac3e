#include "outputs/papers/gear_table.h"

#include <cmath>

#include "outputs/papers/words.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

/// The first gear of the train that has this outline and use; -1 when there is none.
int gear_of(const layout::Train& train, const parts::Part& part) {
  const auto* piece = std::get_if<parts::Piece>(&part.made);
  if (piece == nullptr || piece->operations.empty()) return -1;
  const auto* print = std::get_if<parts::Print>(&piece->operations.front().work);
  if (print == nullptr || print->layers.empty()) return -1;
  const geometry::Box b = geometry::box(print->layers.front().profile.outer.front());
  for (std::size_t i = 0; i < train.gears.size(); ++i) {
    const layout::Gear& gear = train.gears[i];
    if (!gear.outline || gear.drive != part.name.starts_with("drive")) continue;
    const geometry::Box g = geometry::box(*gear.outline);
    if (std::abs(g.high.x - b.high.x) < 1e-6 && std::abs(g.high.y - b.high.y) < 1e-6) return static_cast<int>(i);
  }
  return -1;
}

}  // namespace

double reference_diameter_mm(const Facts& facts, const parts::Part& part) {
  const int index = gear_of(facts.plan.train, part);
  return index < 0 ? 0 : facts.plan.train.gears[static_cast<std::size_t>(index)].pitch_diameter.mm();
}

std::vector<std::vector<std::string>> gear_rows(const Facts& facts, const parts::Part& part) {
  const layout::Train& train = facts.plan.train;
  const int index = gear_of(train, part);
  if (index < 0) return {};
  const auto i = static_cast<std::size_t>(index);
  const layout::Gear& gear = train.gears[i];
  const auto size = [&](const layout::Size& s) { return length(s.mm(), facts.show); };
  const auto degrees = [](double rad) { return units::write_number(rad * 180 / units::pi, 3) + "°"; };
  std::vector<std::vector<std::string>> rows{{"gear", std::to_string(i + 1) + " from the person's left"},
                                             {"teeth", std::to_string(gear.teeth.value)},
                                             {"module", units::write_number(train.module.mm(), 4) + " mm"},
                                             {"pressure angle", degrees(train.pressure_angle.rad())},
                                             {"profile shift", units::write_number(gear.shift.value, 4)},
                                             {"reference diameter", size(gear.pitch_diameter)},
                                             {"tip diameter", size(gear.tip)},
                                             {"root diameter", size(gear.root)},
                                             {"base diameter", length(gear.pitch_diameter.mm() * std::cos(train.pressure_angle.rad()), facts.show)},
                                             {"thinning of the tooth", size(gear.thinning)},
                                             {"face width", size(train.face_width)},
                                             {"basic rack", "ISO 53 profile A"}};
  const auto mate = [&](std::size_t with, const layout::Mesh& mesh) {
    rows.push_back({"mate", "gear " + std::to_string(with + 1) + ", " + std::to_string(train.gears[with].teeth.value) + " teeth, centre distance " +
                                size(mesh.centre_distance) + ", backlash " + size(mesh.backlash)});
  };
  if (i > 0) mate(i - 1, train.meshes[i - 1]);
  if (i + 1 < train.gears.size()) mate(i + 1, train.meshes[i]);
  return rows;
}

}  // namespace visewright::outputs::papers
