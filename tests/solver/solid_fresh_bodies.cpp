// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/solver/solid_fresh_bodies.h"

#include <Eigen/Dense>
#include <cmath>
#include <complex>
#include <numbers>

#include "solver/regular_solids.h"
#include "solver/solid_loads.h"

namespace splicewright::fresh
{

namespace
{

using regular::box;
using regular::Curving;
using regular::everywhere;
using regular::hold;
using regular::kept_part;
using regular::Move;
using regular::move_nodes;
using regular::place;
using regular::round_bar;

constexpr double pi = std::numbers::pi;
constexpr double pressure = 80;  // MPa
constexpr double torque = 2e5;   // N mm
const ElasticConstants metal{72000, 0.34};

// From -1 to 1, the same for the same corner: late digits of a sine, whose spread is all that counts.
double chance(const Eigen::Vector3i& corner, int axis)
{
    const double s =
        std::sin(12.9898 * corner.x() + 78.233 * corner.y() + 37.719 * corner.z() + 4.581 * axis + 0.7) * 43758.5453;
    return 2 * (s - std::floor(s)) - 1;
}

// Moves the corners of a grid over the unit cube and what lies between them linearly in its tetrahedra, as box() cuts
// its cells. cells: of the grid along each axis. Corners stay on the planes that `stays` names by its bits.
Move moved_grid(const Eigen::Vector3i& cells, double share, const std::function<int(const Eigen::Vector3d&)>& stays)
{
    return [=](const Eigen::Vector3d& p) -> Eigen::Vector3d
    {
        const Eigen::Vector3d scaled = p.cwiseProduct(cells.cast<double>());
        Eigen::Vector3i corner = (scaled.array() + 1e-9).floor().cast<int>().min(cells.array() - 1);
        const Eigen::Vector3d part = scaled - corner.cast<double>();
        std::array<int, 3> order{0, 1, 2};
        std::ranges::sort(order, [&](int a, int b) { return part(a) > part(b); });
        Eigen::Vector3d moved = p;
        double weight = 1 - part(order[0]);
        for (std::size_t step = 0;; ++step)
        {
            const int fixed = stays(corner.cast<double>().cwiseQuotient(cells.cast<double>()));
            for (int axis = 0; axis < 3; ++axis)
                if (((fixed >> axis) & 1) == 0) moved(axis) += weight * share * chance(corner, axis) / cells(axis);
            if (step == 3) return moved;
            ++corner(order[step]);
            weight = part(order[step]) - (step == 2 ? 0 : part(order[step + 1]));
        }
    };
}

int on_cube(const Eigen::Vector3d& p)
{
    int fixed = 0;
    for (int axis = 0; axis < 3; ++axis)
        if (p(axis) < 1e-9 || p(axis) > 1 - 1e-9) fixed |= 1 << axis;
    return fixed;
}

// The unit box, grid moved; z is the short side of one cell.
SolidMesh flat_box(int n, int across, Uneven uneven)
{
    SolidMesh mesh = box({1, 1, 1, n, across, 1});
    // Alike at both ends of z, which is one element however fine the mesh is.
    const Move moved = moved_grid({uneven.base, uneven.base * across / n, 1}, uneven.share, on_cube);
    move_nodes(mesh,
               [&](const Eigen::Vector3d& p)
               {
                   const Eigen::Vector3d to = moved({p.x(), p.y(), 0});
                   return Eigen::Vector3d(to.x(), to.y(), p.z());
               });
    return mesh;
}

int plane_strain(const Eigen::Vector3d& p, double thick)
{
    return (std::abs(p.x()) < 1e-9 ? 1 : 0) + (std::abs(p.y()) < 1e-9 ? 2 : 0) +
           (std::abs(p.z()) < 1e-9 || std::abs(p.z() - thick) < 1e-9 ? 4 : 0);
}

Stress6 in_plane(double xx, double yy, double xy, double nu) { return {xx, yy, nu * (xx + yy), xy, 0, 0}; }

Stress6 polar(const Eigen::Vector3d& p, double radial, double hoop, double nu)
{
    const double r = p.head<2>().norm(), c = p.x() / r, s = p.y() / r;
    return in_plane(radial * c * c + hoop * s * s, radial * s * s + hoop * c * c, (radial - hoop) * s * c, nu);
}

// An eighth of a hollow ball; radius_at(0) inside, radius_at(1) outside.
SolidMesh hollow_ball(int n, Uneven uneven, const std::function<double(double)>& radius_at)
{
    SolidMesh mesh = kept_part(box({1, 1, 1, 2 * n, 2 * n, 2 * n}), "inside",
                               [](const Eigen::Vector3d& p) { return p.maxCoeff() > 0.5; });
    // Corners on the inside move along it, and not where its faces meet.
    const auto stays = [](const Eigen::Vector3d& p)
    {
        int fixed = on_cube(p), on_inside = 0;
        for (int axis = 0; axis < 3; ++axis)
            if (std::abs(p(axis) - 0.5) < 1e-9) fixed |= 1 << axis, ++on_inside;
        // The blown-up cube has edges where two faces meet: they stay between elements.
        const bool on_edge = (p.array() > p.maxCoeff() - 1e-9).count() > 1;
        return on_edge || on_inside > 1 ? 7 : fixed;
    };
    move_nodes(mesh, moved_grid(Eigen::Vector3i::Constant(2 * uneven.base), uneven.share, stays));
    move_nodes(mesh,
               [&](const Eigen::Vector3d& p) -> Eigen::Vector3d
               {
                   const Eigen::Vector3d q = (pi / 4 * p / p.maxCoeff()).array().tan();
                   return radius_at(2 * p.maxCoeff() - 1) * q.normalized();
               });
    // What is not inside and not on the planes of symmetry.
    const double outer = radius_at(1);
    for (const char* side : {"x1", "y1", "right"})
        for (const SolidMesh::Face& face : mesh.faces[side])
            if (place(mesh, static_cast<std::size_t>(face.nodes[3])).norm() > 0.99 * outer)
                mesh.faces["round"].push_back(face);
    return mesh;
}

void hold_planes(ExactBody& made)
{
    hold(made.body, made.mesh,
         [](const Eigen::Vector3d& p)
         { return (p.x() < 1e-9 ? 1 : 0) + (p.y() < 1e-9 ? 2 : 0) + (p.z() < 1e-9 ? 4 : 0); });
}

// Displacement gradient of the three solutions around a cavity at the origin that fade: grad (x s x / r^5) with
// harmonic potential, the double force s x / r^3 + k (x s x) x / r^5, and the centre of dilatation x / r^3.
// s has no trace. Derived here: both are put into Navier's equation.
struct CavityGradients
{
    Eigen::Matrix3d potential, couple, dilatation;
};
CavityGradients cavity_gradients(const Eigen::Vector3d& p, const Eigen::Matrix3d& s, double nu)
{
    const double r = p.norm(), r2 = r * r, q = p.dot(s * p), k = 1.5 / (1 - 2 * nu);
    const Eigen::Vector3d sx = s * p;
    const Eigen::Matrix3d one = Eigen::Matrix3d::Identity(), pp = p * p.transpose();
    CavityGradients g;
    g.potential = 2 * (s - 5 * sx * p.transpose() / r2) / std::pow(r, 5) -
                  5 * (2 * p * sx.transpose() + q * one - 7 * q * pp / r2) / std::pow(r, 7);
    g.couple = (s - 3 * sx * p.transpose() / r2) / std::pow(r, 3) +
               k * (2 * p * sx.transpose() + q * one - 5 * q * pp / r2) / std::pow(r, 5);
    g.dilatation = (one - 3 * pp / r2) / std::pow(r, 3);
    return g;
}

Eigen::Matrix3d stress_of(const Eigen::Matrix3d& gradient, const ElasticConstants& steel)
{
    const Eigen::Matrix3d strain = 0.5 * (gradient + gradient.transpose());
    const double lambda = steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu));
    return lambda * strain.trace() * Eigen::Matrix3d::Identity() + 2 * steel.G() * strain;
}

