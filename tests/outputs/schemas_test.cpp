#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "outputs/all.h"
#include "outputs/data/explain.h"
#include "outputs/sample.h"

namespace visewright::outputs::data {
namespace {

namespace fs = std::filesystem;

void put(const fs::path& path, const std::string& bytes) {
  fs::create_directories(path.parent_path());
  std::ofstream(path, std::ios::binary) << bytes;
}

// An outside validator (the distribution's jsonschema) holds what is written against the schemas beside the writers,
// and against near misses of it: check_schemas.py says how many.
TEST(Schemas, HoldWhatIsWrittenAndNothingElse) {
  const tests::Sample sample;
  const fs::path folder = fs::path(testing::TempDir()) / "visewright_schemas";
  fs::remove_all(folder);
  for (const Output& output : all()) {
    if (output.needs_solids) continue;
    for (const File& file : tests::written(output, sample)) put(folder / file.path, file.bytes);
  }
  const auto explanation = explain("front_jaw.backing", {}, &sample.plan, sample.findings, sample.show).value();
  put(folder / "explain.json", explain_json(explanation));
  const std::string script = VISEWRIGHT_SOURCE_DIR "/tests/outputs/check_schemas.py";
  const std::string schemas = VISEWRIGHT_SOURCE_DIR "/modeler/outputs/data";
  const std::string command =
      "/usr/bin/python3 '" + script + "' --near-misses '" + schemas + "' '" + folder.string() + "'";
  EXPECT_EQ(std::system(command.c_str()), 0) << command;
}

}  // namespace
}  // namespace visewright::outputs::data
