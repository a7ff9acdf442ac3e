// SHA-256 (FIPS 180-4) of bytes that come in pieces.
#pragma once

#include <memory>
#include <string>
#include <string_view>

namespace visewright::pipeline {

class Sha256 {
 public:
  Sha256();
  ~Sha256();
  Sha256(const Sha256&) = delete;
  Sha256& operator=(const Sha256&) = delete;

  void add(std::string_view bytes);
  /// The digest of everything added, as 64 lower-case hexadecimal digits. To be asked once.
  [[nodiscard]] std::string hex();

 private:
  struct State;
  std::unique_ptr<State> state_;
};

[[nodiscard]] std::string sha256_hex(std::string_view bytes);

}  // namespace visewright::pipeline
