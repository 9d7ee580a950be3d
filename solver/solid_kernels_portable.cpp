// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_kernels_body.h"

// For every processor.
namespace splicewright
{

const SolidKernels* portable_kernels()
{
    static constexpr SolidKernels kernels = kernels_named<4, 4>("portable");
    return &kernels;
}

}  // namespace splicewright
