// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/hardness.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "cases/number_text.h"
#include "cases/plain_text.h"

namespace splicewright
{
namespace
{

// Rockwell C is 0 where it is not defined.
struct HardnessRow
{
    double HRC, HV, HB, tensile;  // MPa
};

// Source: [ISO18265] table A.1 up to 470 HV, read on a page that quotes it, and [ASTM-A370] beyond, read in a copy.
// The row of 20 HRC is [ASTM-A370] with its tensile strength from memory.
constexpr std::array<HardnessRow, 19> hardness_table{{{0, 150, 143, 480},
                                                      {0, 200, 190, 640},
                                                      {20, 238, 226, 760},
                                                      {20.3, 240, 228, 770},
                                                      {25.6, 270, 257, 865},
                                                      {29.8, 300, 285, 965},
                                                      {32.2, 320, 304, 1030},
                                                      {35.5, 350, 333, 1125},
                                                      {38.8, 380, 361, 1220},
                                                      {40.8, 400, 380, 1290},
                                                      {43.6, 430, 409, 1385},
                                                      {45.3, 450, 428, 1455},
                                                      {46.9, 470, 447, 1520},
                                                      {48, 484, 451, 1640},
                                                      {50, 513, 482, 1760},
                                                      {52, 544, 512, 1880},
                                                      {54, 577, 543, 2010},
                                                      {56, 613, 577, 2160},
                                                      {58, 653, 615, 2330}}};

constexpr double tensile_scatter = 0.10;      // judgement
constexpr double yield_standard_error = 102;  // MPa, from memory

// Between the rows whose `from` stand around the value; the value lies within the table.
double interpolated(double value, double HardnessRow::*from, double HardnessRow::*to)
{
    const auto* above = std::find_if(hardness_table.begin() + 1, hardness_table.end() - 1,
                                     [&](const HardnessRow& row) { return row.*from >= value; });
    const HardnessRow &high = *above, &low = *(above - 1);
    return low.*to + (high.*to - low.*to) * (value - low.*from) / (high.*from - low.*from);
}

struct Scale
{
    const char* name;
    double HardnessRow::*column;
    double least, greatest;
};
constexpr std::array<Scale, 3> scales{
    {{"HRC", &HardnessRow::HRC, 20, 58}, {"HB", &HardnessRow::HB, 143, 615}, {"HV", &HardnessRow::HV, 150, 653}}};

// "HBW" is HB and "HV10" is HV, whatever the load.
const Scale* scale_named(std::string_view text)
{
    std::string name = lower_case(trimmed(text));
    if (name == "hbw" || name == "bhn") name = "hb";
    const bool has_load =
        name.size() > 2 && name.starts_with("hv") && name.find_first_not_of("0123456789", 2) == std::string::npos;
    if (has_load) name = "hv";
    const auto* found =
        std::find_if(scales.begin(), scales.end(), [&](const Scale& scale) { return lower_case(scale.name) == name; });
    return found == scales.end() ? nullptr : found;
}

Result<double> refusal(std::string rule, std::string fix)
{
    return std::vector<Problem>{{"", 0, 0, "", "", std::move(rule), std::move(fix)}};
}

}  // namespace

Result<double> vickers_hardness(std::string_view text)
{
    const LeadingNumber number = leading_number(text);
    const Scale* scale = number.fault == NumberFault::none ? scale_named(number.rest) : nullptr;
    if (scale == nullptr)
        return refusal("must be one number with its scale HRC, HB or HV",
                       number.fault == NumberFault::none && number.rest.empty()
                           ? fmt::format("{} {}", number.written, number.value <= 70 ? "HRC" : "HB")
                           : "... HRC");
    if (number.value < scale->least || number.value > scale->greatest)
        return refusal(fmt::format("must be from {:g} to {:g} {}, where strength goes with hardness", scale->least,
                                   scale->greatest, scale->name),
                       "measure again, or give yield and tensile from a certificate");
    return interpolated(number.value, scale->column, &HardnessRow::HV);
}

StrengthEstimate strength_of_hardness(double vickers)
{
    EXPECTS(vickers >= hardness_table.front().HV && vickers <= hardness_table.back().HV);
    const double tensile = interpolated(vickers, &HardnessRow::HV, &HardnessRow::tensile);
    const double yield = -90.7 + 2.876 * vickers;
    return {Megapascal(tensile), Megapascal((1 - tensile_scatter) * tensile), Megapascal(yield),
            Megapascal(yield - 2 * yield_standard_error)};
}

}  // namespace splicewright
