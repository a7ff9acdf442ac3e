#include "formulas/spacing_error.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <span>

#include "formulas/involute.h"

namespace visewright::formulas {
namespace {

/// Stands for "fails whatever the errors are" where a ratio of error to room is formed.
constexpr double hopeless = 1e12;

std::size_t holes_of(const SpacingInput& in) { return in.distances_mm.size() + 1; }

/// Each hole's distance from the middle of the row, which a template's scale multiplies.
std::vector<double> from_middle_mm(const SpacingInput& in) {
  std::vector<double> at(holes_of(in), 0.0);
  for (std::size_t i = 1; i < at.size(); ++i) at[i] = at[i - 1] + in.distances_mm[i - 1];
  const double middle = at.back() / 2;
  for (double& x : at) x -= middle;
  return at;
}

/// Half widths of independent errors that add up in one distance.
struct Stack {
  double sum = 0, squares = 0;
  void add(double half_width, double times = 1) {
    sum += half_width * times;
    squares += half_width * half_width * times;
  }
};

bool through_template(const SpacingInput& in) { return in.marking == Marking::from_template; }

/// What marking does to the distance of two holes that are `steps` apart in the part's own order.
void add_marks(Stack& stack, const SpacingInput& in, std::size_t steps) {
  if (in.marking == Marking::one_datum) stack.add(in.errors.mark_mm, 2);
  if (in.marking == Marking::chain) stack.add(in.errors.mark_mm, static_cast<double>(steps));
}

void add_template(Stack& stack, const SpacingInput& in, double distance_mm) {
  stack.add(in.errors.template_mm, 2);
  stack.add(in.errors.template_scale * distance_mm);
}

Stack stack_of_mesh(const SpacingInput& in, std::size_t mesh) {
  Stack stack;
  if (!in.axles_measured) {
    stack.add(in.errors.wander_mm, 2);
    add_marks(stack, in, 1);
    if (through_template(in)) add_template(stack, in, in.distances_mm[mesh]);
  }
  stack.add(in.errors.run_out_mm / 2, 2);
  if (mesh == 0) stack.add(in.errors.bush_play_mm / 2);
  if (mesh + 1 == in.distances_mm.size()) stack.add(in.errors.bush_play_mm / 2);
  return stack;
}

Stack stack_of_bores(const SpacingInput& in, const SharedBores& bores, std::size_t i, std::size_t j) {
  Stack stack;
  const std::size_t first = bores[i].hole, second = bores[j].hole;
  stack.add(in.errors.wander_mm, 2);
  add_marks(stack, in, j - i);
  if (!in.axles_measured) {
    stack.add(in.errors.wander_mm, 2);
    add_marks(stack, in, second - first);
  } else if (through_template(in)) {
    // Holes that are made already share no template with the part that follows them.
    const auto at = from_middle_mm(in);
    add_template(stack, in, at[second] - at[first]);
  }
  return stack;
}

std::uint64_t mixed(std::uint64_t z) {
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9U;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebU;
  return z ^ (z >> 31);
}

/// Evenly spread between -1 and 1, balanced about 0.
float even(std::uint64_t bits) {
  constexpr float to_one = 1.0F / 2147483648.0F;
  return (static_cast<float>(static_cast<std::int32_t>(static_cast<std::uint32_t>(bits))) + 0.5F) * to_one;
}

/// Builds that are worked out abreast, so that each step is the same simple sum for all of them. Errors of single
/// precision are exact to a millionth of themselves, and twice as many go through at once.
constexpr std::size_t abreast = 32;
using Abreast = std::array<float, abreast>;

float narrow(double value) { return static_cast<float>(value); }

/// A room or an allowance turned round, so that an error times this says how much of it is used.
double inverse(double room_mm) { return room_mm > 0 ? std::min(1 / room_mm, hopeless) : hopeless; }

/// A mesh or a pair of bores, by its number, and the two holes it hangs on.
struct Limit {
  float number = 0;
  std::size_t first = 0, second = 0;
  float nearer_mm = 0, apart_mm = 0;  // of a pair of bores: both the play of the two
  float per_nearer = 0, per_apart = 0;
};

struct Outcomes {
  Abreast bind, slack, line_up;  // the most that any place goes beyond its limit, in mm
  Abreast used;                  // the greatest error over room; its inverse is the factor at which a build first fails
  Abreast used_by_meshes;        // the same without the bores
  Abreast at;                    // number of the limit where it is greatest
  Outcomes() {
    for (Abreast* beyond : {&bind, &slack, &line_up}) beyond->fill(narrow(-hopeless));
    used.fill(0);
    used_by_meshes.fill(0);
    at.fill(-1);
  }
};

float greater(float a, float b) { return a > b ? a : b; }

/// One row, built as often as asked. What does not change between builds is worked out once.
class Builds {
 public:
  explicit Builds(const SpacingInput& in) : in_(in), at_(from_middle_mm(in)) {
    for (const MeshSpread& mesh : mesh_spreads(in))
      add_limit(limits_.size(), limits_.size() + 1, mesh.room_nearer_mm, mesh.room_apart_mm);
    std::size_t draws = 1 + 4 * at_.size() + 2, most = 0;
    for (const SharedBores& part : in.parts) {
      draws += 2 * part.size();
      most = std::max(most, part.size());
      add_pairs(part);
    }
    draws_.resize(draws + draws % 2);
    for (auto* row : {&axle_, &template_, &off_centre_}) row->resize(at_.size());
    mismatch_.resize(most);
  }

