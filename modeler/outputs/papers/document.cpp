#include "outputs/papers/document.h"

#include "outputs/data/notice.h"

namespace visewright::outputs::papers {
namespace {

/// What would be read as a mark of the language is set apart from it.
std::string plain(std::string_view text, bool in_table) {
  std::string out;
  for (const char c : text) {
    if (c == '\\' || c == '`' || c == '*' || c == '_' || c == '<' || c == '[' || c == ']' || (c == '|' && in_table)) out += '\\';
    out += c;
  }
  return out;
}

struct AsMarkdown {
  std::string& out;

  void operator()(const Heading& h) const { out += std::string(static_cast<std::size_t>(h.level), '#') + " " + plain(h.text, false) + "\n\n"; }
  void operator()(const Paragraph& p) const { out += plain(p.text, false) + "\n\n"; }
  void operator()(const CautionText& c) const { out += "> **Caution.** " + plain(c.text, false) + "\n\n"; }
  void operator()(const Table& t) const {
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
      out += "|";
      for (const std::string& cell : t.rows[i]) out += " " + plain(cell, true) + " |";
      out += "\n";
      if (i > 0) continue;
      out += "|";
      for (std::size_t k = 0; k < t.rows[i].size(); ++k) out += "---|";
      out += "\n";
    }
    out += "\n";
  }
  void operator()(const Steps& s) const {
    int number = 0;
    for (const std::string& line : s.lines) out += std::to_string(++number) + ". " + plain(line, false) + "\n";
    out += "\n";
  }
  void operator()(const Figure& f) const { out += "![" + plain(f.caption, false) + "](" + f.file + ")\n\n"; }
};

std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) out += c == '&' ? "&amp;" : c == '<' ? "&lt;" : c == '>' ? "&gt;" : c == '"' ? "&quot;" : std::string(1, c);
  return out;
}

struct AsHtml {
  std::string& out;

  void element(std::string_view tag, const std::string& text) const {
    out.append("<").append(tag).append(">").append(text).append("</").append(tag.substr(0, tag.find(' '))).append(">\n");
  }
  void operator()(const Heading& h) const { element("h" + std::to_string(h.level), escaped(h.text)); }
  void operator()(const Paragraph& p) const { element("p", escaped(p.text)); }
  void operator()(const CautionText& c) const { element("p class=\"caution\"", "<strong>Caution.</strong> " + escaped(c.text)); }
  void operator()(const Table& t) const {
    out += "<table>\n";
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
      out += "<tr>";
      const std::string tag = i == 0 ? "th" : "td";
      for (const std::string& cell : t.rows[i]) out += "<" + tag + (i == 0 ? " scope=\"col\">" : ">") + escaped(cell) + "</" + tag + ">";
      out += "</tr>\n";
    }
    out += "</table>\n";
  }
  void operator()(const Steps& s) const {
    out += "<ol>\n";
    for (const std::string& line : s.lines) element("li", escaped(line));
    out += "</ol>\n";
  }
  void operator()(const Figure& f) const {
    out += "<figure><img src=\"" + escaped(f.file) + "\" alt=\"" + escaped(f.caption) + "\"><figcaption>" + escaped(f.caption) + "</figcaption></figure>\n";
  }
};

constexpr std::string_view style =
    "body{font:11pt/1.45 sans-serif;margin:2em auto;max-width:60em;padding:0 1em;color:#111;background:#fff}"
    "table{border-collapse:collapse;margin:.6em 0 1.2em}td,th{border:1px solid #777;padding:.2em .5em;text-align:left;vertical-align:top}"
    "th{background:#eee}.caution{border-left:.4em solid #b00;padding:.4em .8em;background:#fff0ee}img{max-width:100%}"
    "@media print{body{margin:0}h2{break-after:avoid}tr,figure{break-inside:avoid}}";

}  // namespace

Document document(const Facts& facts, std::string title) {
  Document d{std::move(title), {}};
  if (std::string notice = data::failing_notice(facts.findings); !notice.empty()) d.blocks.emplace_back(CautionText{notice + "."});
  d.blocks.emplace_back(Paragraph{std::string(facts.title) + ", visewright " + std::string(facts.program_version) + "."});
  return d;
}

std::string markdown(const Document& d) {
  std::string out = "# " + plain(d.title, false) + "\n\n";
  for (const Block& block : d.blocks) std::visit(AsMarkdown{out}, block);
  return out + std::string(data::planning_note) + "\n";
}

std::string html(const Document& d) {
  std::string out = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n<title>" +
                    escaped(d.title) + "</title>\n<style>" + std::string(style) + "</style>\n</head>\n<body>\n<h1>" + escaped(d.title) + "</h1>\n";
  for (const Block& block : d.blocks) std::visit(AsHtml{out}, block);
  return out + "<p>" + escaped(data::planning_note) + "</p>\n</body>\n</html>\n";
}

}  // namespace visewright::outputs::papers
