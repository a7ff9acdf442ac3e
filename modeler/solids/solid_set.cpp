#include "solids/solid_set.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <optional>
#include <thread>

#include "solids/shape_solid.h"
#include "units/text.h"

namespace visewright::solids {
namespace {

/// Farther than any part reaches from its own origin, mm.
constexpr double everywhere_mm = 4000;

base::Result<std::vector<kernel::Solid>> all(const std::vector<parts::Shape>& shapes, std::string_view label) {
  std::vector<kernel::Solid> list;
  for (const parts::Shape& shape : shapes) {
    auto made = solid(shape, everywhere_mm, label);
    if (!made) return base::passed_on(std::move(made.error()));
    list.push_back(std::move(*made));
  }
  return list;
}

base::Result<kernel::Solid> shaped(const parts::Body& body, std::string_view label) {
  auto added = all(body.added, label);
  if (!added) return base::passed_on(std::move(added.error()));
  auto removed = all(body.removed, label);
  if (!removed) return base::passed_on(std::move(removed.error()));
  auto whole = added->size() == 1 ? base::Result<kernel::Solid>(added->front()) : kernel::fused(*added, label);
  if (!whole || removed->empty()) return whole;
  return kernel::cut(*whole, *removed, label);
}

/// No solid leaves that is not one valid, closed piece with the volume we worked out ourselves.
base::Result<BodySolid> passed(BodySolid body, double agreement, const std::string& label) {
  const auto refuse = [&](const std::string& what) {
    return base::fault(base::Cause::geometry, label, what, "two operations of this part get in each other's way; look at its sizes");
  };
  if (body.measures.solids != 1) return refuse("the work leaves " + std::to_string(body.measures.solids) + " pieces instead of one");
  if (!body.measures.valid || !body.measures.closed) return refuse("the solid is not closed");
  const double difference = std::abs(body.measures.volume_mm3 - body.own_volume_mm3);
  if (difference > agreement * body.own_volume_mm3)
    return refuse("the solid's volume is " + units::write_number(body.measures.volume_mm3, 3) + " mm³, worked out " +
                  units::write_number(body.own_volume_mm3, 3) + " mm³");
  return body;
}

base::Result<std::vector<BodySolid>> solids_of(const parts::Part& part) {
  std::vector<BodySolid> list;
  for (const parts::Body& body : parts::bodies(part)) {
    auto made = solid_of(body, part.name);
    if (!made) return base::passed_on(std::move(made.error()));
    list.push_back(std::move(*made));
  }
  return list;
}

}  // namespace

base::Result<BodySolid> solid_of(const parts::Body& body, const std::string& part_name) {
  const std::string label = body.name == part_name ? part_name : part_name + ", " + body.name;
  auto made = shaped(body, label);
  if (!made) return base::passed_on(std::move(made.error()));
  auto measured = kernel::measures(*made, label);
  if (!measured) return base::passed_on(std::move(measured.error()));
  const bool flanks = body.piece && std::holds_alternative<parts::Printed>(body.piece->stock);
  return passed(BodySolid{body.name, body.material, *made, *measured, parts::volume_mm3(body)},
                flanks ? volume_agreement_of_flanks : volume_agreement, label);
}

base::Result<SolidSet> SolidSet::of(std::span<const std::shared_ptr<const parts::Part>> all_parts, base::Watcher& watcher) {
  std::vector<std::optional<base::Result<std::vector<BodySolid>>>> made(all_parts.size());
  std::atomic<std::size_t> next{0};
  const auto work = [&] {
    for (std::size_t i = next++; i < all_parts.size() && !watcher.wants_stop(); i = next++) made[i] = solids_of(*all_parts[i]);
  };
  watcher.step("building the solids", 0.1);
  {
    std::vector<std::jthread> others;
    for (unsigned i = 1; i < std::max(1U, std::thread::hardware_concurrency()); ++i) others.emplace_back(work);
    work();
  }
  SolidSet set;
  for (auto& one : made) {
    if (!one) return base::fault(base::Cause::interrupted, "solids", "stopped before all parts were built", "start again");
    if (!*one) return base::passed_on(std::move(one->error()));
    set.parts_.push_back(std::move(**one));
  }
  return set;
}

}  // namespace visewright::solids
