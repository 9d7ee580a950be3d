// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/compare_text.h"
#include "post/report_html.h"

namespace splicewright
{

// A chart of the study as an SVG file.
struct StudyChart
{
    std::string name, svg;  // utilisation, trade-off or heat-map
};

// What a study is shown with beside its ranking.
struct ComparePage
{
    const StudyOrigin& origin;
    const Ranking& ranking;
    const std::vector<KeyLine>& lines;
    std::string search_words;  // of compare --find; may be empty
    PageFile case_file;
    std::vector<StudyChart> charts;
};

// The outcome of a study as one HTML file that asks for nothing outside itself, in the manner of report_html.
std::string compare_html(const ComparePage& page);

}  // namespace splicewright
