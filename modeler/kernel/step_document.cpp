#include "kernel/step_document.h"

#include <algorithm>
#include <set>

#include "kernel/step_writer.h"

namespace visewright::kernel {

StepDocument::StepDocument(StepHeader header) : header_(std::move(header)) {}

StepDocument::ProductId StepDocument::add_product(std::string item, std::string name, Solid body, Colour colour,
                                                  std::string material, double density_g_cm3,
                                                  const std::optional<Measures>& measured) {
  products_.push_back(
      {std::move(item), std::move(name), std::move(material), std::move(body), colour, density_g_cm3, measured});
  return products_.size() - 1;
}

StepDocument::ProductId StepDocument::add_assembly(std::string item, std::string name) {
  products_.push_back({std::move(item), std::move(name), {}, std::nullopt, {}, 0, std::nullopt});
  return products_.size() - 1;
}

void StepDocument::place(ProductId parent, ProductId child, const geometry::Placement& where,
                         std::string instance_name) {
  uses_.push_back({parent, child, where, std::move(instance_name)});
}

base::Result<std::string> StepDocument::to_bytes(Schema schema) const {
  const auto wrong = [](const std::string& item, std::string what, std::string right) {
    return base::fault(base::Cause::own_mistake, "STEP item " + item, std::move(what), std::move(right));
  };
  if (products_.empty()) return wrong("-", "there is no product", "at least one product");
  std::set<std::string_view> items;
  for (ProductId id = 0; id < products_.size(); ++id) {
    const Product& product = products_[id];
    if (product.item.empty() || !items.insert(product.item).second)
      return wrong(product.item, "the item is empty or used twice", "one item number for each product");
    const bool holds = std::ranges::any_of(uses_, [&](const Use& use) { return use.parent == id; });
    if (holds == product.body.has_value())
      return wrong(product.item, holds ? "a product with a body holds others" : "an assembly holds nothing",
                   "a body or parts, not both");
  }
  for (const Use& use : uses_)
    if (use.parent >= products_.size() || use.child >= products_.size() || use.parent == use.child)
      return wrong(use.name, "a product is placed in itself or does not exist", "products that were added");
  return written(*this, schema);
}

}  // namespace visewright::kernel
