#include "readers/step_products.h"

#include <algorithm>
#include <map>

namespace visewright::readers {
namespace {

class Reading {
 public:
  explicit Reading(const StepFile& file) : file_(file) {}

  Products read() {
    units();
    products();
    representations();
    colours();
    materials();
    uses();
    return std::move(found_);
  }

 private:
  void problem(std::string_view what) { found_.problems.emplace_back(what); }
  void problem(std::string_view what, std::uint64_t id, std::string_view how) {
    std::string& text = found_.problems.emplace_back(what);
    text.append(numbered(id)).append(how);
  }

  /// Every context of three dimensions measures in millimetres and radians.
  void units() {
    std::size_t contexts = 0;
    for (const Instance* context : file_.all("GLOBAL_UNIT_ASSIGNED_CONTEXT")) {
      ++contexts;
      bool length = false, angle = false;
      for (const Value& item : parameter(context->find("GLOBAL_UNIT_ASSIGNED_CONTEXT"), 0).items) {
        const Instance* unit = file_.at(item);
        const Record* si = unit == nullptr ? nullptr : unit->find("SI_UNIT");
        if (si == nullptr) continue;
        const bool plain = parameter(si, 0).kind == Value::Kind::missing;
        if (unit->is("LENGTH_UNIT")) length = parameter(si, 0).text == "MILLI" && parameter(si, 1).text == "METRE";
        if (unit->is("PLANE_ANGLE_UNIT")) angle = plain && parameter(si, 1).text == "RADIAN";
      }
      if (!length || !angle) problem("context ", context->id, " is not in millimetres and radians");
    }
    if (contexts == 0) problem("no context says in which units the file is");
  }

  void products() {
    for (const Instance* definition : file_.all("PRODUCT_DEFINITION")) {
      const Instance* formation = file_.step(definition, "PRODUCT_DEFINITION", 2);
      const Record* product = nullptr;
      if (formation != nullptr && !formation->records.empty()) {
        const Instance* found = file_.at(parameter(&formation->records.front(), 2));
        if (found != nullptr) product = found->find("PRODUCT");
      }
      if (product == nullptr) {
        problem("definition ", definition->id, " leads to no product");
        continue;
      }
      Product made;
      made.definition = definition->id;
      made.id = parameter(product, 0).text;
      made.name = parameter(product, 1).text;
      by_definition_[definition->id] = found_.products.size();
      found_.products.push_back(std::move(made));
    }
    for (const Instance* product : file_.all("PRODUCT"))
      if (std::ranges::count(found_.products, parameter(product->find("PRODUCT"), 0).text, &Product::id) != 1)
        problem("product ", product->id, " has no definition, or its id stands twice");
  }

  Product* of_definition(const Instance* definition) {
    const auto found = definition == nullptr ? by_definition_.end() : by_definition_.find(definition->id);
    return found == by_definition_.end() ? nullptr : &found_.products[found->second];
  }

  void representations() {
    std::size_t placed = 0;
    for (const Instance* link : file_.all("SHAPE_DEFINITION_REPRESENTATION")) {
      const Instance* shape = file_.step(link, "SHAPE_DEFINITION_REPRESENTATION", 0);
      // A property of something on a shape, such as its volume, is linked likewise and is no product's shape.
      const Instance* aspect = file_.step(shape, "PROPERTY_DEFINITION", 2);
      if (aspect != nullptr && aspect->is("SHAPE_ASPECT") && file_.step(aspect, "SHAPE_ASPECT", 2) != nullptr) continue;
      const Instance* body = file_.step(link, "SHAPE_DEFINITION_REPRESENTATION", 1);
      Product* product = of_definition(file_.step(shape, "PRODUCT_DEFINITION_SHAPE", 2));
      if (product == nullptr || body == nullptr || body->records.empty()) {
        problem("shape link ", link->id, " leads nowhere");
        continue;
      }
      product->representation = body->id;
      for (const Value& item : parameter(&body->records.front(), 1).items) {
        const Instance* solid = file_.at(item);
        if (solid != nullptr && solid->is("MANIFOLD_SOLID_BREP")) product->solids.push_back(solid->id), ++placed;
      }
    }
    if (!file_.all("BREP_WITH_VOIDS").empty()) problem("a solid with a hollow inside, which is not read");
    if (placed != file_.all("MANIFOLD_SOLID_BREP").size()) problem("a solid stands in no product, or in two");
  }

  /// The first colour reached from a style, whatever lies between.
  std::optional<Triple> colour_below(const Value& value, int depth) const {
    if (depth == 0) return std::nullopt;
    if (const Instance* instance = file_.at(value)) {
      if (const Record* rgb = instance->find("COLOUR_RGB"))
        return Triple{parameter(rgb, 1).number, parameter(rgb, 2).number, parameter(rgb, 3).number};
      for (const Record& r : instance->records)
        for (const Value& v : r.values)
          if (const auto found = colour_below(v, depth - 1)) return found;
    }
    for (const Value& item : value.items)
      if (const auto found = colour_below(item, depth - 1)) return found;
    return std::nullopt;
  }
  void colours() {
    std::map<std::uint64_t, Triple> by_item;
    for (const Instance* styled : file_.all("STYLED_ITEM")) {
      const Record* record = styled->find("STYLED_ITEM");
      const auto colour = colour_below(parameter(record, 1), 16);
      const Instance* item = file_.at(parameter(record, 2));
      if (!colour || item == nullptr || !by_item.emplace(item->id, *colour).second)
        problem("style ", styled->id, " has no colour or no item, or the item has two");
    }
    for (Product& product : found_.products) {
      for (const std::uint64_t solid : product.solids) {
        const auto colour = by_item.find(solid);
        const bool fits = colour != by_item.end() && (!product.colour || *product.colour == colour->second);
        product.colour = fits ? std::optional(colour->second) : std::nullopt;
        if (!fits) break;
      }
    }
  }

