// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "post/report.h"

namespace splicewright
{

enum class Emphasis
{
    plain,
    terminal,  // ANSI
};

// The verdict on one screen, 100 columns, UTF-8.
std::string verdict_text(const Report& report, Emphasis emphasis);

}  // namespace splicewright
