// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/tip_integral.h"

#include <Eigen/LU>
#include <array>
#include <cmath>

namespace splicewright
{
namespace
{

// Derivation. Let u be the solution, v = K_v times the field of one mode (amplitudes times cos or sin of n theta), q
// the virtual growth. The part of the energy-momentum tensor that mixes the two,
//     P = (stress(u) : strain(v)) 1 - grad(u)^T stress(v) - grad(v)^T stress(u),
// has div P = -grad(u)^T b with b = div stress(v), because u is in balance and v, a plane field bent around the axis,
// is not. Gauss's theorem outside a tube that shrinks onto the front gives
//     integral of J ds = - int (P : grad q - q . grad(u)^T b) dV - int_faces q . grad(u)^T stress(v) n dS,
//     J = 2 (I I_v + II II_v) (1 - nu^2) / E + III III_v / G,
// for free faces parallel to q. Source: [Rice1968]; [ShihMoranNakamura1986] for the domain form; the terms with b and
// on the faces come from the curved front and vanish with the size of the domain over its radius.
// Frame r, theta, z. A gradient has rows: component, columns: direction. All integrals over theta give theta_weight,
// which cancels.

using Tensor = Eigen::Matrix3d;

constexpr int n_of(LoadKind kind) { return kind == LoadKind::bending ? 1 : 0; }

Tensor gradient_of(const SectionField& u, int n, double r)
{
    Tensor L;
    L.col(0) = u.gradient.col(0);
    L.col(1) << -(u.value(1) + n * u.value(0)) / r, (u.value(0) + n * u.value(1)) / r, -n * u.value(2) / r;
    L.col(2) = u.gradient.col(1);
    return L;
}

Tensor strain_of(const Tensor& L) { return (L + L.transpose()) / 2; }

Tensor stress_of(const ElasticConstants& steel, const Tensor& strain)
{
    const double lambda = steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu));
    return lambda * strain.trace() * Tensor::Identity() + 2 * steel.G() * strain;
}

// b: what is left of the divergence of the stress of a crack field, whose plane part is in balance.
Eigen::Vector3d unbalanced_force(const SectionField& v, const Tensor& stress, const ElasticConstants& steel, int n,
                                 double r)
{
    const double lambda = steel.E * steel.nu / ((1 + steel.nu) * (1 - 2 * steel.nu)), G = steel.G();
    const double hoop = (v.value(0) + n * v.value(1)) / r, shear_r = -(v.value(1) + n * v.value(0)) / r;
    const double hoop_dr = (v.gradient(0, 0) + n * v.gradient(1, 0) - hoop) / r;
    const double hoop_dz = (v.gradient(0, 1) + n * v.gradient(1, 1)) / r;
    const double shear_r_dr = -(v.gradient(1, 0) + n * v.gradient(0, 0) + shear_r) / r;
    const double shear_z_dz = -n * v.gradient(2, 1) / r;
    return {lambda * hoop_dr + (n * stress(0, 1) + stress(0, 0) - stress(1, 1)) / r,
            G * (shear_r_dr + shear_z_dz) + (2 * stress(0, 1) - n * stress(1, 1)) / r,
            lambda * hoop_dz + (n * stress(1, 2) + stress(0, 2)) / r};
}

double growth_at(const CrackTip& tip, const TipDomain& domain, Eigen::Vector2d place)
{
    const double away = (place - tip.frame.tip).norm();
    if (away <= domain.inner) return 1;
    return away >= domain.outer ? 0 : (domain.outer - away) / (domain.outer - domain.inner);
}

// One triangle with its nodal displacements (rows r, theta, z) and nodal growth.
struct Element
{
    TriangleNodes nodes;
    Eigen::Matrix<double, 3, 6> u;
    ShapeValues growth;
    ElasticConstants steel;
};

// The fields at one point of an element.
struct PointFields
{
    SectionField u;
    Eigen::Vector2d place;            // z, r
    Eigen::Vector2d growth_gradient;  // d/dr, d/dz
    double growth = 0, jacobian = 0;
};

