// Declared fits, each judged by its own rule.
#pragma once

#include "fitup/couple.h"

namespace visewright::fitup {

/// The number that decides a declared fit, and whether it holds. Sliding: bore less shaft in diameter, not below zero;
/// where neither is round, the gap. Press: the same difference, no more than a micrometre off. Threaded: diameters
/// engaged, at the opening where fewest are. Touching, bonded: the gap, no more than a micrometre, of parts that do not
/// move against each other; those that do may touch at any opening. None for a general couple, for `Clear`, for gears
/// that mesh (judged elsewhere), and where the two overlap.
[[nodiscard]] std::optional<reasons::Finding> fit_finding(const Couple&, const std::vector<Stand>&, const assembly::Assembly&);

/// For each kind of fit every finding that does not pass, and of those that pass the one nearest to its limit.
[[nodiscard]] std::vector<reasons::Finding> worst_of_each_kind(std::vector<reasons::Finding>);

}  // namespace visewright::fitup
