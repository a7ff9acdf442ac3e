// Putting one folder in the place of another.
#pragma once

#include <filesystem>
#include <system_error>

namespace visewright::pipeline {

enum class Exchanged { in_one_step, in_two_steps };

/// Moves `made` to `place`, where nothing may stand yet.
[[nodiscard]] std::error_code move_into(const std::filesystem::path& made, const std::filesystem::path& place);

/// Lets `made` and `place`, both folders on one file system, trade places. Where the file system cannot do that in one
/// step, `place` stands absent for a moment between two renames; if the second fails, the first is taken back.
[[nodiscard]] std::error_code trade_places(const std::filesystem::path& made, const std::filesystem::path& place,
                                           Exchanged& how);

/// The two renames by themselves, as used where one step is not to be had.
[[nodiscard]] std::error_code trade_places_by_renaming(const std::filesystem::path& made,
                                                       const std::filesystem::path& place);

}  // namespace visewright::pipeline
