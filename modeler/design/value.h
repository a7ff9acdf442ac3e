// One value of the design file, read as its key's type.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/fault.h"
#include "design/keys.h"
#include "reading/tree.h"
#include "standards/catalogue.h"

namespace visewright::design {

/// Reads values for one key after the other. What is wrong goes into `faults`; the value is then absent.
class ValueReader {
 public:
  ValueReader(units::LengthUnit bare, const standards::Catalogue& catalogue, base::Faults& faults)
      : bare_(bare), catalogue_(&catalogue), faults_(&faults) {}

  /// Reads the value of a key and puts it into the design.
  void read(const KeyRow&, const reading::Value&, Design&, std::size_t index);

 private:
  // One overload for each type that a slot may hold. Each gives false when it has said a fault.
  bool take(const reading::Value&, Length&);
  bool take(const reading::Value&, double&);
  bool take(const reading::Value&, int&);
  bool take(const reading::Value&, units::Angle&);
  bool take(const reading::Value&, Force&);
  bool take(const reading::Value&, bool&);
  bool take(const reading::Value&, std::string&);
  bool take(const reading::Value&, units::LengthUnit&);
  template <class T>
  bool take(const reading::Value&, std::vector<T>&);

  bool take_length_text(const reading::Value&, Length&);
  bool take_bare_length(const reading::Value&, double, Length&);
  std::optional<double> plain_number(const reading::Value&);
  bool right_count(const reading::Value&, std::size_t count, Items);
  /// Checks the words of a text against the row: choice, name, date, strength class.
  bool right_words(const reading::Value&, const std::string&);
  bool in_range(const reading::Value&, double);

  bool refuse(const reading::Value&, const std::string& wrong);
  bool refuse(const reading::Value&, const std::string& wrong, std::string right);
  bool wrong_type(const reading::Value&);
  [[nodiscard]] std::string right() const;
  [[nodiscard]] std::string key() const;

  units::LengthUnit bare_;
  const standards::Catalogue* catalogue_;
  base::Faults* faults_;
  const KeyRow* row_ = nullptr;
  std::string item_;  // "value 2" while the second of a list is read
};

}  // namespace visewright::design
