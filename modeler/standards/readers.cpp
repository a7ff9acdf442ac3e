#include "standards/readers.h"

#include <algorithm>
#include <array>
#include <tuple>
#include <utility>

namespace visewright::standards {
namespace {

/// The value that a word stands for; a fault and the first value for an unknown word.
template <class T, std::size_t n>
T chosen(Record& record, std::string_view key, const std::array<std::pair<std::string_view, T>, n>& choices) {
  const std::string word = record.text(key);
  std::string known;
  for (const auto& [name, value] : choices) {
    if (name == word) return value;
    known += (known.empty() ? "\"" : ", \"") + std::string(name) + "\"";
  }
  record.wrong(key, "it is \"" + word + "\"", "one of " + known);
  return choices[0].second;
}

constexpr std::array families{
    std::pair{std::string_view("metric"), ThreadFamily::metric},
    std::pair{std::string_view("trapezoidal"), ThreadFamily::trapezoidal},
    std::pair{std::string_view("unified"), ThreadFamily::unified},
    std::pair{std::string_view("acme"), ThreadFamily::acme},
};

constexpr std::array material_kinds{
    std::pair{std::string_view("wood"), MaterialKind::wood},
    std::pair{std::string_view("panel"), MaterialKind::panel},
    std::pair{std::string_view("plastic"), MaterialKind::plastic},
    std::pair{std::string_view("metal"), MaterialKind::metal},
};

/// Forms of nut, as pairs of NutRow::long_nut and NutRow::bar.
constexpr std::array nut_kinds{
    std::pair{std::string_view("hexagon nut"), std::pair{false, false}},
    std::pair{std::string_view("long nut"), std::pair{true, false}},
    std::pair{std::string_view("hexagon bar"), std::pair{false, true}},
};

constexpr std::array hands{
    std::pair{std::string_view("right"), false},
    std::pair{std::string_view("left"), true},
};

void read_thread(Record& record, Rows& rows) {
  const units::Length pitch =
      record.has("per_inch") ? units::inches(1) / record.number("per_inch") : record.length("pitch");
  const double starts = record.number_if_any("starts").value_or(1);
  rows.threads.push_back({.designation = record.text("designation"),
                          .family = chosen(record, "family", families),
                          .major = record.length("major"),
                          .pitch = pitch,
                          .lead = starts * pitch,
                          .mean = record.length("mean"),
                          .nut_minor = record.length("nut_minor"),
                          .root = record.length("root"),
                          .stress_area_mm2 = record.number("stress_area_mm2"),
                          .half_flank = units::degrees(record.number("half_flank_deg")),
                          .source = record.source()});
}

/// One nut for each hand that the table lists. Left-hand pieces have the same sizes, only the thread differs.
void read_nut(Record& record, Rows& rows) {
  NutRow nut;
  nut.designation = record.text("kind");
  nut.thread = record.text("thread");
  nut.source = record.source();
  std::tie(nut.long_nut, nut.bar) = chosen(record, "kind", nut_kinds);
  nut.across_flats_max = record.length("across_flats_max");
  nut.across_flats_min = record.length("across_flats_min");
  nut.height_max = record.length("height_max");
  nut.height_min = record.length("height_min");
  if (nut.bar) nut.designation += " " + units::write_length(nut.across_flats_max, record.unit()) + " for";
  nut.designation += " " + nut.thread;
  const std::string variant = record.has("variant") ? ", " + record.text("variant") : "";
  for (const std::string& hand : record.texts("hands")) {
    const auto* const known = std::find_if(hands.begin(), hands.end(), [&](const auto& h) { return h.first == hand; });
    if (known == hands.end()) {
      record.wrong("hands", "it holds \"" + hand + "\"", "\"right\" or \"left\"");
      continue;
    }
    rows.nuts.push_back(nut);
    rows.nuts.back().left_hand = known->second;
    rows.nuts.back().designation += (known->second ? "-LH" : "") + variant;
  }
}

void read_no_standard_nut(Record& record, Rows& rows) {
  for (const std::string& thread : record.texts("threads")) {
    for (const std::string& kind : record.texts("kinds")) {
      rows.no_standard_nuts.push_back({thread, kind, record.text("instead"), record.source()});
    }
  }
}

void read_washer(Record& record, Rows& rows) {
  WasherRow washer{.designation = "washer " + record.text("size") + " (" + record.text("series") + ")",
                   .thread = "",
                   .large = record.yes("large"),
                   .bore = record.length("bore"),
                   .outside = record.length("outside"),
                   .thickness = record.length("thickness"),
                   .source = record.source()};
  for (const std::string& thread : record.texts("threads")) {
    washer.thread = thread;
    rows.washers.push_back(washer);
  }
}

void read_clearance(Record& record, Rows& rows) {
  rows.clearances.push_back({.thread = record.text("thread"),
                             .fine = record.length("fine"),
                             .medium = record.length("medium"),
                             .coarse = record.length("coarse"),
                             .source = record.source()});
}

/// Metric bearings have one width; shields make inch ones wider.
void read_bearing(Record& record, Rows& rows) {
  const bool one_width = record.has("width");
  rows.bearings.push_back({.designation = record.text("designation"),
                           .bore = record.length("bore"),
                           .outside = record.length("outside"),
                           .width_open = record.length(one_width ? "width" : "width_open"),
                           .width_shielded = record.length(one_width ? "width" : "width_shielded"),
                           .mass = units::kilograms(record.number_if_any("mass_kg").value_or(0)),
                           .source = record.source()});
}

void read_material(Record& record, Rows& rows) {
  std::vector<double> colour = record.numbers("colour");
  const bool in_range = std::all_of(colour.begin(), colour.end(), [](double c) { return c >= 0 && c <= 1; });
  if (colour.size() != 3 || !in_range) {
    record.wrong("colour", "it is no colour", "red, green and blue from 0 to 1");
    colour.assign(3, 0);
  }
  rows.materials.push_back({.name = record.text("name"),
                            .kind = chosen(record, "kind", material_kinds),
                            .density_g_cm3 = record.number("density"),
                            .modulus_mpa = record.number_if_any("modulus"),
                            .bending_strength_mpa = record.number_if_any("bending"),
                            .crushing_across_mpa = record.number_if_any("crushing"),
                            .movement_tangential = record.number_if_any("tangential"),
                            .movement_radial = record.number_if_any("radial"),
                            .expansion_per_kelvin = record.number_if_any("expansion_per_kelvin"),
                            .red = colour[0],
                            .green = colour[1],
                            .blue = colour[2],
                            .source = record.source()});
}

void read_wood_screw(Record& record, Rows& rows) {
  rows.wood_screws.push_back({.designation = "wood screw " + record.text("size"),
                              .shank = record.length("shank"),
                              .head = record.length("head"),
                              .length = record.length("length"),
                              .source = record.source()});
}

constexpr std::array tool_kinds{
    ToolKind::drill,  ToolKind::flat_bit, ToolKind::hole_saw, ToolKind::cutter,  ToolKind::saw,
    ToolKind::fretsaw, ToolKind::lathe_tool, ToolKind::grinder, ToolKind::tap,   ToolKind::edge_tool,
    ToolKind::printer, ToolKind::laser,   ToolKind::punch,    ToolKind::brush,
};

ToolKind tool_kind(Record& record, std::string_view key) {
  const std::string said = record.text(key);
  for (const ToolKind kind : tool_kinds)
    if (name_of(kind) == said) return kind;
  record.wrong(key, "it is \"" + said + "\"", "a kind of tool: drill, flat bit, hole saw, …");
  return ToolKind::drill;
}

void read_tool(Record& record, Rows& rows) {
  rows.tools.push_back({.name = record.text("name"),
                        .kind = tool_kind(record, "kind"),
                        .machine = record.has("machine") ? record.text("machine") : "",
                        .smallest = record.length("smallest"),
                        .largest = record.length("largest"),
                        .flat_floor = record.yes("flat_floor"),
                        .centre = record.yes("centre"),
                        .source = record.source()});
}

void read_speed(Record& record, Rows& rows) {
  SpeedRow speed{tool_kind(record, "tool"), {}, record.number("low"), record.number("high"),
                 record.number("most_per_minute"), record.source()};
  if (speed.low_m_min > speed.high_m_min) record.wrong("low", "it is above high", "the lower speed first");
  for (const std::string& material : record.texts("materials")) {
    speed.material = material;
    rows.speeds.push_back(speed);
  }
}

void read_tap(Record& record, Rows& rows) {
  rows.taps.push_back({record.text("thread"), record.length("drill"), record.source()});
}

void read_shop(Record& record, Rows& rows) {
  rows.shops.push_back({.name = record.text("name"),
                        .title = record.text("title"),
                        .machines = record.texts("machines"),
                        .taps = record.texts("taps"),
                        .drills = record.lengths("drills"),
                        .flat_bits = record.lengths("flat_bits"),
                        .hole_saws = record.lengths("hole_saws"),
                        .cutters = record.lengths("cutters"),
                        .print_bed = record.lengths("print_bed"),
                        .laser_bed = record.lengths("laser_bed")});
}

constexpr std::array all{
    Reader{"threads", read_thread},       Reader{"nuts", read_nut},
    Reader{"washers", read_washer},       Reader{"no_standard_nut", read_no_standard_nut},
    Reader{"clearances", read_clearance}, Reader{"bearings", read_bearing},
    Reader{"materials", read_material},   Reader{"wood_screws", read_wood_screw},
    Reader{"tools", read_tool},           Reader{"speeds", read_speed},
    Reader{"taps", read_tap},             Reader{"shops", read_shop},
};

}  // namespace

std::span<const Reader> readers() { return all; }

}  // namespace visewright::standards
