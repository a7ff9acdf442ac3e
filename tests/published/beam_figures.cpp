// Figures of beams, sections and plates. Examples in pounds and inches are worked in those.
#include <array>
#include <string>

#include "formulas/beams.h"
#include "published/figure.h"

namespace visewright::published {
namespace {

using formulas::Beam;
using formulas::Section;

void add_beams(std::vector<Figure>& all) {
  const auto exercise = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"exercise on slope and deflection with its answers", "I 2.8e4 cm4, E 210, span 8 m, 70 kN at 3 m",
                   what, printed, decimals, Known::sighted, computed});
  };
  const Beam beam{8000, 210000, 2.8e8};
  double farthest = 0;
  for (double x = 0; x <= 8000; x += 1) {
    if (supported_deflection_mm(beam, 70000, 3000, x) > supported_deflection_mm(beam, 70000, 3000, farthest)) {
      farthest = x;
    }
  }
  exercise("deflection at the load, mm", 11.16, 2, supported_deflection_mm(beam, 70000, 3000, 3000));
  exercise("greatest deflection, mm", 11.68, 2, supported_deflection_mm(beam, 70000, 3000, farthest));
  exercise("where the deflection is greatest, m", 3.72, 2, farthest / 1000);

  // Four answers are printed to choose from; these are among them. The force at the end that undoes a deflection.
  const auto choice = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"examination question on a cantilever, November 2018", "3.5 m, 200 kN at mid-length, I 60.8e6 mm4",
                   what, printed, decimals, Known::sighted, computed});
  };
  const Beam arm{3500, 200000, 60.8e6};
  const double end = cantilever_deflection_mm(arm, 200000, 1750, 3500);
  const double middle = cantilever_deflection_mm(arm, 200000, 1750, 1750);
  choice("force that keeps the end in place, kN", 62.5, 1, end / cantilever_deflection_mm(arm, 1000, 3500, 3500));
  choice("force that leaves 9.5 mm at mid-length, kN", 54.1, 1,
         (middle - 9.5) / cantilever_deflection_mm(arm, 1000, 3500, 1750));

  const auto jaw = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"beam formulas worked out apart", "140 x 45, span 500, 2 kN, E 12 GPa", what, printed, decimals,
                   Known::computed, computed});
  };
  const Section section = formulas::rectangle_section(140, 45);
  jaw("inertia, mm4", 1063125, 0, section.inertia_mm4);
  jaw("deflection, mm", 0.40826, 5,
      formulas::supported_deflection_mm({500, 12000, section.inertia_mm4}, 2000, 250, 250));
  jaw("stress, MPa", 5.2910, 4,
      formulas::bending_stress_mpa(formulas::supported_moment_nmm(500, 2000, 250), section.modulus_mm3));
}

void add_sections(std::vector<Figure>& all) {
  // Wood 150 x 150 on a steel strap of 20, worked as if all were steel.
  const auto book = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"Mechanics of Materials, composite beam example", "wood 150 x 150, E 12, on steel 20, E 200; 2 kN m",
                   what, printed, decimals, Known::from_memory, computed});
  };
  constexpr std::array<formulas::Strip, 2> strips{{{150, 0, 20, 200000}, {150, 20, 170, 12000}}};
  const Section both = composite_section(strips, 200000);
  const double in_wood_as_steel = formulas::bending_stress_mpa(2e6, both.modulus_top_mm3);
  book("neutral axis, mm", 36.38, 2, both.centroid_mm);
  book("inertia, 1e6 mm4", 9.358, 3, both.inertia_mm4 / 1e6);
  book("top fibre as if steel, MPa", 28.6, 1, in_wood_as_steel);
  book("top fibre of wood, MPa", 1.71, 2, in_wood_as_steel * 12 / 200);
  book("bottom fibre of steel, MPa", 7.78, 2, formulas::bending_stress_mpa(2e6, both.modulus_bottom_mm3));

  all.push_back({"National Design Specification, net section example", "3.5 x 1.5 in, hole 0.5625 in, 788 psi",
                 "tension, lb", 3470, -1, Known::sighted,
                 788 * formulas::section_with_hole_through({3.5, 1.5, 0.5625, 0}).area_mm2});

  struct Hole {
    const char* inputs;
    Section net;
    double gross, printed, left;
  };
  for (const Hole& h : {Hole{"38 x 89, hole 20 across on the axis", formulas::section_with_hole_across({38, 89, 20, 0}),
                             50166.3, 49597.0, 0.98865},
                        Hole{"38 x 89, hole 20 through the depth", formulas::section_with_hole_through({38, 89, 20, 0}),
                             50166.3, 23763.0, 0.47368},
                        Hole{"45 x 140, hole 26 across on the axis",
                             formulas::section_with_hole_across({45, 140, 26, 0}), 147000.0, 146058.4, 0.99359},
                        Hole{"45 x 140, hole 26 across, 20 off the axis",
                             formulas::section_with_hole_across({45, 140, 26, 20}), 147000.0, 129414.9, 0.88037}}) {
    const bool thin = h.gross < 100000;
    const Section gross = formulas::rectangle_section(thin ? 38 : 45, thin ? 89 : 140);
    all.push_back({"holes in wooden members, worked out apart", h.inputs, "section modulus, mm3", h.printed, 1,
                   Known::computed, h.net.modulus_mm3});
    all.push_back({"holes in wooden members, worked out apart", h.inputs, "share left", h.left, 5, Known::computed,
                   modulus_left(h.net, gross)});
  }
  all.push_back({"holes in wooden members, worked out apart", "45 x 140, hole 26 across, 20 off the axis",
                 "shift of the axis, mm", 4.5614, 4, Known::computed,
                 70 - formulas::section_with_hole_across({45, 140, 26, 20}).centroid_mm});
}

void add_discs(std::vector<Figure>& all) {
  const auto verification = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"Strength of Materials, part II, 3rd ed., pp. 96-103, as a verification manual gives it",
                   "clamped disc r 40 in, t 1, E 30e6, nu 0.3, 7539.82 lb", what, printed, decimals, Known::sighted,
                   computed});
  };
  const formulas::ClampedDisc plate{40, 1, 30e6, 0.3, 0};
  verification("sag, in", 0.0874, 4, clamped_disc_sag_mm(plate, 7539.82));
  verification("stress at the edge, psi", 3600, 0, clamped_disc_edge_stress_mpa(plate, 7539.82));

  const auto sheet = [&](const char* what, double printed, int decimals, double computed) {
    all.push_back({"spreadsheet on a centrally loaded circular plate",
                   "clamped disc r 150, t 1.5, E 200000, nu 0.29, 314.16 N on a patch of 10", what, printed, decimals,
                   Known::sighted, computed});
  };
  const formulas::ClampedDisc thin{150, 1.5, 200000, 0.29, 10};
  sheet("stress in the middle, MPa", 233, 0, clamped_disc_stress_mpa(thin, 314.159265));
  sheet("stress at the edge, MPa", 67, 0, clamped_disc_edge_stress_mpa(thin, 314.159265));
}

}  // namespace

std::vector<Figure> beam_figures() {
  std::vector<Figure> all;
  add_beams(all);
  add_sections(all);
  add_discs(all);
  return all;
}

}  // namespace visewright::published
