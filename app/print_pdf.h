// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>

namespace splicewright
{

// Environment variable that names the browser to print with.
constexpr const char* browser_variable = "SPLICEWRIGHT_BROWSER";

// A browser of the Chromium family that prints without a window; the named one, else the first on the search path.
std::optional<std::filesystem::path> installed_browser();

// Prints an HTML text to a PDF file with an installed browser. Gives why there is none and what to do; empty when it is
// there.
std::string print_pdf(const std::string& html, const std::filesystem::path& pdf);

}  // namespace splicewright
