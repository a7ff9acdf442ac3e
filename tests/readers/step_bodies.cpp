#include "readers/step_bodies.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <set>

#include "readers/step_surfaces.h"

namespace visewright::readers {
namespace {

constexpr double corner_limit_mm = 1e-6;

/// An edge from its start to its end corner, whatever way its curve runs.
struct Edge {
  Curve curve;
  double from = 0, to = 0;
  std::uint64_t start = 0, end = 0;
  Triple start_point{}, end_point{};
};

/// An edge as a face uses it; the face lies on its left.
struct Side {
  const Edge* edge = nullptr;
  bool forward = true;
};

/// Parameters of both ends, running the way the edge runs along its curve.
void set_range(Edge& edge, bool same_sense) {
  edge.from = edge.curve.nearest(edge.start_point);
  edge.to = edge.curve.nearest(edge.end_point);
  if (edge.curve.kind == Curve::Kind::line) return;
  const bool full = edge.start == edge.end;
  if (edge.curve.kind == Curve::Kind::spline) {
    const double first = edge.curve.spline.first(), last = edge.curve.spline.last();
    const bool wrong = full || (same_sense ? edge.to <= edge.from : edge.to >= edge.from);
    // Only on a closed spline, whose ends fall together, can the wrong end have been found.
    if (wrong && (full || edge.from == first || edge.from == last)) edge.from = same_sense ? first : last;
    if (wrong && (full || edge.to == first || edge.to == last)) edge.to = same_sense ? last : first;
    return;
  }
  const double turn = 2 * std::numbers::pi;
  if (same_sense && (full || edge.to <= edge.from)) edge.to += turn;
  if (!same_sense && (full || edge.to >= edge.from)) edge.to -= turn;
}

/// Sums f over the edge with five-point Gauss rules on strips without kinks.
template <class F>
void along(const Side& side, F&& f) {
  constexpr std::array<double, 5> nodes{-0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831,
                                        0.9061798459386640};
  constexpr std::array<double, 5> weights{0.2369268850561891, 0.4786286704993665, 0.5688888888888889,
                                          0.4786286704993665, 0.2369268850561891};
  const Edge& e = *side.edge;
  const double from = side.forward ? e.from : e.to, to = side.forward ? e.to : e.from;
  std::vector<double> cuts{from};
  if (e.curve.kind == Curve::Kind::spline) {
    std::vector<double> knots = e.curve.spline.knots;
    if (to < from) std::ranges::reverse(knots);
    for (const double k : knots)
      if (std::min(from, to) < k && k < std::max(from, to) && k != cuts.back()) cuts.push_back(k);
  } else {
    for (int i = 1; i < 16; ++i) cuts.push_back(from + (to - from) * i / 16);
  }
  cuts.push_back(to);
  for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
    const double half = (cuts[i + 1] - cuts[i]) / 2, middle = (cuts[i + 1] + cuts[i]) / 2;
    for (std::size_t k = 0; k < nodes.size(); ++k) f(e.curve.at(middle + half * nodes[k]), half * weights[k]);
  }
}

struct Face {
  std::uint64_t id = 0;
  std::optional<Surface> surface;
  bool same_sense = true;
  std::vector<std::vector<Side>> loops;
};

class Checking {
 public:
  Checking(const StepFile& file, const Instance& solid) : file_(file) { body_.id = solid.id; }

  Body check() {
    const Instance* shell = file_.step(file_.at(body_.id), "MANIFOLD_SOLID_BREP", 1);
    if (shell == nullptr || !shell->is("CLOSED_SHELL")) {
      problem("no closed shell");
      return std::move(body_);
    }
    for (const Value& face : parameter(shell->find("CLOSED_SHELL"), 1).items) read_face(file_.at(face));
    count();
    corners();
    senses();
    volume();
    return std::move(body_);
  }

 private:
  void problem(const std::string& what) { body_.problems.push_back("solid " + numbered(body_.id) + ": " + what); }

