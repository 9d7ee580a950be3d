// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "post/damage.h"
#include "post/worked.h"

namespace splicewright
{

// How many terms of a sum are written out; the rest stands as one number.
constexpr std::size_t written_terms = 3;

// A sum whose largest terms are written out. `write` gives the text of one term.
struct WrittenSum
{
    std::string numbers;
    std::string which;  // ", largest 3 of 40 terms written out"; empty when all are
    double sum = 0;
};
WrittenSum written_sum(const std::vector<double>& terms, const std::function<std::string(std::size_t)>& write);

// Places of the largest terms, largest first.
std::vector<std::size_t> largest_terms(const std::vector<double>& terms);

// Ranges of one kind of stress: "shear", symbol "tau", and how the range of some cycles comes about.
struct RangeKind
{
    std::string name, symbol;
    std::function<WorkedStep(const StressCycles&)> range_step;
};

// From the ranges that damage most over the Miner sum to the utilisation 1/s, with the sum at the factor found.
std::vector<WorkedStep> miner_steps(const RangeKind& kind, const Spectrum& spectrum, const SnCurve& curve,
                                    const FatigueUtilisation& rating);

std::vector<WorkedStep> squares_steps(double normal, double shear, const Interaction& interaction);
std::vector<WorkedStep> cubes_and_fifths_steps(double normal, double shear, const Interaction& interaction);

// Class of a thick part: FAT (25/t)^exponent.
WorkedStep thickness_step(double fatigue_class, double thickness_mm, double exponent, double result);

}  // namespace splicewright
