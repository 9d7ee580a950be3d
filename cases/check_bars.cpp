// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/bar_shape.h"
#include "cases/check_parts.h"
#include "cases/own_value.h"
#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

constexpr double least_fillet = 0.1, greatest_fillet = 50.0;
constexpr double finest_share_of_diameter = 1.0 / 400.0;  // a radius below that asks for too fine a mesh
constexpr double least_step = 0.1;                        // in diameter
constexpr double clear_length = 1.0;                      // plain cylinder between two features
constexpr double greatest_bore_share = 0.8;
constexpr double least_bar_wall = 3.0;

std::string section_field(Side side, std::size_t number, const char* key)
{
    return fmt::format("{}.section[{}].{}", name_of(side), number + 1, key);
}

void check_fillet(RuleReport& report, const Bar& bar, Side side, std::size_t number)
{
    const double before = bar.sections[number - 1].diameter.value(), here = bar.sections[number].diameter.value();
    const double fillet = bar.sections[number].fillet.value();
    const std::string field = section_field(side, number, "fillet");
    const double step = std::abs(here - before);
    if (std::isnan(step)) return;
    if (step <= same_length.value())
    {
        if (fillet < 0.0 || fillet > 0.0)
            report.add(field, "must be absent where the diameter does not change", "remove fillet");
        return;
    }
    if (step < least_step)
        report.add(section_field(side, number, "diameter"),
                   fmt::format("must be that of the section before ({}) or differ from it by at least {}", mm(before),
                               mm(least_step)),
                   own_quantity("diameter", Dimension::length));
    const double least = std::max(least_fillet, finest_share_of_diameter * std::min(before, here));
    if (fillet == 0.0)
        report.add(field,
                   fmt::format("is missing: the diameter changes from {} to {}, and a sharp corner has no stress",
                               mm(before), mm(here)),
                   "fillet = \"... mm\" as measured with a radius gauge");
    else
        report.keep_between(field, fillet, least, greatest_fillet,
                            fmt::format("the smaller diameter is {}", mm(std::min(before, here))));
}

void check_section_room(RuleReport& report, const Bar& bar, Side side, std::size_t number)
{
    const SectionSpan span = section_span(bar, number);
    const double fillets = (span.plain_begin - span.begin) + (span.end - span.plain_end);
    const double least = fillets + clear_length;
    if (fillets > 0.0 && span.end - span.begin < least - same_length.value())
        report.add(section_field(side, number, "length"),
                   fmt::format("must be at least {}: its fillets take {}, and {} must stay plain", mm(least),
                               mm(fillets), mm(clear_length)),
                   own_quantity("length", Dimension::length));
}

double smallest_diameter(const Bar& bar)
{
    double smallest = bar.sections.front().diameter.value();
    for (const Section& section : bar.sections) smallest = std::min(smallest, section.diameter.value());
    return smallest;
}

double greatest_bore(const Bar& bar)
{
    const double smallest = smallest_diameter(bar);
    return std::min(greatest_bore_share * smallest, smallest - 2.0 * least_bar_wall);
}

void check_bore(RuleReport& report, const Bar& bar, Side side)
{
    const std::string field = fmt::format("{}.bore", name_of(side));
    if (bar.bore.value() < 0.0) report.add(field, "must not be negative", "remove bore for a solid bar");
    if (bar.bore.value() <= 0.0) return;
    const double smallest = smallest_diameter(bar), greatest = greatest_bore(bar);
    if (bar.bore.value() > greatest + same_length.value())
        report.add(field,
                   fmt::format("must be at most {}: 0.8 of the smallest diameter of {}, and a wall of at least {}",
                               mm(greatest), mm(smallest), mm(least_bar_wall)),
                   greatest > 0.0 ? own_quantity("bore", Dimension::length) : "remove bore for a solid bar");
    if (bar.bore.value() < 1.0) report.add(field, "must be at least 1 mm", "remove bore for a solid bar");
}

