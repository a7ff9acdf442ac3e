#include "geometry/pieces.h"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

#include "geometry/measure.h"
#include "geometry/meetings.h"

namespace visewright::geometry {
namespace {

constexpr double chord_mm = 1e-6;
/// Ends of pieces closer than this are one vertex. Each of two cuts of one place may be off by same_point_mm.
constexpr double one_vertex_mm = 2 * same_point_mm;
/// Pieces between the same vertices coincide when their middles are closer than this.
constexpr double coincide_mm = 1e-6;

struct Cut {
  double u;
  Point point;
  std::size_t vertex = 0;
};

struct Track {
  Edge edge;
  std::size_t loop;
  Box bounds;
  std::vector<Cut> cuts;
};

bool is_exact(const Edge& e) { return std::holds_alternative<Line>(e) || std::holds_alternative<Arc>(e); }

struct Ring {
  double inner, outer;
};

/// Radii about `hub` between which an edge lies.
Ring radii(const Edge& e, Point hub) {
  const double a = distance(start(e), hub), b = distance(finish(e), hub), stray = strays_mm(e, 0, 1);
  const Point along = finish(e) - start(e);
  const double square = dot(along, along);
  const double u = square > 0 ? std::clamp(dot(hub - start(e), along) / square, 0.0, 1.0) : 0.0;
  const Ring by_chord{distance(start(e) + u * along, hub) - stray, std::max(a, b) + stray};
  const auto* arc = std::get_if<Arc>(&e);
  if (!arc) return by_chord;
  const double r = distance(arc->centre, arc->a), d = distance(arc->centre, hub);
  return {std::max(by_chord.inner, std::abs(d - r)), std::min(by_chord.outer, d + r)};
}

Point hub_of(const Edge& curve) {
  if (const auto* involute = std::get_if<Involute>(&curve)) return involute->centre;
  return std::get<Trochoid>(curve).centre;
}

/// Whether an edge of another outline comes near a curve, by boxes and then by radii about the curve's centre.
bool may_cross(const Track& curve, std::span<const Track> all) {
  const Point hub = hub_of(curve.edge);
  const double r0 = distance(start(curve.edge), hub), r1 = distance(finish(curve.edge), hub);
  const Ring own{std::min(r0, r1), std::max(r0, r1)};
  return std::any_of(all.begin(), all.end(), [&](const Track& other) {
    if (other.loop == curve.loop || !overlap(curve.bounds, other.bounds, chord_mm)) return false;
    const Ring ring = radii(other.edge, hub);
    return ring.inner <= own.outer + chord_mm && own.inner <= ring.outer + chord_mm;
  });
}

std::vector<Track> tracks_of(std::span<const Loop> loops) {
  std::vector<Track> tracks;
  for (std::size_t i = 0; i < loops.size(); ++i) {
    for (const Edge& e : loops[i].edges()) tracks.push_back({e, i, box(e), {}});
  }
  return tracks;
}

/// The outlines with every curve that may be crossed replaced by chords, or a fault.
base::Result<std::vector<Loop>> crossable(std::span<const Loop> loops, CrossedCurves crossed) {
  const auto plain = [](const Loop& l) { return std::all_of(l.edges().begin(), l.edges().end(), is_exact); };
  if (std::all_of(loops.begin(), loops.end(), plain)) return std::vector<Loop>(loops.begin(), loops.end());
  const std::vector<Track> tracks = tracks_of(loops);
  std::vector<std::vector<Edge>> chains(loops.size());
  for (const Track& track : tracks) {
    std::vector<Edge>& chain = chains[track.loop];
    if (is_exact(track.edge) || !may_cross(track, tracks)) {
      chain.push_back(track.edge);
      continue;
    }
    if (crossed == CrossedCurves::refuse) {
      return base::fault(base::Cause::geometry, "outline", "an involute or trochoid meets another outline of the union",
                         "lines and arcs where outlines meet");
    }
    const std::vector<Point> points = sample(track.edge, chord_mm).points;
    for (std::size_t i = 1; i < points.size(); ++i) chain.push_back(Line{points[i - 1], points[i]});
  }
  std::vector<Loop> result;
  for (std::vector<Edge>& chain : chains) result.push_back(trusted(std::move(chain)));
  return result;
}

void cut_each_other(Track& a, Track& b) {
  for (const Point p : meetings(a.edge, b.edge)) {
    for (Track* track : {&a, &b}) {
      const double u = parameter(track->edge, p);
      // A meeting at an end is that end's own cut.
      if (u > 0 && u < 1) track->cuts.push_back({u, p});
    }
  }
}

/// Cuts every edge at its ends and where edges of other outlines meet it; a sweep along x finds the pairs.
void cut_all(std::vector<Track>& tracks) {
  for (Track& t : tracks) t.cuts = {{0, start(t.edge)}, {1, finish(t.edge)}};
  std::vector<std::size_t> order(tracks.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return tracks[a].bounds.low.x < tracks[b].bounds.low.x; });
  for (std::size_t i = 0; i < order.size(); ++i) {
    Track& a = tracks[order[i]];
    for (std::size_t j = i + 1; j < order.size(); ++j) {
      Track& b = tracks[order[j]];
      if (b.bounds.low.x > a.bounds.high.x + same_point_mm) break;
      if (a.loop == b.loop || !overlap(a.bounds, b.bounds, same_point_mm)) continue;
      if (is_exact(a.edge) && is_exact(b.edge)) cut_each_other(a, b);
    }
  }
  for (Track& t : tracks) {
    std::stable_sort(t.cuts.begin(), t.cuts.end(), [](const Cut& a, const Cut& b) { return a.u < b.u; });
  }
}

/// Numbers the cuts so that cuts of one place share a vertex, and gives them the coordinates of the first there.
void number_vertices(std::vector<Track>& tracks) {
  std::vector<Cut*> all;
  for (Track& t : tracks) {
    for (Cut& c : t.cuts) all.push_back(&c);
  }
  std::stable_sort(all.begin(), all.end(), [](const Cut* a, const Cut* b) { return a->point.x < b->point.x; });
  std::vector<Point> vertices;
  std::vector<double> reached;
  std::size_t oldest = 0;
  for (Cut* c : all) {
    while (oldest < vertices.size() && reached[oldest] < c->point.x - one_vertex_mm) ++oldest;
    std::size_t v = oldest;
    while (v < vertices.size() && distance(vertices[v], c->point) > one_vertex_mm) ++v;
    if (v == vertices.size()) {
      vertices.push_back(c->point);
      reached.push_back(c->point.x);
    }
    c->vertex = v;
    c->point = vertices[v];
  }
}

std::vector<Piece> pieces_of(const std::vector<Track>& tracks) {
  std::vector<Piece> pieces;
  for (const Track& t : tracks) {
    for (std::size_t i = 1; i < t.cuts.size(); ++i) {
      const Cut &a = t.cuts[i - 1], &b = t.cuts[i];
      const auto* arc = std::get_if<Arc>(&t.edge);
      if (!is_exact(t.edge)) {
        pieces.push_back({t.edge, t.loop, a.vertex, b.vertex});
      } else if (a.vertex != b.vertex) {
        const Edge edge = arc ? Edge(Arc{a.point, b.point, arc->centre, arc->left}) : Edge(Line{a.point, b.point});
        pieces.push_back({edge, t.loop, a.vertex, b.vertex});
      } else if (arc && arc->a == arc->b && b.u - a.u > 0.5) {
        pieces.push_back({Arc{a.point, a.point, arc->centre, arc->left}, t.loop, a.vertex, a.vertex});
      }
    }
  }
  return pieces;
}

struct Ranked {
  std::size_t low, high;
  Point middle;
  std::size_t piece;
};

/// For every piece, the pieces that coincide with it, itself among them, in order.
std::vector<std::vector<std::size_t>> coinciding(const std::vector<Piece>& pieces) {
  std::vector<Ranked> ranked;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& p = pieces[i];
    ranked.push_back({std::min(p.from, p.to), std::max(p.from, p.to), at(p.edge, 0.5), i});
  }
  std::stable_sort(ranked.begin(), ranked.end(),
                   [](const Ranked& a, const Ranked& b) { return std::tie(a.low, a.high) < std::tie(b.low, b.high); });
  std::vector<std::vector<std::size_t>> groups(pieces.size());
  for (auto begin = ranked.begin(); begin != ranked.end();) {
    const Ranked lead = *begin;
    const auto same_ends = [&](const Ranked& r) { return r.low == lead.low && r.high == lead.high; };
    const auto coincides = [&](const Ranked& r) { return distance(r.middle, lead.middle) <= coincide_mm; };
    const auto end = std::stable_partition(begin, std::find_if_not(begin, ranked.end(), same_ends), coincides);
    std::vector<std::size_t> group;
    for (auto r = begin; r != end; ++r) group.push_back(r->piece);
    for (const std::size_t i : group) groups[i] = group;
    begin = end;
  }
  return groups;
}

