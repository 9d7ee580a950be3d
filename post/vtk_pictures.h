// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/picture_pages.h"

namespace splicewright
{

struct Pictures
{
    std::vector<std::string> files;  // names within the folder
    std::string why_not;             // why there is none; empty when there are
};

// Writes section.png, cutaway.png, governing-site.png and, with scenarios, scenarios.png into the folder; with the
// solid model solid-outside.png and solid-deformed.png, beside the meridian model solid-cutaway.png, and with faces of
// the lap that touch solid-contact.png. Needs no display. A machine that cannot render gives no files and the reason;
// nothing is thrown for that. Throws CannotCompute when a file cannot be written.
Pictures write_pictures(const PictureRequest& request);

// Widths of texts as these pictures show them; needs nothing to draw on.
TextWidth measured_text_width();

// The same for flat sheets, each as <name>.png.
Pictures write_sheets(const std::vector<NamedSheet>& sheets, const std::filesystem::path& folder,
                      Display display = Display::automatic);

}  // namespace splicewright
