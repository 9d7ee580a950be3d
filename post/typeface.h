// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

namespace splicewright
{

// Font files of DejaVu Sans, or none: then the renderer's own typeface serves, which has plain ASCII only.
struct Typeface
{
    std::string regular, bold;
    [[nodiscard]] bool is_found() const { return !regular.empty(); }
};

// Looks in the usual folders of Linux distributions.
Typeface typeface();

// The words as the typeface can show them.
std::string shown(const std::string& words, const Typeface& face);

}  // namespace splicewright
