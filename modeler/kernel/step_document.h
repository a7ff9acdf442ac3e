// A STEP file of products placed in assemblies, the same bytes for the same content.
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"
#include "geometry/placement.h"
#include "kernel/solid.h"

namespace visewright::kernel {

/// The two application protocols a file can follow: ISO 10303-214 (most widely read) and ISO 10303-242.
enum class Schema : std::uint8_t { ap214, ap242 };

/// Red, green and blue, 0 to 1 each, as they appear on a screen (sRGB).
using Colour = std::array<float, 3>;

/// What stands in the head of the file. The author stays blank. Nothing is filled in from a clock.
struct StepHeader {
  std::string file_name;
  std::vector<std::string> description;
  std::string time_stamp;          // "2024-05-01T00:00:00"
  std::string originating_system;  // "visewright 0.1.0"
};

/// Built up product by product, then written. Any text is UTF-8.
class StepDocument {
 public:
  using ProductId = std::size_t;

  explicit StepDocument(StepHeader header);

  /// A product with a body, in its own frame. `item` becomes the product's id and has to be unique in the document,
  /// `name` its name. An empty material is left out, and so is a density of 0. With `measured` the file says volume and
  /// area of the product as validation properties (ISO 10303-42 measures, as recommended for exchange), so that whoever
  /// reads it can see whether the solid came over whole.
  ProductId add_product(std::string item, std::string name, Solid body, Colour colour, std::string material,
                        double density_g_cm3 = 0, const std::optional<Measures>& measured = std::nullopt);
  /// A product that only holds others.
  ProductId add_assembly(std::string item, std::string name);
  /// One use of `child` in `parent`. Law: every use of a product shares one shape.
  /// REQUIRES: parent is an assembly added before, child was added, no product holds itself.
  void place(ProductId parent, ProductId child, const geometry::Placement& where, std::string instance_name);

  /// The file. Law: equal content gives equal bytes, in any process and on any thread. Faults: an item used twice or
  /// empty, an assembly that holds nothing, a failure of the kernel. One document is written at a time.
  [[nodiscard]] base::Result<std::string> to_bytes(Schema) const;

  struct Product {
    std::string item, name, material;
    std::optional<Solid> body;
    Colour colour{};
    double density_g_cm3 = 0;
    std::optional<Measures> measured;
  };
  struct Use {
    ProductId parent, child;
    geometry::Placement where;
    std::string name;
  };
  [[nodiscard]] const StepHeader& header() const { return header_; }
  [[nodiscard]] const std::vector<Product>& products() const { return products_; }
  [[nodiscard]] const std::vector<Use>& uses() const { return uses_; }

 private:
  StepHeader header_;
  std::vector<Product> products_;
  std::vector<Use> uses_;
};

}  // namespace visewright::kernel
