// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

#include "app/study.h"
#include "post/markup.h"

namespace splicewright
{

// Where the full report of the recommended option stands in the folder of a study.
constexpr const char* recommended_folder = "recommended";

// Checks the option and writes what check writes into that folder, with the table of all options. Gives why not when it
// cannot be computed, else nothing; throws CannotCompute when the disk refuses.
std::string write_recommended(const Study& study, std::uint64_t index, const Markup& options,
                              const std::filesystem::path& folder);

}  // namespace splicewright
