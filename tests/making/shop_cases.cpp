// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/making/shop_cases.h"

#include <fmt/format.h>

namespace splicewright
{

std::string made_splice_text(const std::string& joint_lines, const std::string& making_lines)
{
    const std::string text = splice_with("[joint]\n", fmt::format("[joint]\n{}", joint_lines));
    return making_lines.empty() ? text : fmt::format("{}[making]\n{}", text, making_lines);
}

Case made_splice(const std::string& joint_lines, const std::string& making_lines)
{
    return accepted(made_splice_text(joint_lines, making_lines));
}

Case butted_bars(const std::string& diameter, const std::string& length, const std::string& more_joint,
                 const std::string& speed)
{
    const auto bar = [&](const char* name)
    {
        return fmt::format("[{}]\nmaterial = \"C45 +N\"\n[[{}.section]]\nlength = \"{}\"\ndiameter = \"{}\"\n", name,
                           name, length, diameter);
    };
    return accepted(fmt::format("{}{}[joint]\npenetration = \"full\"\n{}[load]\npeak_torque = \"100 N*m\"\n{}",
                                bar("left"), bar("right"), more_joint,
                                speed.empty() ? "" : fmt::format("speed = \"{}\"\n", speed)));
}

}  // namespace splicewright
