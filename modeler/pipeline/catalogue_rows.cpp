#include "pipeline/catalogue_rows.h"

#include <array>
#include <optional>
#include <string>

#include "design/keys.h"
#include "pipeline/presets.h"

namespace visewright::pipeline {
namespace {

using Json = nlohmann::ordered_json;
using standards::Catalogue;
using units::in_mm;

Json named(std::string_view name) { return {{"name", name}}; }

void put(Json& row, const char* key, const std::optional<double>& value) {
  if (value) row[key] = *value;
}

Json sourced(Json row, const standards::Source& source) {
  row["source"] = source.standard;
  row["known"] = source.known;
  return row;
}

std::string_view word(standards::MaterialKind kind) {
  switch (kind) {
    case standards::MaterialKind::wood: return "wood";
    case standards::MaterialKind::panel: return "panel";
    case standards::MaterialKind::plastic: return "plastic";
    case standards::MaterialKind::metal: return "metal";
  }
  return "";
}

template <class Rows, class Write>
Json each(const Rows& rows, Write write) {
  Json all = Json::array();
  for (const auto& row : rows) all.push_back(sourced(write(row), row.source));
  return all;
}

Json preset_rows(const Catalogue&) {
  Json all = Json::array();
  for (const Preset& preset : presets()) all.push_back({{"name", preset.name}, {"title", preset.title}});
  return all;
}

Json thread_rows(const Catalogue& catalogue) {
  return each(catalogue.threads(), [](const standards::ThreadRow& t) {
    Json row = named(t.designation);
    row["major_mm"] = in_mm(t.major);
    row["pitch_mm"] = in_mm(t.pitch);
    row["lead_mm"] = in_mm(t.lead);
    row["mean_mm"] = in_mm(t.mean);
    row["nut_minor_mm"] = in_mm(t.nut_minor);
    row["root_mm"] = in_mm(t.root);
    row["stress_area_mm2"] = t.stress_area_mm2;
    row["half_flank_deg"] = units::in_degrees(t.half_flank);
    return row;
  });
}

Json nut_rows(const Catalogue& catalogue) {
  return each(catalogue.nuts(), [](const standards::NutRow& n) {
    Json row = named(n.designation);
    row["thread"] = n.thread;
    row["hand"] = n.left_hand ? "left" : "right";
    row["across_flats_max_mm"] = in_mm(n.across_flats_max);
    row["across_flats_min_mm"] = in_mm(n.across_flats_min);
    row["height_max_mm"] = in_mm(n.height_max);
    row["height_min_mm"] = in_mm(n.height_min);
    return row;
  });
}

Json no_standard_nut_rows(const Catalogue& catalogue) {
  return each(catalogue.no_standard_nuts(), [](const standards::NoStandardNut& n) {
    Json row = named(n.thread);
    row["kind"] = n.kind;
    row["instead"] = n.instead;
    return row;
  });
}

Json washer_rows(const Catalogue& catalogue) {
  return each(catalogue.washers(), [](const standards::WasherRow& w) {
    Json row = named(w.designation);
    row["thread"] = w.thread;
    row["bore_mm"] = in_mm(w.bore);
    row["outside_mm"] = in_mm(w.outside);
    row["thickness_mm"] = in_mm(w.thickness);
    return row;
  });
}

Json clearance_rows(const Catalogue& catalogue) {
  return each(catalogue.clearances(), [](const standards::ClearanceRow& c) {
    Json row = named(c.thread);
    row["fine_mm"] = in_mm(c.fine);
    row["medium_mm"] = in_mm(c.medium);
    row["coarse_mm"] = in_mm(c.coarse);
    return row;
  });
}

Json bearing_rows(const Catalogue& catalogue) {
  return each(catalogue.bearings(), [](const standards::BearingRow& b) {
    Json row = named(b.designation);
    row["bore_mm"] = in_mm(b.bore);
    row["outside_mm"] = in_mm(b.outside);
    row["width_open_mm"] = in_mm(b.width_open);
    row["width_shielded_mm"] = in_mm(b.width_shielded);
    if (b.mass > units::Mass()) row["mass_kg"] = units::in_kilograms(b.mass);
    return row;
  });
}

Json material_rows(const Catalogue& catalogue) {
  return each(catalogue.materials(), [](const standards::MaterialRow& m) {
    Json row = named(m.name);
    row["kind"] = word(m.kind);
    row["density_g_cm3"] = m.density_g_cm3;
    put(row, "modulus_mpa", m.modulus_mpa);
    put(row, "bending_strength_mpa", m.bending_strength_mpa);
    put(row, "crushing_across_mpa", m.crushing_across_mpa);
    put(row, "movement_tangential_percent", m.movement_tangential);
    put(row, "movement_radial_percent", m.movement_radial);
    put(row, "expansion_per_kelvin", m.expansion_per_kelvin);
    return row;
  });
}

Json wood_screw_rows(const Catalogue& catalogue) {
  return each(catalogue.wood_screws(), [](const standards::WoodScrewRow& s) {
    Json row = named(s.designation);
    row["shank_mm"] = in_mm(s.shank);
    row["head_mm"] = in_mm(s.head);
    row["length_mm"] = in_mm(s.length);
    return row;
  });
}

Json tool_rows(const Catalogue& catalogue) {
  return each(catalogue.tools(), [](const standards::ToolRow& t) {
    Json row = named(t.name);
    row["machine"] = t.machine.empty() ? "by hand" : t.machine;
    row["smallest_mm"] = in_mm(t.smallest);
    row["largest_mm"] = in_mm(t.largest);
    return row;
  });
}

Json shop_rows(const Catalogue& catalogue) {
  Json rows = Json::array();
  for (const standards::ShopRow& shop : catalogue.shops()) {
    Json row = named(shop.name);
    row["title"] = shop.title;
    row["machines"] = shop.machines.size();
    row["drills"] = shop.drills.size();
    row["hole_saws"] = shop.hole_saws.size();
    rows.push_back(std::move(row));
  }
  return rows;
}

Json key_rows(const Catalogue&) {
  Json rows = Json::array();
  for (const design::KeyRow& key : design::keys()) {
    Json row = named(key.table.empty() ? std::string(key.key) : std::string(key.table) + "." + std::string(key.key));
    row["title"] = key.meaning;
    row["example"] = key.example;
    row["left_out"] = key.left_out;
    rows.push_back(std::move(row));
  }
  return rows;
}

constexpr std::array kinds{
    CatalogueKind{"keys", key_rows},
    CatalogueKind{"presets", preset_rows},
    CatalogueKind{"threads", thread_rows},
    CatalogueKind{"nuts", nut_rows},
    CatalogueKind{"no-standard-nuts", no_standard_nut_rows},
    CatalogueKind{"washers", washer_rows},
    CatalogueKind{"clearances", clearance_rows},
    CatalogueKind{"bearings", bearing_rows},
    CatalogueKind{"materials", material_rows},
    CatalogueKind{"wood-screws", wood_screw_rows},
    CatalogueKind{"tools", tool_rows},
    CatalogueKind{"shops", shop_rows},
};

}  // namespace

std::span<const CatalogueKind> catalogue_kinds() { return kinds; }

}  // namespace visewright::pipeline
