// The rows of the catalogue. Every row names its standard and how its figures are known.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "units/quantity.h"

namespace visewright::standards {

/// Where a row's figures come from, e.g. "ISO 4032:2012 table 1", and how sure they are: "sighted", "computed",
/// "from memory".
struct Source {
  std::string standard, known;
};

enum class ThreadFamily : std::uint8_t { metric, trapezoidal, unified, acme };

/// A screw thread. Diameters are basic sizes: d, d2, d1 (nut side), d3 (screw root, with the crest clearance where the
/// family has one). Lead is the pitch times the starts.
struct ThreadRow {
  std::string designation;  // "M20", "Tr 24x5", "3/4-10 UNC", "1-5 Acme"
  ThreadFamily family;
  units::Length major, pitch, lead, mean, nut_minor, root;
  double stress_area_mm2;
  units::Angle half_flank;  // 30°, 15°, 14.5°
  Source source;
};

/// A hexagon nut, long nut, or a piece of hexagon bar that stands for a nut no standard has. Height of a long nut is
/// its length; height of bar is what a collar needs, 0.8 d, and the tolerance of its sawn length is the maker's own.
struct NutRow {
  std::string designation;  // "hexagon nut M20", "long nut M20-LH", "hexagon bar 36 mm for Tr 24x5"
  std::string thread;
  bool long_nut = false, bar = false, left_hand = false;
  units::Length across_flats_max, across_flats_min, height_max, height_min;
  Source source;
};

/// A kind of nut that no standard gives for a thread, and what stands in for it.
struct NoStandardNut {
  std::string thread, kind, instead;  // "Tr 24x5", "hexagon nut", "hexagon bar"
  Source source;
};

/// A washer may go with several threads; each of them has its own row, with the same designation.
struct WasherRow {
  std::string designation;  // "washer 20 (normal)", "washer 20 (large)", "washer 3/4 in (wide)"
  std::string thread;       // the thread it goes with
  bool large = false;
  units::Length bore, outside, thickness;
  Source source;
};

/// Clearance holes for a thread in three series.
struct ClearanceRow {
  std::string thread;
  units::Length fine, medium, coarse;
  Source source;
};

struct BearingRow {
  std::string designation;  // "608", "6002", "R12"
  units::Length bore, outside, width_open, width_shielded;
  units::Mass mass;  // zero when the catalogue does not give it
  Source source;
};

enum class MaterialKind : std::uint8_t { wood, panel, plastic, metal };
[[nodiscard]] std::string_view name_of(MaterialKind);

/// Density in g/cm³; modulus along the grain; bending strength, for metals the yield stress and for printed plastics
/// the strength within a layer; movement in percent of size a percent of moisture, across the grain of wood and along a
/// panel; expansion along the grain. Linings that come in sheets are panels.
struct MaterialRow {
  std::string name;  // "beech", "birch plywood", "PETG", "steel"
  MaterialKind kind;
  double density_g_cm3;
  std::optional<double> modulus_mpa, bending_strength_mpa, crushing_across_mpa;
  std::optional<double> movement_tangential, movement_radial;  // % a %
  std::optional<double> expansion_per_kelvin;
  double red, green, blue;  // our own colours, 0 to 1
  Source source;
};

/// Fasteners into wood: "wood screw 6 x 90".
struct WoodScrewRow {
  std::string designation;
  units::Length shank, head, length;
  Source source;
};

/// What an operation is done with. Saws, planes, files and brushes come in every workshop and have no size here.
enum class ToolKind : std::uint8_t {
  drill,
  flat_bit,
  hole_saw,
  cutter,
  saw,
  fretsaw,
  lathe_tool,
  grinder,
  tap,
  edge_tool,
  printer,
  laser,
  punch,
  brush
};
[[nodiscard]] std::string_view name_of(ToolKind);

/// A kind of tool: the sizes it is made in, and the machine it needs, if it is no hand tool. `centre`: it is guided by
/// a point in its middle, so it needs material there. `flat_floor`: it leaves one.
struct ToolRow {
  std::string name;  // "hole saw"
  ToolKind kind;
  std::string machine;  // "lathe"; empty when a hand or a hand drill drives it
  units::Length smallest, largest;
  bool flat_floor = false, centre = false;
  Source source;
};

/// Cutting speed of a kind of tool in a material, by its name or by its kind ("wood"), in metres a minute at the rim,
/// and the turns a minute that the tool or its shank stands.
struct SpeedRow {
  ToolKind tool;
  std::string material;
  double low_m_min, high_m_min;
  double most_per_minute;
  Source source;
};

/// The drill that leaves the right hole for a tap.
struct TapRow {
  std::string thread;
  units::Length drill;
  Source source;
};

/// A ready list of what a workshop owns. An empty list of sizes means that it has none of them, an empty bed that it
/// has no such machine.
struct ShopRow {
  std::string name, title;
  std::vector<std::string> machines, taps;
  std::vector<units::Length> drills, flat_bits, hole_saws, cutters, print_bed, laser_bed;
};

/// All rows, in the order of the tables.
struct Rows {
  std::vector<ThreadRow> threads;
  std::vector<NutRow> nuts;
  std::vector<NoStandardNut> no_standard_nuts;
  std::vector<WasherRow> washers;
  std::vector<ClearanceRow> clearances;
  std::vector<BearingRow> bearings;
  std::vector<MaterialRow> materials;
  std::vector<WoodScrewRow> wood_screws;
  std::vector<ToolRow> tools;
  std::vector<SpeedRow> speeds;
  std::vector<TapRow> taps;
  std::vector<ShopRow> shops;
};

}  // namespace visewright::standards
