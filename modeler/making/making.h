// Everything about making the vise, worked out once; outputs only print it.
#pragma once

#include <vector>

#include "assembly/assembly.h"
#include "layout/plan.h"
#include "making/assembling.h"
#include "making/beds.h"
#include "making/corners.h"
#include "making/cutting.h"
#include "making/order.h"
#include "making/print_list.h"
#include "making/weld_list.h"
#include "reasons/finding.h"
#include "standards/catalogue.h"

namespace visewright::making {

/// Points into the assembly and the catalogue, which must outlive it.
struct Work {
  OwnedTools tools;
  std::vector<Workpiece> pieces;
  std::vector<PartSteps> order;        // part by part, members before their whole
  std::vector<AssemblyStep> assembly;  // sub-assemblies, then the vise, then setting it
  Cutting cutting;
  std::vector<PrintItem> prints;
  std::vector<WeldItem> welds;
  std::vector<Corner> corners;
  std::vector<OnBed> beds;
  std::vector<reasons::Finding> findings;  // in a fixed order, not sorted by weight
};

[[nodiscard]] Work work(const layout::Plan&, const assembly::Assembly&, const standards::Catalogue&);

}  // namespace visewright::making
