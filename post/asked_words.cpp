// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/asked_words.h"

#include <fmt/format.h>

#include "cases/units.h"
#include "post/number_words.h"
#include "post/site_loads.h"

namespace splicewright
{
namespace
{

std::string vehicle_words(const Load& load)
{
    const Vehicle& v = *load.vehicle;
    const char* use =
        load.peak_torque == v.peak_torque() ? "taken as the peak torque" : "beside the stated peak torque";
    return fmt::format("vehicle: engine side {} N·m, grip of the tyre {} N·m; {} governs, {}",
                       in_newton_metre(v.engine_side), in_newton_metre(v.grip_side), name_of(v.governs), use);
}

std::string history_words(const TorqueHistory& h)
{
    const std::string rounding =
        h.bin_width.value() > 0 ? fmt::format(" rounded outward to {} N·m", in_newton_metre(h.bin_width)) : "";
    return fmt::format("{}: {} rows over {:.4g} s, {} to {} N·m, {} times: {} cycles in {} blocks{}", h.file,
                       counted(h.rows), h.duration, in_newton_metre(h.lowest), in_newton_metre(h.highest),
                       counted(h.repeats), counted(h.cycles), h.n_blocks, rounding);
}

}  // namespace

std::string in_newton_metre(NewtonMillimetre moment)
{
    return fmt::format("{:.4g}", moment.value() / newton_millimetre_per_newton_metre);
}

std::vector<std::string> load_words(const Case& asked)
{
    const Load& load = asked.load;
    std::vector<std::string> lines{peak_load_text(asked)};
    if (load.vehicle) lines.push_back(vehicle_words(load));
    for (const TorqueBlock& block : load.blocks)
        if (block.origin == BlockOrigin::stated)
            lines.push_back(fmt::format("{} cycles from {} to {} N·m{}", counted(block.count),
                                        in_newton_metre(block.low), in_newton_metre(block.high),
                                        block.name.empty() ? "" : fmt::format(" ({})", block.name)));
    if (load.history) lines.push_back(history_words(*load.history));
    if (load.running_bending.value() > 0)
        lines.push_back(fmt::format("{} revolutions under {:.3g} N·m of bending", counted(load.revolutions),
                                    load.running_bending.value() / newton_millimetre_per_newton_metre));
    return lines;
}

std::vector<std::string> partial_weld_words(const Case& asked)
{
    std::vector<std::string> list;
    if (!asked.sleeve) return list;
    const SleeveWeld& weld = asked.sleeve->weld;
    const auto degrees = [](Radian angle) { return angle.value() / radian_per_degree; };
    if (!weld.goes_all_round())
        list.push_back(
            fmt::format("Each sleeve weld covers {:.4g}° of the circumference: the left one from {:.4g}°, the "
                        "right one from {:.4g}° on.",
                        degrees(weld.coverage), degrees(weld.start[0]), degrees(weld.start[1])));
    for (const PlugRing& ring : asked.sleeve->plugs)
        list.push_back(fmt::format(
            "{} plug weld{} of Ø{:g} mm at z = {:g} mm, the first at {:.4g}°, {}.", ring.count,
            ring.count == 1 ? "" : "s", ring.diameter.value(), ring.at.value(), degrees(ring.start),
            ring.depth ? fmt::format("filled {:g} mm deep", ring.depth->value()) : std::string("filled flush")));
    return list;
}

const char* kind_name(CheckKind kind) { return kind == CheckKind::strength ? "strength" : "fatigue"; }

std::string demand_words(const CheckRow& row)
{
    if (row.kind == CheckKind::strength) return fmt::format("{:.0f} of {:.0f} MPa", row.demand, row.capacity);
    return row.life ? fmt::format("life {}", life_words(*row.life)) : row.brief;
}

std::string default_words(const DefaultUsed& used)
{
    return fmt::format("{} = {} ({})", used.field, used.value, used.reason);
}

}  // namespace splicewright
