#include "outputs/papers/dxf_tables.h"

#include <fmt/format.h>

#include "outputs/papers/lettering.h"
#include "units/text.h"

namespace visewright::outputs::papers {
namespace {

constexpr std::string_view paper_space = "1B";

/// The index of the colour table of the format nearest to a pen's ink.
long colour_index(Pen pen) {
  switch (pen) {
    case Pen::recess: return 5;
    case Pen::hole: return 1;
    case Pen::mark: return 3;
    case Pen::read_only: return 8;
    case Pen::cut:
    case Pen::visible:
    case Pen::hidden:
    case Pen::centre:
    case Pen::thin:
    case Pen::hatch: return 7;
  }
  return 7;
}

void start_table(DxfText& out, std::string_view name, std::string_view handle, long count) {
  out.put(0, "TABLE");
  out.put(2, name);
  out.put(5, handle);
  out.put(330, "0");
  out.put(100, "AcDbSymbolTable");
  out.put(70, count);
}

void start_record(DxfText& out, std::string_view table, std::string_view handle, std::string_view owner,
                  std::string_view kind, std::string_view name) {
  out.put(0, table);
  out.put(table == "DIMSTYLE" ? 105 : 5, handle);
  out.put(330, owner);
  out.put(100, "AcDbSymbolTableRecord");
  out.put(100, kind);
  out.put(2, name);
}

void put_line_types(DxfText& out) {
  start_table(out, "LTYPE", "5", 3);
  const std::pair<std::string_view, std::string_view> names[] = {{"14", "ByBlock"}, {"15", "ByLayer"}, {"16", "Continuous"}};
  for (const auto& [handle, name] : names) {
    start_record(out, "LTYPE", handle, "5", "AcDbLinetypeTableRecord", name);
    out.put(70, 0L);
    out.put(3, "");
    out.put(72, 65L);
    out.put(73, 0L);
    out.put(40, 0.0);
  }
  out.put(0, "ENDTAB");
}

void put_layers(DxfText& out, const Sheet& sheet) {
  start_table(out, "LAYER", "2", static_cast<long>(sheet.layers.size()) + 1);
  const auto layer = [&](const std::string& handle, std::string_view name, long colour) {
    start_record(out, "LAYER", handle, "2", "AcDbLayerTableRecord", name);
    out.put(70, 0L);
    out.put(62, colour);
    out.put(6, "Continuous");
    out.put(370, -3L);
    out.put(390, "F");
  };
  layer("10", "0", 7);
  for (const Layer& each : sheet.layers) layer(out.handle(), each.name, colour_index(each.pen));
  out.put(0, "ENDTAB");
}

void put_view_port(DxfText& out) {
  start_table(out, "VPORT", "8", 1);
  start_record(out, "VPORT", "18", "8", "AcDbViewportTableRecord", "*Active");
  out.put(70, 0L);
  out.point(10, {0, 0}, false);
  out.point(11, {1, 1}, false);
  out.point(12, {0, 0}, false);
  out.put(40, 500.0);
  out.put(41, 1.5);
  out.put(0, "ENDTAB");
}

void put_text_style(DxfText& out) {
  start_table(out, "STYLE", "3", 1);
  start_record(out, "STYLE", "11", "3", "AcDbTextStyleTableRecord", "Standard");
  out.put(70, 0L);
  out.put(40, 0.0);
  out.put(41, 1.0);
  out.put(50, 0.0);
  out.put(71, 0L);
  out.put(42, 2.5);
  out.put(3, "txt");
  out.put(4, "");
  out.put(0, "ENDTAB");
}

void put_block_records(DxfText& out) {
  start_table(out, "BLOCK_RECORD", "1", 2);
  start_record(out, "BLOCK_RECORD", model_space, "1", "AcDbBlockTableRecord", "*Model_Space");
  out.put(340, "22");
  start_record(out, "BLOCK_RECORD", paper_space, "1", "AcDbBlockTableRecord", "*Paper_Space");
  out.put(340, "1E");
  out.put(0, "ENDTAB");
}

void put_block(DxfText& out, std::string_view name, std::string_view owner, std::string_view begin, std::string_view end,
               bool paper) {
  const auto entity = [&](std::string_view kind, std::string_view handle, std::string_view marker) {
    out.put(0, kind);
    out.put(5, handle);
    out.put(330, owner);
    out.put(100, "AcDbEntity");
    if (paper) out.put(67, 1L);
    out.put(8, "0");
    out.put(100, marker);
  };
  entity("BLOCK", begin, "AcDbBlockBegin");
  out.put(2, name);
  out.put(70, 0L);
  out.point(10, {0, 0});
  out.put(3, name);
  out.put(1, "");
  entity("ENDBLK", end, "AcDbBlockEnd");
}

void put_dictionary(DxfText& out, std::string_view handle, std::string_view owner,
                    std::initializer_list<std::pair<std::string_view, std::string_view>> entries) {
  out.put(0, "DICTIONARY");
  out.put(5, handle);
  out.put(330, owner);
  out.put(100, "AcDbDictionary");
  out.put(281, 1L);
  for (const auto& [name, to] : entries) {
    out.put(3, name);
    out.put(350, to);
  }
}

void put_layout(DxfText& out, std::string_view handle, std::string_view name, std::string_view block, long order) {
  out.put(0, "LAYOUT");
  out.put(5, handle);
  out.put(330, "1A");
  out.put(100, "AcDbPlotSettings");
  out.put(1, "");
  out.put(4, "A4");
  out.put(6, "");
  out.put(70, order == 0 ? 1024L : 0L);
  out.put(72, 1L);
  out.put(100, "AcDbLayout");
  out.put(1, name);
  out.put(70, 1L);
  out.put(71, order);
  out.point(10, {0, 0}, false);
  out.point(11, {420, 297}, false);
  out.point(12, {0, 0});
  out.point(14, {0, 0});
  out.point(15, {0, 0});
  out.put(146, 0.0);
  out.point(13, {0, 0});
  out.point(16, {1, 0});
  out.point(17, {0, 1});
  out.put(76, 0L);
  out.put(330, block);
}

}  // namespace

void DxfText::put(int code, std::string_view value) { text_ += fmt::format("{:>3}\n{}\n", code, value); }
void DxfText::put(int code, long value) { put(code, std::to_string(value)); }
void DxfText::put(int code, double value) {
  std::string text = units::write_number(value, 7);
  if (text.find('.') == std::string::npos) text += ".0";
  put(code, text);
}
void DxfText::point(int code, geometry::Point p, bool with_z) {
  put(code, p.x);
  put(code + 10, p.y);
  if (with_z) put(code + 20, 0.0);
}
std::string DxfText::handle() { return fmt::format("{:X}", ++last_handle_); }
void DxfText::section(std::string_view name) {
  put(0, "SECTION");
  put(2, name);
}

std::string dxf_words(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const char32_t letter = next_letter(text);
    if (letter == U'⌀') out += "%%c";
    else if (letter == U'°') out += "%%d";
    else if (letter == U'×') out += "x";
    else if (letter < 0x20) out += ' ';
    else if (letter < 0x7F) out += static_cast<char>(letter);
    else out += fmt::format("\\U+{:04X}", static_cast<std::uint32_t>(letter));
  }
  return out;
}

