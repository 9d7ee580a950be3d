// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_kernels_body.h"

// Compiled with the vectors of 256 bits, where the processor is of that family; see solver/CMakeLists.txt.
namespace splicewright
{

const SolidKernels* avx2_kernels()
{
#if defined(__AVX2__) && defined(__FMA__)
    static constexpr SolidKernels kernels = kernels_named<8, 4>("avx2");
    if (__builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma")) return &kernels;
#endif
    return nullptr;
}

}  // namespace splicewright
