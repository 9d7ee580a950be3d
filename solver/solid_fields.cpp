// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_fields.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "mesh/solid_flat.h"
#include "solver/solid_bars.h"
#include "solver/solid_face.h"
#include "solver/solid_level.h"
#include "solver/solid_stress.h"
#include "solver/solid_turn.h"
#include "solver/surface_fit.h"

namespace splicewright
{
namespace
{

using Stresses = Eigen::Matrix<double, 6, Eigen::Dynamic>;

// What adds up to a load: bending towards two directions, and what does not turn with it.
enum class Share
{
    towards_x,
    towards_y,
    torsion,
    axial,
    press,
};

// Its parts that are not nothing, each as large as in the load.
struct LoadParts
{
    std::vector<Share> share;
    std::vector<Eigen::Matrix3Xd> displacement;
};

double amount(const CombinedLoad& load, Share share)
{
    switch (share)
    {
        case Share::torsion: return load.torque;
        case Share::axial: return load.axial;
        case Share::press: return load.press;
        default: return load.bending;
    }
}

LoadParts parts_of(const SolidUnitDisplacements& unit, const CombinedLoad& load)
{
    LoadParts parts;
    for (const auto& [share, displacement] :
         {std::pair{Share::towards_x, &unit.towards_x}, std::pair{Share::towards_y, &unit.towards_y},
          std::pair{Share::torsion, &unit.torsion}, std::pair{Share::axial, &unit.axial},
          std::pair{Share::press, &unit.press}})
    {
        if (amount(load, share) == 0 || displacement->size() == 0) continue;
        parts.share.push_back(share);
        parts.displacement.emplace_back(amount(load, share) * *displacement);
    }
    return parts;
}

// Stress of each part, [parts].
using PartStress = std::vector<Stress6>;

Turning turning(const LoadParts& parts, const PartStress& stress, const CombinedLoad& load)
{
    Turning sum;
    for (std::size_t p = 0; p < parts.share.size(); ++p)
    {
        if (amount(load, parts.share[p]) == 0) continue;
        Stress6& part = parts.share[p] == Share::towards_x   ? sum.x
                        : parts.share[p] == Share::towards_y ? sum.y
                                                             : sum.steady;
        part += stress[p];
    }
    return sum;
}

Eigen::Matrix3Xd towards_x(const LoadParts& parts, const CombinedLoad& load, Eigen::Index n)
{
    Eigen::Matrix3Xd sum = Eigen::Matrix3Xd::Zero(3, n);
    for (std::size_t p = 0; p < parts.share.size(); ++p)
        if (parts.share[p] != Share::towards_y && amount(load, parts.share[p]) != 0) sum += parts.displacement[p];
    return sum;
}

Stress6 in_space(const Eigen::Matrix3d& frame, const Stress6& s)
{
    Eigen::Matrix3d local;
    local << s(0), s(2), s(4), s(2), s(1), s(5), s(4), s(5), s(3);
    const Eigen::Matrix3d S = frame * local * frame.transpose();
    return {S(0, 0), S(1, 1), S(2, 2), S(0, 1), S(1, 2), S(0, 2)};
}

// A face that may carry pressure: its metal is read from below.
bool may_be_pressed(const SolidMesh& mesh, const std::string& face)
{
    return face.ends_with(other_side_suffix) || mesh.pairs.contains(face);
}

// Named faces with metal on both sides: sections through fused metal, no surfaces.
std::set<std::string> faces_inside(const SolidMesh& mesh)
{
    const auto sorted = [](std::array<std::int32_t, 3> corner)
    {
        std::ranges::sort(corner);
        return corner;
    };
    const auto first_face = [&](const std::vector<SolidMesh::Face>& list)
    {
        const auto& nodes = list.front().nodes;
        return sorted({nodes[0], nodes[1], nodes[2]});
    };
    std::map<std::array<std::int32_t, 3>, int> elements_at;
    for (const auto& [name, list] : mesh.faces)
        if (!list.empty()) elements_at[first_face(list)] = 0;
    for (const auto& element : mesh.elements)
        for (const auto& face : element_faces)
            if (const auto found = elements_at.find(sorted({element[face[0]], element[face[1]], element[face[2]]}));
                found != elements_at.end())
                ++found->second;
    std::set<std::string> inside;
    for (const auto& [name, list] : mesh.faces)
        if (!list.empty() && elements_at.at(first_face(list)) > 1) inside.insert(name);
    return inside;
}

// Values of the surface in the place of those of the elements.
class Surface
{
public:
    explicit Surface(const SolidLevel& level) : level_(level)
    {
        const std::set<std::string> inside = faces_inside(level.mesh.mesh);
        for (const auto& [name, list] : level.mesh.mesh.faces)
        {
            if (inside.contains(name)) continue;
            faces_.push_back(list);
            pressed_.push_back(may_be_pressed(level.mesh.mesh, name));
        }
    }

