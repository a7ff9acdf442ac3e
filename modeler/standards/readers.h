// How a row of each kind of table becomes typed rows.
#pragma once

#include <span>
#include <string_view>

#include "standards/record.h"
#include "standards/rows.h"

namespace visewright::standards {

/// `table` is the heading that rows of this kind stand under; `read` appends what one row says.
struct Reader {
  std::string_view table;
  void (*read)(Record&, Rows&);
};

[[nodiscard]] std::span<const Reader> readers();

}  // namespace visewright::standards
