// The program as called from a shell: words in, text and an exit status out.
#pragma once

namespace visewright::cli {

[[nodiscard]] int run(int count, char** words);

}  // namespace visewright::cli
