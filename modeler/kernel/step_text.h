// Texts of a STEP file. They bypass the kernel's writer, which breaks long texts over lines and leaves accents raw.
// Private to this folder.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace visewright::kernel {

/// A text as ISO 10303-21 writes it between quotes: quotes and backslashes doubled, what is not ASCII as \X2\…\X0\ or
/// \X4\…\X0\; what is not valid UTF-8 becomes U+FFFD.
[[nodiscard]] std::string encoded(std::string_view utf8);

/// Short stand-ins that go through the kernel's writer in place of texts.
class Texts {
 public:
  /// The stand-in for a text.
  [[nodiscard]] std::string stand_in(std::string_view utf8);
  /// The file with every stand-in replaced by its encoded text.
  [[nodiscard]] std::string put_back(std::string_view file) const;

 private:
  std::vector<std::string> encoded_;
};

}  // namespace visewright::kernel
