#include "making/beds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <string_view>

#include "geometry/measure.h"

namespace visewright::making {
namespace {

/// p ≥ q into a ≥ b.
bool fits(double p, double q, double a, double b) {
  if (q > b) return false;
  if (p <= a) return true;
  const double under_root = p * p + q * q - a * a;
  return b * (p * p + q * q) >= 2 * p * q * a + (p * p - q * q) * std::sqrt(under_root);
}

constexpr std::array<std::string_view, 7> cut_by_laser{"acrylic", "birch plywood", "beech plywood", "softwood plywood",
                                                       "MDF",     "leather",       "felt"};
constexpr double laser_reach_mm = 10;

bool is_round(const std::vector<parts::Layer>& layers) {
  geometry::Box all = geometry::box(layers.front().profile.outer.front());
  for (const parts::Layer& layer : layers) {
    for (const geometry::Loop& loop : layer.profile.outer) {
      const geometry::Box box = geometry::box(loop);
      all = {{std::min(all.low.x, box.low.x), std::min(all.low.y, box.low.y)},
             {std::max(all.high.x, box.high.x), std::max(all.high.y, box.high.y)}};
    }
  }
  const double width = all.high.x - all.low.x, height = all.high.y - all.low.y;
  const geometry::Point middle = 0.5 * (all.low + all.high);
  double farthest = 0;
  for (const parts::Layer& layer : layers)
    for (const geometry::Loop& loop : layer.profile.outer)
      for (const geometry::Point& point : geometry::sample(loop, 0.05).points)
        farthest = std::max(farthest, geometry::distance(middle, point));
  // Teeth leave the box of a gear a little short of its tip circle.
  return farthest < 0.53 * std::max(width, height);
}

bool round_print(const Workpiece& work) {
  for (const parts::Operation& operation : work.operations)
    if (const auto* print = std::get_if<parts::Print>(&operation.work))
      return !print->layers.empty() && is_round(print->layers);
  return false;
}

OnBed laid(OnBed::Bed bed, const Workpiece& work, std::vector<double> bed_mm, bool round) {
  OnBed on{bed, work.part->name, {}, std::move(bed_mm), 0};
  for (std::size_t i = 0; i < 3; ++i) on.size_mm.push_back(work.high_mm[i] - work.low_mm[i]);
  if (bed == OnBed::Bed::laser) {
    std::sort(on.size_mm.begin(), on.size_mm.end(), std::greater<>());
    on.size_mm.pop_back();
  }
  const double p = on.size_mm[0], q = on.size_mm[1];
  on.scale =
      round ? std::min(on.bed_mm[0], on.bed_mm[1]) / std::max(p, q) : largest_scale(p, q, on.bed_mm[0], on.bed_mm[1]);
  if (on.bed_mm.size() > 2 && on.size_mm.size() > 2) on.scale = std::min(on.scale, on.bed_mm[2] / on.size_mm[2]);
  return on;
}

}  // namespace

double largest_scale(double p, double q, double a, double b) {
  if (p < q) std::swap(p, q);
  if (a < b) std::swap(a, b);
  double low = std::min(a / p, b / q), high = std::min(std::hypot(a, b) / std::hypot(p, q), b / q);
  if (high <= low) return low;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (fits(middle * p, middle * q, a, b) ? low : high) = middle;
  }
  return low;
}

bool laser_cuts(const standards::MaterialRow& material, double thickness_mm) {
  return thickness_mm <= laser_reach_mm &&
         std::find(cut_by_laser.begin(), cut_by_laser.end(), material.name) != cut_by_laser.end();
}

std::vector<OnBed> on_beds(const std::vector<Workpiece>& pieces, const OwnedTools& owned) {
  std::vector<OnBed> all;
  for (const Workpiece& work : pieces) {
    if (work.made) continue;
    if (work.form == Form::printed && work.piece != nullptr && owned.print_bed && !owned.print_bed->empty())
      all.push_back(laid(OnBed::Bed::print, work, *owned.print_bed, round_print(work)));
    if (work.form != Form::sheet || work.piece == nullptr || !owned.laser_bed || owned.laser_bed->empty()) continue;
    const geometry::Vector size = std::get<parts::Sheet>(work.piece->stock).size_mm;
    const double thickness = *std::min_element(size.begin(), size.end());
    if (laser_cuts(*work.material, thickness)) all.push_back(laid(OnBed::Bed::laser, work, *owned.laser_bed, false));
  }
  return all;
}

}  // namespace visewright::making
