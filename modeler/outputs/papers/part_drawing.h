// Drawings of made parts: three views, ordinates from the datum, hole table, gear data.
#pragma once

#include <vector>

#include "outputs/facts.h"
#include "outputs/papers/drawing_page.h"
#include "outputs/papers/jobs.h"

namespace visewright::outputs::papers {

/// The pages of one job: the first worked face with the views beside it, then each face that looks another way, then
/// the hole table. Small parts on A4, larger ones on A3.
[[nodiscard]] std::vector<Sheet> part_drawing(const Facts&, const Job&, Projection = usual_projection);

}  // namespace visewright::outputs::papers
