// Item numbers: one for each line of the bill, the same on every sheet, list and product name.
#pragma once

#include <string>
#include <vector>

#include "assembly/assembly.h"

namespace visewright::outputs::data {

/// One numbered thing: a part, a member of a built-up part, or a weld bead (then `part` is null).
struct Item {
  std::string number;  // "3", "3.1", "3.1.2"
  const parts::Part* part = nullptr;
  const parts::Bead* bead = nullptr;
  int count = 0;         // how many stand in the whole vise
  int level = 0;         // 0 for a part of the assembly
  std::uint32_t of = 0;  // index of that part
};

/// True for what stands already: never numbered, never listed.
[[nodiscard]] bool exists_already(const parts::Part&);

/// In order of number. Parts count in the order of Assembly::parts; members of a built-up part in the order in which
/// they first come, equal ones (the same part used again) once; beads follow the members. Made members of a whole that
/// exists already (a doubler on the bench) stand as parts of their own. Parts that are placed nowhere have no number.
[[nodiscard]] std::vector<Item> items(const assembly::Assembly&);

/// For each of parts::bodies(part), which is part `index` of the assembly, the number of its item; empty for what
/// exists already.
[[nodiscard]] std::vector<std::string> body_items(const assembly::Assembly&, std::uint32_t index);

/// The number of part `index`; empty when it is not listed.
[[nodiscard]] std::string part_item(const assembly::Assembly&, std::uint32_t index);

}  // namespace visewright::outputs::data
