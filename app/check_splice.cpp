// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/check_splice.h"

#include "app/scenarios.h"

namespace splicewright
{

Report check_splice(const Case& asked, const Accuracy& accuracy)
{
    Report report;
    report.asked = asked;
    report.sound = judged(asked, sound_splice(), accuracy);
    for (const Scenario& lost : lost_welds(asked))
        report.what_if.push_back(judged(asked, lost, for_information(accuracy)));

    report.handbook = handbook_rows(asked, report.sound.answer);
    report.against_plain_bar = against_plain_bar(report.sound);
    report.making = shop_sheet(asked);
    report.running_true = running_true(asked);
    report.cautions = cautions(report);
    return report;
}

}  // namespace splicewright
