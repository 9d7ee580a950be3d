// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/check_splice.h"

#include <utility>

#include "app/scenarios.h"
#include "post/scenario_notes.h"
#include "post/solid_torque.h"
#include "post/view_payload.h"

namespace splicewright
{

Report check_splice(const Case& asked, const Accuracy& accuracy, const ModelUse& models)
{
    Report report;
    report.asked = asked;
    report.what_if = all_judged(asked, what_ifs(asked), accuracy, models);
    report.sound = std::move(report.what_if.front());
    report.what_if.erase(report.what_if.begin());
    for (Judgement& scenario : report.what_if)
    {
        const std::vector<std::string> notes = notes_beside_sound(report.sound, scenario);
        scenario.notes.insert(scenario.notes.end(), notes.begin(), notes.end());
    }
    report.what_if_notes = what_if_notes(asked);

    report.handbook = handbook_rows(asked, report.sound.answer);
    if (report.sound.judged_by_solid && !is_of_revolution(asked, sound_splice()))
        report.handbook = rows_of_plain_metal(report.handbook);
    report.against_plain_bar = against_plain_bar(report.sound);
    for (const Side side : both_sides) report.over_bar[index(side)] = over_bar(asked, report.sound, side);
    report.making = shop_sheet(asked);
    report.running_true = running_true(asked);
    report.torque_flow = shows_solid(report.sound) ? solid_torque_flow(asked, *report.sound.solid).points
                                                   : torque_flow(asked, report.sound.answer);
    report.weld_surfaces = weld_surfaces(asked, report.sound.answer);
    report.cautions = cautions(report);
    return report;
}

}  // namespace splicewright
