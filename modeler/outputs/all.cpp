#include "outputs/all.h"

#include "outputs/data/bill_files.h"
#include "outputs/data/findings_json.h"
#include "outputs/data/plan_json.h"
#include "outputs/data/size_json.h"
#include "outputs/exchange/assembly_step.h"
#include "outputs/papers/picture.h"

namespace visewright::outputs {

std::span<const Output> all() {
  static constexpr Output outputs[] = {
      {"plan", "", false, data::write_plan},
      {"size", "", false, data::write_size},
      {"findings", "", false, data::write_findings},
      {"bill of materials", "", false, data::write_bill},
      {"assembly", "", true, exchange::write_assembly},
      {"picture", "", true, papers::write_picture},
  };
  return outputs;
}

}  // namespace visewright::outputs
