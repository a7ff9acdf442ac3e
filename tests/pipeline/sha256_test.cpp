#include "pipeline/sha256.h"

namespace visewright::pipeline {
namespace {

// The digests of the three example messages that were published with the standard (FIPS 180-2, appendix B, and the
// empty message of the secure-hash examples); from memory.
TEST(Sha256, GivesThePublishedDigests) {
  EXPECT_EQ(sha256_hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(sha256_hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(sha256_hex(std::string(1'000'000, 'a')),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(Sha256, DoesNotCareHowTheBytesAreCutUp) {
  Sha256 sum;
  sum.add("a");
  sum.add("");
  sum.add("bc");
  EXPECT_EQ(sum.hex(), sha256_hex("abc"));
}

}  // namespace
}  // namespace visewright::pipeline
