#include "kernel/boundary.h"

#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <mutex>

namespace visewright::kernel {

tl::unexpected<base::Faults> failed(std::string_view what, std::string_view label, std::string_view why) {
  return base::fault(base::Cause::geometry, std::string(label),
                     "the " + std::string(what) + " could not be made: " + std::string(why),
                     "sizes that leave a sound body: nothing of zero width, nothing inside out");
}

void silence_the_kernel() {
  static std::once_flag once;
  std::call_once(once, [] { Message::DefaultMessenger()->ChangePrinters().Clear(); });
}

}  // namespace visewright::kernel
