// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/model_rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "post/number_words.h"

namespace splicewright
{
namespace
{

constexpr double per_kilonewton_metre = 1e6, per_kilonewton = 1e3;

Measured scaled(const Measured& unit, double factor) { return {unit.value * factor, unit.error * factor}; }

}  // namespace

std::size_t n_agreeing(const std::vector<ModelRow>& rows)
{
    return static_cast<std::size_t>(
        std::count_if(rows.begin(), rows.end(), [](const ModelRow& row) { return row.agrees; }));
}

double apart_pct(const ModelRow& row)
{
    return row.meridian.value != 0 ? 100 * (row.solid.value / row.meridian.value - 1) : 0;
}

std::string agreement_words(const std::vector<ModelRow>& rows, bool must_agree)
{
    return fmt::format("{} of {} agree within the sum of both error bars{}", n_agreeing(rows), rows.size(),
                       must_agree ? "; !: does not" : "; the solid model shows what is no body of revolution");
}

std::vector<ModelRow> model_rows(const MeridianAnswer& meridian, const MeridianAnswer& solid)
{
    std::vector<ModelRow> rows;
    for (const SiteAnswer& site : solid.sites)
    {
        const auto same = std::find_if(meridian.sites.begin(), meridian.sites.end(),
                                       [&](const SiteAnswer& other) { return other.id == site.id; });
        if (same == meridian.sites.end()) continue;
        const auto add = [&](const char* load, const UnitPeak& one, const UnitPeak& other, double factor)
        {
            ModelRow row{site.id, load, scaled(one.von_mises, factor), scaled(other.von_mises, factor), false};
            row.agrees = std::abs(row.solid.value - row.meridian.value) <= row.solid.error + row.meridian.error;
            rows.push_back(row);
        };
        add("torsion", same->torsion, site.torsion, per_kilonewton_metre);
        add("bending", same->bending, site.bending, per_kilonewton_metre);
        add("axial", same->axial, site.axial, per_kilonewton);
    }
    return rows;
}

std::string model_text(const std::vector<ModelRow>& rows, bool must_agree)
{
    if (rows.empty()) return "";
    std::string text = fmt::format(
        "\nVon Mises stress by both models, MPa per kN·m, axial per kN\n{:<17} {:<8} {:>9} {:<8}"
        " {:>9} {:<8} {:>8}\n",
        "site", "load", "meridian", "error", "solid", "error", "apart");
    const auto error = [](const Measured& value)
    { return error_words(value.value != 0 ? 100 * value.error / value.value : 0); };
    for (const ModelRow& row : rows)
    {
        text += fmt::format("{:<17} {:<8} {:>9.4g} {:<8} {:>9.4g} {:<8} {:>+6.1f} %{}\n", row.site, row.load,
                            row.meridian.value, error(row.meridian), row.solid.value, error(row.solid), apart_pct(row),
                            must_agree && !row.agrees ? " !" : "");
    }
    return text + agreement_words(rows, must_agree) + "\n\n";
}

std::vector<std::string> sites_worse_in_solid(const std::vector<ModelRow>& rows)
{
    std::vector<std::string> sites;
    for (const ModelRow& row : rows)
        if (row.solid.value - row.solid.error > row.meridian.value + row.meridian.error &&
            std::find(sites.begin(), sites.end(), row.site) == sites.end())
            sites.push_back(row.site);
    return sites;
}

}  // namespace splicewright
