// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/compare_text.h"
#include "post/report_html.h"
#include "post/sheet.h"

namespace splicewright
{

// What a study is shown with beside its ranking.
struct ComparePage
{
    const StudyOrigin& origin;
    const Ranking& ranking;
    const std::vector<KeyLine>& lines;
    std::string search_words;  // of compare --find; may be empty
    PageFile case_file;
    const std::vector<NamedSheet>& charts;  // of study_sheets
    std::string full_report;                // of the recommended option: where it stands beside this page; may be empty
    std::string why_no_report;              // empty when there is one, or when no option passes
};

// Those that pass by mass, then the others by what they use.
Markup options_table(const StudyOrigin& origin, const Ranking& ranking);

// The outcome of a study as one HTML file that asks for nothing outside itself, in the manner of report_html.
std::string compare_html(const ComparePage& page);

}  // namespace splicewright