Stress6 as_six(const Eigen::Matrix3d& s) { return {s(0, 0), s(1, 1), s(2, 2), s(0, 1), s(1, 2), s(0, 2)}; }

// End loads are those of a beam; they turn into the stress of the section within a width.
void load_ends(ExactBody& made, const FaceLoad& right)
{
    made.body.steel = {metal};
    made.load = face_forces(made.mesh, "right", right) + face_forces(made.mesh, "left", {-right.force, -right.moment});
}

}  // namespace

// Source: [TimoshenkoGoodier1970] article 28.
ExactBody cylinder_pressed_outside(int n, Uneven uneven, double inner, double outer)
{
    const double thick = (outer - inner) / n;
    ExactBody made{"cylinder pressed outside", "x0", 0, flat_box(n, 2 * n, uneven), {}, {}, {}, everywhere};
    move_nodes(made.mesh,
               [&](const Eigen::Vector3d& p)
               {
                   const double r = inner + (outer - inner) * p.x(), turn = pi / 2 * p.y();
                   return Eigen::Vector3d(r * std::cos(turn), r * std::sin(turn), thick * p.z());
               });
    made.body.steel = {metal};
    hold(made.body, made.mesh, [&](const Eigen::Vector3d& p) { return plane_strain(p, thick); });
    made.load = pressure_forces(made.mesh, "x1", pressure);
    const double hoop = -2 * pressure * outer * outer / (outer * outer - inner * inner);
    made.stress = [=](const Eigen::Vector3d& p) { return polar(p, 0, hoop, metal.nu); };
    return made;
}

