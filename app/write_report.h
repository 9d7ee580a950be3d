// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <string>

#include "post/report.h"

namespace splicewright
{

struct WrittenReport
{
    std::filesystem::path folder;
    std::vector<std::string> pictures;  // file names in it
    std::string why_no_pictures;        // empty when there are
};

// Writes result.json, verdict.txt, the case, the VTK files and the pictures; an earlier result stays whole until all
// of it is there. Throws CannotCompute when a file cannot be written.
std::string case_checksum(const Case& asked);  // SHA-256 of the case file, in hexadecimal

WrittenReport write_report(const Report& report, const std::filesystem::path& folder);

}  // namespace splicewright
