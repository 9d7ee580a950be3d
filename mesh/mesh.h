// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <map>
#include <string>
#include <vector>

namespace splicewright
{

// An edge of a triangle lying on a named curve, walked so that its triangle lies on the left.
struct MeshEdge
{
    int first = 0, middle = 0, last = 0;  // node indices
    int triangle = 0;
};

// Two coincident nodes on the two faces of an unfused curve.
struct FacePair
{
    int inner = 0, outer = 0;  // node of the bar, node of the sleeve (slit); left bar, right bar (land)
    Eigen::Vector2d normal;    // [z, r] unit, from the inner to the outer face
    std::string curve;         // "slit.S", "butt-surface.S" or "land"
};

// Six-node triangles of the meridian section; immutable once made.
struct Mesh
{
    Eigen::Matrix2Xd node;                           // [2, n_nodes] mm: row 0 z, row 1 r
    Eigen::Matrix<int, 6, Eigen::Dynamic> triangle;  // [6, n_triangles] corners counter-clockwise in (z, r), then the
                                                     // middles of edges 01, 12, 20: the order of VTK
    std::vector<int> region_of;                      // [n_triangles] index into region
    std::vector<std::string> region;                 // names, as in the outline
    std::map<std::string, std::vector<MeshEdge>> curve;  // by curve name; on an interior curve both sides are listed
    std::vector<FacePair> pair;
    double smallest_angle_deg = 0;       // over all corners
    double smallest_jacobian_ratio = 0;  // min over triangles of min/max Jacobian at the quadrature points

    [[nodiscard]] int n_nodes() const { return static_cast<int>(node.cols()); }
    [[nodiscard]] int n_triangles() const { return static_cast<int>(triangle.cols()); }
};

}  // namespace splicewright
