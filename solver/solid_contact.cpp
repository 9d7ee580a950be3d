// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_contact.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <chrono>
#include <cmath>

#include "cases/problem.h"
#include "solver/contact_pressure.h"

namespace splicewright
{

namespace
{

// Tolerance of the iteration while pairs still open and close.
constexpr double rough_tolerance = 1e-3;
// The same, from one step to the next once they do not.
constexpr double finer_by = 1e-2;

double least_modulus(const SolidBody& body)
{
    double least = INFINITY;
    for (const ElasticConstants& steel : body.steel) least = std::min(least, steel.E);
    return least;
}

// A place that can open, and what is known of it.
struct Touch
{
    std::size_t surface = 0, place = 0;
    PairSpring spring;
    double gap = 0, area = 0;  // before loading, mm; mm^2
    double force = 0;          // N
    bool closed = true;
    double gap_now = 0;  // mm
    // Force on the metal in the last displacement, N.
    [[nodiscard]] double acting() const { return closed ? force - spring.stiffness * gap_now : 0; }
};

struct Violation
{
    double penetration = 0, tension = 0;  // mm; relative to the peak
};

}  // namespace

struct SolidContact::Parts
{
    std::vector<ContactSurface> surfaces;
    ContactSettings contact;
    double tolerance = 0;
    Eigen::Matrix3Xd places;  // [3, n mesh nodes] mm
    std::vector<PairSpring> own_springs;
    std::vector<Touch> touches;
    std::unique_ptr<SolidSystem> system;

