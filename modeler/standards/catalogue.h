// Everything that is known by designation: rows from the embedded tables, looked up by what they fit.
#pragma once

#include <span>
#include <string_view>
#include <utility>

#include "base/fault.h"
#include "standards/rows.h"

namespace visewright::standards {

/// A text of tables and the path that faults name it by.
struct TextFile {
  std::string_view path, text;
};

/// The whole catalogue. Rows live as long as the catalogue and stay where they are when it is moved; pointers to them
/// are identities.
class Catalogue {
 public:
  /// Reads the embedded tables. A fault here is our own mistake.
  [[nodiscard]] static base::Result<Catalogue> embedded();
  /// Reads tables of the same form. Every fault has Cause::own_mistake, the path as its key, and a place whose text is
  /// 2 for the first file, 3 for the second and so on.
  [[nodiscard]] static base::Result<Catalogue> read(std::span<const TextFile> files);

  Catalogue(Catalogue&&) = default;
  Catalogue& operator=(Catalogue&&) = default;
  Catalogue(const Catalogue&) = delete;
  Catalogue& operator=(const Catalogue&) = delete;
  ~Catalogue() = default;

  [[nodiscard]] std::span<const ThreadRow> threads() const { return rows_.threads; }
  [[nodiscard]] std::span<const NutRow> nuts() const { return rows_.nuts; }
  /// Threads for which a kind of nut does not exist, each said once a kind.
  [[nodiscard]] std::span<const NoStandardNut> no_standard_nuts() const { return rows_.no_standard_nuts; }
  [[nodiscard]] std::span<const WasherRow> washers() const { return rows_.washers; }
  [[nodiscard]] std::span<const ClearanceRow> clearances() const { return rows_.clearances; }
  [[nodiscard]] std::span<const BearingRow> bearings() const { return rows_.bearings; }
  [[nodiscard]] std::span<const MaterialRow> materials() const { return rows_.materials; }
  [[nodiscard]] std::span<const WoodScrewRow> wood_screws() const { return rows_.wood_screws; }
  [[nodiscard]] std::span<const ToolRow> tools() const { return rows_.tools; }
  [[nodiscard]] std::span<const SpeedRow> speeds() const { return rows_.speeds; }
  [[nodiscard]] std::span<const TapRow> taps() const { return rows_.taps; }
  [[nodiscard]] std::span<const ShopRow> shops() const { return rows_.shops; }

  // Every lookup forgives case, spaces, quotes and "×" for "x": "m20", "Tr24 x 5", "1 1/4-5 acme"; null when unknown.

  /// A metric thread may carry its coarse pitch: "M20x2.5" is "M20".
  [[nodiscard]] const ThreadRow* thread(std::string_view designation) const;
  /// Any nut, long nut or bar by its whole designation.
  [[nodiscard]] const NutRow* nut(std::string_view designation) const;
  /// Null when no standard nut exists for the thread (trapezoidal, Acme): then see hexagon_bar.
  [[nodiscard]] const NutRow* hexagon_nut(std::string_view thread, bool left_hand) const;
  /// The first listed; other widths of the same thread are found by designation.
  [[nodiscard]] const NutRow* long_nut(std::string_view thread, bool left_hand) const;
  /// Hexagon bar that makes a nut for the thread: across flats ≥ 1.5 d, from stock sizes.
  [[nodiscard]] const NutRow* hexagon_bar(std::string_view thread, bool left_hand) const;
  /// Normal (inch: narrow) or large (inch: wide) series.
  [[nodiscard]] const WasherRow* washer(std::string_view thread, bool large) const;
  [[nodiscard]] const ClearanceRow* clearance(std::string_view thread) const;
  [[nodiscard]] const BearingRow* bearing(std::string_view designation) const;
  /// The smallest bearing with exactly this bore whose outside diameter is at least that given; of equal outsides the
  /// narrower. Null when there is none.
  [[nodiscard]] const BearingRow* bearing_for_bore(units::Length bore, units::Length outside_at_least) const;
  /// By name, words in any order: "plywood, birch" is "birch plywood".
  [[nodiscard]] const MaterialRow* material(std::string_view name) const;
  /// "wood screw 6 x 90", or just "6x90".
  [[nodiscard]] const WoodScrewRow* wood_screw(std::string_view designation) const;
  /// Every kind has its row, so this is never null in the embedded catalogue.
  [[nodiscard]] const ToolRow* tool(ToolKind) const;
  /// The row for the material by its name, else that for its kind.
  [[nodiscard]] const SpeedRow* speed(ToolKind, const MaterialRow&) const;
  [[nodiscard]] const TapRow* tap(std::string_view thread) const;
  /// A ready list of tools by its name.
  [[nodiscard]] const ShopRow* shop(std::string_view name) const;

 private:
  explicit Catalogue(Rows rows) : rows_(std::move(rows)) {}
  Rows rows_;
};

}  // namespace visewright::standards