  void materials() {
    for (const Instance* link : file_.all("PROPERTY_DEFINITION_REPRESENTATION")) {
      const Instance* property = file_.step(link, "PROPERTY_DEFINITION_REPRESENTATION", 0);
      const Instance* said = file_.step(link, "PROPERTY_DEFINITION_REPRESENTATION", 1);
      if (property == nullptr || said == nullptr) continue;
      if (parameter(property->find("PROPERTY_DEFINITION"), 1).text != "material name") continue;
      Product* product = of_definition(file_.step(property, "PROPERTY_DEFINITION", 2));
      const auto& items = parameter(said->find("REPRESENTATION"), 1).items;
      const Instance* item = items.empty() ? nullptr : file_.at(items.front());
      if (product == nullptr || item == nullptr) {
        problem("material ", property->id, " belongs to no product");
        continue;
      }
      product->material = parameter(item->find("DESCRIPTIVE_REPRESENTATION_ITEM"), 0).text;
    }
  }

  void uses() {
    std::map<std::uint64_t, const Instance*> placing;  // by id of the use
    for (const Instance* link : file_.all("CONTEXT_DEPENDENT_SHAPE_REPRESENTATION")) {
      const Instance* shape = file_.step(link, "CONTEXT_DEPENDENT_SHAPE_REPRESENTATION", 1);
      const Instance* use = file_.step(shape, "PRODUCT_DEFINITION_SHAPE", 2);
      const Instance* relation = file_.step(link, "CONTEXT_DEPENDENT_SHAPE_REPRESENTATION", 0);
      if (use == nullptr || relation == nullptr || !placing.emplace(use->id, relation).second)
        problem("placing ", link->id, " places nothing, or what is placed already");
    }
    for (const Instance* use : file_.all("NEXT_ASSEMBLY_USAGE_OCCURRENCE")) {
      const Record* record = use->find("NEXT_ASSEMBLY_USAGE_OCCURRENCE");
      const Product* parent = of_definition(file_.at(parameter(record, 3)));
      const Product* child = of_definition(file_.at(parameter(record, 4)));
      const auto relation = placing.find(use->id);
      if (parent == nullptr || child == nullptr || relation == placing.end()) {
        problem("use ", use->id, " has no ends or no place");
        continue;
      }
      const auto where = place(*relation->second, *parent, *child);
      if (!where) {
        problem("use ", use->id, " is placed by something else");
        continue;
      }
      found_.uses.push_back({parameter(record, 0).text, parameter(record, 1).text,
                             static_cast<std::size_t>(parent - found_.products.data()),
                             static_cast<std::size_t>(child - found_.products.data()), *where});
    }
    for (std::size_t i = 0; i < found_.products.size(); ++i) {
      if (!holds(i, i, found_.products.size())) continue;
      problem("product " + found_.products[i].id + " holds itself");
      found_.uses.clear();
    }
  }

  /// Whether a product is found below another, at most `depth` uses down.
  bool holds(std::size_t above, std::size_t below, std::size_t depth) const {
    return depth > 0 && std::ranges::any_of(found_.uses, [&](const Use& use) {
             return use.parent == above && (use.child == below || holds(use.child, below, depth - 1));
           });
  }

  /// Where the child stands in the parent: the first item is a frame of the relation's first representation, the second
  /// one of its second; the two frames fall together.
  std::optional<Frame> place(const Instance& relation, const Product& parent, const Product& child) const {
    const Record* ends = relation.find("REPRESENTATION_RELATIONSHIP");
    const Instance* move = file_.step(&relation, "REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION", 0);
    const auto first = frame_of(file_, file_.step(move, "ITEM_DEFINED_TRANSFORMATION", 2));
    const auto second = frame_of(file_, file_.step(move, "ITEM_DEFINED_TRANSFORMATION", 3));
    if (!first || !second) return std::nullopt;
    const std::uint64_t from = parameter(ends, 2).reference, to = parameter(ends, 3).reference;
    if (from == child.representation && to == parent.representation) return combined(*second, inverse(*first));
    if (to == child.representation && from == parent.representation) return combined(*first, inverse(*second));
    return std::nullopt;
  }

  const StepFile& file_;
  Products found_;
  std::map<std::uint64_t, std::size_t> by_definition_;
};

}  // namespace

Products read_products(const StepFile& file) { return Reading(file).read(); }

std::optional<std::size_t> Products::by_id(std::string_view id) const {
  for (std::size_t i = 0; i < products.size(); ++i)
    if (products[i].id == id) return i;
  return std::nullopt;
}

std::vector<std::size_t> Products::roots() const {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < products.size(); ++i)
    if (std::ranges::none_of(uses, [i](const Use& use) { return use.child == i; })) found.push_back(i);
  return found;
}

std::vector<Frame> Products::everywhere(std::size_t product) const {
  std::vector<Frame> found;
  for (const Use& use : uses) {
    if (use.child != product) continue;
    for (const Frame& parent : everywhere(use.parent)) found.push_back(combined(parent, use.where));
  }
  const bool root = std::ranges::none_of(uses, [product](const Use& use) { return use.child == product; });
  if (root) found.emplace_back();
  return found;
}

}  // namespace visewright::readers
