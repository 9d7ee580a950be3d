// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "post/markup.h"
#include "post/report.h"

namespace splicewright
{

struct ReportFiles
{
    bool pdf = false;  // report.pdf as well
    Markup options{};  // of the study that recommends the case, for the page; may be empty
};

struct WrittenReport
{
    std::filesystem::path folder;
    std::vector<std::string> pictures;  // file names in it
    std::string why_no_pictures;        // empty when there are
    std::string why_no_pdf;             // empty when it was not asked for or is there
};

// Writes result.json, verdict.txt, the case, the drawing, the pages, the VTK files and the pictures; an earlier result
// stays whole until all of it is there. Throws CannotCompute when a file cannot be written.
WrittenReport write_report(const Report& report, const std::filesystem::path& folder, const ReportFiles& files = {});

}  // namespace splicewright
