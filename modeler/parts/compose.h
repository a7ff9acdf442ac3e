// Short ways to write parts down.
#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "layout/plan.h"
#include "parts/faces.h"
#include "parts/part.h"

namespace visewright::parts {

/// The rule that set a number of the Plan; null when the number stands in no ledger.
[[nodiscard]] const reasons::Rule* why(const layout::Plan&, const reasons::Size&);

[[nodiscard]] Operation drill(std::string name, const Face&, geometry::Point at, double diameter_mm, Depth = {});
/// A recess with a flat floor.
[[nodiscard]] Operation recess(std::string name, const Face&, geometry::Point at, double diameter_mm, double depth_mm);
[[nodiscard]] Operation cut_out(std::string name, const Face&, geometry::Loop outline);
/// Turned away about the part's z axis: radii from `inner_mm` out to beyond `outer_mm`, heights from `low_mm` to
/// `high_mm`.
[[nodiscard]] Operation turned_away(std::string name, double inner_mm, double outer_mm, double low_mm, double high_mm);

/// The same operation, following a hole of a shared pattern.
[[nodiscard]] Operation follows(Operation, const layout::Pattern&, const layout::Hole&);
/// The same operation, with the rule that set this number as its purpose.
[[nodiscard]] Operation because(Operation, const layout::Plan&, const reasons::Size&);

[[nodiscard]] Part made_of(std::string name, Stock, std::vector<Operation> = {}, Making = Making::made);
[[nodiscard]] Part bought(std::string name, Bought);
[[nodiscard]] Member member(Part, const geometry::Placement& at = {});
/// A frame shifted along z.
[[nodiscard]] geometry::Placement raised(double z_mm);

/// Bodies of bought things, about z.
[[nodiscard]] Prism cylinder(double diameter_mm, double from_mm, double to_mm);
[[nodiscard]] Revolved turned_body(std::vector<geometry::Point> half_section);
/// A triangle or other polygon of a y–z plane, drawn out along x.
[[nodiscard]] Prism along_x(std::vector<geometry::Point> y_and_z, double from_mm, double to_mm);

/// What hardware is made of.
[[nodiscard]] const standards::MaterialRow* steel(const layout::Plan&);

/// Saw marks and planing: what to add to a finished board for its rough size.
[[nodiscard]] geometry::Vector rough(double length_mm, double width_mm, double thickness_mm);

/// ", left" or ", right" where the two sides differ; else nothing. `side` is 0 for the left.
[[nodiscard]] std::string of_side(std::size_t side, bool differ);

}  // namespace visewright::parts