  [[nodiscard]] const Limit& limit(float number) const { return limits_[static_cast<std::size_t>(number)]; }

  /// The builds from `first` on.
  Outcomes build(std::uint64_t seed, std::uint64_t first) {
    draw(seed, first);
    next_ = draws_.data();
    make_axles();
    Outcomes out;
    judge_meshes(out);
    out.used_by_meshes = out.used;
    const Limit* pairs = limits_.data() + in_.distances_mm.size();
    for (const SharedBores& part : in_.parts) pairs = judge_part(out, part, pairs);
    return out;
  }

 private:
  void add_pairs(const SharedBores& part) {
    for (std::size_t i = 0; i < part.size(); ++i)
      for (std::size_t j = i + 1; j < part.size(); ++j) {
        const double play = part[i].play_mm + part[j].play_mm;
        add_limit(part[i].hole, part[j].hole, play, play);
      }
  }

  void add_limit(std::size_t first, std::size_t second, double nearer_mm, double apart_mm) {
    limits_.push_back({static_cast<float>(limits_.size()), first, second, narrow(nearer_mm), narrow(apart_mm),
                       narrow(inverse(nearer_mm)), narrow(inverse(apart_mm))});
  }

  /// Two numbers from each counter.
  void draw(std::uint64_t seed, std::uint64_t first) {
    constexpr std::uint64_t step = 0x9e3779b97f4a7c15U;
    std::array<std::uint64_t, abreast> counter;
    for (std::size_t l = 0; l < abreast; ++l) counter[l] = mixed(mixed(seed + step) + (first + l) * step);
    for (std::size_t i = 0; i < draws_.size(); i += 2)
      for (std::size_t l = 0; l < abreast; ++l) {
        const std::uint64_t bits = mixed(counter[l] += step);
        draws_[i][l] = even(bits);
        draws_[i + 1][l] = even(bits >> 32);
      }
  }

  /// Adds a mark's error and the drill's to each hole of a part.
  void add_drilling(std::span<Abreast> holes) {
    const float mark = narrow(through_template(in_) ? 0 : in_.errors.mark_mm), wander = narrow(in_.errors.wander_mm);
    const float kept = in_.marking == Marking::chain ? 1 : 0;  // of the marks before
    Abreast marked{};
    for (Abreast& hole : holes) {
      const Abreast &mark_draw = next_[0], &wander_draw = next_[1];
      next_ += 2;
      for (std::size_t l = 0; l < abreast; ++l) {
        marked[l] = kept * marked[l] + mark * mark_draw[l];
        hole[l] += marked[l] + wander * wander_draw[l];
      }
    }
  }

  void make_axles() {
    const bool shared = through_template(in_);
    const double scale = shared ? in_.errors.template_scale : 0;
    const float own = narrow(shared ? in_.errors.template_mm : 0), off_centre = narrow(in_.errors.run_out_mm / 4);
    const Abreast& scale_draw = *next_++;
    for (std::size_t i = 0; i < at_.size(); ++i, ++next_) {
      const float stretched = narrow(scale * at_[i]);
      for (std::size_t l = 0; l < abreast; ++l) template_[i][l] = stretched * scale_draw[l] + own * (*next_)[l];
    }
    for (Abreast& axle : axle_) axle.fill(0);
    add_drilling(axle_);
    if (in_.axles_measured)
      for (Abreast& axle : axle_) axle.fill(0);
    for (std::size_t i = 0; i < at_.size(); ++i, ++next_)
      for (std::size_t l = 0; l < abreast; ++l) off_centre_[i][l] = off_centre * (1 + (*next_)[l]);
  }

