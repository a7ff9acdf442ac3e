#include "standards/rows.h"

namespace visewright::standards {

std::string_view name_of(MaterialKind kind) {
  switch (kind) {
    case MaterialKind::wood: return "wood";
    case MaterialKind::panel: return "panel";
    case MaterialKind::plastic: return "plastic";
    case MaterialKind::metal: return "metal";
  }
  return "";
}

std::string_view name_of(ToolKind kind) {
  switch (kind) {
    case ToolKind::drill: return "drill";
    case ToolKind::flat_bit: return "flat bit";
    case ToolKind::hole_saw: return "hole saw";
    case ToolKind::cutter: return "cutter";
    case ToolKind::saw: return "saw";
    case ToolKind::fretsaw: return "fretsaw";
    case ToolKind::lathe_tool: return "lathe tool";
    case ToolKind::grinder: return "grinder";
    case ToolKind::tap: return "tap";
    case ToolKind::edge_tool: return "edge tool";
    case ToolKind::printer: return "printer";
    case ToolKind::laser: return "laser";
    case ToolKind::punch: return "punch";
    case ToolKind::brush: return "brush";
  }
  return "";
}

}  // namespace visewright::standards
