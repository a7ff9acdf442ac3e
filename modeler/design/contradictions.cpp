#include "design/contradictions.h"

#include <string>

namespace visewright::design {
namespace {

using base::Place;

std::string at_line(Place place) { return "in line " + std::to_string(place.line); }

std::string counted(std::size_t count, std::string_view what) {
  return std::to_string(count) + " " + std::string(what) + (count == 1 ? "" : "s");
}

/// The key of a table as it stands in the file; null when it does not.
const reading::Entry* written(const reading::Table& file, std::string_view table, std::string_view key) {
  const reading::Entry* entry = file.find(table);
  const auto* inside = entry == nullptr ? nullptr : std::get_if<reading::Table>(&entry->value.what);
  return inside == nullptr ? nullptr : inside->find(key);
}

/// Collects the faults; one function a contradiction.
class Checks {
 public:
  Checks(const Design& design, const reading::Table& file, const standards::Catalogue& catalogue)
      : design_(&design), file_(&file), catalogue_(&catalogue), gears_(design.train.teeth.value.size()) {}

  base::Faults all() {
    one_pitch();
    if (gears_ > 0) {
      ratio_of_one();
      list_lengths();
      hands_and_parity();
      centre_drive();
    }
    nut_of_the_thread();
    axles_in_order();
    obstacles_have_size();
    return std::move(faults_);
  }

 private:
  void add(Place place, std::string key, std::string wrong, std::string right) {
    faults_.push_back({base::Cause::input, place, std::move(key), std::move(wrong), std::move(right)});
  }

  [[nodiscard]] std::string teeth_line() const { return at_line(design_->train.teeth.place); }

  void one_pitch() {
    const reading::Entry* module = written(*file_, "train", "module");
    const reading::Entry* pitch = written(*file_, "train", "diametral_pitch");
    const reading::Entry* train = file_->find("train");
    const std::string right = "one of module and diametral_pitch, for example module = 3";
    if (module != nullptr && pitch != nullptr) {
      const bool module_first = module->place.line <= pitch->place.line;
      const reading::Entry& first = module_first ? *module : *pitch;
      const reading::Entry& second = module_first ? *pitch : *module;
      add(second.place, "train." + second.key,
          "the pitch is given twice: " + first.key + " stands " + at_line(first.place), right);
    }
    const bool readable = train == nullptr || std::holds_alternative<reading::Table>(train->value.what);
    if (module == nullptr && pitch == nullptr && readable) {
      add(train == nullptr ? Place{} : train->place, "train", "neither module nor diametral_pitch is given", right);
    }
  }

  void ratio_of_one() {
    const std::vector<int>& teeth = design_->train.teeth.value;
    if (teeth.front() == teeth.back()) return;
    add(design_->train.teeth.place, "train.teeth",
        "the first gear has " + std::to_string(teeth.front()) + " teeth and the last " + std::to_string(teeth.back()) +
            ", so one screw would outrun the other",
        "the same number of teeth for the first and the last gear");
  }

  template <class T>
  void same_count(const Maybe<std::vector<T>>& list, std::string_view key, std::size_t wanted, std::string_view each) {
    if (!list || list->value.size() == wanted) return;
    add(list->place, std::string(key),
        "this list holds " + counted(list->value.size(), "value") + ", but teeth " + teeth_line() + " gives " +
            counted(gears_, "gear"),
        counted(wanted, "value") + ", one for each " + std::string(each));
  }

  void list_lengths() {
    const Train& train = design_->train;
    const bool one_for_all = train.profile_shift && train.profile_shift->value.size() == 1;
    if (!one_for_all) same_count(train.profile_shift, "train.profile_shift", gears_, "gear");
    same_count(train.centre_distances, "train.centre_distances", gears_ - 1, "pair of neighbouring gears");
    same_count(design_->measured.axle_centres, "measured.axle_centres", gears_, "gear");
  }

  void hands_and_parity() {
    const Maybe<std::vector<std::string>>& hand = design_->screw.hand;
    if (!hand) return;
    const bool equal = hand->value.front() == hand->value.back();
    const bool even = gears_ % 2 == 0;
    if (equal != even) return;
    const std::string said = "teeth " + teeth_line() + " gives " + counted(gears_, "gear") + ", so the screws turn " +
                             (even ? "opposite ways" : "the same way");
    if (even) {
      add(hand->place, "screw.hand", said + ", but both threads are of the " + hand->value.front() + " hand",
          "one thread of each hand, as [\"right\", \"left\"], or an odd count of gears");
    } else {
      add(hand->place, "screw.hand", said + ", but the threads are of different hands",
          "both threads of one hand, as \"right\", or an even count of gears");
    }
  }

  void centre_drive() {
    const Maybe<std::string>& at = design_->drive.at;
    if (!at || at->value != "centre" || gears_ % 2 == 1) return;
    add(at->place, "drive.at",
        "teeth " + teeth_line() + " gives " + counted(gears_, "gear") + ", and of an even count none is in the middle",
        "an odd count of gears, or a wheel at \"ends\", \"left\" or \"right\"");
  }

  void nut_of_the_thread() {
    const Maybe<std::string>& name = design_->collar.nut;
    const standards::ThreadRow* thread = catalogue_->thread(design_->screw.thread.value);
    const standards::NutRow* nut = name ? catalogue_->nut(name->value) : nullptr;
    if (thread == nullptr || nut == nullptr || catalogue_->thread(nut->thread) == thread) return;
    add(name->place, "collar.nut",
        "this nut is for " + nut->thread + ", but thread " + at_line(design_->screw.thread.place) + " gives " +
            thread->designation,
        "a nut for " + thread->designation + ", or leave the nut out");
  }

  void axles_in_order() {
    const auto& centres = design_->measured.axle_centres;
    if (!centres) return;
    const auto& list = centres->value;
    for (std::size_t i = 1; i < list.size(); ++i) {
      if (list[i - 1].front() < list[i].front()) continue;
      add(centres->place, "measured.axle_centres",
          "value " + std::to_string(i + 1) + " lies no further to the right than value " + std::to_string(i),
          "the axes from left to right");
      return;
    }
  }

  void obstacles_have_size() {
    for (const Obstacle& obstacle : design_->bench.obstacles) {
      const auto& from = obstacle.from.value;
      const auto& to = obstacle.to.value;
      if (from.size() != 3 || to.size() != 3) continue;
      for (std::size_t i = 0; i < 3; ++i) {
        if (from[i] != to[i]) continue;
        constexpr std::string_view axes[]{"to the right", "back", "down"};
        add(obstacle.to.place, "bench.obstacle.to",
            "the corners are equal in their measure " + std::string(axes[i]) + ": from stands " +
                at_line(obstacle.from.place),
            "two opposite corners of a box");
      }
    }
  }

  const Design* design_;
  const reading::Table* file_;
  const standards::Catalogue* catalogue_;
  std::size_t gears_;
  base::Faults faults_;
};

}  // namespace

base::Faults contradictions(const Design& design, const reading::Table& file, const standards::Catalogue& catalogue) {
  return Checks(design, file, catalogue).all();
}

}  // namespace visewright::design
