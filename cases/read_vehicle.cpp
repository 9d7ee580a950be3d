// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <cmath>

#include "cases/own_value.h"
#include "cases/read_parts.h"

namespace splicewright
{
namespace
{

constexpr double standard_gravity = 9806.65;  // mm/s^2, exact. Source: [NIST811] appendix B.8

// Wide around any car, motorcycle or truck, against slips of the unit. Common practice, no source.
struct Range
{
    double least, greatest;
};
constexpr Range engine_torque{1e3, 1e8};  // N*mm
constexpr Range ratio{0.05, 50};          // of a gearbox or a final drive
constexpr Range converter{1, 4};
constexpr Range efficiency{0.3, 1};
constexpr Range share{0.01, 1};
constexpr Range shock{1, 5};
constexpr Range axle_mass{0.01, 50};  // tonne
constexpr Range transfer{1, 2};       // all of the axle's load on one wheel
constexpr Range grip{0.05, 3};
constexpr Range tyre_radius{50, 1500};  // mm
constexpr double most_driven_wheels = 12;

// The value when it lies in its range, else `unread`, after a report.
double kept(const CaseTable& table, const std::string& key, double value, Range range, const std::string& least,
            const std::string& greatest, const std::string& fix)
{
    if (!(value < range.least || value > range.greatest)) return value;
    table.report(key, fmt::format("must be from {} to {}", least, greatest), fix);
    return unread;
}

double quantity(const CaseTable& table, const std::string& key, Dimension dimension, Range range)
{
    return kept(table, key, table.required_quantity(key, dimension), range, in_words(range.least, dimension),
                in_words(range.greatest, dimension), own_quantity(key, dimension));
}

double number(const CaseTable& table, const std::string& key, double value, Range range)
{
    return kept(table, key, value, range, fmt::format("{:g}", range.least), fmt::format("{:g}", range.greatest),
                own_number(key));
}

double required_number(const CaseTable& table, const std::string& key, Range range)
{
    const auto found = table.plain_number(key);
    if (!found) table.report(key, "is missing: a plain number must be given", own_number(key));
    return number(table, key, found.value_or(unread), range);
}

double optional_number(const CaseTable& table, const std::string& key, Range range, double fallback,
                       const std::string& reason)
{
    const auto found = table.plain_number(key);
    if (!found) table.note_default(key, fmt::format("{:g}", fallback), reason);
    return number(table, key, found.value_or(fallback), range);
}

// Share of the torque behind the final drive that one shaft carries.
double shaft_share_of(const CaseTable& table)
{
    const auto wheels = table.plain_number("driven_wheels"), stated = table.plain_number("shaft_share");
    if (wheels && stated)
        table.report("shaft_share", "must not stand beside driven_wheels, which gives the share itself",
                     "keep either driven_wheels or shaft_share");
    if (stated) return number(table, "shaft_share", *stated, share);
    if (!wheels)
    {
        table.note_default("shaft_share", "0.5",
                           "two driven wheels behind an open differential; a locked one can put "
                           "all of it into one shaft: shaft_share = 1");
        return 0.5;
    }
    if (*wheels < 1 || *wheels > most_driven_wheels || *wheels != std::floor(*wheels))
    {
        table.report("driven_wheels", "must be a whole number from 1 to 12", own_number("driven_wheels"));
        return unread;
    }
    return 1 / *wheels;
}

// Engine side: T = T_engine i_converter i_gear i_final eta share K.
// Grip side: T = mu k (m g / 2) r, the wheel spins beyond it.
// The smaller one is what the shaft can see while nothing jerks.
// Source: [AxleTorquePractice]; both are statics.
void derive_torques(Vehicle& vehicle)
{
    vehicle.engine_side = vehicle.converter_ratio * vehicle.gear_ratio * vehicle.final_drive * vehicle.efficiency *
                          vehicle.shaft_share * vehicle.shock_factor * vehicle.engine_torque;
    vehicle.grip_side = NewtonMillimetre(vehicle.grip * vehicle.load_transfer * vehicle.axle_mass.value() *
                                         standard_gravity / 2 * vehicle.tyre_radius.value());
    vehicle.governs = vehicle.grip_side < vehicle.engine_side ? TorqueLimit::grip : TorqueLimit::engine;
}

}  // namespace

Vehicle vehicle_at(const CaseTable& table)
{
    Vehicle vehicle;
    vehicle.engine_torque = NewtonMillimetre(quantity(table, "engine_torque", Dimension::moment, engine_torque));
    vehicle.gear_ratio = required_number(table, "gear_ratio", ratio);
    vehicle.final_drive = required_number(table, "final_drive", ratio);
    vehicle.converter_ratio = optional_number(table, "converter_ratio", converter, 1, "no torque converter");
    vehicle.efficiency =
        optional_number(table, "efficiency", efficiency, 0.9, "engine to wheel, secondary source without a document");
    vehicle.shaft_share = shaft_share_of(table);
    vehicle.shock_factor = optional_number(
        table, "shock_factor", shock, 1.5,
        "a brisk start with a manual clutch, 1.3 to 1.8 from memory: verify; 2 to 3 for a clutch that is dropped");
    vehicle.axle_mass = Tonne(quantity(table, "axle_mass", Dimension::mass, axle_mass));
    vehicle.load_transfer = optional_number(table, "load_transfer", transfer, 1.3,
                                            "load of the wheel in acceleration and cornering over its load at rest "
                                            "(judgement); 2 with the other wheel in the air");
    vehicle.grip =
        optional_number(table, "grip", grip, 1, "road tyre on dry asphalt, from memory: verify; soft racing tyres 1.5");
    vehicle.tyre_radius = Millimetre(quantity(table, "tyre_radius", Dimension::length, tyre_radius));
    table.report_unknown_keys();
    derive_torques(vehicle);
    return vehicle;
}

}  // namespace splicewright
