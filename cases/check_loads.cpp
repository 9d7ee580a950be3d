// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/check_loads.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/own_value.h"
#include "cases/rule_report.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

// Bounds against slips of the unit, wide around any half shaft. Common practice, no source.
constexpr double greatest_torque = 1e9;  // N*mm
constexpr double greatest_axial = 1e7;   // N
constexpr double greatest_angle = 50.0 * radian_per_degree;
constexpr double greatest_speed = 50e3 * std::numbers::pi / 30.0;  // rad/s
constexpr double smallest_tyre = 50, largest_tyre = 1500;          // mm, radius
constexpr std::size_t most_blocks = 1000;
constexpr double greatest_block_count = 1e12, greatest_revolutions = 1e13;

std::string moment(double newton_millimetre) { return in_words(newton_millimetre, Dimension::moment); }

void check_torque(RuleReport& report, const Load& load)
{
    const double peak = load.peak_torque.value(), running = load.running_torque.value();
    if (peak < 0.0 || peak > greatest_torque)
        report.add("load.peak_torque", fmt::format("must be from 0 to {}", moment(greatest_torque)),
                   peak < 0.0 ? fmt::format("peak_torque = \"{}\": its direction makes no difference", moment(-peak))
                              : own_quantity("peak_torque", Dimension::moment));
    if (running < 0.0 || running > peak)
        report.add("load.running_torque", fmt::format("must be from 0 to the peak torque of {}", moment(peak)),
                   peak <= 0.0     ? "give peak_torque as well"
                   : running < 0.0 ? fmt::format("running_torque = \"{}\"", moment(std::min(-running, peak)))
                                   : "running_torque = \"... N*m\" with your value, or a larger peak_torque");
}

void check_block(RuleReport& report, const Load& load, std::size_t number)
{
    const TorqueBlock& block = load.blocks[number];
    const std::string field = fmt::format("load.block[{}]", number + 1);
    const double low = block.low.value(), high = block.high.value(), peak = load.peak_torque.value();
    if (low >= high)
        report.add(
            field + ".torque",
            fmt::format("must go from the lower to the higher torque, not from {} to {}", moment(low), moment(high)),
            low > high ? fmt::format("torque = [\"{}\", \"{}\"]", moment(high), moment(low))
                       : "a cycle needs two different torques");
    const double largest = std::max(std::abs(low), std::abs(high));
    if (largest > peak * (1.0 + 1e-9) && peak > 0.0)
        report.add(field + ".torque",
                   fmt::format("must stay within the peak torque of {} in both directions, not reach {}", moment(peak),
                               moment(largest)),
                   fmt::format("peak_torque = \"{}\", or a smaller block", moment(largest)));
    if (block.count < 1.0 || block.count > greatest_block_count)
        report.add(field + ".count", "must be from 1 to 1e12 cycles", own_number("count"));
}

void check_bending(RuleReport& report, const Load& load)
{
    const double angle = load.joint_angle.value();
    if (angle < 0.0 || angle > greatest_angle)
        report.add("load.joint_angle", "must be from 0 to 50 deg", own_quantity("joint_angle", Dimension::angle));
    if (angle > 0.0 && load.peak_torque.value() <= 0.0)
        report.add("load.joint_angle", "needs a peak torque above 0: the bending comes from the torque",
                   "give peak_torque, or bending in place of joint_angle");
    const double bending = load.peak_bending.value();
    if (angle == 0.0 && (bending < 0.0 || bending > greatest_torque))
        report.add("load.bending", fmt::format("must be from 0 to {}", moment(greatest_torque)),
                   own_quantity("bending", Dimension::moment));
}

std::size_t n_stated_blocks(const Load& load)
{
    return static_cast<std::size_t>(std::count_if(load.blocks.begin(), load.blocks.end(),
                                                  [](const TorqueBlock& block)
                                                  { return block.origin == BlockOrigin::stated; }));
}

void check_blocks(RuleReport& report, const Load& load)
{
    const std::size_t n_blocks = n_stated_blocks(load);
    if (n_blocks > most_blocks)
        report.add("load.block", fmt::format("must have at most {} entries, not {}", most_blocks, n_blocks),
                   "put like cycles together in one block with a larger count");
    for (std::size_t number = 0; number < std::min(n_blocks, most_blocks); ++number) check_block(report, load, number);
    if (n_blocks > 0 && load.peak_torque.value() <= 0.0)
        report.add("load.block", "needs a peak torque above 0", "give peak_torque, the largest torque of all");
}

void check_history(RuleReport& report, const Load& load)
{
    if (!load.history) return;
    const double peak = load.peak_torque.value(),
                 largest = std::max(std::abs(load.history->lowest.value()), std::abs(load.history->highest.value()));
    if (largest > peak * (1.0 + 1e-9))
        report.add("load.torque_history",
                   fmt::format("must stay within the peak torque of {} in both directions, not reach {}", moment(peak),
                               moment(largest)),
                   fmt::format("peak_torque = \"{}\": what was measured counts", moment(largest)));
}

}  // namespace

std::vector<Problem> load_problems(const Case& asked, const Places& places, const std::string& file)
{
    if (places.count("load") == 0) return {};
    RuleReport report(places, file);
    const Load& load = asked.load;
    check_torque(report, load);
    check_bending(report, load);
    check_blocks(report, load);
    check_history(report, load);
    if (std::abs(load.axial.value()) > greatest_axial)
        report.add("load.axial", "must be from -10000 to 10000 kN", own_quantity("axial", Dimension::force));
    if (load.speed.value() < 0.0 || load.speed.value() > greatest_speed)
        report.add("load.speed", "must be from 0 to 50000 rpm", own_quantity("speed", Dimension::speed));
    if (load.revolutions < 1.0 || load.revolutions > greatest_revolutions)
        report.add("load.revolutions", "must be from 1 to 1e13", own_number("revolutions"));
    const double tyre = load.tyre_radius.value();
    if (!load.vehicle && (tyre < smallest_tyre || tyre > largest_tyre))
        report.add("load.tyre_radius", "must be from 50 mm to 1.5 m", own_quantity("tyre_radius", Dimension::length));
    const bool no_load =
        load.peak_torque.value() == 0.0 && load.peak_bending.value() == 0.0 && load.axial.value() == 0.0;
    if (no_load)
        report.add("load", "has no torque, no bending and no axial force",
                   "give peak_torque = \"... N*m\" with your value");
    return report.take();
}

}  // namespace splicewright
