// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/own_value.h"
#include "cases/plain_text.h"
#include "cases/read_parts.h"
#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

enum class Fit
{
    possible,
    impossible,
};

std::string key_for(const std::string& key, Side side) { return fmt::format("{}_{}", key, name_of(side)); }

// One value for both sides, or one for each; empty when none of the three keys is there.
std::optional<std::array<double, 2>> value_by_side(const CaseTable& table, const std::string& key)
{
    const auto both = table.length(key);
    const auto left = table.length(key_for(key, Side::left)), right = table.length(key_for(key, Side::right));
    if (both && (left || right))
        table.report(key, fmt::format("must not stand beside {0}_left or {0}_right", key),
                     fmt::format("keep either {0}, or both {0}_left and {0}_right", key));
    if (left.has_value() != right.has_value() && !both)
        table.report(key_for(key, left ? Side::right : Side::left), "is missing: both sides must be given",
                     fmt::format("give {0}_left and {0}_right, or {0} for both", key));
    if (both)
    {
        for (const Side side : both_sides) table.stands_for(key_for(key, side), key);
        return std::array{both->value(), both->value()};
    }
    if (!left && !right) return std::nullopt;
    return std::array{left.value_or(Millimetre(unread)).value(), right.value_or(Millimetre(unread)).value()};
}

// A bore that its bar does not go through, and how much of it may be meant.
std::string mended_bore(double interference, double diameter)
{
    const double greatest = greatest_press_share * diameter;
    if (interference <= greatest)
        return fmt::format("a larger bore, or press = \"{}\" when a press fit is meant",
                           in_words(interference, Dimension::length));
    return fmt::format("a bore of at least {}: on this bar a press of at most {} is allowed",
                       in_words(diameter - greatest, Dimension::length), in_words(greatest, Dimension::length));
}

Fit check_press(const CaseTable& table, Side side, double interference, double diameter,
                std::optional<Millimetre> press)
{
    const double meant = press ? press->value() : 0.0;
    if (!(interference > meant + same_length.value())) return Fit::possible;
    const std::string more =
        press ? fmt::format(", more than the press of {}", in_words(meant, Dimension::length)) : std::string();
    table.report(key_for("bore", side),
                 fmt::format("is {} smaller than the {} bar of {}{}", in_words(interference, Dimension::length),
                             name_of(side), in_words(diameter, Dimension::length), more),
                 mended_bore(interference, diameter));
    return interference > greatest_press_share * diameter ? Fit::impossible : Fit::possible;
}

std::array<double, 2> clearance_from_bore(const CaseTable& table, const std::array<double, 2>& bore,
                                          const std::array<double, 2>& diameters)
{
    const auto press = table.length("press");
    if (press && press->value() <= 0.0)
        table.report("press", "must be above 0: it is the largest interference meant",
                     own_quantity("press", Dimension::length));
    std::array<double, 2> clearance{unread, unread};
    for (const Side side : both_sides)
    {
        table.stands_for(key_for("clearance", side), key_for("bore", side));
        const double difference = bore[index(side)] - diameters[index(side)];
        // A bore equal to its bar must not press by the round-off of a conversion from inches.
        clearance[index(side)] = std::abs(difference) < same_length.value() ? 0.0 : difference;
        // What follows from a bore that cannot be is not told again.
        if (check_press(table, side, -difference, diameters[index(side)], press) == Fit::impossible)
            clearance[index(side)] = unread;
    }
    return clearance;
}

std::array<double, 2> clearance_of(const CaseTable& table, const std::array<double, 2>& diameters)
{
    const auto clearance = value_by_side(table, "clearance");
    const auto bore = value_by_side(table, "bore");
    if (clearance && bore)
        table.report(table.has("bore")        ? "bore"
                     : table.has("bore_left") ? "bore_left"
                                              : "bore_right",
                     "must not stand beside a clearance", "keep either the bore or the clearance");
    if (!clearance && !bore)
        table.report("clearance", "is missing: how the sleeve fits its bars must be given",
                     "clearance = \"... mm\" (diametral, negative presses), or bore = \"... mm\"");
    if (table.has("press") && !bore)
    {
        (void)table.length("press");
        table.report("press", "goes with a bore; a negative clearance presses by itself", "remove press");
    }
    if (clearance) return *clearance;
    return bore ? clearance_from_bore(table, *bore, diameters) : std::array{unread, unread};
}

std::optional<SlitState> stated_slit(const CaseTable& table)
{
    const auto word = table.text("slit");
    if (!word) return std::nullopt;
    for (const SlitState state : {SlitState::open, SlitState::snug, SlitState::press, SlitState::bonded})
        if (lower_case(trimmed(*word)) == name_of(state)) return state;
    table.report("slit", "must be \"open\", \"snug\", \"press\" or \"bonded\"",
                 "remove slit: it then follows from the clearance");
    return std::nullopt;
}

