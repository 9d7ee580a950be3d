// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/surface_fit.h"

#include <Eigen/Geometry>
#include <Eigen/QR>
#include <algorithm>
#include <cmath>

namespace splicewright
{
namespace
{

constexpr std::size_t enough_places = 16;  // for the six numbers of a quadratic; judgement
constexpr int most_rings = 2;

Eigen::Matrix3d frame_at(const Eigen::Vector3d& normal, const Eigen::Vector3d& place)
{
    Eigen::Vector3d around = Eigen::Vector3d::UnitZ().cross(normal);
    if (around.norm() < 1e-6) around = Eigen::Vector3d(-place.y(), place.x(), 0);
    if (around.norm() < 1e-12) around = Eigen::Vector3d::UnitY();
    around.normalize();
    Eigen::Matrix3d frame;
    frame.col(1) = around;
    frame.col(0) = normal.cross(around).normalized();
    frame.col(2) = normal;
    return frame;
}

std::vector<std::int32_t> with_neighbours(const FramedPlaces& places, const std::vector<std::int32_t>& of)
{
    std::vector<std::int32_t> all;
    for (const std::int32_t place : of)
        for (const std::int32_t face : places.around[static_cast<std::size_t>(place)])
            for (const std::int32_t next : places.faces[static_cast<std::size_t>(face)]) all.push_back(next);
    std::ranges::sort(all);
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
}

}  // namespace

FramedPlaces framed_places(const SolidMesh& mesh, const FreeSurfaceStress& surface)
{
    FramedPlaces places;
    const std::size_t n = surface.places.size();
    places.at.resize(3, static_cast<Eigen::Index>(n));
    places.frame.resize(n);
    for (std::size_t i = 0; i < n; ++i)
    {
        const SurfacePlace& place = surface.places[i];
        const auto& p = mesh.nodes[static_cast<std::size_t>(place.node)];
        const Eigen::Vector3d at(p[0], p[1], p[2]);
        places.node.push_back(place.node);
        places.region.push_back(place.region);
        places.at.col(static_cast<Eigen::Index>(i)) = at;
        places.frame[i] = frame_at(place.normal, at);
    }
    places.faces = surface.faces;
    places.around.resize(n);
    for (std::size_t f = 0; f < surface.faces.size(); ++f)
        for (const std::int32_t place : surface.faces[f])
            places.around[static_cast<std::size_t>(place)].push_back(static_cast<std::int32_t>(f));
    return places;
}

Eigen::Matrix<double, 6, 1> in_frame(const Eigen::Matrix3d& frame, const Eigen::Matrix<double, 6, 1>& s)
{
    Eigen::Matrix3d tensor;
    tensor << s(0), s(3), s(5), s(3), s(1), s(4), s(5), s(4), s(2);
    const Eigen::Matrix3d local = frame.transpose() * tensor * frame;
    return {local(0, 0), local(1, 1), local(0, 1), local(2, 2), local(0, 2), local(1, 2)};
}

std::vector<FitWeight> fit_weights(const FramedPlaces& places, std::int32_t place)
{
    std::vector<std::int32_t> near{place};
    for (int ring = 0; ring < most_rings && near.size() < enough_places; ++ring) near = with_neighbours(places, near);
    if (near.size() < enough_places) return {{place, 1}};
    const Eigen::Matrix3d& frame = places.frame[static_cast<std::size_t>(place)];
    const Eigen::Vector3d centre = places.at.col(place);
    const auto n = static_cast<Eigen::Index>(near.size());
    Eigen::Matrix2Xd flat(2, n);
    for (Eigen::Index i = 0; i < n; ++i)
    {
        const Eigen::Vector3d away = places.at.col(near[static_cast<std::size_t>(i)]) - centre;
        const Eigen::Vector2d in_plane = frame.leftCols<2>().transpose() * away;
        // A bent surface is unrolled: as far as the chord, in the direction that the plane shows.
        flat.col(i) =
            in_plane.norm() > 0 ? Eigen::Vector2d(in_plane * (away.norm() / in_plane.norm())) : Eigen::Vector2d(0, 0);
    }
    flat /= flat.colwise().norm().maxCoeff();
    Eigen::Matrix<double, Eigen::Dynamic, 6> terms(n, 6);
    for (Eigen::Index i = 0; i < n; ++i)
    {
        const double x = flat(0, i), y = flat(1, i);
        terms.row(i) << 1, x, y, x * x, x * y, y * y;
    }
    const Eigen::ColPivHouseholderQR<Eigen::MatrixXd> qr(terms);
    if (qr.rank() < 6) return {{place, 1}};
    const Eigen::MatrixXd inverse = qr.solve(Eigen::MatrixXd::Identity(n, n));
    std::vector<FitWeight> weights;
    for (Eigen::Index i = 0; i < n; ++i) weights.push_back({near[static_cast<std::size_t>(i)], inverse(0, i)});
    return weights;
}

}  // namespace splicewright
