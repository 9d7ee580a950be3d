// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <cstddef>
#include <vector>

#include "solver/solid_contact.h"

namespace splicewright
{

// A place that can open, and what is known of it.
struct Touch
{
    std::size_t surface = 0, place = 0;
    HeldPair pair;    // its opening closes the gap
    double area = 0;  // mm^2
    bool closed = true;
    double force = 0;    // N, 0 where open
    double gap_now = 0;  // mm, 0 where closed
    bool rough = false;  // whether friction acts where it is closed
    bool sticks = true;
    int times_opened = 0;
    std::array<Eigen::Vector3d, 2> along{Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()};  // unit, along the faces
    double stiffness = 0;               // N/mm, E times the root of the area: about what a pair gives way by
    Eigen::Vector3d friction{0, 0, 0};  // N on `second`: found where it sticks, given where it slips
    Eigen::Vector3d slip{0, 0, 0};      // mm, of `second` against `first`; zero where it sticks

    [[nodiscard]] double pull() const { return closed ? -force / area : 0; }  // MPa
    [[nodiscard]] double overlap() const { return closed ? 0 : -gap_now; }    // mm
    // What opens time and again may pull only because it sticks: it slips when it touches again.
    void open();
    [[nodiscard]] bool is_stuck() const { return closed && rough && sticks; }
    [[nodiscard]] bool slips() const { return closed && rough && !sticks; }
};

// Two unit vectors across a third.
std::array<Eigen::Vector3d, 2> across(const Eigen::Vector3d& normal);

// By how much the worst of all pairs breaks the conditions of contact.
struct Violation
{
    double penetration = 0, tension = 0;  // mm; relative to the peak
    double allowed_pull = 0;              // MPa
};

// Exchanges what is wrong by more than a share of the worst; returns how many pairs were wrong. tolerance: of the
// iteration; 0 where it ran to the end.
int exchange(std::vector<Touch>& touches, const Violation& worst, const ContactSettings& allowed, double share,
             double tolerance);

// Coulomb's law for what was read: lets go what sticks beyond it, stops what its friction drives, and turns the
// friction of the others against their slip. Returns how many pairs changed; the forces of those that slip on count as
// one more while they change too much.
int rub(std::vector<Touch>& touches, const ContactSettings& allowed);

}  // namespace splicewright
