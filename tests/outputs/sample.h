// A small vise filled in by hand: five gears of module 3 with 30 teeth, screws M20. Only what the lists and data files
// read is there; every expected figure in the tests is worked out from the figures below.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "outputs/all.h"
#include "outputs/facts.h"

namespace visewright::tests {

inline constexpr reasons::Rule module_rule{"train.module", "size of the teeth", "as the design says", "ISO 54",
                                           "a larger one"};
inline constexpr reasons::Rule tip_rule{"train.tip_diameter", "outside of a gear", "module {0} × (teeth {1} + 2) = {=}",
                                        "ISO 21771", "follows the module"};
inline constexpr reasons::Rule backing_rule{"front_jaw.backing", "thickness of the backing",
                                            "greater of 40 mm and 1.5 × {0}", "common practice, no source",
                                            "a thicker board"};
inline constexpr reasons::Rule friction_rule{"assume.thread_friction", "friction in the thread",
                                             "usual for oiled steel", "common practice, no source", "measure it"};
inline constexpr reasons::Rule thread_rule{"screw.thread", "thread of both screws", "as the design says", "ISO 261",
                                           "another"};
inline constexpr reasons::Rule parity_finding{"train.parity", "whether both screws close together",
                                              "gears {=}, wanted {0}", "counting",
                                              "give the right screw a left-hand thread"};
inline constexpr reasons::Rule speed_finding{"use.turns", "turns from shut to open", "opening over lead", "division",
                                             "take a thread with a longer lead"};
inline constexpr reasons::Rule backing_finding{"front_jaw.backing", "wood behind the thrust washer",
                                               "least wood {=} against {0}", "common practice, no source",
                                               "a thicker board"};

/// Owns everything that Facts points at.
struct Sample {
  Sample();
  Sample(const Sample&) = delete;
  Sample& operator=(const Sample&) = delete;

  /// The same vise with gears of another module: the numbers that follow from it follow.
  void set_train(double module_mm);

  [[nodiscard]] outputs::Facts facts() const {
    return {design, plan, assembly, figures, work, findings, "Bench | one, \"oak\"", "0.1.0", "no date", show, nullptr};
  }

  standards::MaterialRow beech, steel, petg;
  standards::ThreadRow m20;
  design::Design design;
  layout::Plan plan;
  assembly::Assembly assembly;
  analysis::Figures figures;
  making::Work work;
  std::vector<reasons::Finding> findings;
  units::LengthUnit show = units::LengthUnit::millimetre;

 private:
  void fill_plan();
  void fill_parts();
  void fill_stock();
};

[[nodiscard]] parts::Part board(std::string name, const standards::MaterialRow&, geometry::Vector size_mm,
                                geometry::Vector rough_mm);
[[nodiscard]] std::shared_ptr<const parts::Part> shared(parts::Part);
[[nodiscard]] std::vector<outputs::File> written(const outputs::Output&, const Sample&);

}  // namespace visewright::tests
