// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/SparseCore>
#include <vector>

#include "mesh/mesh.h"
#include "solver/elements.h"
#include "solver/freedoms.h"

namespace splicewright
{

// The stiffness of a section in its free unknowns, element by element.
struct ElementStiffness
{
    // One term of one unknown of one element.
    struct Entry
    {
        int free = 0;
        int local = 0;  // unknown within the element
        double factor = 0;
    };
    int n = 0;                  // unknowns of an element
    int n_free = 0;             // of the section
    std::vector<double> value;  // [n * n * n_triangles] N/mm, symmetric blocks behind each other
    std::vector<Entry> entry;   // of all elements behind each other
    std::vector<int> start;     // [n_triangles + 1] into entry

    [[nodiscard]] int n_elements() const { return static_cast<int>(start.size()) - 1; }
    [[nodiscard]] const double* block(int element) const
    {
        return value.data() + static_cast<std::size_t>(element) * static_cast<std::size_t>(n * n);
    }
};

// steel: by mesh region.
ElementStiffness element_stiffness(const Mesh& mesh, const std::vector<ElasticConstants>& steel, LoadKind kind,
                                   const Freedoms& free);

// K x, N, over the free unknowns.
Eigen::VectorXd product(const ElementStiffness& stiffness, const Eigen::VectorXd& x);

// K as a matrix, its lower triangle.
Eigen::SparseMatrix<double> assembled(const ElementStiffness& stiffness);

// Nodal forces, [n_nodes * unknowns_per_node] N, on the free unknowns.
Eigen::VectorXd force_on_free(const Freedoms& free, const Eigen::VectorXd& load);

// What the prescribed constants put on the free unknowns, N.
Eigen::VectorXd force_of_constants(const Mesh& mesh, const ElementStiffness& stiffness, const Freedoms& free);

}  // namespace splicewright
