// Parts as true solids: every operation cut into its stock, each body checked before anyone sees it.
#pragma once

#include <memory>
#include <span>
#include <string>
#include <vector>

#include "base/fault.h"
#include "base/watcher.h"
#include "kernel/solid.h"
#include "parts/part.h"

namespace visewright::solids {

/// One body of a part as a solid, in the part's frame.
struct BodySolid {
  std::string name;
  const standards::MaterialRow* material = nullptr;
  kernel::Solid solid;
  kernel::Measures measures;
  double own_volume_mm3 = 0;  // by parts::volume_mm3, kernel-free
};

/// Largest difference between the kernel's volume and our own, as a part of the whole; measured below 1e-9 on lines and
/// arcs.
inline constexpr double volume_agreement = 1e-5;
/// The same for gears, whose flanks the kernel takes as splines. Measured: 2.3e-6 with 40 teeth, 1.4e-5 with 18; flanks
/// off by the micrometre they may be off by would make about 1e-4.
inline constexpr double volume_agreement_of_flanks = 5e-5;

/// A body as a solid. Faults: what the kernel refuses; a solid that is not one, valid, closed piece; a volume that
/// differs from our own by more than `volume_agreement`, or for gears `volume_agreement_of_flanks`.
[[nodiscard]] base::Result<BodySolid> solid_of(const parts::Body&, const std::string& part_name);

/// All bodies of all parts, in the order of parts::bodies.
class SolidSet {
 public:
  /// Each part once, spread over the cores; the result does not depend on their number.
  [[nodiscard]] static base::Result<SolidSet> of(std::span<const std::shared_ptr<const parts::Part>>, base::Watcher&);

  [[nodiscard]] std::span<const BodySolid> bodies(std::size_t part) const { return parts_[part]; }
  [[nodiscard]] std::size_t size() const { return parts_.size(); }

 private:
  std::vector<std::vector<BodySolid>> parts_;
};

}  // namespace visewright::solids
