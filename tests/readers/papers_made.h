// Papers of a design, written into a folder, for the readers of papers.
#pragma once

#include <array>
#include <cstdio>
#include <fstream>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>
#include <vector>

#include "base/watcher.h"
#include "outputs/papers/templates.h"
#include "pipeline/presets.h"
#include "pipeline/study.h"
#include "support/scratch_folder.h"

namespace visewright::tests {

/// What a program says on standard output; throws when it fails.
inline std::string said_by(const std::string& command) {
  std::string text;
  std::array<char, 4096> buffer;
  FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) throw std::runtime_error("cannot start " + command);
  while (const std::size_t count = std::fread(buffer.data(), 1, buffer.size(), pipe)) text.append(buffer.data(), count);
  if (pclose(pipe) != 0) throw std::runtime_error("failed: " + command + "\n" + text);
  return text;
}

/// A grey picture, 0 black; rows from the top.
struct Picture {
  int width = 0, height = 0;
  std::vector<unsigned char> grey;
  [[nodiscard]] int at(int x, int y) const {
    return x < 0 || y < 0 || x >= width || y >= height ? 255 : grey[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x)];
  }
};

inline Picture read_pgm(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  std::string magic;
  int most = 0;
  Picture p;
  in >> magic >> p.width >> p.height >> most;
  if (magic != "P5" || most != 255) throw std::runtime_error(path + " is no grey picture");
  in.get();
  p.grey.resize(static_cast<std::size_t>(p.width) * static_cast<std::size_t>(p.height));
  in.read(reinterpret_cast<char*>(p.grey.data()), static_cast<std::streamsize>(p.grey.size()));
  return p;
}

/// The middles of dark stretches along a row or column, in pixels, between two positions.
inline std::vector<double> dark_runs(const Picture& p, bool along_row, int line, int from, int to, int threshold = 160) {
  std::vector<double> middles;
  int start = -1;
  for (int i = from; i <= to; ++i) {
    const bool dark = i < to && (along_row ? p.at(i, line) : p.at(line, i)) < threshold;
    if (dark && start < 0) start = i;
    if (!dark && start >= 0) {
      middles.push_back((start + i) / 2.0);
      start = -1;
    }
  }
  return middles;
}

class Papers {
 public:
  explicit Papers(const std::string& design, const outputs::papers::Print& print = {}) {
    support::write_file(scratch_ / "design.toml", design);
    base::Silence silence;
    auto study = pipeline::sized((scratch_ / "design.toml").string(), silence);
    if (!study) throw std::runtime_error(study.error().front().key + " " + study.error().front().wrong);
    study_ = std::move(*study);
    files = outputs::papers::templates(facts(), print, silence).value();
    for (const outputs::File& file : files) write(file);
  }
  [[nodiscard]] outputs::Facts facts() const { return pipeline::facts(*study_, std::nullopt); }
  [[nodiscard]] const layout::Plan& plan() const { return study_->plan; }
  [[nodiscard]] std::string path(const std::string& name) const { return (scratch_ / "papers/templates" / name).string(); }
  [[nodiscard]] const std::string& bytes(const std::string& name) const {
    for (const outputs::File& file : files)
      if (file.path == "papers/templates/" + name) return file.bytes;
    throw std::runtime_error("no file " + name);
  }
  [[nodiscard]] nlohmann::json dxf(const std::string& name) const {
    return nlohmann::json::parse(said_by("/usr/bin/python3 " VISEWRIGHT_SOURCE_DIR "/tests/readers/papers_read_dxf.py " + path(name)));
  }
  /// A page of a PDF at 254 dots per inch, ten to the millimetre.
  [[nodiscard]] Picture page(const std::string& name, int number) const {
    const std::string n = std::to_string(number), stem = path(name) + "-" + n;
    (void)said_by("pdftoppm -r 254 -gray -f " + n + " -l " + n + " -singlefile " + path(name) + " " + stem);
    return read_pgm(stem + ".pgm");
  }
  void write(const outputs::File& file) const {
    std::filesystem::create_directories((scratch_ / file.path).parent_path());
    support::write_file(scratch_ / file.path, file.bytes);
  }
  [[nodiscard]] std::string folder() const { return scratch_.path().string(); }

  std::vector<outputs::File> files;

 private:
  support::ScratchFolder scratch_;
  std::unique_ptr<pipeline::Study> study_;
};

inline std::string preset(std::string_view name) {
  for (const auto& each : pipeline::presets())
    if (each.name == name) return std::string(each.text);
  throw std::runtime_error("no preset " + std::string(name));
}

}  // namespace visewright::tests
