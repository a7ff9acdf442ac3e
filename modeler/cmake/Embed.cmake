# Text files carried inside the binary.

# visewright_embed(TARGET NAMESPACE FILES…): gives TARGET a header "NAMESPACE_files.h" with
#   std::span<const visewright::embedded::File> visewright::embedded::NAMESPACE();
# each File has the path below its folder and the text. One array of bytes a file keeps long tables clear of the
# compiler's limit on string literals.
function(visewright_embed target name root)
  file(GLOB_RECURSE files CONFIGURE_DEPENDS ${root}/*.toml)
  list(SORT files)
  set(out ${CMAKE_CURRENT_BINARY_DIR}/embedded/${name}_files.cpp)
  set(header ${CMAKE_CURRENT_BINARY_DIR}/embedded/${name}_files.h)
  add_custom_command(
    OUTPUT ${out} ${header}
    COMMAND ${CMAKE_COMMAND} -DNAME=${name} -DROOT=${root} -DOUT=${out} -DHEADER=${header} "-DFILES=${files}"
            -P ${PROJECT_SOURCE_DIR}/modeler/cmake/WriteEmbedded.cmake
    DEPENDS ${files} ${PROJECT_SOURCE_DIR}/modeler/cmake/WriteEmbedded.cmake
    VERBATIM)
  target_sources(${target} PRIVATE ${out} ${header})
  target_include_directories(${target} PRIVATE ${CMAKE_CURRENT_BINARY_DIR}/embedded)
endfunction()