    [[nodiscard]] NodeForces with_contact(const NodeForces& load, const std::vector<Touch>& now) const;
    [[nodiscard]] std::vector<PairSpring> springs(const std::vector<Touch>& now) const;
    [[nodiscard]] SolidStart start(const NodeForces& load, const std::vector<Touch>& now, double to) const;
    [[nodiscard]] std::vector<std::vector<double>> forces(const std::vector<Touch>& now) const;
    [[nodiscard]] Violation violation(const std::vector<Touch>& now) const;
};

SolidContact::SolidContact(const SolidMesh& mesh, SolidBody body, std::vector<ContactSurface> surfaces,
                           SolidSettings settings, ContactSettings contact)
    : parts_(std::make_unique<Parts>())
{
    parts_->contact = contact;
    parts_->tolerance = settings.tolerance;
    parts_->own_springs = body.springs;
    const double E = least_modulus(body);
    for (std::size_t s = 0; s < surfaces.size(); ++s)
        for (std::size_t i = 0; i < surfaces[s].places.size(); ++i)
        {
            const ContactPlace& place = surfaces[s].places[i];
            if (place.first == place.second) continue;
            Touch touch{s, i, {place.first, place.second, place.normal, 0}, place.gap, place.area};
            touch.spring.stiffness = contact.stiffness * E * std::sqrt(place.area);
            body.springs.push_back(touch.spring);
            parts_->touches.push_back(touch);
        }
    parts_->surfaces = std::move(surfaces);
    parts_->places.resize(3, static_cast<Eigen::Index>(mesh.nodes.size()));
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        parts_->places.col(static_cast<Eigen::Index>(i)) =
            Eigen::Vector3d(mesh.nodes[i][0], mesh.nodes[i][1], mesh.nodes[i][2]);
    parts_->system = std::make_unique<SolidSystem>(mesh, std::move(body), settings);
}

SolidContact::~SolidContact() = default;
SolidContact::SolidContact(SolidContact&&) noexcept = default;

const SolidSetUp& SolidContact::set_up() const { return parts_->system->set_up(); }

// What the springs take as known is added to the load: N - k gap, apart.
NodeForces SolidContact::Parts::with_contact(const NodeForces& load, const std::vector<Touch>& now) const
{
    NodeForces sum = load;
    for (const Touch& touch : now)
    {
        if (!touch.closed) continue;
        const Eigen::Vector3d push = (touch.force - touch.spring.stiffness * touch.gap) * touch.spring.direction;
        sum.col(touch.spring.second) += push;
        sum.col(touch.spring.first) -= push;
    }
    return sum;
}

std::vector<PairSpring> SolidContact::Parts::springs(const std::vector<Touch>& now) const
{
    std::vector<PairSpring> result = own_springs;
    for (const Touch& touch : now)
        if (touch.closed) result.push_back(touch.spring);
    return result;
}

// The residual is measured against load and contact forces: the springs alone carry far larger ones that cancel.
SolidStart SolidContact::Parts::start(const NodeForces& load, const std::vector<Touch>& now, double to) const
{
    double squares = load.squaredNorm();
    for (const Touch& touch : now) squares += 2 * touch.force * touch.force;
    return {{}, std::sqrt(squares), to};
}

Violation SolidContact::Parts::violation(const std::vector<Touch>& now) const
{
    Violation worst;
    double pull = 0;
    for (const Touch& touch : now)
    {
        const double off = touch.closed ? std::abs(touch.gap_now) : -touch.gap_now;
        // A closed pair that pulls opens in the next step: what counts of it is its pull.
        if (touch.acting() >= 0) worst.penetration = std::max(worst.penetration, off);
        pull = std::max(pull, -touch.acting() / touch.area);
    }
    double peak = 0;
    const auto all = forces(now);
    for (std::size_t s = 0; s < surfaces.size(); ++s)
        for (const double p : contact_pressure(surfaces[s], all[s])) peak = std::max(peak, p);
    if (pull > 0) worst.tension = peak > 0 ? pull / peak : 1;
    return worst;
}

std::vector<std::vector<double>> SolidContact::Parts::forces(const std::vector<Touch>& now) const
{
    std::vector<std::vector<double>> result;
    for (const ContactSurface& surface : surfaces) result.emplace_back(surface.places.size(), 0.0);
    for (const Touch& touch : now) result[touch.surface][touch.place] = touch.acting();
    return result;
}

ContactAnswer SolidContact::solution(const SolidMesh& mesh, const NodeForces& load)
{
    const auto begun = std::chrono::steady_clock::now();
    const Parts& p = *parts_;
    std::vector<Touch> now = p.touches;
    ContactAnswer answer;
    SolidStart start{{}, 0, rough_tolerance};
    for (answer.steps = 1; answer.steps <= p.contact.most_steps; ++answer.steps)
    {
        answer.solid = p.system->solution({p.with_contact(load, now)}, p.springs(now), start).loads[0];
        answer.iterations += answer.solid.iterations;
        for (Touch& touch : now)
            touch.gap_now = touch.gap + touch.spring.direction.dot(answer.solid.displacement.col(touch.spring.second) -
                                                                   answer.solid.displacement.col(touch.spring.first));
        const Violation worst = p.violation(now);
        answer.penetration = worst.penetration;
        answer.tension = worst.tension;
        const bool fits = worst.penetration <= p.contact.penetration && worst.tension <= p.contact.tension;
        if (fits && start.tolerance <= p.tolerance) break;
        int changed = 0;
        std::vector<Touch> next = now;
        if (!fits)
            for (Touch& touch : next)
            {
                const double force = (touch.closed ? touch.force : 0) - touch.spring.stiffness * touch.gap_now;
                changed += touch.closed != (force > 0) ? 1 : 0;
                touch.closed = force > 0;
                touch.force = std::max(0.0, force);
            }
        const double to = fits          ? p.tolerance
                          : changed > 0 ? rough_tolerance
                                        : std::max(p.tolerance, finer_by * start.tolerance);
        start = p.start(load, next, to);
        start.displacement = answer.solid.displacement;
        now = std::move(next);
        if (answer.solid.iterations > p.contact.most_iterations)
        {
            p.system->precondition_for(mesh, p.springs(now));
            ++answer.renewals;
        }
    }
    if (answer.steps > p.contact.most_steps)
        throw ContactUnsettled(
            {"", 0, 0, "contact", fmt::format("{:.1e} mm, {:.1e}", answer.penetration, answer.tension),
             fmt::format("penetration must fall to {:.1e} mm and pull to {:.1e} of the largest pressure",
                         p.contact.penetration, p.contact.tension),
             "a part may come loose: check what holds it, or treat the faces as tied or free"});
    const auto all = p.forces(now);
    for (std::size_t s = 0; s < p.surfaces.size(); ++s)
    {
        answer.surfaces.push_back(contact_state(p.surfaces[s], all[s], p.places, answer.solid.displacement));
        for (const double pressure : answer.surfaces.back().pressure)
            answer.peak_pressure = std::max(answer.peak_pressure, pressure);
    }
    for (const Touch& touch : now) answer.closed += touch.acting() > 0 ? 1 : 0;
    answer.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
    return answer;
}

}  // namespace splicewright
