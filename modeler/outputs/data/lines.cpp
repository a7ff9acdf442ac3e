#include "outputs/data/lines.h"

#include <algorithm>

namespace visewright::outputs::data {

std::size_t places(std::string_view utf8) {
  return static_cast<std::size_t>(std::count_if(utf8.begin(), utf8.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

std::string folded(std::string_view sentence, std::size_t indent) {
  std::string text, line;
  bool has_word = false;
  while (!sentence.empty()) {
    const std::size_t end = std::min(sentence.find(' '), sentence.size());
    const std::string_view word = sentence.substr(0, end);
    if (has_word && places(line) + 1 + places(word) > line_width) {
      text += line + "\n";
      line.assign(indent, ' ');
      has_word = false;
    } else if (has_word) {
      line += ' ';
    }
    line += word;
    has_word = true;
    sentence.remove_prefix(std::min(end + 1, sentence.size()));
  }
  return text + line + "\n";
}

std::string table(const std::vector<std::vector<std::string>>& rows) {
  std::vector<std::size_t> widths;
  for (const auto& row : rows) {
    widths.resize(std::max(widths.size(), row.size()), 0);
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], places(row[i]));
  }
  std::string text;
  for (const auto& row : rows) {
    std::string line;
    for (std::size_t i = 0; i < row.size(); ++i) {
      const std::string pad(widths[i] - places(row[i]), ' ');
      line += i == 0 ? row[i] + pad : "  " + pad + row[i];
    }
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + "\n";
  }
  return text;
}

}  // namespace visewright::outputs::data
