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

enum class RowsShown
{
    governing,  // of each site and kind
    all,
};

// The verdict, 100 columns, UTF-8; on one screen with the governing rows.
std::string verdict_text(const Report& report, Emphasis emphasis, RowsShown shown = RowsShown::governing);

}  // namespace splicewright
