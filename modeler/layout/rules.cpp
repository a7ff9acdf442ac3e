#include "layout/rules.h"

#include <vector>

#include "layout/rules_bench.h"
#include "layout/rules_jaw.h"
#include "layout/rules_screw.h"
#include "layout/rules_train.h"

namespace visewright::layout {

std::span<const reasons::Rule* const> rules_of_layout() {
  static const auto all = [] {
    std::vector<const reasons::Rule*> list;
    list.insert(list.end(), std::begin(rules::train), std::end(rules::train));
    list.insert(list.end(), std::begin(rules::screw), std::end(rules::screw));
    list.insert(list.end(), std::begin(rules::jaw), std::end(rules::jaw));
    list.insert(list.end(), std::begin(rules::bench), std::end(rules::bench));
    return list;
  }();
  return all;
}

}  // namespace visewright::layout
