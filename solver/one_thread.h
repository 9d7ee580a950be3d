// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace splicewright
{

// Keeps CHOLMOD and OpenBLAS from threads of their own. Systems of one meridian section are too small for them: waiting
// for each other costs threads more than they gain, and processes are what fills the cores.
void use_one_thread();

}  // namespace splicewright
