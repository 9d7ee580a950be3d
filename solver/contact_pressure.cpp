// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/contact_pressure.h"

#include <Eigen/Geometry>
#include <utility>

namespace splicewright
{

namespace
{

// Calls use(middle, corner, corner) for each edge of a face.
template <class Use>
void for_each_edge(const std::array<std::int32_t, 6>& face, const Use& use)
{
    for (std::size_t i = 0; i < 3; ++i)
        use(static_cast<std::size_t>(face[3 + i]), static_cast<std::size_t>(face[i]),
            static_cast<std::size_t>(face[(i + 1) % 3]));
}

}  // namespace

std::vector<double> contact_pressure(const ContactSurface& surface, const std::vector<double>& force)
{
    std::vector<double> pressure = force;
    std::vector<char> shared(force.size(), 0);
    // An edge has two faces; it gives its halves once.
    for (const auto& face : surface.faces)
        for_each_edge(face,
                      [&](std::size_t middle, std::size_t a, std::size_t b)
                      {
                          if (shared[middle] != 0) return;
                          shared[middle] = 1;
                          pressure[a] += force[middle] / 2;
                          pressure[b] += force[middle] / 2;
                      });
    for (std::size_t i = 0; i < pressure.size(); ++i)
        if (surface.places[i].hat > 0) pressure[i] /= surface.places[i].hat;
    for (const auto& face : surface.faces)
        for_each_edge(face, [&](std::size_t middle, std::size_t a, std::size_t b)
                      { pressure[middle] = (pressure[a] + pressure[b]) / 2; });
    return pressure;
}

ContactState contact_state(const ContactSurface& surface, const std::vector<double>& force,
                           std::vector<Eigen::Vector3d> friction, const Eigen::Matrix3Xd& places,
                           const Eigen::Matrix3Xd& displacement)
{
    ContactState state;
    state.force = force;
    state.friction = std::move(friction);
    state.pressure = contact_pressure(surface, force);
    for (std::size_t i = 0; i < surface.places.size(); ++i)
    {
        const ContactPlace& place = surface.places[i];
        state.gap.push_back(place.gap +
                            place.normal.dot(displacement.col(place.second) - displacement.col(place.first)));
        const Eigen::Vector3d push = force[i] * place.normal + state.friction[i];
        state.resultant += push;
        state.moment += Eigen::Vector3d(places.col(place.second)).cross(push);
    }
    for (const auto& face : surface.faces)
    {
        double sum = 0;
        for (std::size_t i = 0; i < 3; ++i) sum += state.pressure[static_cast<std::size_t>(face[i])];
        state.face_pressure.push_back(sum / 3);
    }
    return state;
}

}  // namespace splicewright
