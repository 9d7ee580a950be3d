// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/sheet.h"

namespace splicewright
{

// Balloons on two rails, one above the part and one below, joined to their sites by leaders.
//
//        (1)(2)  (3)        (4)       upper rail
//         |  |    |          |
//         \  /    \          |        knee: below the balloons, above the part
//      ____\/______\_________|____
//     |    ..       .        .    |   part
//     |__________._______________|
//                 \                   knee
//                 |
//                (5)                  lower rail
struct LabelRoom
{
    Box part;                    // that no balloon may touch
    double left = 0, right = 0;  // balloons stay between
    double radius = balloon_radius;
    double gap = 6;         // between two balloons
    double stand_off = 30;  // from the part to the near edge of the balloons; the knee lies half way
    double lean = 0;        // how far leaders lean away from the middle, so that none hides an upright face
};

// Places nearest to the sorted wishes (least squares) that keep the order and at least `step[i]` between i and i + 1,
// from `lowest` to `highest` where all of them fit between.
std::vector<double> spaced(const std::vector<double>& wish, const std::vector<double>& step, double lowest,
                           double highest);

struct Leader
{
    SheetPoint site, knee, balloon;
};

// Most labels that the two rails hold.
int label_capacity(const LabelRoom& room);

// One leader for each site, in the order of the sites. Balloons overlap neither each other nor the part, slanted parts
// of two leaders do not cross, and each balloon is as near to its site (with the lean) as the others allow (least
// squares). At most label_capacity(room) sites.
std::vector<Leader> placed_labels(const std::vector<SheetPoint>& sites, const LabelRoom& room);

}  // namespace splicewright