PointFields fields_at(const Element& element, ReferencePoint at)
{
    const ShapeValues N = shape_values(at);
    const ShapeGradients dN = shape_gradients(at);
    const Eigen::Matrix2d J = element.nodes * dN;
    Eigen::Matrix<double, 6, 2> slopes = dN * J.inverse();
    slopes.col(0).swap(slopes.col(1));
    PointFields fields;
    fields.u = {element.u * N, element.u * slopes};
    fields.place = element.nodes * N;
    fields.growth = element.growth.dot(N);
    fields.growth_gradient = slopes.transpose() * element.growth;
    fields.jacobian = J.determinant();
    return fields;
}

Eigen::Vector3d in_space(Eigen::Vector2d section) { return {section(1), 0, section(0)}; }

// Gradient of the growth forward times growth.
Tensor growth_gradient(const PointFields& here, const CrackTip& tip)
{
    const Eigen::Vector3d forward = in_space(tip.frame.forward);
    Tensor Q = Tensor::Zero();
    Q.col(0) = forward * here.growth_gradient(0);
    Q(1, 1) = forward(0) * here.growth / here.place(1);
    Q.col(2) = forward * here.growth_gradient(1);
    return Q;
}

// J times the radius of the front, over one element.
double interaction_inside(const Element& element, const CrackTip& tip, CrackMode mode, int n)
{
    const Eigen::Vector3d forward = in_space(tip.frame.forward);
    double sum = 0;
    for (const QuadraturePoint& point : quadrature())
    {
        const PointFields here = fields_at(element, point.at);
        const double r = here.place(1);
        const SectionField v = crack_field(mode, tip.steel, tip.frame, here.place);
        const Tensor Lu = gradient_of(here.u, n, r), Lv = gradient_of(v, n, r);
        const Tensor su = stress_of(element.steel, strain_of(Lu)), sv = stress_of(tip.steel, strain_of(Lv));
        const double mixed_energy = su.cwiseProduct(strain_of(Lv)).sum();
        const Tensor P = mixed_energy * Tensor::Identity() - Lu.transpose() * sv - Lv.transpose() * su;
        const double balance = here.growth * forward.dot(Lu.transpose() * unbalanced_force(v, sv, tip.steel, n, r));
        sum += point.weight * here.jacobian * r * (balance - P.cwiseProduct(growth_gradient(here, tip)).sum());
    }
    return sum;
}

// The same over one edge of a face; `corner` is the edge's first corner in the triangle.
double interaction_on_face(const Element& element, const CrackTip& tip, CrackMode mode, int n, int corner)
{
    constexpr std::array<ReferencePoint, 3> corners{{{0, 0}, {1, 0}, {0, 1}}};
    constexpr std::array<std::pair<double, double>, 4> gauss{{{-0.8611363115940526, 0.3478548451374538},
                                                              {-0.3399810435848563, 0.6521451548625461},
                                                              {0.3399810435848563, 0.6521451548625461},
                                                              {0.8611363115940526, 0.3478548451374538}}};
    constexpr double inside = 1e-9;  // of the distance to the tip: keeps the angle on its side of the crack
    const ReferencePoint a = corners[static_cast<std::size_t>(corner)],
                         b = corners[static_cast<std::size_t>((corner + 1) % 3)];
    const Eigen::Vector2d along(b.x - a.x, b.y - a.y);
    const Eigen::Vector3d forward = in_space(tip.frame.forward);
    double sum = 0;
    for (const auto& [x, weight] : gauss)
    {
        const ReferencePoint at{a.x + along(0) * (1 + x) / 2, a.y + along(1) * (1 + x) / 2};
        const PointFields here = fields_at(element, at);
        const Eigen::Vector2d tangent = element.nodes * shape_gradients(at) * along / 2;
        const Eigen::Vector2d out = Eigen::Vector2d(tangent(1), -tangent(0)).normalized();
        const double r = here.place(1);
        const SectionField v =
            crack_field(mode, tip.steel, tip.frame, here.place - inside * (here.place - tip.frame.tip).norm() * out);
        const Tensor sv = stress_of(tip.steel, strain_of(gradient_of(v, n, r)));
        const Tensor Lu = gradient_of(here.u, n, r);
        sum -= weight * tangent.norm() * r * here.growth * forward.dot(Lu.transpose() * (sv * in_space(out)));
    }
    return sum;
}

