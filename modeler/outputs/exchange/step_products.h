// What every STEP file of ours says alike: its head, and how a body becomes a product.
#pragma once

#include <string>

#include "kernel/step_document.h"
#include "outputs/facts.h"
#include "solids/solid_set.h"

namespace visewright::outputs::exchange {

/// `what` the file shows, in a few words. With failing findings the description says how many.
[[nodiscard]] kernel::StepHeader header(const Facts&, std::string file_name, const std::string& what);
[[nodiscard]] kernel::Schema schema(const Facts&);
/// A body with its colour, its material and density, and its volume and area as validation properties.
kernel::StepDocument::ProductId add(kernel::StepDocument&, std::string item, std::string name, const solids::BodySolid&);

}  // namespace visewright::outputs::exchange
