# Everything from the distribution's packages; one line each.
find_package(PkgConfig REQUIRED)
find_package(Threads REQUIRED)
find_package(tl-expected REQUIRED)
find_package(fmt REQUIRED)
find_package(spdlog REQUIRED)
find_package(nlohmann_json REQUIRED)
find_package(CLI11 REQUIRED)
find_package(OpenSSL REQUIRED COMPONENTS Crypto)
find_package(OpenCASCADE REQUIRED)
pkg_check_modules(tomlplusplus REQUIRED IMPORTED_TARGET tomlplusplus)
pkg_check_modules(cairo REQUIRED IMPORTED_TARGET cairo cairo-pdf cairo-ft freetype2)
pkg_check_modules(polyclipping REQUIRED IMPORTED_TARGET polyclipping)
find_package(pugixml REQUIRED)
if(VISEWRIGHT_TESTS)
  find_package(GTest REQUIRED)
endif()
if(VISEWRIGHT_BENCHMARKS)
  find_package(benchmark REQUIRED)
endif()

# The kernel's toolkits by name: the list of all its libraries does not link on Debian.
add_library(visewright_occt INTERFACE)
target_include_directories(visewright_occt SYSTEM INTERFACE ${OpenCASCADE_INCLUDE_DIR})
target_link_libraries(visewright_occt INTERFACE
  TKernel TKMath TKG2d TKG3d TKGeomBase TKBRep TKGeomAlgo TKTopAlgo TKPrim TKBO TKBool TKShHealing TKMesh TKHLR
  TKXSBase TKSTEPBase TKSTEPAttr TKSTEP209 TKSTEP TKCDF TKLCAF TKCAF TKVCAF TKXCAF TKXDESTEP)
