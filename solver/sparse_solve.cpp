// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/sparse_solve.h"

#include <Eigen/CholmodSupport>
#include <Eigen/SparseCholesky>

#include "cases/problem.h"
#include "solver/one_thread.h"

namespace splicewright
{

Eigen::VectorXd sparse_solution(const Eigen::SparseMatrix<double>& K, const Eigen::VectorXd& f)
{
    use_one_thread();
    Eigen::CholmodDecomposition<Eigen::SparseMatrix<double>, Eigen::Lower> cholmod;
    cholmod.cholmod().print = 0;
    cholmod.setMode(Eigen::CholmodSupernodalLLt);
    cholmod.compute(K);
    if (cholmod.info() == Eigen::Success)
    {
        Eigen::VectorXd x = cholmod.solve(f);
        x += cholmod.solve(f - K.selfadjointView<Eigen::Lower>() * x);
        if (cholmod.info() == Eigen::Success && x.allFinite()) return x;
    }
    Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower> simplicial(K);
    if (simplicial.info() == Eigen::Success)
    {
        Eigen::VectorXd x = simplicial.solve(f);
        x += simplicial.solve(f - K.selfadjointView<Eigen::Lower>() * x);
        if (simplicial.info() == Eigen::Success && x.allFinite()) return x;
    }
    throw CannotCompute({"", 0, 0, "solver", "", "the stiffness could not be factorised: a part may hang loose",
                         "check that every part is joined to the shaft"});
}

}  // namespace splicewright
