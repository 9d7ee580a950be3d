// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/prove.h"

#include <algorithm>

namespace splicewright
{

std::vector<ProvenCheck> prove(const std::vector<CheckGroup>& groups, const std::string& beginning,
                               const std::function<void(const ProvenCheck&)>& watch)
{
    const auto is_asked = [&](const PublishedCheck& check) { return check.name.starts_with(beginning); };
    std::vector<ProvenCheck> rows;
    for (const CheckGroup& group : groups)
    {
        if (std::none_of(group.checks.begin(), group.checks.end(), is_asked)) continue;
        for (ProvenCheck& row : proven(group))
        {
            if (!is_asked(row.check)) continue;
            watch(row);
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

}  // namespace splicewright
