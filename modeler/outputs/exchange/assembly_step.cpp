#include "outputs/exchange/assembly_step.h"

#include <map>
#include <string>

#include "outputs/data/items.h"
#include "outputs/exchange/step_products.h"
#include "solids/solid_set.h"

namespace visewright::outputs::exchange {
namespace {

using kernel::StepDocument;

class Tree {
 public:
  Tree(const Facts& facts, StepDocument& document) : facts_(facts), document_(document) {
    root_ = document_.add_assembly("vise", std::string(facts.title));
    fixed_ = branch("fixed", "fixed: bench, rear jaw and nut blocks");
    moving_ = branch("moving", "moving: front jaw and what travels with it");
    turning_ = document_.add_assembly("turning", "turning: screws, gears and wheels");
    document_.place(moving_, turning_, {}, "turning");
    products_.resize(facts.assembly.parts.size());
  }

  void place(const assembly::Placed& placed, const assembly::Pose& pose) {
    const StepDocument::ProductId parent = placed.group == assembly::Group::fixed    ? fixed_
                                           : placed.group == assembly::Group::moving ? moving_
                                                                                     : turning_;
    document_.place(parent, product(placed.part), assembly::at(placed, pose), placed.name);
  }

 private:
  StepDocument::ProductId branch(const std::string& id, const std::string& name) {
    const auto made = document_.add_assembly(id, name);
    document_.place(root_, made, {}, id);
    return made;
  }

  /// One product a part: its body, or a sub-assembly of its bodies when it has several.
  StepDocument::ProductId product(std::uint32_t part) {
    auto& known = products_[part];
    if (known) return *known;
    const auto bodies = facts_.solids->bodies(part);
    const auto numbers = data::body_items(facts_.assembly, part);
    const std::string name = facts_.assembly.parts[part]->name;
    std::string item = data::part_item(facts_.assembly, part);
    if (item.empty()) item = "standing " + std::to_string(++standing_);
    if (bodies.size() == 1) {
      known = add(document_, item, name, bodies[0]);
      return *known;
    }
    known = document_.add_assembly(item, name);
    for (std::size_t i = 0; i < bodies.size(); ++i) {
      // Equal members share an item in the bill; here each body is a product, since work after the joint may differ.
      const std::string number = numbers[i].empty() ? item : numbers[i];
      const std::string id = unused(number);
      const auto body = add(document_, id, bodies[i].name, bodies[i]);
      document_.place(*known, body, {}, bodies[i].name);
    }
    return *known;
  }

  std::string unused(const std::string& number) {
    const int before = uses_[number]++;
    return before == 0 && number.find("standing") == std::string::npos ? number : number + "-" + std::to_string(before + 1);
  }

  const Facts& facts_;
  StepDocument& document_;
  StepDocument::ProductId root_ = 0, fixed_ = 0, moving_ = 0, turning_ = 0;
  std::vector<std::optional<StepDocument::ProductId>> products_;
  std::map<std::string, int> uses_;
  int standing_ = 0;
};

}  // namespace

base::Result<std::vector<File>> write_assembly(const Facts& facts, base::Watcher& watcher) {
  watcher.step("writing the STEP file", 0.9);
  StepDocument document(header(facts, "assembly.step", "twin-screw bench vise"));
  Tree tree(facts, document);
  for (const auto& placed : facts.assembly.placed) tree.place(placed, facts.pose);
  auto bytes = document.to_bytes(schema(facts));
  if (!bytes) return base::passed_on(std::move(bytes.error()));
  return std::vector<File>{{"assembly.step", std::move(*bytes), "the whole vise as solids, ISO 10303-21", std::nullopt}};
}

}  // namespace visewright::outputs::exchange