  void judge_meshes(Outcomes& out) {
    const float from_template = through_template(in_) && !in_.axles_measured ? 1 : 0;
    const float bush = narrow(in_.errors.bush_play_mm / 2);
    const Abreast &left_bush = next_[0], &right_bush = next_[1];
    next_ += 2;
    for (std::size_t k = 0; k < in_.distances_mm.size(); ++k) {
      const Limit mesh = limits_[k];
      const float left = k == 0 ? bush : 0, right = k + 1 == in_.distances_mm.size() ? bush : 0;
      for (std::size_t l = 0; l < abreast; ++l) {
        const float apart = axle_[k + 1][l] - axle_[k][l] + from_template * (template_[k + 1][l] - template_[k][l]) +
                            left * left_bush[l] + right * right_bush[l];
        const float turning = off_centre_[k][l] + off_centre_[k + 1][l];
        out.bind[l] = greater(turning - apart - mesh.nearer_mm, out.bind[l]);
        out.slack[l] = greater(turning + apart - mesh.apart_mm, out.slack[l]);
        note(out, l, mesh, greater((turning - apart) * mesh.per_nearer, (turning + apart) * mesh.per_apart));
      }
    }
  }

  /// `pairs` are the part's; returns those of the next part.
  const Limit* judge_part(Outcomes& out, const SharedBores& bores, const Limit* pairs) {
    // Holes that are made already share no template with the part that follows them.
    const float from_template = through_template(in_) && in_.axles_measured ? 1 : 0;
    const std::span<Abreast> off(mismatch_.data(), bores.size());
    for (std::size_t i = 0; i < bores.size(); ++i)
      for (std::size_t l = 0; l < abreast; ++l)
        off[i][l] = from_template * template_[bores[i].hole][l] - axle_[bores[i].hole][l];
    add_drilling(off);
    for (std::size_t i = 0; i < bores.size(); ++i)
      for (std::size_t j = i + 1; j < bores.size(); ++j) {
        const Limit pair = *pairs++;
        for (std::size_t l = 0; l < abreast; ++l) {
          const float apart = std::abs(off[j][l] - off[i][l]);
          out.line_up[l] = greater(apart - pair.apart_mm, out.line_up[l]);
          note(out, l, pair, apart * pair.per_apart);
        }
      }
    return pairs;
  }

  static void note(Outcomes& out, std::size_t l, const Limit& limit, float used) {
    out.at[l] = used > out.used[l] ? limit.number : out.at[l];
    out.used[l] = greater(used, out.used[l]);
  }

