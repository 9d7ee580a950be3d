// SPDX-License-Identifier: GPL-2.0-or-later
#include "example_report.h"

#include <map>

#include "app/check_splice.h"
#include "cases/read_case.h"

namespace splicewright
{

const Report& report_of(const std::string& name)
{
    constexpr Accuracy coarse{20};
    static std::map<std::string, Report> known;
    if (!known.contains(name))
        known.emplace(
            name,
            check_splice(read_case_file(SPLICEWRIGHT_SOURCE_DIR "/cases/examples/" + name + ".toml").value(), coarse));
    return known.at(name);
}

}  // namespace splicewright
