// What is inside a Solid. Private to this folder.
#pragma once

#include <TopoDS_Shape.hxx>

#include "kernel/solid.h"

namespace visewright::kernel {

struct Solid::Impl {
  TopoDS_Shape shape;
};

[[nodiscard]] inline Solid wrapped(TopoDS_Shape shape) {
  return Solid(std::make_shared<const Solid::Impl>(Solid::Impl{std::move(shape)}));
}
[[nodiscard]] inline const TopoDS_Shape& shape_of(const Solid& solid) { return solid.impl().shape; }

/// The same shape without pieces shared with any other solid, and without facets left from earlier meshing.
[[nodiscard]] TopoDS_Shape own_copy(const TopoDS_Shape&);

}  // namespace visewright::kernel
