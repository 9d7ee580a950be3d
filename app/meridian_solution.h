// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>

#include "cases/case.h"
#include "mesh/outline.h"
#include "solver/meridian.h"
#include "solver/stress_intensity.h"

namespace splicewright
{

// All that the meridian model solves of one scenario; what loads, strengths and ratings make of it is judged after.
struct MeridianSolution
{
    std::array<SlitState, 2> slit{};    // [left, right] as the peak load finds it
    std::optional<ClosedSlits> closed;  // by it
    SlitClosing closing;
    MeridianAnswer answer;
    std::optional<MeridianAnswer> notched;  // with all notches of the reference radius, where the toes have another
    std::optional<MeridianAnswer> small;    // of the radius for thin walls, where there are
    std::optional<StressIntensities> intensity;  // where there is a joint and loads come and go
};

// Notches for thin walls and stress intensities to three times the error asked for.
// Throws CannotCompute as meridian_answer does.
MeridianSolution meridian_solution(const Case& asked, const Scenario& scenario, const Accuracy& accuracy);

// What a scenario outside the verdict is solved to: three times the error asked for.
Accuracy for_information(const Accuracy& accuracy);

// Keeps what it solved last, for cases that differ in what is judged alone.
class LastSolution
{
public:
    // Solved anew only where shape, stiffness, scenario, accuracy or the slits that the peak load closes are others
    // than before. Throws as meridian_solution does, and keeps what it had then.
    const MeridianSolution& of(const Case& asked, const Scenario& scenario, const Accuracy& accuracy);
    [[nodiscard]] int n_solved() const { return n_solved_; }

private:
    // What a solution depends on.
    struct Origin
    {
        std::array<std::optional<Bar>, 2> bar;  // steels by their stiffness alone, here and below
        std::optional<Joint> joint;
        std::optional<Sleeve> sleeve;
        Scenario scenario;
        Accuracy accuracy;
        bool has_cycles = false;
        bool operator==(const Origin&) const = default;
    };
    static Origin origin(const Case& asked, const Scenario& scenario, const Accuracy& accuracy);
    bool holds_for(const Case& asked);

    std::optional<Origin> origin_;
    MeridianSolution solved_;
    int n_solved_ = 0;
};

}  // namespace splicewright
