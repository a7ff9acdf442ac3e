# Warnings and numeric rules for our own code; a compiler cache when one is installed.
find_program(VISEWRIGHT_CCACHE ccache)
if(VISEWRIGHT_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  # Precompiled headers need the cache to look past time macros and defines.
  set(CMAKE_CXX_COMPILER_LAUNCHER
      ${CMAKE_COMMAND} -E env CCACHE_SLOPPINESS=pch_defines,time_macros,include_file_mtime,include_file_ctime
      ${VISEWRIGHT_CCACHE})
endif()

add_library(visewright_rules INTERFACE)
target_compile_options(visewright_rules INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Werror)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
  # This release warns of overlapping copies inside its own std::string.
  target_compile_options(visewright_rules INTERFACE -Wno-restrict)
endif()

# A fused multiply-add changes last digits between processors, and the same design must give the same bytes.
add_compile_options(-ffp-contract=off)
