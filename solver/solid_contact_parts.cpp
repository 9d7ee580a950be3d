// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_contact_parts.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "cases/problem.h"
#include "solver/contact_pressure.h"

namespace splicewright
{

SolidContact::Parts::Parts(const SolidMesh& mesh, std::vector<ContactSurface> given, const SolidSettings& settings,
                           const ContactSettings& chosen)
    : surfaces(std::move(given)), contact(chosen), tolerance(settings.tolerance)
{
    std::map<std::pair<std::int32_t, std::int32_t>, int> of_pair;
    for (std::size_t s = 0; s < surfaces.size(); ++s)
        for (std::size_t i = 0; i < surfaces[s].places.size(); ++i)
        {
            const ContactPlace& place = surfaces[s].places[i];
            if (place.first == place.second) continue;
            touches.push_back({s, i, {place.first, place.second, place.normal, -place.gap}, place.area});
            ++of_pair[{place.first, place.second}];
        }
    EXPECTS(contact.friction >= 0 && contact.friction <= 0.6);
    for (Touch& touch : touches)
    {
        touch.rough = contact.friction > 0 && of_pair[{touch.pair.first, touch.pair.second}] == 1;
        touch.along = across(touch.pair.direction);
    }
    places.resize(3, static_cast<Eigen::Index>(mesh.nodes.size()));
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        places.col(static_cast<Eigen::Index>(i)) =
            Eigen::Vector3d(mesh.nodes[i][0], mesh.nodes[i][1], mesh.nodes[i][2]);
}

std::vector<PairSpring> SolidContact::Parts::springs(const std::vector<Touch>& now) const
{
    std::vector<PairSpring> result = own_springs;
    for (const Touch& touch : now)
    {
        if (!touch.closed) continue;
        const double stiffness = spring_modulus * std::sqrt(touch.area);
        result.push_back({touch.pair.first, touch.pair.second, touch.pair.direction, stiffness});
        if (!touch.is_stuck()) continue;
        for (const Eigen::Vector3d& along : touch.along)
            result.push_back({touch.pair.first, touch.pair.second, along, stiffness});
    }
    return result;
}

NodeForces SolidContact::Parts::friction(const std::vector<Touch>& now) const
{
    NodeForces result = NodeForces::Zero(3, places.cols());
    for (const Touch& touch : now)
    {
        if (!touch.slips()) continue;
        result.col(touch.pair.second) += touch.friction;
        result.col(touch.pair.first) -= touch.friction;
    }
    return result;
}

std::vector<SolidAnswer> SolidContact::Parts::solved(const std::vector<NodeForces>& loads,
                                                     const std::vector<bool>& opened, const std::vector<Touch>& now,
                                                     std::vector<Eigen::Matrix3Xd> displacements, double to) const
{
    SolidStart start{{}, opened, std::move(displacements), to};
    for (const Touch& touch : now)
    {
        if (touch.closed) start.pairs.push_back(touch.pair);
        if (!touch.is_stuck()) continue;
        for (const Eigen::Vector3d& along : touch.along)
            start.pairs.push_back({touch.pair.first, touch.pair.second, along, 0});
    }
    return system->solution(loads, own_springs, start).loads;
}

void SolidContact::Parts::read(const std::vector<SolidAnswer>& answers, const std::vector<double>& factors,
                               std::vector<Touch>& now) const
{
    std::size_t held = 0;
    const auto next_force = [&]
    {
        double force = 0;
        for (std::size_t k = 0; k < answers.size(); ++k) force += factors[k] * answers[k].pair_forces[held];
        ++held;
        return force;
    };
    for (Touch& touch : now)
    {
        touch.force = touch.gap_now = 0;
        touch.slip.setZero();
        if (touch.closed) touch.force = next_force();
        if (touch.is_stuck())
        {
            touch.friction.setZero();
            for (const Eigen::Vector3d& along : touch.along) touch.friction += next_force() * along;
        }
        if (touch.closed && !touch.slips()) continue;
        Eigen::Vector3d apart = Eigen::Vector3d::Zero();
        for (std::size_t k = 0; k < answers.size(); ++k)
            apart += factors[k] *
                     (answers[k].displacement.col(touch.pair.second) - answers[k].displacement.col(touch.pair.first));
        const double open = touch.pair.direction.dot(apart);
        if (touch.closed) touch.slip = apart - open * touch.pair.direction;
        else touch.gap_now = open - touch.pair.opening;
    }
}

Violation SolidContact::Parts::violation(const std::vector<Touch>& now) const
{
    Violation worst;
    double pull = 0;
    for (const Touch& touch : now)
    {
        worst.penetration = std::max(worst.penetration, touch.overlap());
        pull = std::max(pull, touch.pull());
    }
    double peak = contact.nominal_stress;
    const auto all = forces(now);
    for (std::size_t s = 0; s < surfaces.size(); ++s)
        for (const double p : contact_pressure(surfaces[s], all[s])) peak = std::max(peak, p);
    worst.allowed_pull = contact.tension * peak;
    if (pull > 0) worst.tension = peak > 0 ? pull / peak : 1;
    return worst;
}

std::vector<std::vector<double>> SolidContact::Parts::forces(const std::vector<Touch>& now) const
{
    std::vector<std::vector<double>> result;
    for (const ContactSurface& surface : surfaces) result.emplace_back(surface.places.size(), 0.0);
    for (const Touch& touch : now) result[touch.surface][touch.place] = touch.force;
    return result;
}

// Pressures of the contact that was found.
void SolidContact::Parts::finish(const std::vector<Touch>& now, ContactAnswer& answer) const
{
    const auto all = forces(now);
    std::vector<std::vector<Eigen::Vector3d>> along;
    std::vector<std::vector<char>> sticks;
    for (const ContactSurface& surface : surfaces)
    {
        along.emplace_back(surface.places.size(), Eigen::Vector3d::Zero());
        sticks.emplace_back(surface.places.size(), char{0});
    }
    for (const Touch& touch : now)
    {
        if (touch.closed) along[touch.surface][touch.place] = touch.friction;
        sticks[touch.surface][touch.place] = touch.is_stuck() && touch.force > 0 ? 1 : 0;
    }
    for (std::size_t s = 0; s < surfaces.size(); ++s)
    {
        answer.surfaces.push_back(
            contact_state(surfaces[s], all[s], std::move(along[s]), places, answer.solid.displacement));
        answer.surfaces.back().sticks = std::move(sticks[s]);
        for (const double pressure : answer.surfaces.back().pressure)
            answer.peak_pressure = std::max(answer.peak_pressure, pressure);
    }
    for (const SolidAnswer& unit : answer.units)
    {
        std::vector<Touch> of_unit = now;
        read({unit}, {1.0}, of_unit);
        answer.unit_forces.push_back(forces(of_unit));
    }
    for (const Touch& touch : now) answer.closed += touch.closed && touch.force > 0 ? 1 : 0;
}

}  // namespace splicewright
