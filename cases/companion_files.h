// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <istream>
#include <memory>
#include <string>

namespace splicewright
{

// A file that a case names, opened.
struct Companion
{
    std::string path;                      // as problems name it
    std::unique_ptr<std::istream> stream;  // null when it cannot be read
    std::string why_not;                   // a rule, "there is no such file"
};
using CompanionFiles = std::function<Companion(const std::string& name)>;

// For a case that comes as a text: nothing stands beside it.
Companion no_companion(const std::string& name);

// Regular files by a path relative to the folder of the case.
CompanionFiles companions_beside(const std::string& folder);

}  // namespace splicewright