// Source: [TimoshenkoGoodier1970] article 136.
ExactBody sphere_pressed_outside(int n, Uneven uneven, double inner, double outer)
{
    ExactBody made{"sphere pressed outside", "inside", 0, {}, {}, {}, {}, everywhere};
    made.mesh = hollow_ball(n, uneven, [=](double part) { return inner + (outer - inner) * part; });
    made.body.steel = {metal};
    hold_planes(made);
    made.load = pressure_forces(made.mesh, "round", pressure);
    const double a3 = std::pow(inner, 3), b3 = std::pow(outer, 3), hoop = -1.5 * pressure * b3 / (b3 - a3);
    made.stress = [=](const Eigen::Vector3d& p)
    {
        const Eigen::Vector3d e = p.normalized();
        return as_six(hoop * (Eigen::Matrix3d::Identity() - e * e.transpose()));
    };
    return made;
}

// Strengths of the fading solutions from a surface without traction. Source: [Goodier1933], the fields derived here.
ExactBody spherical_cavity(int n, Uneven uneven, const Eigen::Vector3d& far, double nu)
{
    constexpr double a = 10, cut = 4;
    const ElasticConstants steel{metal.E, nu};
    const double mean = far.sum() / 3;
    const Eigen::Matrix3d even = mean * Eigen::Matrix3d::Identity(), rest = far.asDiagonal().toDenseMatrix() - even;
    // Tractions of each at two places, and what they must cancel; the dilatation cancels the even part by itself.
    Eigen::Matrix<double, 6, 2> tractions;
    Eigen::Matrix<double, 6, 1> wanted;
    for (const int i : {0, 1})
    {
        const Eigen::Vector3d e = Eigen::Vector3d(1 + i, 2, 3 - 2 * i).normalized(), p = a * e;
        const CavityGradients g = cavity_gradients(p, rest, nu);
        tractions.block<3, 1>(3 * i, 0) = stress_of(g.potential, steel) * e;
        tractions.block<3, 1>(3 * i, 1) = stress_of(g.couple, steel) * e;
        wanted.segment<3>(3 * i) = -rest * e;
    }
    const Eigen::Vector2d scale(1 / tractions.col(0).norm(), 1 / tractions.col(1).norm());
    const Eigen::Vector2d strength =
        rest.norm() > 0 ? Eigen::Vector2d(scale.cwiseProduct(Eigen::Vector2d(
                              (tractions * scale.asDiagonal()).eval().colPivHouseholderQr().solve(wanted))))
                        : Eigen::Vector2d(0, 0);
    const double dilatation = mean * a * a * a / (4 * steel.G());
    ExactBody made{"spherical cavity", "inside", 0, {}, {}, {}, {}, everywhere};
    made.mesh = hollow_ball(n, uneven, [=](double part) { return a * std::pow(cut, part); });
    made.body.steel = {steel};
    hold_planes(made);
    made.stress = [=](const Eigen::Vector3d& p)
    {
        const CavityGradients g = cavity_gradients(p, rest, nu);
        return as_six(far.asDiagonal().toDenseMatrix() +
                      stress_of(strength(0) * g.potential + strength(1) * g.couple + dilatation * g.dilatation, steel));
    };
    made.load = exact::tractions(made.mesh, "round", made.stress);
    return made;
}

