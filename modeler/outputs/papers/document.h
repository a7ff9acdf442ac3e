// A text for people as values: written as Markdown and as HTML, so that both say the same.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "outputs/facts.h"

namespace visewright::outputs::papers {

struct Heading {
  int level;  // 2 and deeper; the title of the document is 1
  std::string text;
};
struct Paragraph {
  std::string text;
};
/// Something that can hurt somebody or spoil the work; stands out from the rest.
struct CautionText {
  std::string text;
};
/// The first row is the heading.
struct Table {
  std::vector<std::vector<std::string>> rows;
};
struct Steps {
  std::vector<std::string> lines;
};
/// A picture in a file beside the text.
struct Figure {
  std::string file, caption;
};
using Block = std::variant<Heading, Paragraph, CautionText, Table, Steps, Figure>;

struct Document {
  std::string title;
  std::vector<Block> blocks;
};

/// An empty document that opens with the notice of failing checks, when there is one.
[[nodiscard]] Document document(const Facts&, std::string title);
/// Both end with the note on what the figures are good for.
[[nodiscard]] std::string markdown(const Document&);
/// One page without scripts and without anything from elsewhere; prints on paper as it stands.
[[nodiscard]] std::string html(const Document&);

}  // namespace visewright::outputs::papers
