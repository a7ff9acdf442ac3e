// A view of a job along one of its axes, drawn from 2-D values in the manner of ISO 128.
#pragma once

#include "outputs/papers/jobs.h"
#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// `eye`: a frame of the job's whose z points at the eye and whose x is to the right. Edges of the stock and of what
/// enters from the eye's side are visible lines; what enters from another side, and what lies inside, is hidden and
/// narrow dashed; round things have centre lines. Coordinates are those of the eye's frame, full size. Plane cuts take
/// their corner off. Turned jobs are drawn by their section through the axis.
[[nodiscard]] Sheet view(const Job&, const geometry::Placement& eye);

/// The layers of every drawing, by pen.
struct DrawingLayers {
  std::size_t visible, hidden, centre, thin, hatch;
  explicit DrawingLayers(Sheet&);
};

}  // namespace visewright::outputs::papers
