// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/typeface.h"

#include <filesystem>

#include "post/sheet.h"

namespace splicewright
{

Typeface typeface()
{
    for (const char* folder : {"/usr/share/fonts/truetype/dejavu", "/usr/share/fonts/dejavu", "/usr/share/fonts/TTF",
                               "/usr/share/fonts/dejavu-sans-fonts", "/usr/local/share/fonts"})
    {
        const std::filesystem::path place(folder);
        std::error_code ignored;
        if (std::filesystem::exists(place / "DejaVuSans.ttf", ignored) &&
            std::filesystem::exists(place / "DejaVuSans-Bold.ttf", ignored))
            return {place / "DejaVuSans.ttf", place / "DejaVuSans-Bold.ttf"};
    }
    return {};
}

std::string shown(const std::string& words, const Typeface& face)
{
    return face.is_found() ? clean_text(words) : ascii_text(words);
}

}  // namespace splicewright
