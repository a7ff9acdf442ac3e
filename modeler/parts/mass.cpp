// Masses.
#include "parts/part.h"

namespace visewright::parts {
namespace {

constexpr double kg_per_mm3_at_1_g_cm3 = 1e-6;

/// The body with its blank turned down to the mean diameter of its thread: there the metal of the ridges just fills
/// the grooves.
Body at_mean_diameter(Body body, const Rod& rod) {
  auto& round = std::get<Prism>(body.added.front());
  round.profile = geometry::region(geometry::circle({0, 0}, units::in_mm(rod.thread->mean) / 2));
  return body;
}

}  // namespace

double mass_kg(const Body& body) {
  if (body.piece) {
    if (const auto* bought = std::get_if<Bought>(&body.piece->stock); bought && bought->mass_kg > 0)
      return bought->mass_kg;
  }
  const double density = body.material->density_g_cm3 * kg_per_mm3_at_1_g_cm3;
  if (body.piece) {
    if (const auto* rod = std::get_if<Rod>(&body.piece->stock); rod && rod->thread)
      return volume_mm3(at_mean_diameter(body, *rod)) * density;
  }
  return volume_mm3(body) * density;
}

double mass_kg(const Part& part) {
  double sum = 0;
  for (const Body& body : bodies(part)) sum += mass_kg(body);
  return sum;
}

}  // namespace visewright::parts
