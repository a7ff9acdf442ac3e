#include "outputs/papers/lettering.h"

#include <ft2build.h>
#include FT_FREETYPE_H

#include <algorithm>
#include <map>
#include <mutex>
#include <string>

namespace visewright::outputs::papers {
namespace {

/// Advances of the font's letters as shares of its height, looked up once each.
class Advances {
 public:
  Advances() {
    if (FT_Init_FreeType(&library_) != 0) return;
    if (FT_New_Face(library_, std::string(font_file).c_str(), 0, &face_) != 0) face_ = nullptr;
  }
  Advances(const Advances&) = delete;
  Advances& operator=(const Advances&) = delete;
  ~Advances() {
    if (face_ != nullptr) FT_Done_Face(face_);
    if (library_ != nullptr) FT_Done_FreeType(library_);
  }

  [[nodiscard]] FT_Face face() const { return face_; }
  double of(char32_t letter) {
    const std::lock_guard lock(mutex_);
    const auto [at, fresh] = known_.try_emplace(letter, 0.7);
    if (fresh && face_ != nullptr && FT_Load_Char(face_, letter, FT_LOAD_NO_SCALE) == 0)
      at->second = static_cast<double>(face_->glyph->advance.x) / face_->units_per_EM;
    return at->second;
  }

 private:
  FT_Library library_ = nullptr;
  FT_Face face_ = nullptr;
  std::mutex mutex_;
  std::map<char32_t, double> known_;
};

Advances& advances() {
  static Advances all;
  return all;
}

}  // namespace

char32_t next_letter(std::string_view& text) {
  const auto lead = static_cast<unsigned char>(text.front());
  const std::size_t more = lead < 0x80 ? 0 : lead >> 5 == 0x6 ? 1 : lead >> 4 == 0xE ? 2 : lead >> 3 == 0x1E ? 3 : 9;
  if (more >= text.size()) {
    text.remove_prefix(1);
    return lead < 0x80 ? lead : 0xFFFD;
  }
  char32_t letter = more == 0 ? lead : lead & (0x3F >> more);
  for (std::size_t i = 1; i <= more; ++i) letter = letter << 6 | (static_cast<unsigned char>(text[i]) & 0x3F);
  text.remove_prefix(more + 1);
  return letter;
}

double width_mm(std::string_view text, double height_mm) {
  double sum = 0;
  while (!text.empty()) sum += advances().of(next_letter(text));
  return sum * height_mm;
}

std::vector<std::string> folded(std::string_view sentence, double height_mm, double room_mm) {
  std::vector<std::string> lines;
  while (!sentence.empty()) {
    const std::size_t end = std::min(sentence.find(' '), sentence.size());
    const std::string word(sentence.substr(0, end));
    sentence.remove_prefix(std::min(end + 1, sentence.size()));
    if (lines.empty() || width_mm(lines.back() + " " + word, height_mm) > room_mm) lines.push_back(word);
    else lines.back() += " " + word;
  }
  return lines;
}

base::Result<FT_FaceRec_*> font() {
  if (FT_Face face = advances().face()) return face;
  return base::fault(base::Cause::output, std::string(font_file), "the font of the sheets is not there",
                     "the package fonts-dejavu-core");
}

}  // namespace visewright::outputs::papers
