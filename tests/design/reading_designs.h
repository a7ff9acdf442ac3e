// Short ways to read a design text in a test.
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "design/read.h"
#include "standards/known_catalogue.h"

namespace visewright::design {

/// What a design cannot do without, on two lines; more may follow.
inline const std::string least_train = "train = { teeth = [30, 30, 30], module = 3 }\n";
inline const std::string least_screw = "screw = { thread = \"M20\" }\n";
inline const std::string least = least_train + least_screw;

inline base::Result<Design> reading_of(const std::string& text) { return read(text, "vise.toml", standards::known()); }

inline std::string as_text(const base::Faults& faults) {
  std::string text;
  for (const base::Fault& fault : faults) {
    text += std::to_string(fault.place ? fault.place->line : 0) + ": " + fault.key + ": " + fault.wrong + "; " +
            fault.right + "\n";
  }
  return text;
}

inline base::Faults faults_of(const std::string& text) {
  const base::Result<Design> design = reading_of(text);
  return design ? base::Faults{} : design.error();
}

/// The design of a text that must be good.
inline Design good(const std::string& text) {
  const base::Result<Design> design = reading_of(text);
  if (!design) ADD_FAILURE() << text << as_text(design.error());
  return design.value_or(Design{});
}

}  // namespace visewright::design