void put_header(DxfText& out, const geometry::Box& box) {
  out.section("HEADER");
  const auto name = [&](std::string_view variable) { out.put(9, variable); };
  name("$ACADVER"), out.put(1, "AC1015");
  name("$DWGCODEPAGE"), out.put(3, "ANSI_1252");
  name("$INSUNITS"), out.put(70, 4L);
  name("$MEASUREMENT"), out.put(70, 1L);
  name("$LUNITS"), out.put(70, 2L);
  name("$EXTMIN"), out.point(10, box.low);
  name("$EXTMAX"), out.point(10, box.high);
  name("$HANDSEED"), out.put(5, "FFFFFF");
  out.end_section();
  out.section("CLASSES");
  out.end_section();
}

void put_tables(DxfText& out, const Sheet& sheet) {
  out.section("TABLES");
  put_view_port(out);
  put_line_types(out);
  put_layers(out, sheet);
  put_text_style(out);
  for (const auto& [name, handle] : {std::pair{"VIEW", "6"}, {"UCS", "7"}}) {
    start_table(out, name, handle, 0);
    out.put(0, "ENDTAB");
  }
  start_table(out, "APPID", "9", 1);
  start_record(out, "APPID", "12", "9", "AcDbRegAppTableRecord", "ACAD");
  out.put(70, 0L);
  out.put(0, "ENDTAB");
  start_table(out, "DIMSTYLE", "A", 1);
  out.put(100, "AcDbDimStyleTable");
  start_record(out, "DIMSTYLE", "27", "A", "AcDbDimStyleTableRecord", "Standard");
  out.put(70, 0L);
  out.put(0, "ENDTAB");
  put_block_records(out);
  out.end_section();
}

void put_blocks(DxfText& out) {
  out.section("BLOCKS");
  put_block(out, "*Model_Space", model_space, "20", "21", false);
  put_block(out, "*Paper_Space", paper_space, "1C", "1D", true);
  out.end_section();
}

void put_objects(DxfText& out) {
  out.section("OBJECTS");
  put_dictionary(out, "C", "0", {{"ACAD_GROUP", "D"}, {"ACAD_LAYOUT", "1A"}, {"ACAD_PLOTSTYLENAME", "E"}});
  put_dictionary(out, "D", "C", {});
  put_dictionary(out, "1A", "C", {{"Layout1", "1E"}, {"Model", "22"}});
  out.put(0, "ACDBDICTIONARYWDFLT");
  out.put(5, "E");
  out.put(330, "C");
  out.put(100, "AcDbDictionary");
  out.put(281, 1L);
  out.put(3, "Normal");
  out.put(350, "F");
  out.put(100, "AcDbDictionaryWithDefault");
  out.put(340, "F");
  out.put(0, "ACDBPLACEHOLDER");
  out.put(5, "F");
  out.put(330, "E");
  put_layout(out, "22", "Model", model_space, 0);
  put_layout(out, "1E", "Layout1", paper_space, 1);
  out.end_section();
}

}  // namespace visewright::outputs::papers
