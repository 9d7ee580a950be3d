// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <memory>
#include <vector>

#include "cases/problem.h"
#include "solver/solid_contact_surface.h"
#include "solver/solid_system.h"

namespace splicewright
{

// Unilateral frictionless contact on matched faces: the faces push and never pull, at every pair of nodes
//   g >= 0,  N >= 0,  g N = 0,  g = gap + n . (u_second - u_first)
// with fixed normals, small displacements. Found by the primal-dual active set, which is Newton's method for the
// augmented Lagrangian N = max(0, N - k g): closed pairs are held at g = 0, those that pull are opened and open ones
// that overlap are closed, all at once. Sources: [AlartCurnier1991], [HintermullerItoKunisch2002].
// Where this makes no headway only the worst are exchanged, after the block pivoting of [JudicePires1994].
// With a coefficient of friction mu Coulomb's law holds between the unloaded state and the loaded one, in one step:
//   |T| <= mu N where faces stick, which is u_second = u_first along them; T = -mu N w / |w| where they slip by w.
// Sticking pairs are held, slipping ones pushed with the pressure and direction of the step before until both stay,
// the fixed point of [NecasJarusekHaslinger1980]. Pairs on sharp edges, which have several normals, slip freely.
struct ContactSettings
{
    double penetration = 1e-5;  // mm, largest left in the answer; also the largest gap that a force acts across
    // Largest pull left, over an area, relative to the largest pressure or to the nominal stress, whichever is more.
    double tension = 1e-6;
    // MPa, that the load makes in the plain body; 0: not told. Where faces hardly touch, the largest pressure falls
    // below what the solution resolves, which is a part of this stress and not of that pressure.
    double nominal_stress = 0;
    double friction = 0;  // mu, 0 to 0.6
    // What the friction forces of slipping pairs may still change from one step to the next, all together, relative to
    // mu times all pressing forces; also how far a sticking pair may go beyond mu N, in peak friction forces.
    double friction_change = 1e-3;
    int most_steps = 100;
    // Of the springs that stand for closed pairs in the preconditioner, over E times the root of the area of a place.
    double stiffness = 3;
    // More iterations in one step: the preconditioner is made anew for the pairs that are closed.
    int most_iterations = 40;
};

// What two faces do to each other.
struct ContactState
{
    std::vector<double> force;              // [n places] N, along the normal on `second`, its opposite on `first`
    std::vector<Eigen::Vector3d> friction;  // [n places] N, along the faces on `second`; zero without friction
    std::vector<char> sticks;               // [n places] 1 where the faces press and friction keeps them from slipping
    std::vector<double> gap;                // [n places] mm, after loading
    std::vector<double> pressure;           // [n places] MPa, see below
    std::vector<double> face_pressure;      // [n faces] MPa, mean of its corners
    Eigen::Vector3d resultant{0, 0, 0}, moment{0, 0, 0};  // of the forces on `second`; moment about the origin: N, N mm
};
// Corners of six-node faces carry no force under even pressure, so force over area says nothing there. The pressure at
// a corner is the mean of the pressure weighted with the linear shape function of the corner: its own force and half of
// those at the middles of its edges, over the integral of that function, which is exact because the linear functions
// are sums of the quadratic ones. At a middle it is the mean of both corners. Never negative where no force is.

// A load that is solved by itself; the contact is that of the sum of all, each times its factor. With friction the
// first factor is not zero: what slips pushes with the first unit.
struct ContactUnit
{
    NodeForces force;
    double factor = 1;
    bool opened = true;  // whether the gaps before loading go with it: with one unit only
};

// What an iteration may begin with.
struct ContactStart
{
    std::vector<std::vector<bool>> closed;        // [surfaces][places]; empty: all
    std::vector<Eigen::Matrix3Xd> displacements;  // [units] mm; empty: zero
};

struct ContactAnswer
{
    SolidAnswer solid;                                          // of the sum
    std::vector<SolidAnswer> units;                             // each with the pairs held that the sum closes
    std::vector<std::vector<std::vector<double>>> unit_forces;  // [units][surfaces][places] N, as those of a state
    std::vector<ContactState> surfaces;
    double penetration = 0;    // mm, largest
    double tension = 0;        // largest pull relative to the largest pressure
    double peak_pressure = 0;  // MPa
    int steps = 0, iterations = 0, closed = 0, renewals = 0;
    double seconds = 0;
};

// The active set did not come to rest.
class ContactUnsettled : public CannotCompute
{
    using CannotCompute::CannotCompute;
};

// One set-up of the solver for all loads.
class SolidContact
{
public:
    // With a system of its own, in whose preconditioner springs join what only contact holds. Throws CannotCompute as
    // SolidSystem does. The springs of the body stay beside the contact.
    SolidContact(const SolidMesh& mesh, SolidBody body, std::vector<ContactSurface> surfaces,
                 SolidSettings settings = {}, ContactSettings contact = {});
    // With a system whose body hangs together without contact; it must live as long, and its preconditioner becomes
    // that of the closed pairs.
    SolidContact(const SolidMesh& mesh, SolidSystem& system, std::vector<ContactSurface> surfaces,
                 SolidSettings settings = {}, ContactSettings contact = {});
    ~SolidContact();
    SolidContact(SolidContact&&) noexcept;

    [[nodiscard]] const SolidSetUp& set_up() const;
    // Throws ContactUnsettled when the contact does not settle, CannotCompute when parts come loose from each other.
    // mesh: the same.
    [[nodiscard]] ContactAnswer solution(const SolidMesh& mesh, const NodeForces& load);
    [[nodiscard]] ContactAnswer solution(const SolidMesh& mesh, const std::vector<ContactUnit>& units,
                                         const ContactStart& start = {});

private:
    struct Parts;
    class Search;
    std::unique_ptr<Parts> parts_;
};

}  // namespace splicewright
