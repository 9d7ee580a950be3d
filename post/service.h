// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "post/check_row.h"

namespace splicewright
{

// What the checks of one scenario mean for who drives: how much torque, how many starts, how many kilometres.
struct Service
{
    // Peak torque at which the first strength check is used up, all loads growing together, N*mm.
    double torque_carried = 0;
    std::string strength_site;
    // Fatigue; absent without fatigue rows. Multiples of the life asked for, infinite: never.
    struct Life
    {
        std::string site;
        double least = 0;    // of all valid methods; it counts
        double longest = 0;  // of the valid methods at that site
    };
    std::optional<Life> life;
};
std::optional<Service::Life> least_life(const std::vector<CheckRow>& rows);
Service service_of(const Case& asked, const std::vector<CheckRow>& rows);

// The number of times that something of the case happens in its life: "standing starts", "runs of the torque history".
struct LifeCount
{
    std::string what;
    double count = 0;  // in the life asked for
};

// The block with the largest torque, or the repeats of the history; absent without both.
std::optional<LifeCount> starts_asked(const Load& load);
// Revolutions times the tyre's circumference; absent without bending while running, which alone gives them a meaning.
std::optional<double> kilometres_asked(const Load& load);

// "1.4 x: 560 times "standing start" and 5 300 km", of the life asked for.
std::string life_text(const Load& load, const Service::Life& life);
// "bar-toe.right; its other methods up to 49 x".
std::string other_methods_text(const Service::Life& life);

}  // namespace splicewright
