// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/write_tolerances.h"

#include "app/content_hash.h"
#include "app/result_folder.h"
#include "app/write_charts.h"
#include "post/tolerance_chart.h"
#include "post/tolerance_html.h"

namespace splicewright
{

std::string write_tolerances(const ToleranceAnswer& answer, const Case& asked, double accuracy_pct,
                             const std::filesystem::path& folder)
{
    const PageFile case_file{std::filesystem::path(asked.file).filename().string(), asked.text,
                             in_hexadecimal(content_hash(asked.text))};
    std::string why_no_pictures;
    write_result_folder(
        folder,
        [&](const std::filesystem::path& partial)
        {
            write_result_file(partial / "case.toml", asked.text);
            write_result_file(partial / "tolerances.txt", tolerance_text(answer));
            write_result_file(partial / "report.html", tolerance_html({answer, case_file, accuracy_pct}));
            if (answer.effects.empty() || answer.nominal.end != OptionEnd::judged) return;
            why_no_pictures = write_charts(
                {{"tolerances", tolerance_sheet(answer, case_file.name, accuracy_pct, chart_text_width())}}, partial);
        });
    return why_no_pictures;
}

}  // namespace splicewright
