#include "pipeline/sha256.h"

#include <openssl/evp.h>

#include <array>
#include <stdexcept>

namespace visewright::pipeline {
namespace {

// Only a library without SHA-256, or no memory left, gets here; the program's last door turns it into status 70.
void must(int done) {
  if (done != 1) throw std::runtime_error("SHA-256 is not available");
}

}  // namespace

struct Sha256::State {
  std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)> context{EVP_MD_CTX_new(), &EVP_MD_CTX_free};
};

Sha256::Sha256() : state_(std::make_unique<State>()) {
  must(EVP_DigestInit_ex(state_->context.get(), EVP_sha256(), nullptr));
}
Sha256::~Sha256() = default;

void Sha256::add(std::string_view bytes) { must(EVP_DigestUpdate(state_->context.get(), bytes.data(), bytes.size())); }

std::string Sha256::hex() {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned length = 0;
  must(EVP_DigestFinal_ex(state_->context.get(), digest.data(), &length));
  constexpr std::string_view digits = "0123456789abcdef";
  std::string text;
  for (unsigned i = 0; i < length; ++i) {
    text += digits[digest[i] >> 4U];
    text += digits[digest[i] & 15U];
  }
  return text;
}

std::string sha256_hex(std::string_view bytes) {
  Sha256 sum;
  sum.add(bytes);
  return sum.hex();
}

}  // namespace visewright::pipeline
