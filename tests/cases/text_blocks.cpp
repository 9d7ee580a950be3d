// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/cases/text_blocks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace splicewright
{

const std::string& sound_splice_text()
{
    static const std::string text = R"(title = "test splice"
[left]
material = "C45 +QT"
[[left.section]]
length = "190 mm"
diameter = "28 mm"
[[left.section]]
length = "60 mm"
diameter = "24 mm"
fillet = "2 mm"
[right]
material = "C45 +N"
[[right.section]]
length = "205 mm"
diameter = "27 mm"
[[right.groove]]
at = "120 mm"
depth = "1.5 mm"
radius = "1 mm"
[joint]
penetration = "9 mm"
half_lap = "14 mm"
blend = "3 mm"
[sleeve]
material = "E355 tube +N"
length = "84 mm"
outer_diameter = "42 mm"
clearance = "0.02 mm"
[sleeve.weld]
leg = "6 mm"
toe_radius = "1.5 mm"
[load]
peak_torque = "1000 N*m"
running_torque = "200 N*m"
joint_angle = "6 deg"
axial = "800 N"
speed = "1200 rpm"
revolutions = 2e7
[[load.block]]
name = "start"
torque = ["-50 N*m", "1000 N*m"]
count = 4000
)";
    return text;
}

std::string with(const std::string& text, const std::string& line, const std::string& replacement)
{
    const std::size_t at = text.find(line);
    const bool once = at != std::string::npos && text.find(line, at + 1) == std::string::npos;
    if (!once) throw std::logic_error("must occur exactly once: " + line);
    return text.substr(0, at) + replacement + text.substr(at + line.size());
}

std::string splice_with(const std::string& line, const std::string& replacement)
{
    return with(sound_splice_text(), line, replacement);
}

std::string file_text(const std::string& path_in_project)
{
    std::ifstream stream(std::string(SPLICEWRIGHT_SOURCE_DIR) + "/" + path_in_project, std::ios::binary);
    if (!stream) throw std::runtime_error("cannot open " + path_in_project);
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::vector<std::string> messages(const std::string& text)
{
    const Result<Case> read = read_case(text, "t.toml");
    std::vector<std::string> lines;
    if (read.has_value()) return lines;
    for (const Problem& problem : read.problems()) lines.push_back(to_string(problem));
    return lines;
}

Problem problem_of(const std::string& text, const std::string& field)
{
    const Result<Case> read = read_case(text, "t.toml");
    if (read.has_value()) return {};
    for (const Problem& problem : read.problems())
        if (problem.field == field) return problem;
    return {};
}

void expect_only_problem(const std::string& text, const std::string& field, const std::string& rule_part,
                         const std::string& fix_part)
{
    const std::vector<std::string> all = messages(text);
    EXPECT_EQ(all.size(), 1U) << (all.size() > 1 ? all[0] + "\n" + all[1] : "accepted");
    const Problem problem = problem_of(text, field);
    EXPECT_EQ(problem.field, field) << (all.empty() ? "accepted" : all.front());
    EXPECT_NE(problem.rule.find(rule_part), std::string::npos) << problem.rule;
    EXPECT_NE(problem.fix.find(fix_part), std::string::npos) << problem.fix;
    EXPECT_FALSE(problem.fix.empty());
    EXPECT_EQ(problem.file, "t.toml");
}

Case accepted(const std::string& text)
{
    const Result<Case> read = read_case(text, "t.toml");
    if (read.has_value()) return read.value();
    std::string all = "not accepted:";
    for (const std::string& line : messages(text)) all += "\n  " + line;
    throw std::runtime_error(all);
}

std::string default_of(const Case& asked, const std::string& field)
{
    for (const DefaultUsed& used : asked.defaults)
        if (used.field == field) return used.value + " (" + used.reason + ")";
    return {};
}

bool has_caution(const Case& asked, const std::string& part)
{
    return std::any_of(asked.cautions.begin(), asked.cautions.end(),
                       [&](const std::string& caution) { return caution.find(part) != std::string::npos; });
}

}  // namespace splicewright
