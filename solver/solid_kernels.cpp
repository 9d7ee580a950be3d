// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_kernels.h"

namespace splicewright
{

const SolidKernels& best_kernels()
{
    static const SolidKernels* const best = avx512_kernels() ? avx512_kernels()
                                            : avx2_kernels() ? avx2_kernels()
                                                             : portable_kernels();
    return *best;
}

}  // namespace splicewright
