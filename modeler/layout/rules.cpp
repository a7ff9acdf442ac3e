#include "layout/rules.h"

#include <vector>

#include "layout/rules_bench.h"
#include "layout/rules_jaw.h"
#include "layout/rules_screw.h"
#include "layout/rules_train.h"
#include "layout/rules_workshop.h"

namespace visewright::layout {

std::span<const reasons::Rule* const> rules_of_layout() {
  static const auto all = [] {
    std::vector<const reasons::Rule*> list;
    for (const std::span<const reasons::Rule* const> some : {std::span<const reasons::Rule* const>(rules::train), {rules::screw}, {rules::jaw}, {rules::bench}, {rules::workshop}})
      for (const reasons::Rule* rule : some) list.push_back(rule);
    return list;
  }();
  return all;
}

}  // namespace visewright::layout
