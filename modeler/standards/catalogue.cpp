#include "standards/catalogue.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "standards/designation.h"
#include "units/text.h"

namespace visewright::standards {
namespace {

template <class Row, class Fits>
const Row* first(const std::vector<Row>& rows, Fits fits) {
  const auto found = std::find_if(rows.begin(), rows.end(), fits);
  return found == rows.end() ? nullptr : &*found;
}

template <class Row>
const Row* by_designation(const std::vector<Row>& rows, std::string_view designation) {
  const std::string key = designation_key(designation);
  return first(rows, [&](const Row& row) { return designation_key(row.designation) == key; });
}

/// The catalogue's own spelling of a thread, or the given one when it is unknown.
std::string thread_key(const Catalogue& catalogue, std::string_view thread) {
  const ThreadRow* row = catalogue.thread(thread);
  return designation_key(row == nullptr ? thread : row->designation);
}

}  // namespace

const ThreadRow* Catalogue::thread(std::string_view designation) const {
  const std::string key = designation_key(designation);
  return first(rows_.threads, [&](const ThreadRow& row) {
    const std::string known = designation_key(row.designation);
    return known == key ||
           (row.family == ThreadFamily::metric && known + "x" + units::write_number(units::in_mm(row.pitch), 3) == key);
  });
}

const NutRow* Catalogue::nut(std::string_view designation) const { return by_designation(rows_.nuts, designation); }

const NutRow* Catalogue::hexagon_nut(std::string_view thread, bool left_hand) const {
  const std::string key = thread_key(*this, thread);
  return first(rows_.nuts, [&](const NutRow& nut) {
    return !nut.bar && !nut.long_nut && nut.left_hand == left_hand && designation_key(nut.thread) == key;
  });
}

const NutRow* Catalogue::long_nut(std::string_view thread, bool left_hand) const {
  const std::string key = thread_key(*this, thread);
  return first(rows_.nuts, [&](const NutRow& nut) {
    return nut.long_nut && nut.left_hand == left_hand && designation_key(nut.thread) == key;
  });
}

const NutRow* Catalogue::hexagon_bar(std::string_view thread, bool left_hand) const {
  const std::string key = thread_key(*this, thread);
  return first(rows_.nuts, [&](const NutRow& nut) {
    return nut.bar && nut.left_hand == left_hand && designation_key(nut.thread) == key;
  });
}

const WasherRow* Catalogue::washer(std::string_view thread, bool large) const {
  const std::string key = thread_key(*this, thread);
  return first(rows_.washers,
               [&](const WasherRow& washer) { return washer.large == large && designation_key(washer.thread) == key; });
}

const ClearanceRow* Catalogue::clearance(std::string_view thread) const {
  const std::string key = thread_key(*this, thread);
  return first(rows_.clearances, [&](const ClearanceRow& row) { return designation_key(row.thread) == key; });
}

const BearingRow* Catalogue::bearing(std::string_view designation) const {
  return by_designation(rows_.bearings, designation);
}

const BearingRow* Catalogue::bearing_for_bore(units::Length bore, units::Length outside_at_least) const {
  // Sizes out of inch fractions and out of millimetres meet only to rounding; no two bores are this close.
  const units::Length same = units::mm(1e-6);
  const BearingRow* best = nullptr;
  for (const BearingRow& row : rows_.bearings) {
    const bool fits = row.bore < bore + same && bore < row.bore + same && outside_at_least < row.outside + same;
    if (!fits) continue;
    if (best == nullptr || row.outside < best->outside ||
        (row.outside == best->outside && row.width_open < best->width_open)) {
      best = &row;
    }
  }
  return best;
}

const MaterialRow* Catalogue::material(std::string_view name) const {
  const std::string key = name_key(name);
  return first(rows_.materials, [&](const MaterialRow& row) { return name_key(row.name) == key; });
}

const WoodScrewRow* Catalogue::wood_screw(std::string_view designation) const {
  const std::string key = designation_key(designation);
  return first(rows_.wood_screws, [&](const WoodScrewRow& row) {
    const std::string known = designation_key(row.designation);
    return known == key || known == designation_key("wood screw ") + key;
  });
}

const ToolRow* Catalogue::tool(ToolKind kind) const {
  return first(rows_.tools, [&](const ToolRow& row) { return row.kind == kind; });
}

const SpeedRow* Catalogue::speed(ToolKind kind, const MaterialRow& material) const {
  const auto row_for = [&](std::string_view name) {
    return first(rows_.speeds, [&](const SpeedRow& row) { return row.tool == kind && row.material == name; });
  };
  const SpeedRow* own = row_for(material.name);
  return own != nullptr ? own : row_for(name_of(material.kind));
}

const TapRow* Catalogue::tap(std::string_view thread) const {
  const std::string key = thread_key(*this, thread);
  return first(rows_.taps, [&](const TapRow& row) { return designation_key(row.thread) == key; });
}

const ShopRow* Catalogue::shop(std::string_view name) const {
  const std::string key = name_key(name);
  return first(rows_.shops, [&](const ShopRow& row) { return name_key(row.name) == key; });
}

}  // namespace visewright::standards
