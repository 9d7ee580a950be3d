// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/model_use.h"

#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <numbers>
#include <string>

#include "cases/beyond_revolution.h"

namespace splicewright
{
namespace
{

bool has_open_lap(const Case& asked, const Scenario& scenario)
{
    return asked.joint && asked.joint->half_lap.value() > 0 && (asked.joint->penetration || !scenario.butt_fused);
}

}  // namespace

ModelsTaken models_taken(const Case& asked, ModelChoice choice)
{
    if (choice == ModelChoice::meridian) return {true, false};
    const std::vector<BeyondRevolution> parts = beyond_revolution(asked);
    const bool is_needed =
        std::any_of(parts.begin(), parts.end(), [](const BeyondRevolution& part) { return !part.has_stand_in; });
    if (choice == ModelChoice::solid || is_needed) return {false, true};
    return {true, choice == ModelChoice::both};
}

bool is_of_revolution(const Case& asked, const Scenario& scenario)
{
    return beyond_revolution(asked).empty() && !has_open_lap(asked, scenario);
}

std::int64_t free_memory()
{
    std::ifstream in("/proc/meminfo");
    std::string name, unit;
    std::int64_t kilobytes = 0;
    while (in >> name >> kilobytes)
    {
        std::getline(in, unit);
        if (name == "MemAvailable:") return kilobytes * 1024;
    }
    const long pages = ::sysconf(_SC_PHYS_PAGES), page = ::sysconf(_SC_PAGESIZE);
    return pages > 0 && page > 0 ? static_cast<std::int64_t>(pages) * page : 0;
}

Case as_body_of_revolution(const Case& asked, const Scenario& scenario)
{
    Case shown = asked;
    if (!shown.sleeve) return shown;
    shown.sleeve->plugs.clear();
    shown.sleeve->weld.coverage = Radian(2 * std::numbers::pi);
    if (!scenario.sleeve_weld_fused[0] && !scenario.sleeve_weld_fused[1]) shown.sleeve.reset();
    return shown;
}

}  // namespace splicewright