  void read_face(const Instance* instance) {
    const Record* record = instance == nullptr ? nullptr : instance->find("ADVANCED_FACE");
    if (record == nullptr) return problem("a face that is none");
    Face face;
    face.id = instance->id;
    const Instance* surface = file_.at(parameter(record, 2));
    face.surface = surface_of(file_, surface);
    if (surface != nullptr && !surface->records.empty()) ++body_.faces_of[surface->records.front().name];
    face.same_sense = parameter(record, 3).text == "T";
    for (const Value& bound : parameter(record, 1).items) read_bound(face, file_.at(bound));
    faces_.push_back(std::move(face));
  }

  void read_bound(Face& face, const Instance* bound) {
    const Record* record = bound == nullptr ? nullptr : bound->find("FACE_BOUND");
    if (record == nullptr && bound != nullptr) record = bound->find("FACE_OUTER_BOUND");
    const Instance* loop = file_.at(parameter(record, 1));
    if (loop == nullptr) return problem("face " + numbered(face.id) + " has a bound without loop");
    const bool forward = parameter(record, 2).text == "T";
    std::vector<Side> sides;
    if (loop->is("VERTEX_LOOP")) {
      vertices_.insert(parameter(loop->find("VERTEX_LOOP"), 1).reference);
    } else {
      for (const Value& item : parameter(loop->find("EDGE_LOOP"), 1).items) {
        const Instance* oriented = file_.at(item);
        const Record* use = oriented == nullptr ? nullptr : oriented->find("ORIENTED_EDGE");
        const Edge* edge = read_edge(file_.at(parameter(use, 3)));
        if (edge == nullptr) return problem("face " + numbered(face.id) + " has an edge that cannot be read");
        sides.push_back({edge, (parameter(use, 4).text == "T") == forward});
        ++uses_[parameter(use, 3).reference][sides.back().forward ? 0 : 1];
      }
      if (!forward) std::ranges::reverse(sides);
      closes(face, sides);
    }
    face.loops.push_back(std::move(sides));
  }

  void closes(const Face& face, const std::vector<Side>& sides) {
    if (sides.empty()) return problem("face " + numbered(face.id) + " has an empty loop");
    for (std::size_t i = 0; i < sides.size(); ++i) {
      const Side &a = sides[i], &b = sides[(i + 1) % sides.size()];
      if ((a.forward ? a.edge->end : a.edge->start) != (b.forward ? b.edge->start : b.edge->end))
        return problem("face " + numbered(face.id) + " has a loop that does not close");
    }
  }

  const Edge* read_edge(const Instance* instance) {
    if (instance == nullptr) return nullptr;
    if (const auto known = edges_.find(instance->id); known != edges_.end()) return &known->second;
    const Record* record = instance->find("EDGE_CURVE");
    const auto start = triple_of(file_.step(file_.at(parameter(record, 1)), "VERTEX_POINT", 1));
    const auto end = triple_of(file_.step(file_.at(parameter(record, 2)), "VERTEX_POINT", 1));
    const auto curve = curve_of(file_, file_.at(parameter(record, 3)));
    if (!start || !end || !curve) return nullptr;
    Edge edge{*curve, 0, 0, parameter(record, 1).reference, parameter(record, 2).reference, *start, *end};
    set_range(edge, parameter(record, 4).text == "T");
    vertices_.insert(edge.start);
    vertices_.insert(edge.end);
    return &edges_.emplace(instance->id, std::move(edge)).first->second;
  }

  void count() {
    body_.faces = faces_.size();
    body_.edges = edges_.size();
    body_.vertices = vertices_.size();
    for (const Face& face : faces_) body_.loops += face.loops.size();
    for (const auto& [edge, uses] : uses_)
      if (uses[0] != 1 || uses[1] != 1)
        problem("edge " + numbered(edge) + " is used " + std::to_string(uses[0]) + " times forwards and " +
                std::to_string(uses[1]) + " times backwards");
    body_.euler = static_cast<long>(body_.vertices) - static_cast<long>(body_.edges) +
                  2 * static_cast<long>(body_.faces) - static_cast<long>(body_.loops);
    for (const Face& face : faces_)
      if (face.surface && face.surface->kind == Surface::Kind::torus && face.loops.size() == 1 && face.loops[0].empty())
        body_.euler -= 2;
    if (body_.euler % 2 != 0 || body_.euler > 2)
      problem("Euler's number " + std::to_string(body_.euler) + " belongs to no closed skin");
  }

