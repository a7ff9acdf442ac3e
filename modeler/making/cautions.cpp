#include "making/cautions.h"

#include <algorithm>
#include <array>

namespace visewright::making {
namespace {

using standards::MaterialKind;
using standards::ToolKind;

constexpr std::array all{
    Caution{
        "wood dust",
        "Dust of beech, oak and other hardwoods can cause cancer: extract it at the machine and wear a fitted mask."},
    Caution{"saw",
            "Guard and riving knife stay on, a push stick near the blade, eyes and ears covered; unplug before a "
            "change of blade."},
    Caution{"hole saw",
            "Clamp the work and hold the drill with both hands: a hole saw grabs as it breaks through. Low speed, "
            "clear the chips often, turn the work over half way."},
    Caution{"large bit",
            "A wide bit can spin the work out of a hand: clamp it, use a drill press at low speed, and let no glove or "
            "sleeve near it."},
    Caution{"router",
            "Feed against the turn of the cutter, in passes no deeper than half its diameter, with the work clamped; "
            "eyes, ears and lungs covered."},
    Caution{"metal drilling",
            "Centre-punch first, clamp the work, a drop of cutting oil, no gloves: chips are hot and sharp and a "
            "catching drill swings the work round."},
    Caution{"acrylic drilling",
            "Acrylic cracks where the drill breaks through: a board behind it, a drill ground for plastics or scraped "
            "to no rake, light pressure, cool it, keep holes away from the edge."},
    Caution{"plastic cutting",
            "Keep the protective film on; a dull or fast tool melts plastic and it grips the cutter."},
    Caution{"lathe",
            "No gloves, sleeves, rings or loose hair; take the chuck key out; support a long rod at both ends, so that "
            "it does not whip."},
    Caution{"grinding",
            "Face shield and ears covered, guard on, nobody and nothing that burns in the line of sparks; wheel rated "
            "for the speed and sound."},
    Caution{"plated steel",
            "Zinc and other plating give off a fume that makes ill when it is welded or ground hot: use plain steel, "
            "or strip the plating there first, and work in moving air with a mask for fume."},
    Caution{"welding",
            "Welding burns eyes, skin and sheds: mask, gloves, nothing that burns within ten metres, a fire watch "
            "afterwards. A bead that carries a load is the work of somebody with practice; local codes and the data "
            "sheets go first."},
    Caution{"weld heat",
            "Heat pulls the nut out of square and spatter spoils its thread: turn a scrap of rod into it, tack "
            "opposite corners, let it cool, run a tap or a nut through."},
    Caution{"tapping", "Start square, oil, back half a turn at every turn: a broken tap does not come out."},
    Caution{"laser",
            "Never leave a running laser alone; extract the fume, an extinguisher at hand. Only plastics that the "
            "machine's maker allows: vinyl gives off chlorine."},
    Caution{
        "printing",
        "Air the room while it prints; nozzle and bed burn. Test the holes and the hexagon on a short piece first."},
    Caution{"glue",
            "Read the glue's data sheet: gloves, air, open time. Clamp from the middle outwards, wipe what runs into "
            "pockets before it sets."},
    Caution{"finish",
            "Rags with drying oil can set themselves alight: spread them out flat or keep them under water. No oil or "
            "wax on faces to be glued, nor on acrylic or polycarbonate."},
    Caution{"pinch",
            "Fingers out of gears and jaws while anything turns; no work on the train with the cover off and a hand on "
            "the wheel."},
    Caution{"heavy", "The jaw is heavy on one side: two people, or a prop below it, until both screws carry it."},
    Caution{"never force",
            "A stuck jaw pushes on the cover alone and breaks it: never force the wheel open, find what holds."},
    Caution{"press",
            "Press on the ring that is tight and keep it square; a hammer only on wood between. Splinters of a bearing "
            "fly: eyes covered."},
    Caution{"bench work", "Look for wires, drawers, screws and nails before a saw or a drill enters the bench."},
};

void add(std::vector<const Caution*>& list, std::string_view name) {
  if (const Caution* found = caution(name)) list.push_back(found);
}

void for_drilling(std::vector<const Caution*>& list, const standards::MaterialRow& material) {
  if (material.kind == MaterialKind::metal) add(list, "metal drilling");
  if (material.name == "acrylic") add(list, "acrylic drilling");
}

bool makes_wood_dust(const standards::MaterialRow& m) {
  return m.kind == MaterialKind::wood || m.kind == MaterialKind::panel;
}

}  // namespace

std::span<const Caution> cautions() { return all; }

const Caution* caution(std::string_view name) {
  const auto* const found = std::find_if(all.begin(), all.end(), [&](const Caution& c) { return c.name == name; });
  return found == all.end() ? nullptr : found;
}

std::vector<const Caution*> cautions_for(ToolKind tool, const standards::MaterialRow& material) {
  std::vector<const Caution*> list;
  switch (tool) {
    case ToolKind::drill: for_drilling(list, material); break;
    case ToolKind::flat_bit:
      add(list, "large bit");
      for_drilling(list, material);
      break;
    case ToolKind::hole_saw:
      add(list, "hole saw");
      for_drilling(list, material);
      break;
    case ToolKind::cutter:
      add(list, "router");
      if (material.kind == MaterialKind::plastic) add(list, "plastic cutting");
      break;
    case ToolKind::saw: add(list, "saw"); break;
    case ToolKind::lathe_tool: add(list, "lathe"); break;
    case ToolKind::grinder:
      add(list, "grinding");
      if (material.kind == MaterialKind::metal) add(list, "plated steel");
      break;
    case ToolKind::tap: add(list, "tapping"); break;
    case ToolKind::printer: add(list, "printing"); break;
    case ToolKind::laser: add(list, "laser"); break;
    case ToolKind::brush: add(list, "finish"); break;
    case ToolKind::fretsaw:
    case ToolKind::edge_tool:
    case ToolKind::punch: break;
  }
  const bool powered = tool == ToolKind::saw || tool == ToolKind::cutter;
  if (powered && makes_wood_dust(material)) add(list, "wood dust");
  return list;
}

}  // namespace visewright::making
