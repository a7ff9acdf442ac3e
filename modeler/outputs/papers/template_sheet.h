// The full-size template of one face of one part.
#pragma once

#include "outputs/facts.h"
#include "outputs/papers/jobs.h"
#include "outputs/papers/sheet.h"

namespace visewright::outputs::papers {

/// Whether a job is done on flat stock, so that a template can lie on it.
[[nodiscard]] bool takes_template(const Job&);

/// In the face's own coordinates, so that a template of a back is mirrored by its frame. Every centre has a cross on
/// the layer MARK, with name, diameter, depth and tool beside it; what is cut is on layers named by operation, cut-outs
/// that run into each other as one outline. Remarks say which face one looks at, from what the sizes count, and of what
/// the part is.
[[nodiscard]] Sheet template_sheet(const Facts&, const FaceJob&);

/// What every sheet says first: the notice of failing checks, when there is one.
void add_notice(const Facts&, Sheet&);

}  // namespace visewright::outputs::papers