// The groove's edges must lie on one plain cylinder.
bool lies_in_one_section(const Bar& bar, double from, double to)
{
    for (std::size_t number = 0; number < bar.sections.size(); ++number)
    {
        const SectionSpan span = section_span(bar, number);
        if (from >= span.plain_begin - same_length.value() && to <= span.plain_end + same_length.value()) return true;
    }
    return false;
}

double diameter_at(const Bar& bar, double distance)
{
    double end = 0;
    for (const Section& section : bar.sections)
    {
        end += section.length.value();
        if (distance <= end) return section.diameter.value();
    }
    return bar.sections.back().diameter.value();
}

void check_groove_size(RuleReport& report, const Bar& bar, const Groove& groove, const std::string& field)
{
    const double diameter = diameter_at(bar, groove.at.value());
    const double least_radius = std::max(0.2, finest_share_of_diameter * diameter);
    report.keep_between(field + ".radius", groove.radius.value(), least_radius, greatest_fillet,
                        fmt::format("the diameter is {}", mm(diameter)));
    double deepest = 0.3 * diameter;
    std::string reason = fmt::format("0.3 of the diameter of {}", mm(diameter));
    const double by_wall = (diameter - bar.bore.value()) / 2 - least_bar_wall;
    if (bar.bore.value() > 0.0 && by_wall < deepest)
    {
        deepest = by_wall;
        reason = fmt::format("a wall of at least {} over the bore", mm(least_bar_wall));
    }
    report.keep_between(field + ".depth", groove.depth.value(), 0.1, deepest, reason);
}

// Where the part beside the joint ends that a groove must keep clear of.
struct Inner
{
    double end = 0;
    const char* what = "";
};

Inner inner_feature(const Case& asked, Side side)
{
    if (!asked.joint) return {0.0, "end of the bar"};
    if (!asked.sleeve) return {joint_half_length(*asked.joint), "butt weld"};
    const SleeveWeld& weld = asked.sleeve->weld;
    return {sleeve_reach(*asked.sleeve, side) + weld.leg_on_bar.value() + toe_tangent_on_bar(weld), "sleeve weld"};
}

void check_groove_place(RuleReport& report, const Case& asked, Side side, std::size_t number)
{
    const Bar& bar = *asked.bar[index(side)];
    const Groove& groove = bar.grooves[number];
    const std::string field = fmt::format("{}.groove[{}].at", name_of(side), number + 1);
    const double room = groove_half_width(groove) + clear_length / 2;
    const double from = groove.at.value() - room, to = groove.at.value() + room;
    const Inner inner = inner_feature(asked, side);
    if (inner.end > length_of(bar)) return;
    const double least = inner.end + clear_length + groove_half_width(groove);
    if (groove.at.value() < least - same_length.value())
        report.add(field, fmt::format("must be at least {}: the {} ends at {}", mm(least), inner.what, mm(inner.end)),
                   own_quantity(last_key_of(field), Dimension::length));
    else if (from <= length_of(bar) && !lies_in_one_section(bar, from, to))
        report.add(field,
                   fmt::format("must keep the groove, from {} to {} with {} on each side, within one section and off "
                               "its fillets",
                               mm(from + clear_length / 2), mm(to - clear_length / 2), mm(clear_length / 2)),
                   "move the groove");
    else if (from > length_of(bar))
        report.add(field, fmt::format("must be on the bar, which is {} long", mm(length_of(bar))), "move the groove");
    if (number == 0) return;
    const Groove& before = bar.grooves[number - 1];
    const double free_from = before.at.value() + groove_half_width(before) + clear_length + groove_half_width(groove);
    if (groove.at.value() < free_from - same_length.value())
        report.add(field,
                   fmt::format("must be at least {}: grooves stand in order from the joint outward, {} apart",
                               mm(free_from), mm(clear_length)),
                   own_quantity(last_key_of(field), Dimension::length));
}

}  // namespace

