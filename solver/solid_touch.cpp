// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_touch.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

namespace splicewright
{

namespace
{

// What a pair may pull or overlap for each unit of the iteration's tolerance before it counts as wrong: what an
// iteration leaves unbalanced pulls and overlaps by itself. Over the largest pressure, and mm; by trial.
constexpr double pull_of_noise = 1, overlap_of_noise = 1e-2;
// Times that a pair opens before it no longer sticks.
constexpr int often = 3;
// An open pair that overlaps by more than this part of what an answer may have is closed.
constexpr double overlap_share = 0.01;

}  // namespace

void Touch::open()
{
    closed = false;
    sticks = ++times_opened < often;
    friction.setZero();
}

std::array<Eigen::Vector3d, 2> across(const Eigen::Vector3d& normal)
{
    const Eigen::Vector3d first = normal.unitOrthogonal();
    return {first, normal.cross(first)};
}

int exchange(std::vector<Touch>& touches, const Violation& worst, const ContactSettings& allowed, double share,
             double tolerance)
{
    const double peak = worst.allowed_pull / allowed.tension;
    const double allowed_pull = std::max(worst.allowed_pull, tolerance * pull_of_noise * peak);
    const double allowed_overlap = std::max(overlap_share * allowed.penetration, tolerance * overlap_of_noise);
    const double least_overlap = std::max(allowed_overlap, share * worst.penetration);
    const double least_pull = std::max(allowed_pull, share * worst.tension * peak);
    int wrong = 0;
    for (Touch& touch : touches)
    {
        const double overlap = touch.overlap(), pull = touch.pull();
        wrong += overlap > allowed_overlap || pull > allowed_pull ? 1 : 0;
        if (pull > least_pull) touch.open();
        else if (overlap > least_overlap) touch.closed = true;
    }
    return wrong;
}

int rub(std::vector<Touch>& touches, const ContactSettings& allowed)
{
    double most = 0;
    for (const Touch& touch : touches)
        if (touch.rough && touch.closed) most = std::max(most, allowed.friction * touch.force);
    int wrong = 0;
    double change = 0, all = 0;
    for (Touch& touch : touches)
    {
        if (!touch.rough || !touch.closed) continue;
        const double limit = allowed.friction * std::max(touch.force, 0.0), now = touch.friction.norm();
        all += limit;
        if (touch.sticks)
        {
            if (now <= limit + allowed.friction_change * most) continue;
            touch.sticks = false;
            touch.friction *= limit / now;
            ++wrong;
        }
        else
        {
            const Eigen::Vector3d trial = touch.friction - touch.stiffness * touch.slip;
            const double size = trial.norm();
            if (size <= limit && touch.slip.squaredNorm() > 0)
            {
                touch.sticks = true;
                ++wrong;
                continue;
            }
            const Eigen::Vector3d next = size > 0 ? Eigen::Vector3d(limit / size * trial) : touch.friction;
            change += (next - touch.friction).norm();
            touch.friction = next;
        }
    }
    return wrong + (change > allowed.friction_change * all ? 1 : 0);
}

}  // namespace splicewright
