// The order of work as a text: cautions first, then part by part, then putting it together.
#pragma once

#include "making/making.h"
#include "outputs/facts.h"
#include "outputs/papers/document.h"

namespace visewright::outputs::papers {

[[nodiscard]] Document order_of_work(const Facts&, const making::Work&);

}  // namespace visewright::outputs::papers
