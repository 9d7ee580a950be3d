// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/one_thread.h"

#include <cblas.h>
#include <omp.h>

namespace splicewright
{

void use_one_thread()
{
    omp_set_max_active_levels(0);  // CHOLMOD names its own number of threads, which this alone overrides
    openblas_set_num_threads(1);
}

}  // namespace splicewright