  const SpacingInput& in_;
  std::vector<double> at_;
  std::vector<Limit> limits_;  // meshes, then the pairs of each part
  std::vector<Abreast> draws_, axle_, template_, off_centre_, mismatch_;
  const Abreast* next_ = nullptr;  // draw
};

bool fails_without_errors(const SpacingInput& in) {
  const auto spreads = mesh_spreads(in);
  return std::any_of(spreads.begin(), spreads.end(),
                     [](const MeshSpread& m) { return m.room_nearer_mm <= 0 || m.room_apart_mm < 0; });
}

/// The factor that all but the share of builds that may fail can take.
std::optional<double> factor_borne(std::vector<float>& used, double share_working) {
  if (used.empty()) return std::nullopt;
  const auto may_fail =
      static_cast<std::size_t>(std::floor((1 - share_working) * static_cast<double>(used.size()) + 1e-9));
  const auto at = used.begin() + static_cast<std::ptrdiff_t>(std::min(may_fail, used.size() - 1));
  std::nth_element(used.begin(), at, used.end(), std::greater<>());
  if (*at <= 0) return std::nullopt;
  return 1 / static_cast<double>(*at);
}

}  // namespace

double distance_at_contact_ratio_mm(const SpurGear& first, const SpurGear& second, double ratio) noexcept {
  double near = (base_diameter_mm(first) + base_diameter_mm(second)) / 2;
  double far = (tip_diameter_mm(first) + tip_diameter_mm(second)) / 2;  // tips part: no contact at all
  if (!(contact_ratio({first, second, near}) > ratio)) return near;
  for (int i = 0; i < 60; ++i) {
    const double middle = (near + far) / 2;
    (contact_ratio({first, second, middle}) > ratio ? near : far) = middle;
  }
  return (near + far) / 2;
}

WorkingDistances working_distances(const SpurGear& first, const SpurGear& second, double least_ratio) noexcept {
  const double angle = first.pressure_angle_rad, m = first.module_mm;
  const int teeth = first.teeth + second.teeth;
  const double bases = (base_diameter_mm(first) + base_diameter_mm(second)) / 2;
  const double thickened =
      2 * m * (first.shift + second.shift) * std::tan(angle) - first.thinning_mm - second.thinning_mm;
  const double involute_at_zero = involute(angle) + thickened / (m * teeth);
  // Teeth so thin that they have play down to the base circles never jam on their flanks.
  const double flanks = involute_at_zero > 0 ? bases / std::cos(inverse_involute(involute_at_zero)) : bases;
  const double tips =
      std::max(tip_diameter_mm(first) + root_diameter_mm(second), tip_diameter_mm(second) + root_diameter_mm(first)) /
      2;
  return {std::max(flanks, tips), distance_at_contact_ratio_mm(first, second, least_ratio)};
}

std::vector<MeshSpread> mesh_spreads(const SpacingInput& in) {
  std::vector<MeshSpread> spreads;
  for (std::size_t k = 0; k < in.distances_mm.size(); ++k) {
    const Stack stack = stack_of_mesh(in, k);
    spreads.push_back({stack.sum, std::sqrt(stack.squares), in.distances_mm[k] - in.working[k].tight_mm,
                       in.working[k].loose_mm - in.distances_mm[k]});
  }
  return spreads;
}

std::vector<PartSpread> part_spreads(const SpacingInput& in) {
  std::vector<PartSpread> spreads;
  for (const SharedBores& bores : in.parts) {
    PartSpread worst;
    double used = -1;
    for (std::size_t i = 0; i < bores.size(); ++i)
      for (std::size_t j = i + 1; j < bores.size(); ++j) {
        const Stack stack = stack_of_bores(in, bores, i, j);
        const double allowed = bores[i].play_mm + bores[j].play_mm;
        if (stack.sum * inverse(allowed) <= used) continue;
        used = stack.sum * inverse(allowed);
        worst = {stack.sum, std::sqrt(stack.squares), allowed, bores[i].hole, bores[j].hole};
      }
    spreads.push_back(worst);
  }
  return spreads;
}

SpacingOdds spacing_odds(const SpacingInput& in, std::size_t trials, std::uint64_t seed, double share_working) {
  SpacingOdds odds;
  odds.seed = seed;
  odds.trials = trials;
  odds.gives_first.assign(holes_of(in), 0.0);
  Builds builds(in);
  std::vector<float> used(trials), used_by_meshes(trials);
  for (std::size_t first = 0; first < trials; first += abreast) {
    const Outcomes out = builds.build(seed, first);
    for (std::size_t l = 0; l < std::min(abreast, trials - first); ++l) {
      const bool bind = out.bind[l] >= 0, slack = out.slack[l] > 0, line_up = out.line_up[l] > 0;
      odds.bind += bind;
      odds.slack += slack;
      odds.line_up += line_up;
      odds.any += bind || slack || line_up;
      used[first + l] = out.used[l];
      used_by_meshes[first + l] = out.used_by_meshes[l];
      if (out.at[l] < 0) continue;
      odds.gives_first[builds.limit(out.at[l]).first] += 0.5;
      odds.gives_first[builds.limit(out.at[l]).second] += 0.5;
    }
  }
  for (double& share : odds.gives_first) share /= static_cast<double>(std::max<std::size_t>(trials, 1));
  const bool hopeless_meshes = fails_without_errors(in);
  odds.largest_scale = hopeless_meshes ? std::optional(0.0) : factor_borne(used, share_working);
  odds.largest_scale_of_meshes = hopeless_meshes ? std::optional(0.0) : factor_borne(used_by_meshes, share_working);
  return odds;
}

}  // namespace visewright::formulas
