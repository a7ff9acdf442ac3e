# Run at build time: writes NAME_files.h and NAME_files.cpp from FILES below ROOT.
set(text "#include \"${NAME}_files.h\"\n\nnamespace visewright::embedded {\nnamespace {\n")
set(table "")
set(index 0)
foreach(file IN LISTS FILES)
  file(RELATIVE_PATH path ${ROOT} ${file})
  file(READ ${file} bytes HEX)
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${bytes}")
  string(APPEND text "constexpr unsigned char file_${index}[] = {${bytes}0};\n")
  string(APPEND table
    "    File{\"${path}\", {reinterpret_cast<const char*>(file_${index}), sizeof(file_${index}) - 1}},\n")
  math(EXPR index "${index} + 1")
endforeach()
string(APPEND text "}  // namespace\n\nstd::span<const File> ${NAME}() {\n  static const File all[] = {\n${table}  };\n"
  "  return all;\n}\n\n}  // namespace visewright::embedded\n")
file(WRITE ${OUT} "${text}")
file(WRITE ${HEADER} "#pragma once\n\n#include <span>\n#include <string_view>\n\nnamespace visewright::embedded {\n\n"
  "#ifndef VISEWRIGHT_EMBEDDED_FILE\n#define VISEWRIGHT_EMBEDDED_FILE\n"
  "struct File {\n  std::string_view path, text;\n};\n#endif\n\n"
  "std::span<const File> ${NAME}();\n\n}  // namespace visewright::embedded\n")
