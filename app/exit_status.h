// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace splicewright
{

enum ExitStatus
{
    exit_passes = 0,
    exit_does_not_pass = 1,
    exit_bad_input = 2,
    exit_cannot_compute = 3,
    exit_our_fault = 4,
};

}  // namespace splicewright
