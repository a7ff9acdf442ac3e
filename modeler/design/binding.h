// How a key of the design file is tied to its field: a typed pair of functions, one to look and one to put.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "design/design.h"

namespace visewright::design {

/// A field of the design. `index` says which one of a table that may stand several times; else it is 0.
template <class T>
struct Slot {
  using Value = T;
  std::optional<Given<T>> (*get)(const Design&, std::size_t index);
  void (*put)(Design&, std::size_t index, Given<T>);
};

using Binding =
    std::variant<Slot<Length>, Slot<double>, Slot<int>, Slot<units::Angle>, Slot<Force>, Slot<bool>, Slot<std::string>,
                 Slot<units::LengthUnit>, Slot<std::vector<int>>, Slot<std::vector<double>>, Slot<std::vector<Length>>,
                 Slot<std::vector<std::string>>, Slot<std::vector<std::vector<Length>>>>;

namespace binding_detail {

template <class T>
struct Leaf {  // a plain field, which is always there
  using Value = T;
};
template <class T>
struct Leaf<Given<T>> {
  using Value = T;
};
template <class T>
struct Leaf<Maybe<T>> {
  using Value = T;
};

template <class T>
constexpr bool is_list = false;
template <class T>
constexpr bool is_list<std::vector<T>> = true;

/// Walks down a chain of members; a list on the way is entered at `index`.
template <auto First, auto... Rest>
auto& follow(auto& from, std::size_t index) {
  auto& next = from.*First;
  if constexpr (sizeof...(Rest) == 0) {
    return next;
  } else if constexpr (is_list<std::remove_cvref_t<decltype(next)>>) {
    return follow<Rest...>(next[index], index);
  } else {
    return follow<Rest...>(next, index);
  }
}

template <class T>
std::optional<Given<T>> seen(const T& plain) {
  return Given<T>{plain, {}};
}
template <class T>
std::optional<Given<T>> seen(const Given<T>& given) {
  return given;
}
template <class T>
std::optional<Given<T>> seen(const Maybe<T>& maybe) {
  return maybe;
}

template <class T>
void set(T& plain, Given<T> given) {
  plain = std::move(given.value);
}
template <class T>
void set(Given<T>& field, Given<T> given) {
  field = std::move(given);
}
template <class T>
void set(Maybe<T>& field, Given<T> given) {
  field = std::move(given);
}

}  // namespace binding_detail

/// The slot of a field named by its chain of members: field<&Design::drive, &Drive::wheel, &Wheel::hub>().
template <auto... Members>
constexpr Binding field() {
  using Field = std::remove_cvref_t<decltype(binding_detail::follow<Members...>(std::declval<Design&>(), 0))>;
  using T = typename binding_detail::Leaf<Field>::Value;
  return Slot<T>{[](const Design& design, std::size_t index) -> std::optional<Given<T>> {
                   return binding_detail::seen(binding_detail::follow<Members...>(design, index));
                 },
                 [](Design& design, std::size_t index, Given<T> given) {
                   binding_detail::set(binding_detail::follow<Members...>(design, index), std::move(given));
                 }};
}

}  // namespace visewright::design
