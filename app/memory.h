// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace splicewright
{

// Lets the allocator keep large blocks that are freed: the solves ask for the same ones again and again, and fetching
// them from the system each time took a fifth of the run. Call once, first in main. Does nothing without glibc.
void keep_freed_memory();

}  // namespace splicewright