    void read(const LoadParts& parts, const SolidStress& entries, const std::vector<Stresses>& below)
    {
        local_.resize(parts.displacement.size());
        for (std::size_t part = 0; part < local_.size(); ++part)
        {
            const FreeSurfaceStress surface =
                free_surface_stress(level_.mesh.mesh, level_.steel, parts.displacement[part], faces_);
            if (part == 0) set_places(surface, entries);
            local_[part].resize(6, n_places());
            for (Eigen::Index i = 0; i < n_places(); ++i)
            {
                const auto at = static_cast<std::size_t>(i);
                const Stress6 stress =
                    is_free_[at] ? surface.places[at].stress : Stress6(below[part].col(entry_[at].front()));
                local_[part].col(i) = in_frame(places_.frame[at], stress);
            }
        }
    }

    [[nodiscard]] Eigen::Index n_places() const { return places_.at.cols(); }
    // Points of the fields that the place stands for.
    [[nodiscard]] const std::vector<std::int64_t>& points(Eigen::Index place) const
    {
        return entry_[static_cast<std::size_t>(place)];
    }
    [[nodiscard]] PartStress fitted(Eigen::Index place) const
    {
        PartStress sum(local_.size(), Stress6::Zero());
        for (const FitWeight& weight : fit_weights(places_, static_cast<std::int32_t>(place)))
            for (std::size_t part = 0; part < sum.size(); ++part)
                sum[part] += weight.weight * local_[part].col(weight.place);
        for (Stress6& one : sum) one = in_space(places_.frame[static_cast<std::size_t>(place)], one);
        return sum;
    }

private:
    void set_places(const FreeSurfaceStress& surface, const SolidStress& entries)
    {
        places_ = framed_places(level_.mesh.mesh, surface);
        is_free_.assign(surface.places.size(), false);
        std::size_t f = 0;
        for (std::size_t name = 0; name < faces_.size(); ++name)
            for (std::size_t i = 0; i < faces_[name].size(); ++i, ++f)
                if (!pressed_[name])
                    for (const std::int32_t place : surface.faces[f]) is_free_[static_cast<std::size_t>(place)] = true;
        entry_.assign(surface.places.size(), {});
        for (std::size_t i = 0; i < surface.places.size(); ++i)
        {
            const SurfacePlace& place = surface.places[i];
            entry_[i].push_back(entry_of(entries, place.node, place.region));
            const auto node = static_cast<std::size_t>(place.node);
            for (std::int64_t e = entries.starts[node]; e < entries.starts[node + 1]; ++e)
                if (e != entry_[i].front() && steel(entries.region[static_cast<std::size_t>(e)]) == steel(place.region))
                    entry_[i].push_back(e);
        }
    }

    [[nodiscard]] const ElasticConstants& steel(std::int32_t region) const
    {
        return level_.steel[static_cast<std::size_t>(region)];
    }

