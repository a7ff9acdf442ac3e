// Plain text in lines of a terminal: tables with even columns, sentences folded at a width.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace visewright::outputs::data {

inline constexpr std::size_t line_width = 100;

/// Places a text takes on a terminal: its code points, for texts without wide or combining ones.
[[nodiscard]] std::size_t places(std::string_view utf8);

/// Folds at spaces so that no line is longer than `line_width` unless a word is; lines after the first begin with
/// `indent` spaces. Each line ends in a newline.
[[nodiscard]] std::string folded(std::string_view sentence, std::size_t indent);

/// A table: the first row is the heading; the first column stands to the left, the others to the right; two spaces
/// between columns. Rows may be shorter than the heading.
[[nodiscard]] std::string table(const std::vector<std::vector<std::string>>& rows);

}  // namespace visewright::outputs::data
