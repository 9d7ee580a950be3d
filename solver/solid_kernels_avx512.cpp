// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_kernels_body.h"

// Compiled with the vectors of 512 bits, where the processor is of that family; see solver/CMakeLists.txt.
namespace splicewright
{

const SolidKernels* avx512_kernels()
{
#if defined(__AVX512F__) && defined(__AVX512DQ__) && defined(__AVX512VL__)
    static constexpr SolidKernels kernels = kernels_named<8, 8>("avx512");
    const bool runs = __builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq") &&
                      __builtin_cpu_supports("avx512vl") && __builtin_cpu_supports("fma");
    if (runs) return &kernels;
#endif
    return nullptr;
}

}  // namespace splicewright
