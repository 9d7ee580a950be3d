// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/write_charts.h"

#include <fmt/format.h>

#include "app/result_folder.h"
#include "post/sheet_svg.h"
#ifdef SPLICEWRIGHT_PICTURES
#include "post/vtk_pictures.h"
#endif

namespace splicewright
{

TextWidth chart_text_width()
{
#ifdef SPLICEWRIGHT_PICTURES
    return measured_text_width();
#else
    // Mean widths of DejaVu Sans over its type size: a little too wide, so that nothing touches.
    return [](const std::string& words, double size, Weight weight)
    { return (weight == Weight::bold ? 0.70 : 0.62) * size * static_cast<double>(words.size()); };
#endif
}

std::string write_charts(const std::vector<NamedSheet>& charts, const std::filesystem::path& folder)
{
    for (const NamedSheet& chart : charts) write_result_file(folder / (chart.name + ".svg"), sheet_svg(chart.sheet));
    if (charts.empty()) return {};
#ifdef SPLICEWRIGHT_PICTURES
    return write_sheets(charts, folder).why_not;
#else
    return "this program was built without VTK";
#endif
}

}  // namespace splicewright
