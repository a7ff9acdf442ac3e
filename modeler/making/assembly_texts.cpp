// The steps of putting the vise together, as data. The order is the order of work.
#include "making/assembling.h"

namespace visewright::making {
namespace {

constexpr AssemblyText texts[] = {
    {"bench", "bench top",
     "Cut the notch {notch length} long and {notch depth} deep through the bench edge, its back square to the top: the "
     "rear jaw bears on it.",
     "bench work;saw"},
    {"bench", "apron",
     "Mark the screw line on the apron, {axis depth} below the bench top, from the template that the jaws are drilled "
     "by, and drill it.",
     "bench work;hole saw"},
    {"bench", "apron doubler", "Glue and screw the doubler behind the apron, then drill on through it from the front.",
     "glue"},

    {"rear jaw", "rear jaw;rear bush",
     "Press the rear bushes into the rear jaw, flush with both faces, and try a rod through both: it must turn by "
     "hand.",
     "press"},
    {"rear jaw", "rear jaw;mounting screw",
     "Set the rear jaw into the notch with its top flush with the bench and drive the mounting screws into the back of "
     "the notch."},
    {"rear jaw", "bracket;bracket screw",
     "Screw the brackets to the back of the rear jaw, then through their slots to the underside of the top; the "
     "slotted screws stay a quarter turn loose."},
    {"rear jaw", "nut block;nut block screw",
     "Hang the nut blocks loose behind the rear jaw, the bar against the jaw and the nut behind the bar. Their holes "
     "leave {bolt play} all round."},
    {"rear jaw",
     "nut block",
     "Hold each bar at its height with a spacer of {nut spacer} between it and the underside of the bench top.",
     {},
     "nut spacer"},
    {"rear jaw", "rear lining",
     "Stick the rear lining on over the sunk screw heads, its holes in line with the bushes.", "glue"},

    {"front jaw", "front jaw;front bush",
     "Press the front bushes into the backing from behind, flush with the clamping face and clear of the floor of the "
     "recess.",
     "press"},
    {"front jaw", "front jaw;axle",
     "Press the axles into the backing, square, until {axle stands out} stands out of the glue joint, tapped end "
     "forward.",
     "press"},
    {"front jaw", "front lining", "Stick the front lining on, its holes in line with the bushes.", "glue"},
    {"front jaw", "idler bearing",
     "Press a bearing into each idler gear from the rear, on its outer ring, down to the lip.", "press"},

    {"lead screws", "lead screw;thrust collar",
     "Turn each thrust collar on until the rear face of its flange stands {shoulder to flange} behind the screw's "
     "shoulder, by a gauge of that length, and pull the nut against its thread the way clamping pulls it."},
    {"lead screws", "lead screw;thrust collar;collar pin",
     "Drill collar and screw together for the pin, ⌀{collar pin}, through two flats at the middle of the nut; drive "
     "the pin, {collar pin length} long, in below both flats.",
     "metal drilling"},
    {"lead screws", "centre shaft;thrust collar", "Set and pin the collar on the centre shaft in the same way."},
    {"lead screws", "centre shaft;shaft bearing",
     "Press the rear bearing on to the rear journal of the centre shaft, on its inner ring, up to the shoulder.",
     "press"},
    {"lead screws", "lead screw;thrust collar",
     "Mark one corner of the hexagon on every collar: the drive gears go back on by it."},

    {"together", "front jaw;thrust washer;lead screw",
     "Grease the thrust washers, lay them in their recesses and pass the screws in from the front: pocket, washer, "
     "bush, lining, rear bush, nut. Prop the jaw up and turn the screws in turn about, a few turns each, with no gears "
     "in yet.",
     "heavy"},
    {"together", "lead screw;nut block;rear bush",
     "Grease the threads and the bushes; keep grease off wood and lining, where glue or work will touch."},
    {"together", "front jaw;nut block",
     "Close the jaws until they touch along their whole length, nip them by both screws and only then tighten the nut "
     "blocks: the closed screws set them in line. Take the spacers out; both screws must still turn by hand."},
    {"together", "lead screw;end-stop pin",
     "Turn the screws in and drive the end-stop pins, ⌀{stop pin} × {stop length}, through their tails from below, "
     "behind the apron or the bench edge."},
    {"together", "centre shaft;front jaw", "Put the centre shaft with its bearing into its seat in the backing."},
    {"together", "axle;rear spacer;front spacer;gear",
     "On each axle: the rear spacer, {rear spacer}, the idler gear with its bearing, the front spacer, {front spacer}.",
     "pinch"},
    {"together", "gear;thrust collar",
     "With the jaws shut and parallel slide the drive gears over the journals on to the hexagons. The last gear of the "
     "row drops in at the nearest tooth.",
     "pinch"},
    {"together", "gear;lead screw",
     "Mark each drive gear, a tooth of its neighbour and the marked corner of its collar together: one tooth off costs "
     "{tooth step} of parallelism."},
    {"together", "keeper ring;wheel bearing;lead screw",
     "Slide keeper ring and bearing on to each journal, with shims between them until the screw has an end float of "
     "{end float}."},
    {"together", "cover;cover edge screw",
     "Lay the cover over the bearings and drive the screws only so far that the sheet still slides under them: it "
     "grows with heat, the wood with moisture."},
    {"together", "cover;axle screw",
     "Screw the cover to the axles; the screw nearest the middle holds it, the others stand in the middle of their "
     "slots."},
    {"together", "hand wheel;lock screw",
     "Slide each hand wheel on to its journal and turn the lock screw into the ring groove until its point drops into "
     "the dimple."},
    {"together", "hand wheel;grip", "Bolt the grips to the wheels; they must fold and stand out by hand."},

    {"setting", "front jaw;lead screw",
     "Open the jaws all the way, {opening} in about {turns} turns, and shut them again: nothing may bind or scrape, "
     "and the end stops must meet the nuts.",
     "pinch"},
    {"setting", "gear;cover;front jaw",
     "If one end shuts first, take the wheel and the cover off, draw one drive gear forward and turn its screw: tooth "
     "and corner together set the jaw in steps of {setting step}.",
     "pinch"},
    {"setting", "bracket;rear jaw",
     "Tighten the slotted screws of the brackets when the jaw stands flush with the bench top."},
    {"setting", "front jaw;rear jaw",
     "Oil or varnish the wood outside, never the pockets, the bushes or the face under a lining.", "finish"},

    {"service", "hand wheel;cover;gear",
     "To clean or to change a gear: wheel off, cover off, then every gear comes straight out. Brush the teeth dry; "
     "grease only screws, bushes and thrust washers.",
     "pinch;never force"},
};

}  // namespace

std::span<const AssemblyText> assembly_texts() { return texts; }

}  // namespace visewright::making
