# One folder, one library, with exactly the links that the table of the layout allows.

# visewright_folder(NAME [FOLDERS a b …] [PUBLIC lib …] [PRIVATE lib …])
# FOLDERS are our own folders that NAME may include; PUBLIC and PRIVATE are components.
function(visewright_folder name)
  cmake_parse_arguments(arg "" "" "FOLDERS;PUBLIC;PRIVATE" ${ARGN})
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${name}/*.cpp)
  list(TRANSFORM arg_FOLDERS PREPEND visewright_)
  if(NOT sources)  # headers alone, so far
    add_library(visewright_${name} INTERFACE)
    target_link_libraries(visewright_${name} INTERFACE ${arg_FOLDERS} ${arg_PUBLIC})
    return()
  endif()
  add_library(visewright_${name} STATIC ${sources})
  add_library(visewright::${name} ALIAS visewright_${name})
  target_include_directories(visewright_${name} PUBLIC ${PROJECT_SOURCE_DIR}/modeler)
  target_link_libraries(visewright_${name}
    PUBLIC ${arg_FOLDERS} ${arg_PUBLIC}
    PRIVATE visewright_rules ${arg_PRIVATE})
endfunction()
