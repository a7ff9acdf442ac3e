#include "fitup/stood.h"

namespace visewright::fitup {

std::string text_of(const std::string& preset) {
  std::string path = VISEWRIGHT_SOURCE_DIR;
  path.append("/presets/designs/").append(preset).append(".toml");
  return support::read_file(path);
}

}  // namespace visewright::fitup
