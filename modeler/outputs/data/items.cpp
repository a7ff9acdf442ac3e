#include "outputs/data/items.h"

#include <algorithm>
#include <map>

namespace visewright::outputs::data {
namespace {

/// A member part with the number of times it is used in the whole, in the order of first use.
std::vector<std::pair<const parts::Part*, int>> distinct(const std::vector<parts::Member>& members) {
  std::vector<std::pair<const parts::Part*, int>> found;
  for (const parts::Member& member : members) {
    const auto same =
        std::find_if(found.begin(), found.end(), [&](const auto& f) { return f.first == member.part.get(); });
    if (same == found.end()) {
      found.emplace_back(member.part.get(), 1);
    } else {
      ++same->second;
    }
  }
  return found;
}

class Numbering {
 public:
  explicit Numbering(const assembly::Assembly& assembly) {
    std::vector<int> placed(assembly.parts.size(), 0);
    for (const assembly::Placed& p : assembly.placed) ++placed[p.part];
    for (std::uint32_t i = 0; i < assembly.parts.size(); ++i) {
      of_ = i;
      if (placed[i] > 0) add_whole(*assembly.parts[i], placed[i]);
    }
  }
  std::vector<Item> take() && { return std::move(items_); }

 private:
  void add_whole(const parts::Part& part, int count) {
    if (!exists_already(part)) return add(part, std::to_string(++last_), count, 0);
    if (const auto* built = std::get_if<parts::BuiltUp>(&part.made)) {
      for (const auto& [member, times] : distinct(built->members)) add_whole(*member, count * times);
    }
  }

  void add(const parts::Part& part, const std::string& number, int count, int level) {
    items_.push_back({number, &part, nullptr, count, level, of_});
    const auto* built = std::get_if<parts::BuiltUp>(&part.made);
    if (!built) return;
    int sub = 0;
    for (const auto& [member, times] : distinct(built->members)) {
      if (!exists_already(*member)) add(*member, number + "." + std::to_string(++sub), count * times, level + 1);
    }
    for (const parts::Joint& joint : built->joints) {
      for (const parts::Bead& bead : joint.beads) {
        items_.push_back({number + "." + std::to_string(++sub), nullptr, &bead, count, level + 1, of_});
      }
    }
  }

  std::vector<Item> items_;
  int last_ = 0;
  std::uint32_t of_ = 0;
};

}  // namespace

bool exists_already(const parts::Part& part) {
  if (part.making == parts::Making::existing) return true;
  const auto* piece = std::get_if<parts::Piece>(&part.made);
  return piece && std::holds_alternative<parts::Existing>(piece->stock);
}

std::vector<Item> items(const assembly::Assembly& assembly) { return Numbering(assembly).take(); }

std::vector<std::string> body_items(const assembly::Assembly& assembly, std::uint32_t index) {
  std::map<const parts::Piece*, std::string> of_piece;      // looked up only, never walked
  std::map<std::string, std::vector<std::string>> of_bead;  // by name, in order
  for (const Item& item : items(assembly)) {
    if (item.of != index) continue;
    if (item.bead) {
      of_bead[item.bead->name].push_back(item.number);
    } else if (const auto* piece = std::get_if<parts::Piece>(&item.part->made)) {
      of_piece[piece] = item.number;
    }
  }
  std::map<std::string, std::size_t> used;
  std::vector<std::string> numbers;
  for (const parts::Body& body : parts::bodies(*assembly.parts[index])) {
    if (body.piece) {
      const auto found = of_piece.find(body.piece);
      numbers.push_back(found == of_piece.end() ? std::string() : found->second);
      continue;
    }
    // A whole that is used twice as a member has its beads twice among the bodies and once among the items.
    const std::vector<std::string>& known = of_bead[body.name];
    numbers.push_back(known.empty() ? std::string() : known[used[body.name]++ % known.size()]);
  }
  return numbers;
}

std::string part_item(const assembly::Assembly& assembly, std::uint32_t index) {
  for (const Item& item : items(assembly)) {
    if (item.of == index && item.part == assembly.parts[index].get()) return item.number;
  }
  return {};
}

}  // namespace visewright::outputs::data
