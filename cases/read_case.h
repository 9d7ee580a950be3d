// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <string>

#include "cases/case.h"
#include "cases/companion_files.h"
#include "cases/problem.h"

namespace splicewright
{

// Reads a case written in TOML 1.0; docs/case-format.md describes it. Pure: same text and companions,
// same answer.
// Either a complete case, checked in itself (every default filled in and listed, every length sane, the shape one
// that can be meshed), or all problems of the text at once; only a TOML syntax error hides what stands behind it.
Result<Case> read_case(const std::string& text, const std::string& file_name,
                       const CompanionFiles& companions = no_companion);

// The same from a file of at most 1 MiB, with the files that stand beside it; a file that cannot be read is a problem
// as well.
Result<Case> read_case_file(const std::filesystem::path& path);

}  // namespace splicewright
