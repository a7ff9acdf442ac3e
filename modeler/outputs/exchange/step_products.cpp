#include "outputs/exchange/step_products.h"

#include <algorithm>

namespace visewright::outputs::exchange {

kernel::StepHeader header(const Facts& facts, std::string file_name, const std::string& what) {
  std::vector<std::string> lines{std::string(facts.title), what + "; lengths in millimetres; for planning"};
  const auto fails = std::count_if(facts.findings.begin(), facts.findings.end(),
                                   [](const reasons::Finding& f) { return f.verdict == reasons::Verdict::fail; });
  if (fails > 0) lines.push_back(std::to_string(fails) + " findings fail: do not build from this file");
  return {std::move(file_name), std::move(lines), std::string(facts.header_time), "visewright " + std::string(facts.program_version)};
}

kernel::Schema schema(const Facts& facts) {
  return facts.step_schema == StepSchema::ap214 ? kernel::Schema::ap214 : kernel::Schema::ap242;
}

kernel::StepDocument::ProductId add(kernel::StepDocument& document, std::string item, std::string name, const solids::BodySolid& body) {
  const standards::MaterialRow& material = *body.material;
  const kernel::Colour colour{static_cast<float>(material.red), static_cast<float>(material.green), static_cast<float>(material.blue)};
  return document.add_product(std::move(item), std::move(name), body.solid, colour, material.name, material.density_g_cm3, body.measures);
}

}  // namespace visewright::outputs::exchange
