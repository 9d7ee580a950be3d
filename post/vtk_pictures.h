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

// Writes section.png, cutaway.png, governing-site.png and, with scenarios, scenarios.png into the folder.
// Needs no display. A machine that cannot render gives no files and the reason; nothing is thrown for that.
// Throws CannotCompute when a file cannot be written.
Pictures write_pictures(const PictureRequest& request);

}  // namespace splicewright
