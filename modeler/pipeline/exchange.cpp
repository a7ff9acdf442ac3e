#include "pipeline/exchange.h"

#include <fcntl.h>

#include <cerrno>
#include <cstdio>

namespace visewright::pipeline {
namespace {

namespace fs = std::filesystem;

std::error_code rename_with(const fs::path& from, const fs::path& to, unsigned flags) {
  if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), flags) == 0) return {};
  return {errno, std::generic_category()};
}

bool not_to_be_had(const std::error_code& error) {
  return error.value() == EINVAL || error.value() == ENOSYS || error.value() == EOPNOTSUPP;
}

}  // namespace

std::error_code move_into(const fs::path& made, const fs::path& place) {
  std::error_code error = rename_with(made, place, RENAME_NOREPLACE);
  // A plain rename of a folder refuses to land on a file or on a filled folder by itself.
  if (not_to_be_had(error)) error = rename_with(made, place, 0);
  return error;
}

std::error_code trade_places_by_renaming(const fs::path& made, const fs::path& place) {
  const fs::path aside = made.string() + ".earlier";
  if (const std::error_code error = move_into(place, aside)) return error;
  if (const std::error_code error = move_into(made, place)) {
    (void)move_into(aside, place);
    return error;
  }
  return move_into(aside, made);
}

std::error_code trade_places(const fs::path& made, const fs::path& place, Exchanged& how) {
  how = Exchanged::in_one_step;
  const std::error_code error = rename_with(made, place, RENAME_EXCHANGE);
  if (!not_to_be_had(error)) return error;
  how = Exchanged::in_two_steps;
  return trade_places_by_renaming(made, place);
}

}  // namespace visewright::pipeline
