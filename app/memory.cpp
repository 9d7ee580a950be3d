// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/memory.h"

#include <cstdlib>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace splicewright
{

void keep_freed_memory()
{
#ifdef __GLIBC__
    constexpr int one_gibibyte = 1 << 30;
    mallopt(M_MMAP_THRESHOLD, one_gibibyte);
    mallopt(M_TRIM_THRESHOLD, one_gibibyte);
    mallopt(M_TOP_PAD, one_gibibyte / 16);
#endif
}

}  // namespace splicewright