bool bore_fits(const Bar& bar)
{
    return !(bar.bore.value() < 0.0 || bar.bore.value() > greatest_bore(bar) + same_length.value());
}

void check_bar(RuleReport& report, const Case& asked, Side side)
{
    const Bar& bar = *asked.bar[index(side)];
    const std::string name = name_of(side);
    if (bar.sections.size() > most_sections)
        report.add(name + ".section",
                   fmt::format("must have at most {} entries, not {}", most_sections, bar.sections.size()),
                   "leave out sections that do not matter");
    for (std::size_t number = 0; number < std::min(bar.sections.size(), most_sections); ++number)
    {
        if (number > 0) check_fillet(report, bar, side, number);
        check_section_room(report, bar, side, number);
    }
    const double first_fillet = bar.sections.front().fillet.value();
    if (first_fillet < 0.0 || first_fillet > 0.0)
        report.add(section_field(side, 0, "fillet"), "must be absent: no section stands before the first one",
                   "remove fillet, or move it to the section behind the change of diameter");
    if (length_of(bar) > greatest_bar_length)
        report.add(name + ".section",
                   fmt::format("must be at most {} long together, not {}", mm(greatest_bar_length), mm(length_of(bar))),
                   "shorten the sections");
    check_bore(report, bar, side);
}

void check_grooves(RuleReport& report, const Case& asked, Side side)
{
    const Bar& bar = *asked.bar[index(side)];
    if (bar.grooves.size() > most_grooves)
        report.add(fmt::format("{}.groove", name_of(side)),
                   fmt::format("must have at most {} entries, not {}", most_grooves, bar.grooves.size()),
                   "leave out grooves that do not matter");
    for (std::size_t number = 0; number < std::min(bar.grooves.size(), most_grooves); ++number)
    {
        check_groove_size(report, bar, bar.grooves[number], fmt::format("{}.groove[{}]", name_of(side), number + 1));
        check_groove_place(report, asked, side, number);
    }
}

// The load comes in as the stress of a long bar, which needs a diameter of plain bar to even out.
// Source: [TimoshenkoGoodier1970] Saint-Venant's principle; the length of one diameter is common practice.
void check_load_end(RuleReport& report, const Case& asked, Side side)
{
    const Bar& bar = *asked.bar[index(side)];
    const std::size_t last = bar.sections.size() - 1;
    const SectionSpan span = section_span(bar, last);
    double feature = span.plain_begin;
    if (asked.joint && last == 0)
        feature = asked.sleeve ? sleeve_reach(*asked.sleeve, side) + asked.sleeve->weld.leg_on_bar.value() +
                                     toe_tangent_on_bar(asked.sleeve->weld)
                               : joint_half_length(*asked.joint);
    double first_feature = last > 0 ? section_span(bar, 0).plain_end : span.end;
    for (const Groove& groove : bar.grooves)
    {
        feature = std::max(feature, groove.at.value() + groove_half_width(groove));
        first_feature = std::min(first_feature, groove.at.value() - groove_half_width(groove));
    }
    if (feature > length_of(bar)) return;
    const double diameter = bar.sections[last].diameter.value();
    const double least = feature + diameter - span.begin;
    const std::string field = section_field(side, last, "length");
    if (span.end - span.begin < least - same_length.value())
        report.add(field,
                   fmt::format("must be at least {}: the loaded end needs one diameter ({}) of plain bar beyond the "
                               "last weld, fillet or groove at {}",
                               mm(least), mm(diameter), mm(feature)),
                   own_quantity(last_key_of(field), Dimension::length));
    if (asked.joint) return;
    const double first_diameter = bar.sections.front().diameter.value();
    if (first_feature < first_diameter - same_length.value())
        report.add(section_field(side, 0, "length"),
                   fmt::format("must leave one diameter ({}) of plain bar before the first fillet or groove, at {}: "
                               "both ends of a plain shaft are loaded",
                               mm(first_diameter), mm(first_feature)),
                   "lengthen the first section");
}

}  // namespace splicewright
