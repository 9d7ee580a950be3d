// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/scenario_notes.h"

#include <fmt/format.h>

#include "post/crack_checks.h"
#include "post/number_words.h"
#include "post/service.h"

namespace splicewright
{
namespace
{

constexpr double same_life = 1.02;  // lives closer than that differ by the meshes alone

}  // namespace

std::vector<std::string> notes_beside_sound(const Judgement& sound, const Judgement& scenario)
{
    std::vector<std::string> notes;
    for (const CheckRow& row : scenario.checks)
        if (is_crack_growth(row) && !row.valid())
            notes.push_back(fmt::format("crack growth not judged here at {}: {}; the life is that of the other methods",
                                        row.site, row.not_valid_because));
    const auto with = least_life(sound.checks), without = least_life(scenario.checks);
    if (with && without && without->least > same_life * with->least)
        notes.push_back(fmt::format(
            "longer than the sound splice ({}) only because {}, where that one fails first, bears less or is "
            "gone; what else a broken weld does is not judged (fretting, knocking): count no gain",
            life_words(with->least), with->site));
    return notes;
}

}  // namespace splicewright
