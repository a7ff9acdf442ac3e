// A part taken apart into jobs: one piece of stock, or one built-up whole, and the operations done to it there.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "assembly/assembly.h"
#include "parts/part.h"

namespace visewright::outputs::papers {

/// A piece's stock as a box in the frame of the job.
struct Blank {
  std::string name;
  parts::Extent extent;
};

struct Job {
  std::string name;              // the piece's own, or the whole's
  std::uint32_t part = 0;        // index of the assembly's part that it belongs to
  const parts::Piece* piece = nullptr;  // null for a whole
  const parts::Part* of = nullptr;
  std::span<const parts::Operation> operations;
  std::vector<Blank> blanks;     // one for a piece, one for each piece of a whole
  geometry::Placement in_part;   // where the job's frame stands in the part's
};

/// Every piece with operations and every whole with operations after its joints, pieces first; equal pieces once.
[[nodiscard]] std::vector<Job> jobs(const parts::Part&, std::uint32_t index);

/// A round hole, recess, cut-out or outline on a face, in the face's own coordinates.
struct Feature {
  enum class Kind : std::uint8_t { hole, recess, cut_out, outline } kind;
  const parts::Operation* operation;
  geometry::Profile profile;
  parts::Depth depth;
  std::optional<double> diameter_mm;  // of what is round
  geometry::Point centre;             // of what is round, else the middle of its box
  bool flat = false;
  bool from_behind = false;  // entered from the opposite face
};

/// Every feature of a job, each in the coordinates of the face it is entered from.
[[nodiscard]] std::vector<std::pair<parts::Face, Feature>> features(const Job&);
/// A feature of one face as another, parallel one shows it.
[[nodiscard]] Feature seen_on(Feature, const parts::Face& from, const parts::Face& to);

/// What is done on one face of a job. `datum` is the frame of the face; features entered from the opposite face are
/// there too, seen through the wood: mirrored as they appear from this side.
struct FaceJob {
  const Job* job;
  parts::Face face;
  std::vector<Feature> features;
  std::vector<std::pair<std::string, geometry::Box>> blanks;  // the pieces of stock, as the face shows them
  double thickness_mm = 0;                                    // from this face to the far side
};

/// The faces of a job on which something is drilled, routed or cut out, in the order in which they are first worked.
/// Printed layers are seen from the front.
[[nodiscard]] std::vector<FaceJob> faces(const Job&);

}  // namespace visewright::outputs::papers
