#include "pipeline/manifest.h"

namespace visewright::pipeline {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const std::vector<outputs::File> two_files{{"b/two.txt", "abc", "the second", std::nullopt},
                                           {"a.txt", "", "a \"first\" one", 3}};

// Written out by hand; the digests are those of "abc" and of nothing (see sha256_test.cpp).
TEST(Manifest, IsWrittenInTheOrderOfTheOutputs) {
  EXPECT_EQ(write_manifest(manifest_of(two_files)), R"({
  "schema": "visewright.manifest/1",
  "files": [
    {
      "path": "b/two.txt",
      "size": 3,
      "sha256": "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
      "what": "the second"
    },
    {
      "path": "a.txt",
      "size": 0,
      "sha256": "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
      "what": "a \"first\" one"
    }
  ]
}
)");
}

TEST(Manifest, ComesBackAsItWasWritten) {
  const base::Result<Manifest> back = read_manifest(write_manifest(manifest_of(two_files)), "here");
  ASSERT_TRUE(back);
  EXPECT_EQ(write_manifest(*back), write_manifest(manifest_of(two_files)));
}

TEST(Manifest, RefusesWhatIsNotOurs) {
  const std::string good = write_manifest(manifest_of(two_files));
  const auto with = [&](const std::string& from, const std::string& to) {
    std::string text = good;
    return text.replace(text.find(from), from.size(), to);
  };
  const std::vector<std::string> bad{"",
                                     "[]",
                                     "{}",
                                     "null",
                                     R"({"schema": "visewright.manifest/1"})",
                                     R"({"schema": "visewright.manifest/1", "files": {}})",
                                     R"({"schema": "visewright.manifest/1", "files": [3]})",
                                     good.substr(0, good.size() / 2),
                                     with("manifest/1", "manifest/2"),
                                     with("a.txt", "../a.txt"),
                                     with("a.txt", "/a.txt"),
                                     with("a.txt", "manifest.json"),
                                     with("ba7816bf", "ba7816bg"),
                                     with("\"size\": 3", "\"size\": -3"),
                                     with("\"size\": 3", "\"size\": 3.5"),
                                     with("\"what\": \"the second\"", "\"what\": null"),
                                     std::string(100'000, '[')};
  for (const std::string& text : bad) {
    const base::Result<Manifest> read = read_manifest(text, "folder/manifest.json");
    ASSERT_FALSE(read) << text;
    EXPECT_EQ(read.error().front().cause, base::Cause::input);
    EXPECT_EQ(read.error().front().key, "folder/manifest.json");
  }
  EXPECT_TRUE(read_manifest(with("the second", "another"), "near miss"));
}

TEST(Manifest, KnowsAPathThatLeadsOut) {
  for (const char* path : {"", ".", "..", "../a", "a/..", "a/../b", "./a", "/a", "a//b", "a/", "manifest.json"}) {
    EXPECT_FALSE(stays_inside(path)) << path;
  }
  for (const char* path : {"a", "a/b", "..a", "a..", "...", "a/manifest.json", ".hidden"}) {
    EXPECT_TRUE(stays_inside(path)) << path;
  }
}

TEST(Manifest, NamesWhatItDoesNotList) {
  const Manifest manifest = manifest_of(two_files);
  EXPECT_THAT(foreign(manifest, {{"a.txt", "b/two.txt", "manifest.json"}, {"b/"}, {}}), IsEmpty());
  EXPECT_THAT(foreign(manifest, {{"a.txt", "b/three.txt", "manifest.json"}, {"b/", "c/"}, {"b/two.txt"}}),
              ElementsAre("b/three.txt", "b/two.txt", "c/"));
}

}  // namespace
}  // namespace visewright::pipeline
