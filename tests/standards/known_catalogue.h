// The embedded catalogue, read once for all tests.
#pragma once

#include <gtest/gtest.h>

#include "standards/catalogue.h"

namespace visewright::standards {

inline const Catalogue& known() {
  static const base::Result<Catalogue> read = [] {
    auto result = Catalogue::embedded();
    if (!result) {
      for (const base::Fault& fault : result.error()) {
        ADD_FAILURE() << fault.key << ":" << (fault.place ? fault.place->line : 0) << ": " << fault.wrong << "; "
                      << fault.right;
      }
    }
    return result;
  }();
  return read.value();
}

}  // namespace visewright::standards
