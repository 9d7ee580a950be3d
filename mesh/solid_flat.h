// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <string>
#include <unordered_map>
#include <vector>

#include "mesh/solid_faces.h"
#include "mesh/solid_mesh.h"

namespace splicewright
{

// Four-node tetrahedra as the mesher leaves them, unfused faces still closed.
struct FlatSolid
{
    struct Triangle
    {
        std::array<int, 3> nodes{};
        int face = 0;  // number of the mesher's face, then index into the shapes
    };
    std::vector<SolidPoint> nodes;
    std::vector<std::array<int, 4>> tetrahedra;  // of positive volume
    std::vector<int> region;                     // number of the mesher's volume, then index into the regions
    std::vector<Triangle> triangles;             // on every face of the geometry, outer and inner, each once
};

// An edge by its two nodes, in either order.
inline std::uint64_t solid_edge_key(int a, int b)
{
    const auto low = static_cast<std::uint32_t>(a < b ? a : b), high = static_cast<std::uint32_t>(a < b ? b : a);
    return (static_cast<std::uint64_t>(low) << 32) | high;
}

// Edges of a tetrahedron in the order of its mid-edge nodes.
constexpr std::array<std::array<int, 2>, 6> edges_of_tetrahedron{{{0, 1}, {1, 2}, {2, 0}, {0, 3}, {1, 3}, {2, 3}}};

// Corners of the face opposite to each corner, seen from outside against the clock.
constexpr std::array<std::array<int, 3>, 4> faces_of_tetrahedron{{{1, 2, 3}, {0, 3, 2}, {0, 1, 3}, {0, 2, 1}}};

// Six times the volume: (1-0) x (2-0) . (3-0), mm^3.
double six_volumes(const SolidPoint& a, const SolidPoint& b, const SolidPoint& c, const SolidPoint& d);

// The mesher's numbers replaced by shapes and regions, each found by where its nodes lie; nodes on shapes are moved
// onto them exactly, tetrahedra turned to positive volume. Throws CannotCompute when a part of the mesh lies nowhere.
void recognise_parts(FlatSolid& flat, const SolidGeometry& geometry, const std::vector<FaceShape>& shapes);

// An element with two faces on one smooth surface is flat where they meet, and folds when it is curved: the edge
// opposite to both is parted, so that each element has one of them.
void part_flat_elements(FlatSolid& flat);

// 1 for a regular tetrahedron, 0 for a flat one: six volumes over the cube of the mean edge, times the root of two.
double shape_of_element(const FlatSolid& flat, std::size_t element);
double worst_shape(const FlatSolid& flat);

// Moves inner nodes of badly shaped elements where that makes the worst element around them better.
void mend_flat_solid(FlatSolid& flat);

// The shapes that each edge of a triangle lies on.
std::unordered_map<std::uint64_t, std::vector<const FaceShape*>> shapes_of_edges(const FlatSolid& flat,
                                                                                 const std::vector<FaceShape>& shapes);

// Every tetrahedron in eight, new nodes on the shapes; a flat element stays straight where the shape would turn it
// over.
FlatSolid refined(const FlatSolid& flat, const std::vector<FaceShape>& shapes);

// Ten-node tetrahedra, and what had to be done to them.
struct CurvedSolid
{
    SolidMesh mesh;
    std::size_t curved_edges = 0;
    std::size_t straightened_edges = 0;  // of those, edges that a curve would have folded an element at
    std::map<std::string, std::vector<std::int32_t>> edge_nodes;  // on "land-edge" of a half lap and each "plug-edge.N"
    double smallest_jacobian_ratio = 1;  // least over greatest Jacobian determinant of an element
};

// Curved, split along unfused faces and put out of line.
CurvedSolid finished_solid(const FlatSolid& flat, const SolidGeometry& geometry, const std::vector<FaceShape>& shapes);

// Least and greatest Jacobian determinant over corners, mid-edge nodes and quadrature points, mm^3.
std::array<double, 2> jacobian_range(const std::array<SolidPoint, 10>& nodes);

// A mesh with closed faces, and which face of which element lies on which shape.
struct ClosedSolid
{
    SolidMesh mesh;
    struct ShapeFace
    {
        std::array<int, 2> element{-1, -1};  // on both sides; the second -1 on the outside
        std::array<int, 2> face{-1, -1};     // opposite to which corner
        int shape = 0;
    };
    std::vector<ShapeFace> shape_faces;
};

// Behind the name of an unfused face, for the side that stands second in its pairs.
constexpr const char* other_side_suffix = " (other side)";

// Nodes doubled along unfused faces, so that what hangs together only through such a face comes apart; nodes on the
// border of an unfused face stay one. Fills faces and pairs.
SolidMesh split_solid(const ClosedSolid& closed, const SolidGeometry& geometry, const std::vector<FaceShape>& shapes);

}  // namespace splicewright
