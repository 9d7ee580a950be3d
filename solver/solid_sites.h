// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "mesh/solid_mesher.h"
#include "solver/sites.h"
#include "solver/solid_stress.h"
#include "solver/surface_fit.h"

namespace splicewright
{

// Displacement of one body under the unit loads, [3, n mesh nodes] mm: torque of 1 N*mm about z, bending of 1 N*mm with
// its tension side towards x, the same towards y, tension of 1 N; press: the fit as it is, empty without one.
struct SolidUnitDisplacements
{
    Eigen::Matrix3Xd torsion, towards_x, towards_y, axial, press;
};

// A stretch of surface that is judged: the sites of the meridian model, and "lap-corner.S".
struct SolidSite
{
    std::string id;
    std::vector<std::string> faces;
    bool may_be_pressed = false;  // its metal may push on other metal: its stress is that of the metal below
    std::function<bool(const Eigen::Vector3d&)> counts;
};

// The sites that this mesh has, in the order of the meridian model. Absent ones stand in the mesh answer.
// A lap corner is the re-entrant one of the bar that its name tells.
std::vector<SolidSite> solid_sites(const Case& asked, const Scenario& scenario, const SolidMesh& mesh);

// Stress of all unit loads on the surfaces of a body: the free ones in one piece, so that a site that goes over into
// other surface is read from both sides of its border; the metal's own beside faces that may be pressed.
class SolidSurfaces
{
public:
    SolidSurfaces(const SolidMesh& mesh, const std::vector<ElasticConstants>& steel,
                  const SolidUnitDisplacements& unit);
    // At the nodes of a site. Places of two steels or of two smooth stretches stand there twice.
    [[nodiscard]] SiteStress at(const SolidSite& site) const;

private:
    struct Load
    {
        Eigen::Matrix<double, 6, Eigen::Dynamic> surface, below;  // [6, n places], see in_frame; below: with a lap
    };
    [[nodiscard]] std::vector<std::int32_t> places_of(const SolidSite& site) const;

    const SolidMesh& mesh_;
    std::map<std::string, std::size_t> first_face_;  // of each name, in the list of all
    FramedPlaces places_;
    std::vector<Load> loads_;  // torsion, towards x, towards y, axial, press where there is one
};

}  // namespace splicewright