/// Whether any outline without a piece in the group covers it.
bool covered(const Piece& piece, std::span<const std::size_t> group, const std::vector<Piece>& pieces,
             std::span<const Loop> loops, std::span<const Box> boxes) {
  const Point middle = at(piece.edge, 0.5);
  for (std::size_t i = 0; i < loops.size(); ++i) {
    const bool among = std::any_of(group.begin(), group.end(), [&](std::size_t p) { return pieces[p].loop == i; });
    if (!among && overlap(boxes[i], {middle, middle}) && contains(loops[i], middle)) return true;
  }
  return false;
}

/// For every vertex, whether pieces of more than one outline end there.
std::vector<bool> crossroads(const std::vector<Piece>& pieces) {
  std::size_t count = 0;
  for (const Piece& p : pieces) count = std::max({count, p.from + 1, p.to + 1});
  std::vector<std::size_t> loop_at(count, pieces.size());
  std::vector<bool> shared(count, false);
  for (const Piece& p : pieces) {
    for (const std::size_t v : {p.from, p.to}) {
      if (loop_at[v] != pieces.size() && loop_at[v] != p.loop) shared[v] = true;
      loop_at[v] = p.loop;
    }
  }
  return shared;
}

std::vector<Piece> kept(const std::vector<Piece>& pieces, std::span<const Loop> loops) {
  const std::vector<std::vector<std::size_t>> groups = coinciding(pieces);
  const std::vector<bool> shared = crossroads(pieces);
  std::vector<Box> boxes;
  for (const Loop& l : loops) boxes.push_back(box(l));
  std::vector<Piece> result;
  bool under = false;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& p = pieces[i];
    const std::vector<std::size_t>& group = groups[i];
    // Along an outline nothing changes before it meets another: chords of a curve share one answer.
    const bool goes_on = i > 0 && pieces[i - 1].loop == p.loop && pieces[i - 1].to == p.from && !shared[p.from];
    if (!goes_on) under = covered(p, group, pieces, loops, boxes);
    const Point way = direction(p.edge, 0.5);
    const bool faces_another = std::any_of(group.begin(), group.end(), [&](std::size_t other) {
      return dot(way, direction(pieces[other].edge, 0.5)) < 0;
    });
    if (!under && !faces_another && group.front() == i) result.push_back(p);
  }
  return result;
}

}  // namespace

base::Result<std::vector<Piece>> boundary_of_union(std::span<const Loop> loops, CrossedCurves crossed) {
  const base::Result<std::vector<Loop>> outlines = crossable(loops, crossed);
  if (!outlines) return base::passed_on(outlines.error());
  std::vector<Track> tracks = tracks_of(*outlines);
  cut_all(tracks);
  number_vertices(tracks);
  return kept(pieces_of(tracks), *outlines);
}

}  // namespace visewright::geometry