  void corners() {
    const auto off = [&](double gap, double& worst, std::uint64_t id, const char* what) {
      worst = std::max(worst, gap);
      if (what != nullptr && !(gap <= corner_limit_mm))
        problem(std::string("a corner of ") + what + " " + numbered(id) + " lies " + std::to_string(gap) +
                " mm off it");
    };
    for (const auto& [id, edge] : edges_)
      for (const Triple& p : {edge.start_point, edge.end_point})
        off(distance(edge.curve.at(edge.curve.nearest(p)).point, p), body_.worst_corner_mm, id, "edge");
    for (const Face& face : faces_) {
      if (!face.surface) continue;
      for (const auto& loop : face.loops) {
        for (const Side& side : loop) {
          const Edge& e = *side.edge;
          off(face.surface->off_mm(e.start_point), body_.worst_corner_mm, face.id, "face");
          for (const double share : {0.2, 0.5, 0.8})
            off(face.surface->off_mm(e.curve.at(e.from + share * (e.to - e.from)).point), body_.worst_edge_mm, 0,
                nullptr);
        }
      }
    }
  }

  /// The rim runs round a face with the face on its left, seen against the face's normal.
  void senses() {
    for (const Face& face : faces_) {
      if (!face.surface || face.surface->kind == Surface::Kind::sphere || face.surface->kind == Surface::Kind::torus)
        continue;
      double area = 0;
      Triple normal{}, middle{};
      for (const auto& loop : face.loops) {
        for (const Side& side : loop) {
          along(side, [&](const OnCurve& rim, double weight) {
            normal = sum(normal, scaled(weight / 2, cross(rim.point, rim.rate)));
            if (face.surface->kind != Surface::Kind::extrusion) area += weight * flow(*face.surface, rim, {}).area;
          });
          middle = sum(middle, scaled(1 / static_cast<double>(loop.size()), side.edge->start_point));
        }
      }
      if (face.surface->kind == Surface::Kind::extrusion) {
        const Curve& swept = face.surface->swept;
        area = dot(normal, cross(swept.at(swept.nearest(middle)).rate, face.surface->along));
      }
      if (!((area > 0) == face.same_sense)) problem("face " + numbered(face.id) + " is turned against its rim");
    }
  }

  void volume() {
    std::vector<Triple> ways{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    for (const Face& face : faces_) {
      if (!face.surface) return;
      if (face.surface->kind != Surface::Kind::extrusion) continue;
      const Triple& a = face.surface->along;
      ways = {scaled(1 / std::sqrt(dot(a, a)), a)};
    }
    std::vector<double> found;
    for (const Triple& way : ways) {
      double total = 0;
      for (const Face& face : faces_) {
        if (!carries_flux(*face.surface, way)) return;
        if (face.surface->kind == Surface::Kind::extrusion) continue;
        for (const auto& loop : face.loops)
          for (const Side& side : loop)
            along(side,
                  [&](const OnCurve& rim, double weight) { total += weight * flow(*face.surface, rim, way).flux; });
      }
      found.push_back(total);
    }
    const auto [least, most] = std::ranges::minmax(found);
    body_.volume_mm3 = found.front();
    body_.spread_mm3 = most - least;
  }

  const StepFile& file_;
  Body body_;
  std::vector<Face> faces_;
  std::map<std::uint64_t, Edge> edges_;
  std::map<std::uint64_t, std::array<int, 2>> uses_;  // forwards, backwards
  std::set<std::uint64_t> vertices_;
};

}  // namespace

std::vector<Body> read_bodies(const StepFile& file) {
  std::vector<Body> found;
  for (const Instance* solid : file.all("MANIFOLD_SOLID_BREP")) found.push_back(Checking(file, *solid).check());
  return found;
}

}  // namespace visewright::readers