// By two functions of zeta, z = R (zeta + m / zeta), with e = exp(2 i beta) of a pull at beta from x:
//   phi = S R / 4 (zeta + (2 e - m) / zeta)
//   psi = -S R / 2 (conj(e) zeta + e / (m zeta) - (1 + m^2) (e - m) / m zeta / (zeta^2 - m))
// Source: [Muskhelishvili1953] section 82a, from memory: verify; a test holds traction, peak and far stress.
ExactBody elliptical_hole(int n, Uneven uneven, double along_x, double along_y)
{
    using Complex = std::complex<double>;
    constexpr double S = pressure, cut = 4;
    const double R = (along_x + along_y) / 2, m = (along_x - along_y) / (along_x + along_y), thick = 3 * along_y / n;
    ExactBody made{"elliptical hole", "x0", 0, flat_box(2 * n, 2 * n, uneven), {}, {}, {}, everywhere};
    move_nodes(made.mesh,
               [&](const Eigen::Vector3d& p)
               {
                   const Complex zeta = std::pow(cut, p.x()) * std::polar(1.0, pi / 2 * p.y()),
                                 z = R * (zeta + m / zeta);
                   return Eigen::Vector3d(z.real(), z.imag(), thick * p.z());
               });
    made.body.steel = {metal};
    hold(made.body, made.mesh, [&](const Eigen::Vector3d& p) { return plane_strain(p, thick); });
    made.stress = [=](const Eigen::Vector3d& p)
    {
        const Complex z(p.x(), p.y());
        Complex zeta =
            (z + std::sqrt(z - 2 * R * std::sqrt(Complex(m))) * std::sqrt(z + 2 * R * std::sqrt(Complex(m)))) / (2 * R);
        // Pulled along y: e^(2 i beta) = -1.
        const double turn = -1;
        const Complex w1 = R * (1.0 - m / (zeta * zeta)), w2 = 2 * R * m / (zeta * zeta * zeta);
        const Complex f1 = S * R / 4 * (1.0 - (2 * turn - m) / (zeta * zeta)),
                      f2 = S * R / 2 * (2 * turn - m) / (zeta * zeta * zeta);
        const Complex below = zeta * zeta - m;
        const Complex g1 =
            -S * R / 2 *
            (turn - turn / (m * zeta * zeta) + (1 + m * m) * (turn - m) / m * (zeta * zeta + m) / (below * below));
        const Complex Phi = f1 / w1, dPhi = (f2 * w1 - f1 * w2) / (w1 * w1 * w1), Psi = g1 / w1;
        const double sum = 4 * Phi.real();
        const Complex difference = 2.0 * (std::conj(z) * dPhi + Psi);
        return in_plane((sum - difference.real()) / 2, (sum + difference.real()) / 2, difference.imag() / 2, metal.nu);
    };
    made.load = exact::tractions(made.mesh, "x1", made.stress);
    return made;
}

// Source: [TimoshenkoGoodier1970] article 29.
ExactBody bent_quarter_ring(int n, Uneven uneven, double inner, double outer)
{
    const double thick = (outer - inner) / n, a2 = inner * inner, b2 = outer * outer, l = std::log(outer / inner);
    ExactBody made{"bent quarter ring", "x0", 0, flat_box(n, 4 * n, uneven), {}, {}, {}, everywhere};
    move_nodes(made.mesh,
               [&](const Eigen::Vector3d& p)
               {
                   const double r = inner + (outer - inner) * p.x(), turn = pi / 2 * p.y();
                   return Eigen::Vector3d(r * std::cos(turn), r * std::sin(turn), thick * p.z());
               });
    made.body.steel = {metal};
    hold(made.body, made.mesh,
         [&](const Eigen::Vector3d& p)
         { return (plane_strain(p, thick) & 6) | (std::abs(p.x() - inner) < 1e-9 && std::abs(p.y()) < 1e-9 ? 1 : 0); });
    made.stress = [=](const Eigen::Vector3d& p)
    {
        const double r = p.head<2>().norm(), N = (b2 - a2) * (b2 - a2) - 4 * a2 * b2 * l * l;
        const double over = -4 * pressure * b2 / N, ring = a2 * b2 / (r * r) * l,
                     both = b2 * std::log(r / outer) + a2 * std::log(inner / r);
        return polar(p, over * (ring + both), over * (-ring + both + b2 - a2), metal.nu);
    };
    made.load = exact::tractions(made.mesh, "y1", made.stress);
    return made;
}

