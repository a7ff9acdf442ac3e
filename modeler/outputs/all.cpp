#include "outputs/all.h"

#include "outputs/data/bill_files.h"
#include "outputs/data/findings_json.h"
#include "outputs/data/plan_json.h"
#include "outputs/data/size_json.h"
#include "outputs/exchange/assembly_step.h"
#include "outputs/handoff/pack.h"
#include "outputs/papers/drawings.h"
#include "outputs/papers/exploded.h"
#include "outputs/papers/picture.h"
#include "outputs/papers/setting_out.h"
#include "outputs/papers/shop_lists.h"
#include "outputs/papers/templates.h"

namespace visewright::outputs {

std::span<const Output> all() {
  static constexpr Output outputs[] = {
      {"plan", "", false, data::write_plan},
      {"size", "", false, data::write_size},
      {"findings", "", false, data::write_findings},
      {"bill of materials", "", false, data::write_bill},
      {"assembly", "", true, exchange::write_assembly},
      {"picture", "", true, papers::write_picture},
      {"templates", "papers", false, papers::write_templates},
      {"drawings", "papers", false, papers::write_drawings},
      {"exploded view", "papers", true, papers::write_exploded},
      {"shop lists", "papers", false, papers::write_shop_lists},
      {"setting-out rod", "papers", false, papers::write_setting_out},
      {"handoff", "handoff", true, handoff::write_handoff},
  };
  return outputs;
}

}  // namespace visewright::outputs
