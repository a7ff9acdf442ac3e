// The rules on errors of marking and drilling.
#pragma once

#include <array>

#include "reasons/rule.h"

namespace visewright::analysis::rules {

inline constexpr reasons::Rule spacing_error{
    "train.spacing_error", "builds of a hundred in which a mesh jams, a mesh is slack, or a bore does not line up",
    "count of builds with every error drawn evenly within its limits; run-out and bush play count",
    "tolerance analysis by trials; one build in a hundred as the most is common practice",
    "work more exactly, drill through one template, or ask for more backlash"};
inline constexpr reasons::Rule spacing_worst{
    "train.spacing_worst", "room left in the distance of the tightest or loosest mesh when all errors add up",
    "distance to jamming, or to the least contact ratio, less the sum of all errors of the mesh",
    "worst-case tolerance stack; ISO 21771:2007 for the two distances",
    "drill through one template, or ask for more backlash"};
inline constexpr reasons::Rule line_up{
    "train.line_up", "builds of a hundred in which the bores of two parts cannot be made to line up",
    "count of builds in which two bores are farther off their holes in the backing than both have play",
    "tolerance analysis by trials; one build in a hundred as the most is common practice",
    "drill the parts clamped together or through one template, or set the bushes in glue with the screws through them"};

inline constexpr std::array<const reasons::Rule*, 3> spacing{&spacing_error, &spacing_worst, &line_up};

}  // namespace visewright::analysis::rules
