// The one font of all sheets and how wide its words are.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/fault.h"

struct FT_FaceRec_;

namespace visewright::outputs::papers {

/// Where the packages of the distribution put it. It is loaded by this path, so that no other font can take its place;
/// a PDF carries the letters it uses with it.
inline constexpr std::string_view font_file = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf";
/// What SVG files ask their reader for.
inline constexpr std::string_view font_family = "DejaVu Sans, sans-serif";

/// Width of one line at a font height, from the font's own advances; where the font is not there, a letter counts as
/// seven tenths of the height.
[[nodiscard]] double width_mm(std::string_view utf8, double height_mm);

/// A sentence in lines no wider than `room_mm`, parted at blanks; a word that is wider stands alone.
[[nodiscard]] std::vector<std::string> folded(std::string_view sentence, double height_mm, double room_mm);

/// Takes the first code point off a text; a byte that is no UTF-8 gives U+FFFD. REQUIRES: the text is not empty.
[[nodiscard]] char32_t next_letter(std::string_view& utf8);

/// The font, open until the program ends; a fault that names the package when it is not there.
[[nodiscard]] base::Result<FT_FaceRec_*> font();

}  // namespace visewright::outputs::papers
