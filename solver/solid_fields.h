// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "solver/stress_field.h"

namespace splicewright
{

struct SolidLevel;

// Two faces that may touch, under the load that is shown.
struct SolidContactFields
{
    std::string name;                               // "lap", "land", "lap-corner.S"
    Eigen::Matrix3Xf place;                         // [3, n] mm, before loading
    Eigen::VectorXf pressure, gap;                  // [n] MPa and mm
    std::vector<std::array<std::int32_t, 6>> face;  // [n faces] into place, order as SolidMesh::Face
};

// A site that has no stress of its own: weld metal that ends sharply.
struct SolidNamedPlace
{
    std::string site;  // "plug-edge.N", "weld-end.N", "throat.S"
    Eigen::Vector3d place{0, 0, 0};
};

// The worst over a turn of the bending and over the brackets under one load, and the movement.
struct SolidLoadFields
{
    CombinedLoad load;
    Eigen::VectorXf von_mises, principal, shear;  // [n] MPa, none negative; shear: sqrt(rt^2 + tz^2), around the axis
    Eigen::Matrix3Xf displacement;                // [3, n] mm, bending towards +x
};

// What files and pictures show of the solid model: one mesh, and its fields under one load. A node stands here once for
// each region that it belongs to, and once for each side of an unfused face: no value is averaged across either.
struct SolidFields
{
    CombinedLoad load;                // bending towards +x where one direction is shown
    std::vector<std::string> region;  // names
    std::vector<std::int32_t> node;   // [n] the mesh node of each point
    Eigen::Matrix3Xd place;           // [3, n] mm, before loading
    Eigen::Matrix3Xf displacement;    // [3, n] mm, without the movement as a rigid body
    // [6, n] xx yy zz xy yz xz, MPa, tensor components: in the metal recovered from its elements; on surfaces read as
    // the sites are, by surface_fit.h.
    Eigen::Matrix<float, 6, Eigen::Dynamic> stress;
    // Largest over a turn of the bending and over the brackets; the principal stress by size, with its sign. [n] MPa
    Eigen::VectorXf von_mises, principal;

    std::vector<std::array<std::int32_t, 10>> element;  // points, order as SolidMesh::elements
    std::vector<std::int32_t> element_region;
    std::vector<SolidContactFields> contact;
    std::vector<SolidNamedPlace> weld_metal;
    std::vector<SolidLoadFields> each;  // of further loads, where they were asked for
    bool is_thinned = false;

    [[nodiscard]] std::size_t size() const { return node.size(); }
};

// Of a solved mesh; displacement and stress of the last bracket whose lap touches, else of the first one.
// each: loads made of parts of `load`, as large as there.
SolidFields solid_fields(const SolidLevel& level, const CombinedLoad& load, const std::vector<CombinedLoad>& each = {});

// The same values on the mesh before each of its elements was parted in eight; see nested_solid_meshes. Contact as it
// was.
SolidFields thinned(const SolidFields& fine);

enum class SolidFace
{
    outside,  // free for all to see
    unfused,  // another face of the same body stands against it
    between,  // two regions are one there; listed once
};

struct SolidSkinFace
{
    std::array<std::int32_t, 6> point;  // order as SolidMesh::Face, outward; of `between` out of the first region
    SolidFace kind = SolidFace::outside;
};
// All faces of the elements but those inside one region.
std::vector<SolidSkinFace> solid_skin(const SolidFields& fields);

}  // namespace splicewright
