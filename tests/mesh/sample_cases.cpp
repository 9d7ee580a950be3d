// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/mesh/sample_cases.h"

#include <utility>

namespace splicewright::sample
{
namespace
{

Section section(double length_mm, double diameter_mm, double fillet_mm = 0)
{
    return {Millimetre{length_mm}, Millimetre{diameter_mm}, Millimetre{fillet_mm}};
}

Bar bar(std::vector<Section> sections) { return {steel(), std::move(sections), Millimetre{0}, {}}; }

Sleeve sleeve(double length_mm, double outer_mm, double leg_mm)
{
    Sleeve made;
    made.material = steel();
    made.length = Millimetre{length_mm};
    made.outer_diameter = made.end_diameter = Millimetre{outer_mm};
    made.slit = {SlitState::open, SlitState::open};
    made.weld.leg_on_bar = made.weld.leg_on_sleeve = Millimetre{leg_mm};
    made.weld.toe_radius = Millimetre{1};
    made.weld.filler = steel();
    return made;
}

}  // namespace

Material steel()
{
    Material made;
    made.name = "steel";
    made.elastic_modulus = Megapascal{210000};
    made.poisson_ratio = 0.3;
    return made;
}

Case plain_shaft(std::vector<Section> sections, std::vector<Groove> grooves, double bore_mm)
{
    Case made;
    made.bar[0] = Bar{steel(), std::move(sections), Millimetre{bore_mm}, std::move(grooves)};
    return made;
}

Case splice()
{
    Case made;
    made.bar[0] = bar({section(120, 28), section(50, 24, 2)});
    made.bar[1] = bar({section(140, 27)});
    made.bar[1]->grooves.push_back({Millimetre{95}, Millimetre{1.5}, Millimetre{1}});
    made.joint = Joint{Millimetre{9}, Millimetre{0}, Millimetre{3}, steel(), {}, {}};
    made.sleeve = sleeve(84, 42, 6);
    return made;
}

Case tapered_splice()
{
    Case made;
    made.bar[0] = bar({section(120, 30)});
    made.bar[1] = bar({section(130, 30)});
    made.joint = Joint{};
    made.joint->filler = steel();
    made.sleeve = sleeve(100, 46, 5);
    made.sleeve->end_diameter = Millimetre{42};
    made.sleeve->taper_length = Millimetre{16};
    return made;
}

Case pressed_splice(double bar_diameter_mm, double sleeve_diameter_mm, double sleeve_length_mm, double interference_mm)
{
    Case made;
    const double length = sleeve_length_mm / 2 + 2.5 * bar_diameter_mm;
    made.bar[0] = bar({section(length, bar_diameter_mm)});
    made.bar[1] = bar({section(length, bar_diameter_mm)});
    made.joint = Joint{};
    made.joint->filler = steel();
    made.sleeve = sleeve(sleeve_length_mm, sleeve_diameter_mm, 5);
    made.sleeve->clearance = {Millimetre{-interference_mm}, Millimetre{-interference_mm}};
    made.sleeve->slit = {SlitState::press, SlitState::press};
    return made;
}

Case with_slit(Case asked, SlitState left, SlitState right)
{
    asked.sleeve->slit = {left, right};
    return asked;
}

Case mirrored(Case asked)
{
    std::swap(asked.bar[0], asked.bar[1]);
    if (asked.sleeve)
    {
        asked.sleeve->offset = -asked.sleeve->offset;
        std::swap(asked.sleeve->clearance[0], asked.sleeve->clearance[1]);
        std::swap(asked.sleeve->slit[0], asked.sleeve->slit[1]);
    }
    return asked;
}

}  // namespace splicewright::sample
