// What a STEP file says about products: names, who holds whom and where, colours, materials and units.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "readers/step_file.h"
#include "readers/step_frames.h"

namespace visewright::readers {

struct Product {
  std::uint64_t definition = 0;      // id of its PRODUCT_DEFINITION
  std::uint64_t representation = 0;  // id of its shape representation, 0 if none
  std::string id, name, material;
  std::optional<Triple> colour;       // red, green, blue of all its solids; none when they differ or are missing
  std::vector<std::uint64_t> solids;  // ids of its MANIFOLD_SOLID_BREPs
};

/// One use of a product in another; indices into Products::products.
struct Use {
  std::string id, name;
  std::size_t parent = 0, child = 0;
  Frame where;
};

struct Products {
  std::vector<Product> products;
  std::vector<Use> uses;
  /// Definitions that lead nowhere, uses without a placement, solids in no product, lengths not in millimetres.
  std::vector<std::string> problems;

  /// Index of the product with that id.
  [[nodiscard]] std::optional<std::size_t> by_id(std::string_view id) const;
  /// Products that no other holds.
  [[nodiscard]] std::vector<std::size_t> roots() const;
  /// Every place where a product stands, seen from the roots, in the order of the uses.
  [[nodiscard]] std::vector<Frame> everywhere(std::size_t product) const;
};

[[nodiscard]] Products read_products(const StepFile&);

}  // namespace visewright::readers
