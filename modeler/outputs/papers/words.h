// Short words about holes, faces and files that all sheets use.
#pragma once

#include <string>
#include <string_view>

#include "outputs/facts.h"
#include "outputs/papers/jobs.h"

namespace visewright::outputs::papers {

/// "⌀96 mm" and the like in the unit that is shown.
[[nodiscard]] std::string length(double mm, units::LengthUnit);
[[nodiscard]] bool through(const Feature&, double thickness_mm);
/// "⌀8 mm, through" or "12.5 mm deep, flat floor".
[[nodiscard]] std::string size_words(const Feature&, double thickness_mm, units::LengthUnit);
/// What it is commonly made with, of what is owned: "drill", "hole saw", "flat bit", "router", "saw or router".
[[nodiscard]] std::string_view tool_words(const Feature&, const layout::OwnedPlan&);
/// The name of the hole in its pattern when the feature stands there, else of the operation.
[[nodiscard]] std::string name_of(const Feature&, const layout::Plan&);

/// A name as part of a path: letters a to z, digits and "-".
[[nodiscard]] std::string slug(std::string_view name);
/// 12.5 as "12_5": for names of layers.
[[nodiscard]] std::string digits(double mm);

/// Where a face stands in the vise at shut: the frame of the face in the model's axes.
[[nodiscard]] geometry::Placement in_vise(const assembly::Assembly&, const FaceJob&);
/// "You look at the back, …": which face, from where, and whether left and right are exchanged.
[[nodiscard]] std::string face_words(const assembly::Assembly&, const FaceJob&);
/// What lies in a direction of the model: "person's left", "top", "towards the bench" …; empty when slanting.
[[nodiscard]] std::string_view way_words(const geometry::Vector& direction);

}  // namespace visewright::outputs::papers
