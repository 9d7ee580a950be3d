// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/own_value.h"
#include "cases/read_parts.h"
#include "cases/torque_history.h"

namespace splicewright
{
namespace
{

constexpr double default_revolutions = 1e8;
constexpr double default_tyre_radius = 300;  // mm, judgement
constexpr double most_repeats = 1e9;         // against slips, common practice, no source

TorqueBlock block_at(const CaseTable& table)
{
    TorqueBlock block;
    block.name = table.required_text("name").value_or("");
    const auto torque = table.quantity_pair("torque", Dimension::moment);
    if (!torque)
        table.report("torque", "is missing: the lowest and highest torque of the cycle must be given",
                     "torque = [\"... N*m\", \"... N*m\"] with your values");
    block.low = NewtonMillimetre(torque ? (*torque)[0] : unread);
    block.high = NewtonMillimetre(torque ? (*torque)[1] : unread);
    const auto count = table.plain_number("count");
    if (!count) table.report("count", "is missing: cycles in the life asked for", own_number("count"));
    block.count = count.value_or(unread);
    table.report_unknown_keys();
    return block;
}

// Couple that a constant-velocity joint puts on its shaft: the balls lie in the plane that bisects the joint angle,
// so their force is square to that plane, M = T tan(beta / 2).
// Derived: equilibrium of the outer race, no source page seen.
double couple_of_joint_angle(double torque, double angle_rad) { return torque * std::tan(0.5 * angle_rad); }

void read_bending(const CaseTable& table, Load& load)
{
    const auto angle = table.quantity("joint_angle", Dimension::angle);
    const auto bending = table.quantity("bending", Dimension::moment);
    const double peak = load.peak_torque.value(), running = load.running_torque.value();
    if (angle && bending)
        table.report("bending", "must not stand beside joint_angle, which gives the bending itself",
                     "keep either joint_angle or bending");
    if (angle)
    {
        load.joint_angle = Radian(*angle);
        load.peak_bending = NewtonMillimetre(couple_of_joint_angle(peak, *angle));
        load.running_bending = NewtonMillimetre(couple_of_joint_angle(running, *angle));
        table.note_default("bending", in_words(load.peak_bending.value(), Dimension::moment),
                           "derived from joint_angle: peak torque times the tangent of half the angle");
    }
    else if (bending)
    {
        load.peak_bending = NewtonMillimetre(*bending);
        load.running_bending = NewtonMillimetre(peak > 0.0 ? *bending * running / peak : *bending);
    }
    else
    {
        table.note_default("bending", "0 N*m", "neither bending nor joint_angle given");
    }
}

double repeats_at(const CaseTable& table)
{
    const auto repeats = table.plain_number("history_repeats");
    if (!repeats) table.note_default("history_repeats", "1", "the history is taken as the whole life");
    if (repeats && (*repeats < 1 || *repeats > most_repeats))
        table.report("history_repeats", "must be from 1 to 1e9", own_number("history_repeats"));
    return repeats.value_or(1);
}

// Adds the cycles of the history as blocks; nothing but problems when it cannot be read.
void read_history(const CaseTable& table, Load& load)
{
    const auto name = table.text("torque_history");
    if (!table.has("torque_history"))
    {
        if (table.has("history_repeats"))
            table.report("history_repeats", "needs a torque_history to repeat",
                         "give torque_history as well, or remove history_repeats");
        return;
    }
    const double repeats = repeats_at(table);
    if (!name || !(repeats >= 1 && repeats <= most_repeats)) return;
    const Companion companion = table.findings().companions(*name);
    if (companion.stream == nullptr)
    {
        table.report("torque_history", companion.why_not,
                     "give the path of a CSV file, relative to the folder of the case file");
        return;
    }
    const Result<CountedHistory> counted = counted_history(*companion.stream, companion.path, repeats);
    if (!counted.has_value())
    {
        for (const Problem& problem : counted.problems()) table.findings().problems.push_back(problem);
        return;
    }
    load.history = counted.value().summary;
    load.history->file = *name;
    const auto& blocks = counted.value().blocks;
    load.blocks.insert(load.blocks.end(), blocks.begin(), blocks.end());
}

// Stated, else from the vehicle, else the largest of the history.
double peak_torque_of(const CaseTable& table, const Load& load)
{
    if (const auto stated = table.quantity("peak_torque", Dimension::moment)) return *stated;
    if (load.vehicle)
    {
        const double peak = load.vehicle->peak_torque().value();
        table.note_default("peak_torque", in_words(peak, Dimension::moment),
                           fmt::format("from load.vehicle, {} governs", name_of(load.vehicle->governs)));
        return peak;
    }
    if (load.history)
    {
        const double peak = std::max(std::abs(load.history->lowest.value()), std::abs(load.history->highest.value()));
        table.note_default("peak_torque", in_words(peak, Dimension::moment), "the largest of the torque history");
        return peak;
    }
    if (table.has("vehicle") || table.has("torque_history")) return unread;
    table.note_default("peak_torque", "0 N*m", "not given");
    return 0;
}

Millimetre tyre_radius_at(const CaseTable& table, const Load& load)
{
    const auto stated = table.length("tyre_radius");
    if (stated && load.vehicle)
        table.report("tyre_radius", "must not stand beside the tyre_radius of load.vehicle",
                     "keep the one of load.vehicle");
    if (stated) return *stated;
    if (load.vehicle) return load.vehicle->tyre_radius;
    table.note_default("tyre_radius", "0.30 m", "for kilometres only (judgement)");
    return Millimetre(default_tyre_radius);
}

// What the default means on the road, to two digits.
std::string default_distance(Millimetre tyre_radius)
{
    const double metres = tyre_radius.value() / 1000;
    const double kilometres = default_revolutions * 2 * std::numbers::pi * metres / 1000;
    if (!(kilometres > 0)) return "judgement";
    const double step = std::pow(10, std::floor(std::log10(kilometres)) - 1);
    return fmt::format("about {:.0f} thousand km on a tyre of {:.2f} m radius (judgement)",
                       std::round(kilometres / step) * step / 1000, metres);
}

}  // namespace

Load load_at(const CaseTable& table)
{
    Load load;
    if (const auto vehicle = table.table("vehicle")) load.vehicle = vehicle_at(*vehicle);
    for (const CaseTable& block : table.tables("block")) load.blocks.push_back(block_at(block));
    read_history(table, load);
    load.peak_torque = NewtonMillimetre(peak_torque_of(table, load));
    const auto running = table.quantity("running_torque", Dimension::moment);
    load.running_torque = NewtonMillimetre(running.value_or(load.peak_torque.value()));
    if (!running && load.peak_torque.value() != 0)
        table.note_default("running_torque", in_words(load.running_torque.value(), Dimension::moment),
                           "the peak torque, which is on the safe side");
    read_bending(table, load);

    const auto axial = table.quantity("axial", Dimension::force);
    if (!axial) table.note_default("axial", "0 N", "not given");
    load.axial = Newton(axial.value_or(0.0));
    const auto speed = table.quantity("speed", Dimension::speed);
    if (!speed) table.note_default("speed", "not given", "no whirl and no balance can be judged");
    load.speed = RadianPerSecond(speed.value_or(0.0));
    load.tyre_radius = tyre_radius_at(table, load);
    const auto revolutions = table.plain_number("revolutions");
    if (!revolutions) table.note_default("revolutions", "1e8", default_distance(load.tyre_radius));
    load.revolutions = revolutions.value_or(default_revolutions);

    table.report_unknown_keys();
    return load;
}

}  // namespace splicewright
