// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/case.h"

namespace splicewright
{

const char* name_of(Side side) { return side == Side::left ? "left" : "right"; }

const char* name_of(TorqueLimit limit)
{
    return limit == TorqueLimit::engine ? "the engine side" : "the grip of the tyre";
}

const char* name_of(Provenance provenance)
{
    switch (provenance)
    {
        case Provenance::theory: return "theory";
        case Provenance::published: return "published";
        case Provenance::secondary: return "secondary source";
        case Provenance::derived: return "derived";
        case Provenance::from_memory: return "from memory: verify";
        case Provenance::common_practice: return "common practice, no source";
        case Provenance::judgement: return "judgement, no source";
        case Provenance::stated: return "stated in the case";
    }
    return "";
}

const char* name_of(BarSurface surface)
{
    switch (surface)
    {
        case BarSurface::ground: return "ground";
        case BarSurface::machined: return "machined";
        case BarSurface::hot_rolled: return "hot-rolled";
        case BarSurface::forged: return "as-forged";
    }
    return "";
}

const char* name_of(SlitState state)
{
    switch (state)
    {
        case SlitState::open: return "open";
        case SlitState::snug: return "snug";
        case SlitState::press: return "press";
        case SlitState::bonded: return "bonded";
    }
    return "";
}

}  // namespace splicewright
