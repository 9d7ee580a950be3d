// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"
#include "mesh/outline.h"
#include "mesh/size_field.h"
#include "solver/closed_slits.h"
#include "solver/sites.h"
#include "solver/stress_field.h"
#include "solver/unit_solution.h"

namespace splicewright
{

// A value with its discretisation error, in the value's unit.
struct Measured
{
    double value = 0;
    double error = 0;  // half width of the bar
};

// Peak stress of one site under one unit load.
struct UnitPeak
{
    Measured von_mises, principal, shear;  // MPa per N*mm or per N
};

struct SiteAnswer
{
    std::string id;
    double z = 0, r = 0;  // of the torsion peak, mm
    UnitPeak torsion, bending, axial;
    std::vector<SiteStress> brackets;  // one for each way in which the slit may hang together; judge by the worst
};

// Force of a weld on its sleeve, by unit load: N per mm of the ring of radius `radius`, amplitudes at theta = 0
// (tangential in bending: at 90 degrees). Outward: along the axis, away from the joint. Taken where the weld meets the
// sleeve.
struct WeldForce
{
    double radius = 0;  // mm, of the ring: the middle of the throat
    double torsion_tangential = 0;
    double bending_outward = 0, bending_radial = 0, bending_tangential = 0;
    double axial_outward = 0, axial_radial = 0;
    double error_pct = 0;
};

// A surface stress that was read beside a toe, and its part in the extrapolation.
struct ReadStress
{
    double distance = 0;  // from the toe, over the thickness
    double weight = 0;    // in the extrapolation
    double value = 0;     // MPa per N*mm, with its sign
};

// Surface stress extrapolated to a toe, by unit load: shear in torsion, stress along the meridian in bending
// (amplitude) and in axial load, MPa per N*mm or N.
struct ExtrapolatedStress
{
    Measured torsion_shear, bending_normal, axial_normal;
    std::vector<ReadStress> torsion_read, bending_read;  // what the first two are made of
};

// Structural stress at a toe, the weld's own notch left out.
struct HotSpot
{
    std::string site;      // "bar-toe.S", "sleeve-toe.S"
    double thickness = 0;  // mm, that the readings are measured in
    ExtrapolatedStress linear, quadratic;
};

// The sleeve's part of a load at z = 0, 0 .. 1.
struct SleeveShare
{
    Measured torsion, bending, axial;
};

struct Evidence
{
    int levels = 0, nodes = 0, elements = 0, unknowns = 0;
    double residual = 0, reaction_imbalance = 0;  // worst of all solves
    double section_imbalance = 0;                 // sleeve + butt against the load at z = 0
    double smallest_angle_deg = 0, smallest_jacobian_ratio = 0;
    double accuracy_pct = 0;  // asked
    double worst_error_pct = 0;
    bool reached = false;  // every site within the accuracy
    double mesh_seconds = 0, solve_seconds = 0, recover_seconds = 0;
};

// The answer for one scenario, of the meridian model or, with the same places, of the solid model.
struct MeridianAnswer
{
    Scenario scenario;
    std::vector<SiteAnswer> sites;
    std::vector<std::string> absent_sites;
    std::array<std::optional<WeldForce>, 2> weld;  // [left, right]
    std::vector<HotSpot> hot_spots;
    SleeveShare share;
    Measured twist;         // rad per N*mm, end to end
    Measured end_rotation;  // rad per N*mm
    Measured extension;     // mm per N
    Measured fit_pressure;  // MPa, mean of the press fit over the middle half of the pressed slit; 0 without
    Evidence evidence;
    SolvedFields fields;  // of the finest mesh, first bracket
};

struct Accuracy
{
    double target_pct = 1;  // for the error of every site
    int most_nodes = 150000;
    bool operator==(const Accuracy&) const = default;
};

// Meshes, solves and refines until two successive meshes agree within the accuracy at every site.
// The error bar of a stress comes from the change, between the last two meshes, of the whole hot stretch of its site;
// that of any other number from its own change. docs/error-bars.md tells how often they hold.
// Throws CannotCompute when no mesh or no balanced solution is found.
MeridianAnswer meridian_answer(const Case& asked, const Scenario& scenario, const Accuracy& accuracy);

// How far bar and sleeve come together by unit load where the slit is free, mm per N*mm or N, at most.
struct SlitClosing
{
    double bending = 0, axial = 0;
    [[nodiscard]] double by(const CombinedLoad& load) const;  // mm
};

// An answer with the slit as a load finds it.
struct SettledAnswer
{
    Case asked;  // with slits that close taken as snug
    std::optional<ClosedSlits> closed;
    SlitClosing closing;
    MeridianAnswer answer;
};

// The same, after the coarsest mesh has told which free slits bending and tension of that load close (displacements
// there are within a few per cent).
SettledAnswer settled_meridian_answer(const Case& asked, const Scenario& scenario, const Accuracy& accuracy,
                                      const CombinedLoad& load);

// A mesh that is fine everywhere at once, to hold other answers against.
struct ReferenceMesh
{
    double elements_per_quarter_turn = 54, sections_per_wall = 7.5, growth = 0.15, spots_finer = 3;
};

// On that mesh, with bars from one with elements larger by 1.5; its evidence has no times and no accuracy asked.
MeridianAnswer reference_answer(const Case& asked, const Scenario& scenario, const ReferenceMesh& mesh);

// Elastic constants by region of a mesh.
std::vector<ElasticConstants> steel_by_region(const Case& asked, const std::vector<std::string>& regions);

}  // namespace splicewright
