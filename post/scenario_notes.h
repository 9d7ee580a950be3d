// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/report.h"

namespace splicewright
{

// What must be said beside a scenario: the cracks whose growth could not be judged in it, and that a life longer than
// that of the sound splice is nothing to count on. Empty for most.
std::vector<std::string> notes_beside_sound(const Judgement& sound, const Judgement& scenario);

}  // namespace splicewright