    const SolidLevel& level_;
    std::vector<std::vector<SolidMesh::Face>> faces_;
    std::vector<bool> pressed_;  // by name
    FramedPlaces places_;
    std::vector<bool> is_free_;
    std::vector<std::vector<std::int64_t>> entry_;
    std::vector<Stresses> local_;  // by part
};

// Stress of a bracket's parts at all points; at an edge the surface that the whole load stresses more.
std::vector<Stresses> stress_of(const SolidLevel& level, const LoadParts& parts, const CombinedLoad& load)
{
    const SolidMesh& mesh = level.mesh.mesh;
    std::vector<Stresses> at;
    if (parts.share.empty()) return at;
    SolidStress entries = recovered_stress(mesh, level.steel, parts.displacement.front());
    at.push_back(std::move(entries.value));
    for (std::size_t part = 1; part < parts.share.size(); ++part)
        at.push_back(recovered_stress(mesh, level.steel, parts.displacement[part]).value);
    Surface surface(level);
    surface.read(parts, entries, at);
    Eigen::VectorXd known = Eigen::VectorXd::Constant(at.front().cols(), -1);
    for (Eigen::Index i = 0; i < surface.n_places(); ++i)
    {
        const PartStress stress = surface.fitted(i);
        const double worst = worst_von_mises(turning(parts, stress, load));
        for (const std::int64_t point : surface.points(i))
        {
            if (worst <= known(point)) continue;
            known(point) = worst;
            for (std::size_t part = 0; part < at.size(); ++part) at[part].col(point) = stress[part];
        }
    }
    return at;
}

void add_mesh(SolidFields& fields, const SolidLevel& level)
{
    const SolidMesh& mesh = level.mesh.mesh;
    fields.region = level.mesh.regions;
    fields.element_region = mesh.regions;
    const SolidStress entries =
        recovered_stress(mesh, level.steel, Eigen::Matrix3Xd::Zero(3, static_cast<Eigen::Index>(mesh.nodes.size())));
    fields.node = entries.node;
    fields.place.resize(3, static_cast<Eigen::Index>(fields.size()));
    for (std::size_t i = 0; i < fields.size(); ++i)
        fields.place.col(static_cast<Eigen::Index>(i)) =
            Eigen::Map<const Eigen::Vector3d>(mesh.nodes[static_cast<std::size_t>(fields.node[i])].data());
    fields.element.resize(mesh.elements.size());
    for (std::size_t e = 0; e < mesh.elements.size(); ++e)
        for (std::size_t k = 0; k < 10; ++k)
            fields.element[e][k] = static_cast<std::int32_t>(entry_of(entries, mesh.elements[e][k], mesh.regions[e]));
}

std::vector<SolidContactFields> contact_fields(const SolidLevel& level, const LapContact& contact)
{
    std::vector<SolidContactFields> list;
    for (std::size_t s = 0; s < contact.surfaces.size(); ++s)
    {
        const ContactSurface& surface = contact.surfaces[s];
        const auto n = static_cast<Eigen::Index>(surface.places.size());
        SolidContactFields fields{surface.name, Eigen::Matrix3Xf(3, n), Eigen::VectorXf(n), Eigen::VectorXf(n),
                                  surface.faces};
        for (Eigen::Index i = 0; i < n; ++i)
        {
            const auto at = static_cast<std::size_t>(i);
            fields.place.col(i) = Eigen::Map<const Eigen::Vector3d>(
                                      level.mesh.mesh.nodes[static_cast<std::size_t>(surface.places[at].first)].data())
                                      .cast<float>();
            fields.pressure(i) = static_cast<float>(contact.states[s].pressure[at]);
            fields.gap(i) = static_cast<float>(contact.states[s].gap[at]);
        }
        list.push_back(std::move(fields));
    }
    return list;
}

const SolidBracket& shown_bracket(const SolidLevel& level)
{
    const auto touching = std::find_if(level.brackets.rbegin(), level.brackets.rend(),
                                       [](const SolidBracket& bracket) { return bracket.contact.has_value(); });
    return touching != level.brackets.rend() ? *touching : level.brackets.front();
}

}  // namespace

SolidFields solid_fields(const SolidLevel& level, const CombinedLoad& load, const std::vector<CombinedLoad>& each)
{
    SolidFields fields;
    fields.load = load;
    add_mesh(fields, level);
    const auto n = static_cast<Eigen::Index>(fields.size()),
               n_nodes = static_cast<Eigen::Index>(level.mesh.mesh.nodes.size());
    const Eigen::VectorXf nothing = Eigen::VectorXf::Zero(n);
    fields.von_mises = fields.principal = nothing;
    fields.stress.setZero(6, n);
    for (const CombinedLoad& one : each) fields.each.push_back({one, nothing, nothing, nothing, {}});
    const auto raise = [](float& known, double value) { known = std::max(known, static_cast<float>(value)); };
    const SolidBracket& shown = shown_bracket(level);
    for (const SolidBracket& bracket : level.brackets)
    {
        const LoadParts parts = parts_of(bracket.unit, load);
        const std::vector<Stresses> stress = stress_of(level, parts, load);
        PartStress at(stress.size());
        for (Eigen::Index i = 0; i < n; ++i)
        {
            for (std::size_t part = 0; part < at.size(); ++part) at[part] = stress[part].col(i);
            const Turning all = turning(parts, at, load);
            raise(fields.von_mises(i), worst_von_mises(all));
            const double principal = worst_principal(all);
            if (std::abs(principal) > std::abs(fields.principal(i)))
                fields.principal(i) = static_cast<float>(principal);
            for (SolidLoadFields& one : fields.each)
            {
                const Turning its = turning(parts, at, one.load);
                raise(one.von_mises(i), worst_von_mises(its));
                raise(one.principal(i), std::abs(worst_principal(its)));
                raise(one.shear(i), worst_shear(its, fields.place.col(i)));
            }
            if (&bracket == &shown) fields.stress.col(i) = (all.steady + all.x).cast<float>();
        }
        if (&bracket != &shown) continue;
        const auto moved = [&](const CombinedLoad& by)
        { return Eigen::Matrix3Xf(towards_x(parts, by, n_nodes).cast<float>()(Eigen::all, fields.node)); };
        fields.displacement = moved(load);
        for (SolidLoadFields& one : fields.each) one.displacement = moved(one.load);
    }
    for (const WeldMetalForce& metal : shown.weld_metal) fields.weld_metal.push_back({metal.site, metal.place});
    if (shown.contact) fields.contact = contact_fields(level, *shown.contact);
    return fields;
}

}  // namespace splicewright
