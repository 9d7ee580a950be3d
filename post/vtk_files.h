// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <string>

#include "solver/solid_fields.h"
#include "solver/stress_field.h"

namespace splicewright
{

struct FieldFileRequest
{
    const SolvedFields& fields;
    CombinedLoad load;
    std::string load_text;  // "peak torque 1150 N·m with 70 N·m bending"
    std::string title;
    std::string version;           // of the program
    std::filesystem::path folder;  // exists
};

// Files in VTK's XML format for unstructured grids, read by any VTK reader. All values are finite (a promise).
// Throw CannotCompute, naming the file, when it cannot be written.

// section.vtu: the meridian section as second-order triangles, points (z, r, 0) in mm, one for each region node.
// Point arrays: for each unit load stress (components rr tt zz rt tz rz), von Mises stress and displacement
// (r theta z); the same for the stated load at theta = 0, and its worst von Mises stress over theta.
void write_section_file(const FieldFileRequest& request);

// revolved.vtu: the whole body as second-order wedges, x = r cos theta, y = r sin theta, z along the shaft, mm.
// Point arrays for the stated load: stress (xx yy zz xy yz xz), von Mises stress, displacement (x y z).
void write_revolved_file(const FieldFileRequest& request);

struct SolidFileRequest
{
    const SolidFields& fields;
    std::string load_text, title, version, scenario;  // "sound"
    std::filesystem::path folder;                     // exists
};

// Points of the largest solid.vtu: about 60 MB.
constexpr std::size_t most_solid_points = 900000;

// solid.vtu: the solid model as second-order tetrahedra, x y z in mm, a point for each region that a node belongs to
// and for each side of an unfused face. Point arrays for the stated load: stress (xx yy zz xy yz xz), its von Mises
// stress and principal stress of the largest size; the largest of both over a turn of the bending; displacement.
// A mesh with more points than that is written with an eighth of its elements, and the file says so.
void write_solid_file(const SolidFileRequest& request);

// solid-lap.vtu: the faces between the bars that may touch, as second-order triangles: pressure and gap. Expects them.
void write_solid_lap_file(const SolidFileRequest& request);

}  // namespace splicewright
