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
    governing,  // of the sites that are used most; remarks, values taken and general cautions are only counted
    all,
};

// The verdict, 100 columns, UTF-8; on one screen of about 60 lines with the governing rows.
std::string verdict_text(const Report& report, Emphasis emphasis, RowsShown shown = RowsShown::governing);

}  // namespace splicewright