// Source: [TimoshenkoGoodier1970] article 109.
ExactBody twisted_rectangle(int n, double b, double c)
{
    const double length = 6 * b, A = b / 2, B = c / 2;
    ExactBody made{
        "twisted rectangle", "y0", 0, box({b, c, length, static_cast<int>(n * b / c), n, 5 * n}), {}, {}, {}, {}};
    made.counts = [=](const Eigen::Vector3d& p) { return std::abs(p.z() - length / 2) < length / 6; };
    load_ends(made, {{0, 0, 0}, {0, 0, torque}});
    double end = 0;
    for (int i = 1; i < 60; i += 2) end += std::tanh(i * pi * A / (2 * B)) / std::pow(i, 5);
    const double J = 16 * A * B * B * B / 3 * (1 - 192 * B / (std::pow(pi, 5) * A) * end);
    made.stress = [=](const Eigen::Vector3d& p) -> Stress6
    {
        double sum = 0;
        for (int i = 1; i < 60; i += 2)
            sum += std::cosh(i * pi * (p.x() - A) / (2 * B)) / std::cosh(i * pi * A / (2 * B)) / (i * i);
        return {0, 0, 0, 0, 0, torque / J * 2 * B * (1 - 8 / (pi * pi) * sum)};
    };
    return made;
}

ExactBody twisted_tube(int n, double bore, double outside)
{
    const int rings = static_cast<int>(std::lround(n / (1 - bore / outside)));
    const double length = 5 * outside;
    ExactBody made{"twisted tube", "outside", 0, {}, {}, {}, {}, {}};
    made.mesh =
        kept_part(round_bar({outside, length, rings, 3 * rings, Curving::all}), "bore",
                  [&](const Eigen::Vector3d& p) { return p.head<2>().norm() > bore * std::cos(pi / (3 * rings)); });
    made.counts = [=](const Eigen::Vector3d& p) { return std::abs(p.z() - length / 2) < length / 4; };
    load_ends(made, {{0, 0, 0}, {0, 0, torque}});
    const double rate = torque / (pi / 2 * (std::pow(outside, 4) - std::pow(bore, 4)));
    made.stress = [=](const Eigen::Vector3d& p) -> Stress6 { return {0, 0, 0, 0, rate * p.x(), -rate * p.y()}; };
    return made;
}

ExactBody pulled_and_bent_bar(int n, double radius)
{
    const double length = 5 * radius, pull = 3000, moment = 9e4;
    ExactBody made{
        "pulled and bent bar", "outside", 0, round_bar({radius, length, 3 * n, 6 * n, Curving::skin}), {}, {}, {}, {}};
    made.counts = [=](const Eigen::Vector3d& p) { return std::abs(p.z() - length / 2) < length / 4; };
    load_ends(made, {{0, 0, pull}, {0, moment, 0}});
    const double area = pi * radius * radius, I = pi / 4 * std::pow(radius, 4);
    made.stress = [=](const Eigen::Vector3d& p) -> Stress6
    { return {0, 0, pull / area - moment * p.x() / I, 0, 0, 0}; };
    return made;
}

// Source: [TimoshenkoGoodier1970] article 105.
ExactBody twisted_flat_ellipse(int n, double a, double b)
{
    const double length = 6 * a;
    ExactBody made{
        "twisted flat ellipse", "outside", 0, round_bar({1, length, 3 * n, 8 * n, Curving::skin}), {}, {}, {}, {}};
    move_nodes(made.mesh, [&](const Eigen::Vector3d& p) { return Eigen::Vector3d(a * p.x(), b * p.y(), p.z()); });
    made.counts = [=](const Eigen::Vector3d& p) { return std::abs(p.z() - length / 2) < length / 6; };
    made.body.steel = {metal};
    made.stress = [=](const Eigen::Vector3d& p) -> Stress6
    { return {0, 0, 0, 0, 2 * torque * p.x() / (pi * a * a * a * b), -2 * torque * p.y() / (pi * a * b * b * b)}; };
    made.load = exact::tractions(made.mesh, "right", made.stress) + exact::tractions(made.mesh, "left", made.stress);
    return made;
}

}  // namespace splicewright::fresh
