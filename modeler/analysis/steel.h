// What is asked of mild steel, once for every row of the strength table.
#pragma once

namespace visewright::analysis::steel {

inline constexpr double yield_mpa = 240;         // nuts and axles; common practice, no source
inline constexpr double safety = 1.5;            // of yield, for what may be loaded; common practice, no source
inline constexpr double shear_of_yield = 0.577;  // 1/√3, distortion energy

}  // namespace visewright::analysis::steel
