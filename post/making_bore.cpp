// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/making_bore.h"

#include <algorithm>
#include <cmath>

#include "cases/problem.h"

// Source: [ISO286] limits in micrometres. Rows over 18 to 50 mm were read in secondary tables (those of r and s too);
// the others are from memory.

namespace splicewright
{
namespace
{

struct DiameterRange
{
    double over, up_to;          // mm
    double it6, it7, it8;        // widths
    double g, k, m, n, p, r, s;  // g: below the nominal size; k to s: lower limit above it
    Provenance provenance;
};

constexpr Provenance memory = Provenance::from_memory, read = Provenance::secondary;
constexpr DiameterRange ranges[] = {
    {3, 6, 8, 12, 18, 4, 1, 4, 8, 12, 15, 19, memory},
    {6, 10, 9, 15, 22, 5, 1, 6, 10, 15, 19, 23, memory},
    {10, 18, 11, 18, 27, 6, 1, 7, 12, 18, 23, 28, memory},
    {18, 30, 13, 21, 33, 7, 2, 8, 15, 22, 28, 35, read},
    {30, 50, 16, 25, 39, 9, 2, 9, 17, 26, 34, 43, read},
    {50, 65, 19, 30, 46, 10, 2, 11, 20, 32, 41, 53, memory},
    {65, 80, 19, 30, 46, 10, 2, 11, 20, 32, 43, 59, memory},
    {80, 100, 22, 35, 54, 12, 3, 13, 23, 37, 51, 71, memory},
    {100, 120, 22, 35, 54, 12, 3, 13, 23, 37, 54, 79, memory},
    {120, 140, 25, 40, 63, 14, 3, 15, 27, 43, 63, 92, memory},
    {140, 160, 25, 40, 63, 14, 3, 15, 27, 43, 65, 100, memory},
    {160, 180, 25, 40, 63, 14, 3, 15, 27, 43, 68, 108, memory},
    {180, 200, 29, 46, 72, 15, 4, 17, 31, 50, 77, 122, memory},
    {200, 225, 29, 46, 72, 15, 4, 17, 31, 50, 80, 130, memory},
    {225, 250, 29, 46, 72, 15, 4, 17, 31, 50, 84, 140, memory},
};
constexpr double mm_per_um = 1e-3;

const DiameterRange& range_of(Millimetre diameter)
{
    const DiameterRange* const range = std::find_if(
        std::begin(ranges), std::end(ranges),
        [&](const DiameterRange& each) { return diameter.value() > each.over && diameter.value() <= each.up_to; });
    EXPECTS(range != std::end(ranges));
    return *range;
}

}  // namespace

std::vector<StandardFit> standard_fits(Millimetre diameter)
{
    const DiameterRange& range = range_of(diameter);
    struct Shaft
    {
        const char* name;
        double lower, upper;
    };
    const Shaft shafts[] = {
        {"h6", -range.it6, 0},
        {"h7", -range.it7, 0},
        {"g6", -range.g - range.it6, -range.g},
        {"k6", range.k, range.k + range.it6},
        {"m6", range.m, range.m + range.it6},
        {"n6", range.n, range.n + range.it6},
        {"p6", range.p, range.p + range.it6},
        {"r6", range.r, range.r + range.it6},
        {"s6", range.s, range.s + range.it6},
    };
    std::vector<StandardFit> fits;
    for (const auto& [hole, width] : {std::pair{"H7/", range.it7}, std::pair{"H8/", range.it8}})
        for (const Shaft& shaft : shafts)
            fits.push_back({std::string(hole).append(shaft.name), -shaft.upper * mm_per_um,
                            (width - shaft.lower) * mm_per_um, range.provenance});
    return fits;
}

Millimetre standard_tolerance(Millimetre diameter, int grade)
{
    EXPECTS(grade >= 6 && grade <= 8);
    const DiameterRange& range = range_of(diameter);
    return Millimetre((grade == 6 ? range.it6 : grade == 7 ? range.it7 : range.it8) * mm_per_um);
}

Provenance tolerance_provenance(Millimetre diameter) { return range_of(diameter).provenance; }

BoreBand bore_band(const Case& asked, Side side)
{
    EXPECTS(asked.sleeve && asked.making && asked.bar[index(side)]);
    const Millimetre bar = asked.bar[index(side)]->sections.front().diameter;
    BoreBand band;
    band.side = side;
    band.bar_diameter = bar.value();
    band.clearance = asked.sleeve->clearance[index(side)].value();
    band.grade = asked.making->bore_grade;
    band.source = "ISO 286-1:2010, ISO 286-2:2010 [ISO286]";
    band.provenance = tolerance_provenance(bar);

    const double width = standard_tolerance(bar, band.grade).value();
    const double middle = band.bar_diameter + band.clearance;
    if (band.clearance >= 0) band.least = std::max(band.bar_diameter, middle - width / 2);
    else band.least = std::min(band.bar_diameter - width, middle - width / 2);
    band.greatest = band.least + width;

    constexpr double round_off = 1e-9;  // mm
    const double bore_middle = (band.least + band.greatest) / 2 - band.bar_diameter;
    double nearest = INFINITY;
    bool nearest_is_alike = false;
    for (const StandardFit& fit : standard_fits(bar))
    {
        if (band.clearance < fit.least_clearance - round_off || band.clearance > fit.greatest_clearance + round_off)
            continue;
        band.fits.push_back(fit.name);
        const bool is_alike = band.clearance >= 0 ? fit.least_clearance >= 0 : fit.greatest_clearance <= 0;
        const double off = std::abs(bore_middle - (fit.least_clearance + fit.greatest_clearance) / 2);
        if (nearest_is_alike && !is_alike) continue;
        if (is_alike == nearest_is_alike && off >= nearest - round_off) continue;
        nearest = off;
        nearest_is_alike = is_alike;
        band.nearest_fit = fit.name;
    }
    return band;
}

}  // namespace splicewright
