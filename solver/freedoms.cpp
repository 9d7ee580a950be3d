// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/freedoms.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "cases/problem.h"
#include "solver/elements.h"

namespace splicewright
{
namespace
{

using Unknown = Freedoms::Unknown;

constexpr double on_axis_mm = 1e-9;

Unknown zero() { return {}; }

// Row `of` expressed through another unknown's row times a factor, added to `to`.
void add(Unknown& to, const Unknown& of, double factor)
{
    to.constant += factor * of.constant;
    for (int k = 0; k < of.n_terms; ++k)
    {
        const auto begin = to.term.begin(), end = begin + to.n_terms;
        const auto same = std::find_if(
            begin, end, [&](const auto& t) { return t.free == of.term[static_cast<std::size_t>(k)].free; });
        if (same != end) same->factor += factor * of.term[static_cast<std::size_t>(k)].factor;
        else
        {
            EXPECTS(to.n_terms < static_cast<int>(to.term.size()));
            to.term[static_cast<std::size_t>(to.n_terms++)] = {of.term[static_cast<std::size_t>(k)].free,
                                                               factor * of.term[static_cast<std::size_t>(k)].factor};
        }
    }
}

class Numbering
{
public:
    Numbering(const Mesh& mesh, LoadKind kind, const Ties& ties)
        : mesh_(mesh),
          kind_(kind),
          ties_(ties),
          n_(unknowns_per_node(kind)),
          tied_(static_cast<std::size_t>(mesh.n_nodes()), -1)
    {
    }

    Freedoms numbered()
    {
        result_.unknown.resize(static_cast<std::size_t>(mesh_.n_nodes() * n_));
        mark_tied_nodes();
        const int pin = pin_node();
        for (int node = 0; node < mesh_.n_nodes(); ++node)
            if (tied_[static_cast<std::size_t>(node)] < 0) number_node(node, node == pin);
        for (std::size_t p = 0; p < mesh_.pair.size(); ++p)
            if (tied_[static_cast<std::size_t>(mesh_.pair[p].inner)] == static_cast<int>(p)) tie(mesh_.pair[p]);
        return std::move(result_);
    }

private:
    [[nodiscard]] std::size_t side_of(const FacePair& pair) const { return pair.curve.ends_with("left") ? 0 : 1; }

    [[nodiscard]] FaceTie tie_of(const FacePair& pair) const
    {
        if (pair.curve == "land") return FaceTie::free;
        const FaceTie tie = ties_.slit[side_of(pair)];
        const bool slides_free = kind_ == LoadKind::torsion || pair.curve.starts_with("butt-surface");
        return tie == FaceTie::held && slides_free ? FaceTie::free : tie;
    }

    // The bar's node follows the sleeve's, the first pair of a node wins.
    void mark_tied_nodes()
    {
        for (std::size_t p = 0; p < mesh_.pair.size(); ++p)
        {
            int& mark = tied_[static_cast<std::size_t>(mesh_.pair[p].inner)];
            if (tie_of(mesh_.pair[p]) != FaceTie::free && mark < 0) mark = static_cast<int>(p);
        }
    }

    // Near mid-length the round-off of the far ends has the shortest arms; far from the axis a tilt is held best.
    [[nodiscard]] int pin_node() const
    {
        const double middle = (mesh_.node.row(0).minCoeff() + mesh_.node.row(0).maxCoeff()) / 2;
        int best = -1;
        double best_score = -INFINITY;
        for (int node = 0; node < mesh_.n_nodes(); ++node)
        {
            const double score = mesh_.node(1, node) - std::abs(mesh_.node(0, node) - middle);
            if (tied_[static_cast<std::size_t>(node)] < 0 && score > best_score) best = node, best_score = score;
        }
        return best;
    }

    Unknown fresh(int node)
    {
        result_.node_of_free.push_back(node);
        return {{Freedoms::Term{result_.n_free++, 1.0}}, 1, 0.0};
    }
    Unknown& unknown(int node, int component)
    {
        return result_.unknown[static_cast<std::size_t>(node * n_ + component)];
    }
    void pin(int node, int component) { result_.pinned.push_back(node * n_ + component); }

    void number_node(int node, bool is_pin)
    {
        const bool axis = mesh_.node(1, node) < on_axis_mm;
        switch (kind_)
        {
            case LoadKind::torsion:
                unknown(node, 0) = axis || is_pin ? zero() : fresh(node);
                if (is_pin) pin(node, 0);
                break;
            case LoadKind::axial:
                unknown(node, 0) = axis ? zero() : fresh(node);
                unknown(node, 1) = is_pin ? zero() : fresh(node);
                if (is_pin) pin(node, 1);
                break;
            case LoadKind::bending:
                unknown(node, 0) = is_pin ? zero() : fresh(node);
                if (axis) add(unknown(node, 1), unknown(node, 0), -1);
                else unknown(node, 1) = fresh(node);
                unknown(node, 2) = axis || is_pin ? zero() : fresh(node);
                if (is_pin) pin(node, 0), pin(node, 2);
                break;
        }
    }

    void tie(const FacePair& pair)
    {
        if (tie_of(pair) == FaceTie::merged)
        {
            for (int c = 0; c < n_; ++c) unknown(pair.inner, c) = unknown(pair.outer, c);
            return;
        }
        const int r = 0, z = n_ - 1;
        const double nz = pair.normal(0), nr = pair.normal(1);
        Unknown normal = zero();
        add(normal, unknown(pair.outer, z), nz);
        add(normal, unknown(pair.outer, r), nr);
        normal.constant -= ties_.overlap[side_of(pair)];
        const Unknown tangential = fresh(pair.inner);
        Unknown inner_z = zero(), inner_r = zero();
        add(inner_z, normal, nz), add(inner_z, tangential, -nr);
        add(inner_r, normal, nr), add(inner_r, tangential, nz);
        unknown(pair.inner, z) = inner_z;
        unknown(pair.inner, r) = inner_r;
        if (kind_ == LoadKind::bending) unknown(pair.inner, 1) = fresh(pair.inner);
    }

    const Mesh& mesh_;
    LoadKind kind_;
    const Ties& ties_;
    int n_;
    std::vector<int> tied_;  // by node: the pair that ties it, -1 for none
    Freedoms result_;
};

}  // namespace

Freedoms freedoms(const Mesh& mesh, LoadKind kind, const Ties& ties) { return Numbering(mesh, kind, ties).numbered(); }

}  // namespace splicewright
