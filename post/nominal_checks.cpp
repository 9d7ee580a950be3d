// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/nominal_checks.h"

#include <fmt/format.h>

#include <algorithm>

#include "post/site_loads.h"
#include "post/weld_places.h"

namespace splicewright
{
namespace
{

constexpr double toe_exponent = 0.3;            // of the thickness. Source: [Hobbacher2016] 3.5.2, from memory
constexpr double eurocode_butt_exponent = 0.2;  // Source: [Eurocode3Fatigue2005] table 8.3, from memory
std::string no_reduction(const Case& asked)
{
    if (asked.rating.relief != StressRelief::none || asked.rating.misalignment_factor > 1) return {};
    return "as welded: full range counts at any mean stress; a round bar in torsion has no misalignment factor, the "
           "class "
           "covers that of bending";
}

double partial_factor() { return safe_life_partial_factor().value; }

}  // namespace

WeldCurves iiw_curves(double normal_class, double shear_class)
{
    return {normal_curve(Megapascal{normal_class}, partial_factor(), Provenance::judgement),
            shear_curve(Megapascal{shear_class}, partial_factor(), Provenance::judgement), InteractionRule::squares};
}

namespace
{

WeldCurves eurocode_curves(double normal_category, double shear_category)
{
    WeldCurves curves{eurocode_normal_curve(Megapascal{normal_category}, partial_factor()),
                      eurocode_shear_curve(Megapascal{shear_category}, partial_factor()),
                      InteractionRule::cubes_and_fifths};
    curves.normal.provenance = curves.shear.provenance = Provenance::judgement;
    return curves;
}

// End of a long cover on a plate, by the cover's thickness over the plate's. Source: [Hobbacher2016] no. 711, from
// memory.
double cover_end_class(double cover, double plate)
{
    const double ratio = cover / plate;
    return ratio <= 0.8 ? 56 : ratio <= 1.5 ? 50 : 45;
}

// End of a cover plate by the plate's thickness; of a solid bar its diameter is the size, and half of it the plate that
// the cover is held against, each on the safe side (judgement). Source: [Eurocode3Fatigue2005] table 8.5, from memory;
// thicknesses above 50 mm under a thicker cover are not listed and take the least class.
double cover_end_category(double cover, double plate, double size)
{
    const int step = size <= 20 ? 0 : size <= 30 ? 1 : size <= 50 ? 2 : 3;
    constexpr double thin[] = {56, 50, 45, 40}, thick[] = {50, 45, 40, 40};
    return cover < plate ? thin[step] : thick[step];
}

CheckRow nominal_row(const Case& asked, const RowTitle& title, const WeldUnitStress& stress, const WeldCurves& curves,
                     const std::string& detail)
{
    CheckRow row = weld_row(asked, title, stress, curves);
    append_note(row.note, detail);
    return row;
}

const char* const bar_stress = "nominal stress of the bar 16T/(pi d^3), 32M/(pi d^3)";
const char* const sleeve_stress = "nominal stress of the sleeve's end, force on the weld by finite elements";
const char* const throat_stress = "structural stress: force on the weld by finite elements over the throat";
const char* const butt_stress = "nominal stress of the fused section, share of the butt by finite elements";

void add_bar_toe_principal(std::vector<CheckRow>& rows, const Case& asked, const std::string& site,
                           const WeldUnitStress& stress)
{
    const bool bends =
        !asked.load.blocks.empty() && (asked.load.peak_bending.value() > 0 || asked.load.running_bending.value() > 0);
    SnCurve curve = normal_curve(Megapascal{80}, partial_factor(), Provenance::secondary);
    if (bends) curve.slope = 5, curve.knee_cycles = 1e8, curve.slope_beyond_variable = 9;
    curve.source = "Maddox and Razmjoo 2001 [MaddoxRazmjoo2001], fillet toe; knee from memory";
    CheckRow row =
        equivalent_row(asked,
                       {site, "nominal-principal", "principal stress at a fillet toe",
                        fmt::format("{}; range of the first principal stress, FAT 80, slope 3 in phase and 5 "
                                    "out of phase, Miner sum 0.5 or 0.2",
                                    bar_stress)},
                       stress, Equivalent::first_principal, curve);
    append_note(row.note, bends ? "torque and rotating bending are out of phase: slope 5" : "one load alone: slope 3");
    rows.push_back(row);
}

void add_bar_toe(std::vector<CheckRow>& rows, const Case& asked, const std::string& site)
{
    const WeldUnitStress stress = bar_unit_stress(asked, side_of(site));
    const double plate = wall_at(asked, site),
                 cover = wall_at(asked, fmt::format("sleeve-toe.{}", name_of(side_of(site))));
    WeldCurves iiw = iiw_curves(cover_end_class(cover, plate), 80);
    iiw.worked = {worked_step(fmt::format("cover's thickness over the bar's: FAT 56 up to 0.8, 50 up to 1.5, then 45; "
                                          "here {:g}",
                                          cover_end_class(cover, plate)),
                              "t_c/t", put_in("{}/{}", {cover, plate}), cover / plate, "")};
    const double size = size_at(asked, site);
    thicken(iiw, Millimetre{size}, toe_exponent);
    std::string detail =
        fmt::format("sleeve of {:.3g} mm over a wall of {:.3g} mm (half the diameter of a solid bar: judgement), {}",
                    cover, plate, size_words(asked, site));
    append_note(detail, no_reduction(asked));
    rows.push_back(
        nominal_row(asked,
                    {site, "nominal-iiw", "cover's end, IIW class",
                     fmt::format("{}; IIW detail 711, shear 80, squares with 0.5, Miner sum 0.5 or 0.2", bar_stress)},
                    stress, iiw, detail));
    WeldCurves eurocode = eurocode_curves(cover_end_category(cover, plate, size), 80);
    eurocode.worked = {
        read_step(fmt::format("category of a cover's end for a bar of {:.3g} mm and a cover of {:.3g} mm over a "
                              "wall of {:.3g} mm, from a table",
                              size, cover, plate),
                  eurocode.normal.fatigue_class.value(), "MPa")};
    rows.push_back(
        nominal_row(asked,
                    {site, "nominal-ec3", "cover's end, EN 1993-1-9",
                     fmt::format("{}; EN 1993-1-9 table 8.5, shear 80, cubes and fifths, Miner sum 1", bar_stress)},
                    stress, eurocode, detail));
    add_bar_toe_principal(rows, asked, site, stress);
}

void add_sleeve_toe(std::vector<CheckRow>& rows, const Case& asked, const WeldForce& weld, const std::string& site)
{
    WeldCurves curves = iiw_curves(63, 80);
    thicken(curves, Millimetre{wall_at(asked, site)}, toe_exponent);
    rows.push_back(nominal_row(
        asked,
        {site, "nominal-iiw", "fillet's toe, IIW class",
         fmt::format("{}; IIW detail 611, FAT 63, shear 80, squares with 0.5, Miner sum 0.5 or 0.2", sleeve_stress)},
        sleeve_end_unit_stress(asked, weld, side_of(site)), curves, no_reduction(asked)));
}

void add_root(std::vector<CheckRow>& rows, const Case& asked, const WeldForce& weld, const std::string& site)
{
    const Side side = side_of(site);
    const WeldUnitStress throat = throat_unit_stress(asked, weld, side);
    rows.push_back(nominal_row(
        asked,
        {site, "throat-iiw", "root by throat, IIW class",
         fmt::format("{}; IIW detail 414, FAT 36, shear 80, squares with 0.5, Miner sum 0.5 or 0.2", throat_stress)},
        throat, iiw_curves(36, 80), ""));
    rows.push_back(nominal_row(
        asked,
        {site, "throat-ec3", "root by throat, EN 1993-1-9",
         fmt::format("{}; EN 1993-1-9 table 8.5, category 36, shear 80, cubes and fifths, Miner sum 1", throat_stress)},
        throat, eurocode_curves(36, 80), ""));
    rows.push_back(nominal_row(
        asked,
        {site, "socket-ec3", "tube in a socket, EN 1993-1-9",
         fmt::format("{}; EN 1993-1-9 table 8.5, category 40, shear 80, cubes and fifths, Miner sum 1", sleeve_stress)},
        sleeve_end_unit_stress(asked, weld, side), eurocode_curves(40, 80), "toe and root in one category"));
}

void add_butt(std::vector<CheckRow>& rows, const Case& asked, const MeridianAnswer& answer)
{
    const WeldUnitStress stress = butt_unit_stress(asked, answer);
    if (asked.joint->penetration)
    {
        rows.push_back(nominal_row(
            asked,
            {"land-edge", "throat-iiw", "butt by throat, IIW class",
             fmt::format("{}; IIW detail 217, FAT 36, shear 80, squares with 0.5, Miner sum 0.5 or 0.2", butt_stress)},
            stress, iiw_curves(36, 80), ""));
        rows.push_back(
            nominal_row(asked,
                        {"land-edge", "throat-ec3", "butt by throat, EN 1993-1-9",
                         fmt::format("{}; EN 1993-1-9 table 8.5, category 36, shear 80, cubes and fifths, Miner sum 1",
                                     butt_stress)},
                        stress, eurocode_curves(36, 80), ""));
        return;
    }
    const Millimetre thickness{size_at(asked, "butt-surface")};
    WeldCurves curves = eurocode_curves(112, 100);
    thicken(curves, thickness, eurocode_butt_exponent);
    rows.push_back(nominal_row(
        asked,
        {"butt-surface", "nominal-ec3", "ground butt, EN 1993-1-9",
         fmt::format("{}; EN 1993-1-9 table 8.3, category 112, shear 100, cubes and fifths, Miner sum 1", butt_stress)},
        stress, curves,
        fmt::format("a plate's category: asks for a weld ground flush on both sides and fully inspected; {}",
                    size_words(asked, "butt-surface"))));
}

void add_parent(std::vector<CheckRow>& rows, const Case& asked, const SiteAnswer& site)
{
    const auto add =
        [&](const std::string& name, const std::string& check, const std::string& method, WeldCurves curves)
    {
        curves.normal.provenance = curves.shear.provenance = Provenance::from_memory;
        CheckRow row =
            nominal_row(asked, {site.id, name, check, fmt::format("structural stress by finite elements; {}", method)},
                        site_unit_stress(site), curves,
                        site.id.starts_with("lap-corner.")
                            ? "the corner's own notch is in the stress"
                            : "a cap for metal away from welds; the notch of a shoulder is not in it");
        if (site.id.starts_with("bar."))
            row.not_valid_because = "for information: a plain bar away from welds is judged by machine-design practice";
        rows.push_back(row);
    };
    WeldCurves iiw = iiw_curves(160, 100);
    iiw.normal.slope = 5, iiw.normal.slope_beyond_variable = 9;
    add("parent-iiw", "parent metal, IIW class",
        "IIW detail 111, FAT 160, slope 5, shear 100, squares with 0.5, Miner sum 0.5 or 0.2", iiw);
    add("parent-ec3", "parent metal, EN 1993-1-9",
        "EN 1993-1-9 table 8.1, category 160, shear 100, cubes and fifths, Miner sum 1", eurocode_curves(160, 100));
    if (!torque_pulls(site)) return;
    iiw.normal.provenance = Provenance::from_memory;
    CheckRow principal = equivalent_row(asked,
                                        {site.id, "parent-principal", "parent metal, first principal",
                                         "structural stress by finite elements; first principal of torque and bending, "
                                         "IIW detail 111, FAT 160, slope 5, "
                                         "Miner sum 0.5 or 0.2"},
                                        site_principal_stress(site), Equivalent::first_principal, iiw.normal);
    append_note(principal.note,
                "the shaft is no body of revolution here: torque pulls at this place, and does not only shear it");
    if (site.id.starts_with("bar."))
        principal.not_valid_because =
            "for information: a plain bar away from welds is judged by machine-design practice";
    rows.push_back(principal);
}

}  // namespace

std::vector<CheckRow> nominal_checks(const Case& asked, const MeridianAnswer& answer)
{
    std::vector<CheckRow> rows;
    for (const SiteAnswer& site : answer.sites)
    {
        const auto& weld = answer.weld[index(side_of(site.id))];
        if (site.id.starts_with("bar-toe.")) add_bar_toe(rows, asked, site.id);
        else if (site.id.starts_with("sleeve-toe.") && weld) add_sleeve_toe(rows, asked, *weld, site.id);
        else if (site.id.starts_with("root.") && weld) add_root(rows, asked, *weld, site.id);
        else if (site.id == "sleeve-mid" || site.id.starts_with("bar.") || site.id.starts_with("lap-corner."))
            add_parent(rows, asked, site);
    }
    if (asked.joint && answer.scenario.butt_fused) add_butt(rows, asked, answer);
    return rows;
}

}  // namespace splicewright
