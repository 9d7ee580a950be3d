// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/page_parts.h"
#include "post/report.h"

namespace splicewright
{

// A file that the case needs beside it, kept inside the page.
struct PageFile
{
    std::string name, bytes, checksum;
};

// What the page shows beside the report itself.
struct PageExtras
{
    std::vector<PagePicture> pictures;  // those of write_pictures
    std::string why_no_pictures;        // empty when there are
    PageFile case_file;
    std::vector<PageFile> companions;   // files that the case names
    std::vector<std::string> left_out;  // those that are too large to be kept in the page
    Markup options;                     // of the study that recommends this case; may be empty
};

enum class PagePaper
{
    of_the_browser,  // whatever is chosen when it is printed
    a4,
};

// The report as one HTML file that asks for nothing outside itself: no link that loads, and no script but that of the
// view in three dimensions, without which everything can be read as well. Every number comes from the report as
// result.json does.
std::string report_html(const Report& report, const PageExtras& extras, PagePaper paper = PagePaper::of_the_browser);

}  // namespace splicewright
