// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "mesh/flat_mesh.h"
#include "mesh/mesh.h"
#include "mesh/outline.h"
#include "mesh/size_field.h"

namespace splicewright
{

// Triangulates an outline. The mesher's session opens and closes inside; nothing is printed.
// Throws CannotCompute with the mesher's own last words when it fails.
FlatMesh triangulation(const Outline& outline, const MeshSize& size);

// triangulation and finished_mesh in one.
Mesh generate_mesh(const Outline& outline, const MeshSize& size);

}  // namespace splicewright