SlitState slit_by_clearance(double clearance)
{
    if (clearance > 0.0) return SlitState::open;
    return clearance < 0.0 ? SlitState::press : SlitState::snug;
}

void check_slit(const CaseTable& table, Side side, SlitState state, double clearance)
{
    const std::string fit = fmt::format("{} clearance is {}", name_of(side), in_words(clearance, Dimension::length));
    if (state == SlitState::press && clearance >= 0.0)
        table.report("slit", fmt::format("presses only with a negative clearance, and the {}", fit),
                     "remove slit, or give a negative clearance");
    if ((state == SlitState::open || state == SlitState::snug) && clearance < 0.0)
        table.report("slit", fmt::format("cannot be {} with a negative clearance, and the {}", name_of(state), fit),
                     "slit = \"press\", or remove slit");
}

std::array<SlitState, 2> slit_of(const CaseTable& table, const std::array<double, 2>& clearance)
{
    std::array<SlitState, 2> slit{SlitState::open, SlitState::open};
    const auto stated = stated_slit(table);
    for (const Side side : both_sides)
    {
        const double fit = clearance[index(side)];
        slit[index(side)] = stated.value_or(slit_by_clearance(fit));
        if (stated) check_slit(table, side, *stated, fit);
        if (!table.has("slit"))
            table.note_default("slit", fmt::format("{} on the {}", name_of(slit[index(side)]), name_of(side)),
                               "from the clearance: above 0 open, 0 snug, below 0 press");
    }
    return slit;
}

// `unread` when either is.
double larger_of(double first, double second) { return first > second || std::isnan(first) ? first : second; }

double outer_diameter_of(const CaseTable& table, double larger_bore)
{
    const auto diameter = table.length("outer_diameter"), wall = table.length("wall");
    if (diameter && wall)
        table.report("wall", "must not stand beside outer_diameter", "keep either outer_diameter or wall");
    if (!diameter && !wall)
        table.report("outer_diameter", "is missing: the thickness of the sleeve must be given",
                     "outer_diameter = \"... mm\", or wall = \"... mm\"");
    if (diameter)
    {
        table.stands_for("wall", "outer_diameter");
        return diameter->value();
    }
    table.stands_for("outer_diameter", "wall");
    return wall ? larger_bore + 2.0 * wall->value() : unread;
}

}  // namespace

Sleeve sleeve_at(const CaseTable& table, const std::optional<CaseTable>& weld, const std::array<double, 2>& diameters,
                 const std::vector<Material>& stated, const Material& filler)
{
    Sleeve sleeve;
    if (!table.has("material")) table.report("material", "is missing", how_to_name_a_steel);
    sleeve.material = material_at(table, "material", MaterialUse::part, stated).value_or(Material{});
    sleeve.length = table.required_length("length");
    const auto offset = table.length("offset");
    if (!offset) table.note_default("offset", "0 mm", "centred on the joint");
    sleeve.offset = offset.value_or(Millimetre(0.0));

    const std::array<double, 2> clearance = clearance_of(table, diameters);
    sleeve.clearance = {Millimetre(clearance[0]), Millimetre(clearance[1])};
    sleeve.slit = slit_of(table, clearance);
    const double larger_bore = larger_of(diameters[0] + clearance[0], diameters[1] + clearance[1]);
    sleeve.outer_diameter = Millimetre(outer_diameter_of(table, larger_bore));

    const auto end_wall = table.length("end_wall"), taper_length = table.length("taper_length");
    if (end_wall.has_value() != taper_length.has_value())
        table.report(end_wall ? "taper_length" : "end_wall", "is missing: a turned taper needs both",
                     "give end_wall and taper_length, or neither");
    const bool is_tapered = end_wall && taper_length;
    sleeve.end_diameter = is_tapered ? Millimetre(larger_bore + 2.0 * end_wall->value()) : sleeve.outer_diameter;
    sleeve.taper_length = is_tapered ? *taper_length : Millimetre(0.0);

    sleeve.weld.leg_on_bar = sleeve.weld.leg_on_sleeve = Millimetre(unread);
    if (weld) sleeve.weld = sleeve_weld_at(*weld, filler);
    else if (!table.has("weld"))
        table.report("weld", "is missing: a sleeve needs its welds", "[sleeve.weld] with leg = \"... mm\"");
    sleeve.plugs = plugs_at(table);
    table.report_unknown_keys();
    return sleeve;
}

}  // namespace splicewright
