// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "tests/cases/text_blocks.h"

namespace splicewright
{

// The sound splice with lines added to its [joint] and a [making] table, both may be empty.
std::string made_splice_text(const std::string& joint_lines, const std::string& making_lines);
Case made_splice(const std::string& joint_lines, const std::string& making_lines);

// Two equal plain bars butted together, no sleeve.
Case butted_bars(const std::string& diameter, const std::string& length, const std::string& more_joint,
                 const std::string& speed);

}  // namespace splicewright
