// Lists for the workshop: what to cut, buy, weld and print, and the order of work; each as Markdown and HTML.
#pragma once

#include <vector>

#include "base/watcher.h"
#include "outputs/facts.h"
#include "outputs/file.h"

namespace visewright::outputs::papers {

/// "papers/cut-list.md" and ".html" with a picture of each board in "papers/stock/", "papers/hardware", "papers/welds",
/// "papers/prints" and "papers/order-of-work". Lists with nothing in them are left out.
[[nodiscard]] base::Result<std::vector<File>> write_shop_lists(const Facts&, base::Watcher&);

}  // namespace visewright::outputs::papers
