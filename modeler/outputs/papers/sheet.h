// A sheet: lines, arcs and words in millimetres, on layers named by what is done along them. Templates stand in the
// coordinates of a part's face, drawings in those of the page, both y up; SVG, DXF and PDF are written from it.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/loop.h"

namespace visewright::outputs::papers {

/// What a line is drawn with. The first five are for templates, the rest for drawings in the manner of ISO 128: wide
/// for visible edges, narrow dashed for hidden ones, narrow long-dash-dot for centre lines.
enum class Pen : std::uint8_t { cut, recess, hole, mark, read_only, visible, hidden, centre, thin, hatch };

/// `name`: letters, digits, _ and -. `meaning`: one line for the legend.
struct Layer {
  std::string name;
  Pen pen;
  std::string meaning;
};

/// What stands on which side of a closed curve; a machine's path runs on the side of the waste.
enum class Waste : std::uint8_t { none, inside, outside };

struct Curve {
  std::size_t layer = 0;
  std::vector<geometry::Edge> edges;
  bool closed = false;
  Waste waste = Waste::none;
};

enum class Anchor : std::uint8_t { left, middle, right };

/// One line of words; `at` is where its baseline starts, has its middle, or ends. `turn_rad` is anticlockwise.
struct Words {
  std::size_t layer = 0;
  geometry::Point at;
  std::string text;
  double height_mm = 2.5;  // of the font, from one line's baseline to the next one's least distance
  Anchor anchor = Anchor::left;
  double turn_rad = 0;
};

struct Sheet {
  std::string title;
  std::vector<std::string> remarks;  // what to know before using it; stands beside the drawing on every medium
  std::vector<Layer> layers;
  std::vector<Curve> curves;
  std::vector<Words> words;

  /// The index of the layer of this name, added at the end when there is none.
  std::size_t layer(std::string_view name, Pen, std::string_view meaning);
  void line(std::size_t layer, geometry::Point a, geometry::Point b);
  void edge(std::size_t layer, const geometry::Edge&);
  void outline(std::size_t layer, const geometry::Loop&, Waste = Waste::none);
  void circle(std::size_t layer, geometry::Point centre, double radius_mm, Waste = Waste::none);
  /// A cross whose arms are `arm_mm` long.
  void cross(std::size_t layer, geometry::Point at, double arm_mm);
  void write(std::size_t layer, geometry::Point at, std::string text, double height_mm = 2.5, Anchor = Anchor::left,
             double turn_rad = 0);
  /// Curves and words of another sheet, scaled and then shifted; its layers are found by name. Words keep their height.
  void add(const Sheet&, double scale, geometry::Point shift);
};

/// The box of all curves. REQUIRES: at least one curve.
[[nodiscard]] geometry::Box box(const Sheet&);
/// The box of one line of words.
[[nodiscard]] geometry::Box box(const Words&);
[[nodiscard]] geometry::Box around(const geometry::Box&, const geometry::Box&);

/// An edge scaled about the origin and then shifted. REQUIRES: scale > 0.
[[nodiscard]] geometry::Edge scaled(const geometry::Edge&, double scale, geometry::Point shift);

/// The circle that a closed curve is, if it is one of a single arc.
[[nodiscard]] const geometry::Arc* as_circle(const Curve&);

}  // namespace visewright::outputs::papers
