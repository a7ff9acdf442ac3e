// The ways of marking, in the words of the design file.
#pragma once

#include <string_view>

#include "layout/workshop.h"

namespace visewright::outputs::data {

[[nodiscard]] constexpr std::string_view marking_word(layout::Marking marking) {
  switch (marking) {
    case layout::Marking::from_template: return "template";
    case layout::Marking::one_datum: return "one datum";
    case layout::Marking::chain: return "one from the next";
  }
  return "";
}

}  // namespace visewright::outputs::data
