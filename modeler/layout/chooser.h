// How a choice is made: what the design gives wins, else the rule decides; either way the ledger remembers why.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "design/design.h"
#include "reasons/ledger.h"

namespace visewright::layout {

using Ids = std::initializer_list<reasons::NumberId>;

class Chooser {
 public:
  Chooser(reasons::Ledger& ledger, units::LengthUnit unit) : ledger_(ledger), unit_(unit) {}

  /// The given length, or `derived_mm` by the rule.
  reasons::Size length(const reasons::Rule& rule, const design::Maybe<units::Length>& given, double derived_mm,
                       Ids from = {}) {
    if (given) return ledger_.length(std::string(rule.name), given->value, reasons::Basis::given, rule, {}, given->place);
    return derived(rule, derived_mm, from);
  }
  /// A measured figure replaces what was given or derived.
  reasons::Size length(const reasons::Rule& rule, const design::Maybe<units::Length>& measured,
                       const design::Maybe<units::Length>& given, double derived_mm, Ids from = {}) {
    if (!measured) return length(rule, given, derived_mm, from);
    return ledger_.length(std::string(rule.name), measured->value, reasons::Basis::measured, rule, {}, measured->place);
  }
  reasons::Size derived(const reasons::Rule& rule, double mm, Ids from = {}) {
    return named(rule, std::string(rule.name), mm, from);
  }
  /// For numbers that come in rows: the rule's name with something added.
  reasons::Size named(const reasons::Rule& rule, std::string name, double mm, Ids from = {}) {
    return ledger_.length(std::move(name), units::mm(rounded(mm)), reasons::Basis::derived, rule, from);
  }
  /// A size that a bought thing brings along.
  reasons::Size catalogue(const reasons::Rule& rule, std::string name, units::Length value) {
    return ledger_.length(std::move(name), value, reasons::Basis::catalogue, rule);
  }
  /// A coefficient, given or assumed.
  reasons::Ratio assumed(const reasons::Rule& rule, reasons::Unit unit, const design::Maybe<double>& given, double usual) {
    if (given) return ledger_.ratio(std::string(rule.name), unit, given->value, reasons::Basis::given, rule, {}, given->place);
    return ledger_.ratio(std::string(rule.name), unit, usual, reasons::Basis::assumed, rule);
  }
  void text(const reasons::Rule& rule, std::string name, std::string value, const base::Place* given) {
    ledger_.choice(std::move(name), std::move(value), given ? reasons::Basis::given : reasons::Basis::derived, rule,
                   given ? *given : base::Place{});
  }

  /// Up to the next whole step: `metric_mm`, or `inch_64ths` of 1/64 in when the design is in inches. What is on a step
  /// already stays.
  [[nodiscard]] double up(double mm, double metric_mm, int inch_64ths) const {
    const double step = unit_ == units::LengthUnit::inch ? inch_64ths * 25.4 / 64.0 : metric_mm;
    return std::ceil(rounded(mm / step)) * step;
  }
  /// Up to the next size owned; to the next whole step when none is owned that large.
  [[nodiscard]] double up_to_owned(double mm, const std::vector<double>& owned_mm) const {
    double best = 0;
    for (const double size : owned_mm)
      if (size >= mm - 1e-9 && (best == 0 || size < best)) best = size;
    return best > 0 ? best : up(mm, 1.0, 4);
  }
  [[nodiscard]] bool inch() const { return unit_ == units::LengthUnit::inch; }
  [[nodiscard]] reasons::Ledger& ledger() { return ledger_; }

  /// To 1e-9, so that every processor takes the same decisions.
  [[nodiscard]] static double rounded(double value) { return std::round(value * 1e9) / 1e9; }

 private:
  reasons::Ledger& ledger_;
  units::LengthUnit unit_;
};

/// The place of a given value, or null.
template <class T>
[[nodiscard]] const base::Place* place_of(const design::Maybe<T>& given) {
  return given ? &given->place : nullptr;
}

}  // namespace visewright::layout
