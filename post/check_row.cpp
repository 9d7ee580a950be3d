// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/check_row.h"

#include <algorithm>

namespace splicewright
{
namespace
{

int weakness(Provenance provenance)
{
    switch (provenance)
    {
        case Provenance::theory: return 0;
        case Provenance::published: return 1;
        case Provenance::stated: return 2;
        case Provenance::secondary: return 3;
        case Provenance::derived: return 4;
        case Provenance::from_memory: return 5;
        case Provenance::common_practice: return 6;
        case Provenance::judgement: return 7;
    }
    return 7;
}

template <class Accept>
const CheckRow* largest(const std::vector<CheckRow>& rows, Accept accept)
{
    const CheckRow* worst = nullptr;
    for (const CheckRow& row : rows)
        if (row.valid() && accept(row) && (worst == nullptr || row.utilisation > worst->utilisation)) worst = &row;
    return worst;
}

}  // namespace

Provenance weaker(Provenance a, Provenance b) { return weakness(a) >= weakness(b) ? a : b; }

std::vector<std::string> sites_without_valid_row(const std::vector<CheckRow>& rows)
{
    std::vector<std::string> sites;
    for (const CheckRow& row : rows)
        if (governing(rows, row.kind, row.site) == nullptr && std::ranges::count(sites, row.site) == 0)
            sites.push_back(row.site);
    return sites;
}

const CheckRow* governing(const std::vector<CheckRow>& rows, CheckKind kind)
{
    return largest(rows, [kind](const CheckRow& row) { return row.kind == kind; });
}

const CheckRow* governing(const std::vector<CheckRow>& rows)
{
    return largest(rows, [](const CheckRow&) { return true; });
}

const CheckRow* governing(const std::vector<CheckRow>& rows, CheckKind kind, const std::string& site)
{
    return largest(rows, [&](const CheckRow& row) { return row.kind == kind && row.site == site; });
}

}  // namespace splicewright
