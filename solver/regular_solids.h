// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>

#include "mesh/solid_mesh.h"
#include "solver/solid_system.h"

// Solids of regular shape, meshed without a mesher: for what is known in closed form and for tests.
namespace splicewright::regular
{

// Which middle nodes of edges leave the straight line, so that they stand on circles around the axis.
enum class Curving
{
    none,  // all elements straight: a faceted bar
    skin,  // edges on the outside only, as a mesher does it
    all,
};

// A round bar along z from 0 to length, the axis at x = y = 0; faces "left", "right" and "outside".
// rings circles of elements around the axis, each with six more than the one inside.
struct BarShape
{
    double radius = 10, length = 60;  // mm
    int rings = 4, layers = 12;
    Curving curving = Curving::skin;
    std::function<double(double)> layer_at = [](double part) { return part; };  // both 0 to 1 along the length
};
SolidMesh round_bar(const BarShape& shape);

// A box from the origin; faces "left" at z = 0, "right", "x0", "x1", "y0", "y1". Cells are cut into six tetrahedra.
struct BoxShape
{
    double x = 20, y = 10, z = 60;  // mm
    int nx = 2, ny = 2, nz = 6;
};
SolidMesh box(const BoxShape& shape);

// Moves every node, middle ones too.
using Move = std::function<Eigen::Vector3d(const Eigen::Vector3d&)>;
void move_nodes(SolidMesh& mesh, const Move& move);

inline bool everywhere(const Eigen::Vector3d& /*p*/) { return true; }

// Region of each element by the centre of its corners.
void set_regions(SolidMesh& mesh, const std::function<int(const Eigen::Vector3d&)>& region_at);

// The elements whose corners have such a centre, their nodes and faces, and those faces between kept and dropped
// elements as `name`.
SolidMesh kept_part(const SolidMesh& mesh, const std::string& name,
                    const std::function<bool(const Eigen::Vector3d&)>& keeps);

// Splits the nodes between two regions where `parts` says so, into pairs of that name: first in region a.
void split_between(SolidMesh& mesh, int a, int b, const std::string& name,
                   const std::function<bool(const Eigen::Vector3d&)>& parts);

// A bar in a sleeve, sleeve joined at its ends only, two slits and a joined land between, finer towards the middle;
// regions: bar, sleeve. About 72 rings^2 layers unknowns of which most are in the sleeve's length.
SolidMesh spliced_bar(int rings, int layers);

Eigen::Vector3d place(const SolidMesh& mesh, std::size_t node);

// Holds axes of the nodes: 1 x, 2 y, 4 z, added.
void hold(SolidBody& body, const SolidMesh& mesh, const std::function<int(const Eigen::Vector3d&)>& axes);

// Displacement or force at each node from a field: [3, n_nodes].
Eigen::Matrix3Xd at_nodes(const SolidMesh& mesh, const Move& field);

}  // namespace splicewright::regular
