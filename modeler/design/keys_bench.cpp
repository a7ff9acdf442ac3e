// Keys of what stands already and of the room that everything needs: the bench and the gaps.
#include <array>

#include "design/key_rows.h"

namespace visewright::design {
namespace {

using namespace rows;

constexpr Range anywhere{-5000, 5000};
constexpr Range gap{0, 100};

constexpr std::array all{
    length("bench.top", "thickness", {10, 300}, {"\"60 mm\"", "60 mm", "Thickness of the bench top"},
           field<&Design::bench, &Bench::top, &BenchTop::thickness>()),
    length("bench.top", "depth", {100, 3000}, {"\"600 mm\"", "600 mm", "Bench top from its front edge back"},
           field<&Design::bench, &Bench::top, &BenchTop::depth>()),
    length("bench.top", "length", {100, 10000}, {"\"1500 mm\"", "jaw + 600 mm", "Bench top from left to right"},
           field<&Design::bench, &Bench::top, &BenchTop::length>()),
    name("bench.top", "material", Known::wood, {"\"beech\"", "beech", "What the bench top is made of"},
         field<&Design::bench, &Bench::top, &BenchTop::material>()),
    length("bench.apron", "thickness", {3, 200},
           {"\"25 mm\"", "25 mm; no apron when none of its keys is given", "Thickness of the apron"},
           field<&Design::bench, &Bench::apron, &Apron::thickness>()),
    length("bench.apron", "height", {10, 1000}, {"\"100 mm\"", "100 mm", "Height of the apron below the top"},
           field<&Design::bench, &Bench::apron, &Apron::height>()),
    length("bench.apron", "setback", {0, 2000},
           {"\"88 mm\"", "10 mm behind the rear nuts", "Front of the apron back from the bench edge"},
           field<&Design::bench, &Bench::apron, &Apron::setback>()),
    length("bench.apron", "doubler", {0, 200},
           {"\"18 mm\"", "none", "Thickness of a board glued behind the apron; 0 for none"},
           field<&Design::bench, &Bench::apron, &Apron::doubler>()),
    needed(plain(KeyType::text, "bench.obstacle", "name", {"\"left leg\"", "must be given", "What is in the way"},
                 field<&Design::bench, &Bench::obstacles, &Obstacle::name>())),
    needed(lengths("bench.obstacle", "from", anywhere, {3, 3},
                   {"[\"-400 mm\", \"50 mm\", \"60 mm\"]", "must be given",
                    "One corner: right of the jaw's middle, back from the bench edge, down from the bench top"},
                   field<&Design::bench, &Bench::obstacles, &Obstacle::from>())),
    needed(lengths("bench.obstacle", "to", anywhere, {3, 3},
                   {"[\"-320 mm\", \"130 mm\", \"800 mm\"]", "must be given", "The opposite corner, in the same way"},
                   field<&Design::bench, &Bench::obstacles, &Obstacle::to>())),

    length("gaps", "gear_to_wood", gap,
           {"\"2 mm\"", "2 mm, more where the wood moves more", "Gap from the tips of the teeth to the pocket's wall"},
           field<&Design::gaps, &Gaps::gear_to_wood>()),
    length("gaps", "gear_axial", gap, {"\"1.5 mm\"", "1.5 mm", "Gap from a gear to the pocket's floor"},
           field<&Design::gaps, &Gaps::gear_axial>()),
    length("gaps", "moving_to_fixed", gap, {"\"3 mm\"", "3 mm", "Least gap between moving and fixed parts"},
           field<&Design::gaps, &Gaps::moving_to_fixed>()),
    length("gaps", "rim_to_cover", gap, {"\"25 mm\"", "25 mm", "Room for fingers between rim and cover"},
           field<&Design::gaps, &Gaps::rim_to_cover>()),
    length("gaps", "rim_to_rim", {0, 1000}, {"\"40 mm\"", "40 mm", "Room between the rims of two wheels"},
           field<&Design::gaps, &Gaps::rim_to_rim>()),
    length("gaps", "web", gap, {"\"10 mm\"", "10 mm", "Least wood between two holes, and from a hole to a face"},
           field<&Design::gaps, &Gaps::web>()),
    length("gaps", "end_float", {0, 5}, {"\"0.3 mm\"", "0.3 mm", "Play of a screw endwise, set with shims"},
           field<&Design::gaps, &Gaps::end_float>()),
};

}  // namespace

std::span<const KeyRow> bench_rows() { return all; }

}  // namespace visewright::design
