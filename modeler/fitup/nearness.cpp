#include "fitup/nearness.h"

#include <algorithm>
#include <cmath>

namespace visewright::fitup {
namespace {

using geometry::dot;

/// Which elements stand for the two bodies, and how the first slides.
struct Held {
  const std::vector<Element>*a, *b;
  const std::vector<Stack>*a_out, *b_out;
  Slide slide;
  bool turned_a, turned_b;
};

Held held(const Stand& a, const Stand& b, Motion motion, Slide openings, bool a_is_fixed) {
  const bool turn = motion == Motion::turn || motion == Motion::turn_and_slide, slide = motion == Motion::slide || motion == Motion::turn_and_slide;
  const bool ta = turn && !a.turned.empty(), tb = turn && !b.turned.empty();
  Slide shift{};
  if (slide) shift = a_is_fixed ? Slide{-openings.to, -openings.from} : openings;
  return {ta ? &a.turned : &a.still, tb ? &b.turned : &b.still, ta ? &a.turned_out : &a.still_out, tb ? &b.turned_out : &b.still_out, shift, ta, tb};
}

void add_axes(const Drum& d, std::vector<Vector>& axes) {
  const auto add = [&](Vector v) {
    for (const Vector& known : axes)
      if (std::abs(std::abs(dot(known, v)) - 1) < 1e-12) return;
    axes.push_back(v);
  };
  add(d.frame.z_axis);
  if (!d.block) return;
  add(d.frame.x_axis);
  add(d.frame.y_axis());
}

/// The axes along which either element stands, the way out left aside.
std::vector<Vector> other_axes(const Element& a, const Element& b) {
  std::vector<Vector> axes{out_axis().z_axis};
  add_axes(a.added, axes);
  add_axes(b.added, axes);
  axes.erase(axes.begin());
  return axes;
}

Box3 reached(Box3 box, Slide slide) {
  box.low[1] -= std::max(0.0, slide.to);
  box.high[1] -= std::min(0.0, slide.from);
  return box;
}

/// Whether the points that a gap was measured between belong to the true bodies.
bool witnessed(const Stand& a, const Stand& b, const Held& h, const Element& ea, const Element& eb, const Approach& found) {
  const auto true_a = [&] {
    if (h.turned_a) return !ea.added.bound;
    const Vector p = geometry::plus(found.a, geometry::times(-found.at_shift, out_axis().z_axis));
    return a.truth->holds(geometry::to_inside(a.at, p));
  };
  const auto true_b = [&] { return h.turned_b ? !eb.added.bound : b.truth->holds(geometry::to_inside(b.at, found.b)); };
  return true_a() && true_b();
}

struct Judged {
  Approach found;
  bool exact;
};

Judged judge(const Stand& a, const Stand& b, const Held& h, std::size_t i, std::size_t k, double within) {
  const Element &ea = (*h.a)[i], &eb = (*h.b)[k];
  Judged best{approach((*h.a_out)[i], (*h.b_out)[k], h.slide, within), false};
  if (!best.found.overlap && best.found.distance >= within) return best;
  best.exact = !best.found.overlap && witnessed(a, b, h, ea, eb, best.found);
  if (best.exact || h.slide.from != h.slide.to || h.turned_a || h.turned_b) return best;
  for (const Vector& way : other_axes(ea, eb)) {
    const Placement axis = frame_along(way);
    const Approach next = approach(stack(ea, axis), stack(eb, axis), {}, within);
    if (next.overlap || (!best.found.overlap && next.distance < best.found.distance)) continue;
    best.found = next;
    best.exact = next.distance < within && witnessed(a, b, h, ea, eb, next);
    if (best.exact || next.distance >= within) return best;
  }
  return best;
}

}  // namespace

Nearness nearness(const Stand& a, const Stand& b, Motion motion, Slide openings, bool a_is_fixed, double within_mm) {
  const Held h = held(a, b, motion, openings, a_is_fixed);
  Nearness best{within_mm, true, false, openings.from, {}, {}, false};
  for (std::size_t i = 0; i < h.a->size(); ++i) {
    const Box3 own = reached((*h.a)[i].box, h.slide);
    for (std::size_t k = 0; k < h.b->size(); ++k) {
      if (gap_mm(own, (*h.b)[k].box) > best.distance) continue;
      const Judged j = judge(a, b, h, i, k, best.distance + contact_mm);
      const bool worse = j.found.overlap ? !best.overlap : !best.overlap && j.found.distance < best.distance;
      if (!worse) continue;
      const double opening = std::abs(j.found.at_shift);
      best = {j.found.overlap ? 0 : j.found.distance, j.exact, j.found.overlap, opening, j.found.a, j.found.b, false};
      if (a_is_fixed) {
        // The first was slid back in place of the second going out.
        const Vector out = geometry::times(opening, out_axis().z_axis);
        best.a = geometry::plus(best.a, out);
        best.b = geometry::plus(best.b, out);
      }
    }
  }
  return best;
}

Approach between(const Element& a, const Element& b, double within_mm) {
  Approach best = approach(stack(a, out_axis()), stack(b, out_axis()), {}, within_mm);
  for (const Vector& way : other_axes(a, b)) {
    const Placement axis = frame_along(way);
    const Approach next = approach(stack(a, axis), stack(b, axis), {}, within_mm);
    if (!next.overlap && (best.overlap || next.distance > best.distance)) best = next;
  }
  return best;
}

Coaxial seat(const Stand& a, const Stand& b, Motion motion, Slide openings, bool a_is_fixed) {
  const Held h = held(a, b, motion, openings, a_is_fixed);
  Coaxial best;
  for (std::size_t i = 0; i < h.a->size(); ++i)
    for (std::size_t k = 0; k < h.b->size(); ++k)
      if (gap_mm(reached((*h.a)[i].box, h.slide), (*h.b)[k].box) <= contact_mm) best.take(coaxial((*h.a_out)[i], (*h.b_out)[k], h.slide));
  if (best.play < 1e300 || motion != Motion::none) return best;
  for (const Element& ea : *h.a) {
    for (const Element& eb : *h.b) {
      if (gap_mm(ea.box, eb.box) > contact_mm) continue;
      for (const Vector& way : other_axes(ea, eb)) {
        const Placement axis = frame_along(way);
        best.take(coaxial(stack(ea, axis), stack(eb, axis), {}));
      }
    }
  }
  return best;
}

}  // namespace visewright::fitup