Element element_of(const Mesh& mesh, const std::vector<ElasticConstants>& steel, const UnitSolution& solution,
                   const CrackTip& tip, const TipDomain& domain, int triangle)
{
    Element element;
    const int n = unknowns_per_node(solution.kind);
    element.u.setZero();
    element.steel = steel[static_cast<std::size_t>(mesh.region_of[static_cast<std::size_t>(triangle)])];
    for (int i = 0; i < 6; ++i)
    {
        const int node = mesh.triangle(i, triangle);
        element.nodes.col(i) = mesh.node.col(node);
        element.growth(i) = growth_at(tip, domain, mesh.node.col(node));
        if (solution.kind != LoadKind::axial) element.u(1, i) = solution.u(node * n + (n == 3 ? 1 : 0));
        if (solution.kind == LoadKind::torsion) continue;
        element.u(0, i) = solution.u(node * n);
        element.u(2, i) = solution.u(node * n + n - 1);
    }
    return element;
}

// Energy release rate times the radius of the front, over one element: -u^T (dK/da) u / 2 per unit of theta_weight,
// where the nodes move with the growth. Moving them changes grad u by -(grad u)(grad q) and the volume by div q, at
// every quadrature point alike, so this is the exact derivative of the discrete energy under a constant load. Source:
// [Parks1974] for the derivative; [DeLorenzi1982] for its form as an integral.
double energy_set_free(const Element& element, const CrackTip& tip, int n)
{
    double sum = 0;
    for (const QuadraturePoint& point : quadrature())
    {
        const PointFields here = fields_at(element, point.at);
        const Tensor L = gradient_of(here.u, n, here.place(1)), stress = stress_of(element.steel, strain_of(L));
        const Tensor P = stress.cwiseProduct(strain_of(L)).sum() / 2 * Tensor::Identity() - L.transpose() * stress;
        sum -= point.weight * here.jacobian * here.place(1) * P.cwiseProduct(growth_gradient(here, tip)).sum();
    }
    return sum;
}

bool lies_within(const Mesh& mesh, int triangle, const CrackTip& tip, const TipDomain& domain)
{
    for (int i = 0; i < 6; ++i)
        if (growth_at(tip, domain, mesh.node.col(mesh.triangle(i, triangle))) > 0) return true;
    return false;
}

}  // namespace

TipIntegral tip_integral(const Mesh& mesh, const std::vector<ElasticConstants>& steel, const UnitSolution& solution,
                         const CrackTip& tip, const TipDomain& domain)
{
    constexpr std::array<CrackMode, 3> modes{CrackMode::opening, CrackMode::sliding, CrackMode::tearing};
    const int n = n_of(solution.kind);
    const double radius = tip.frame.tip(1);
    std::array<double, 3> interaction{};
    TipIntegral result;
    for (int t = 0; t < mesh.n_triangles(); ++t)
    {
        if (!lies_within(mesh, t, tip, domain)) continue;
        const Element element = element_of(mesh, steel, solution, tip, domain, t);
        for (std::size_t m = 0; m < 3; ++m) interaction[m] += interaction_inside(element, tip, modes[m], n);
        result.energy_release += energy_set_free(element, tip, n) / radius;
    }
    for (const std::string& face : tip.faces)
        for (const MeshEdge& edge : mesh.curve.at(face))
        {
            if (!lies_within(mesh, edge.triangle, tip, domain)) continue;
            const Element element = element_of(mesh, steel, solution, tip, domain, edge.triangle);
            int corner = 0;
            while (mesh.triangle(corner, edge.triangle) != edge.first) ++corner;
            for (std::size_t m = 0; m < 3; ++m)
                interaction[m] += interaction_on_face(element, tip, modes[m], n, corner);
        }
    const double plane_modulus = tip.steel.E / (1 - tip.steel.nu * tip.steel.nu);
    result.I = plane_modulus / 2 * interaction[0] / radius;
    result.II = plane_modulus / 2 * interaction[1] / radius;
    result.III = tip.steel.G() * interaction[2] / radius;
    return result;
}

}  // namespace splicewright
