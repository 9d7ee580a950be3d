// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/loads_json.h"

#include "cases/units.h"
#include "post/json_number.h"
#include "post/sourced.h"

namespace splicewright
{
namespace
{

using Json = nlohmann::ordered_json;

double newton_metre(NewtonMillimetre moment) { return finite(moment.value() / newton_millimetre_per_newton_metre); }

Json vehicle(const Load& load)
{
    const Vehicle& v = *load.vehicle;
    return {{"engine_side_Nm", newton_metre(v.engine_side)},
            {"grip_side_Nm", newton_metre(v.grip_side)},
            {"governs", v.governs == TorqueLimit::engine ? "engine" : "grip"},
            {"is_the_peak_torque", load.peak_torque == v.peak_torque()},
            {"shock_factor", finite(v.shock_factor)},
            {"shaft_share", finite(v.shaft_share)},
            {"source", "[AxleTorquePractice]"},
            {"provenance", name_of(Provenance::secondary)}};
}

Json history(const TorqueHistory& h)
{
    return {{"file", h.file},
            {"rows", finite(h.rows)},
            {"duration_s", finite(h.duration)},
            {"lowest_Nm", newton_metre(h.lowest)},
            {"highest_Nm", newton_metre(h.highest)},
            {"repeats", finite(h.repeats)},
            {"cycles", finite(h.cycles)},
            {"blocks", h.n_blocks},
            {"rounded_outward_to_Nm", newton_metre(h.bin_width)},
            {"source", "[ASTM-E1049] 5.4.4"},
            {"provenance", name_of(Provenance::secondary)}};
}

}  // namespace

nlohmann::ordered_json loads_json(const Load& load)
{
    Json json{{"peak_torque_Nm", newton_metre(load.peak_torque)}};
    if (load.vehicle) json["vehicle"] = vehicle(load);
    if (load.history) json["history"] = history(*load.history);
    return json;
}

}  // namespace splicewright
