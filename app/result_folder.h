// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <functional>
#include <string>

namespace splicewright
{

// Fills a new folder beside `target` and puts it in its place in one step when complete: whenever the work is
// interrupted, what stood at `target` before is still there and whole.
// Left-overs of earlier interruptions are removed. Throws CannotCompute when the disk refuses, and passes on what
// `fill` throws; `target` is untouched then.
void write_result_folder(const std::filesystem::path& target,
                         const std::function<void(const std::filesystem::path& folder)>& fill);

// Throws as write_result_folder would where the target may not be written to, before there is anything to be lost.
// Makes the folders above it.
void expect_writable(const std::filesystem::path& target);

// One file of such a folder. Throws CannotCompute when the disk refuses.
void write_result_file(const std::filesystem::path& file, const std::string& bytes);

}  // namespace splicewright
