// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/worked_fatigue.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace splicewright
{
namespace
{

double slope_at(const SnCurve& curve, double range)
{
    return range > knee_range(curve).value() ? curve.slope : curve.slope_beyond_variable;
}

// Miner sum of a spectrum at a factor on its ranges.
WrittenSum written_miner(const Spectrum& spectrum, const SnCurve& curve, double scale)
{
    std::vector<double> terms;
    for (const StressCycles& block : spectrum)
        terms.push_back(block.count / cycles(curve, scale * block.range, Amplitude::variable).cycles);
    const auto write = [&](std::size_t at)
    {
        const StressCycles& block = spectrum[at];
        const std::string range =
            scale == 1 ? put(block.range.value()) : put_in("({}*{})", {scale, block.range.value()});
        return fmt::format("{}/({}*({}/{})^{})", put(block.count), put(curve.knee_cycles),
                           put(knee_range(curve).value()), range, put(slope_at(curve, scale * block.range.value())));
    };
    return written_sum(terms, write);
}

WorkedStep knee_step(const RangeKind& kind, const SnCurve& curve)
{
    return worked_step(fmt::format("{}: range at the knee of the curve {} with the partial factor {:g}", kind.name,
                                   curve.name, curve.partial_factor),
                       "S_k = FAT/gamma (2e6/N_k)^(1/m)",
                       put_in("{}/{}*(2e6/{})^(1/{})",
                              {curve.fatigue_class.value(), curve.partial_factor, curve.knee_cycles, curve.slope}),
                       knee_range(curve).value(), "MPa");
}

}  // namespace

std::vector<std::size_t> largest_terms(const std::vector<double>& terms)
{
    std::vector<std::size_t> order(terms.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const std::size_t n_kept = std::min(written_terms, terms.size());
    const auto end = order.begin() + static_cast<std::ptrdiff_t>(n_kept);
    std::partial_sort(order.begin(), end, order.end(),
                      [&](std::size_t a, std::size_t b) { return terms[a] != terms[b] ? terms[a] > terms[b] : a < b; });
    order.resize(n_kept);
    return order;
}

WrittenSum written_sum(const std::vector<double>& terms, const std::function<std::string(std::size_t)>& write)
{
    WrittenSum written;
    const std::vector<std::size_t> largest = largest_terms(terms);
    double rest = 0;
    for (std::size_t at = 0; at < terms.size(); ++at)
    {
        written.sum += terms[at];
        if (std::find(largest.begin(), largest.end(), at) == largest.end()) rest += terms[at];
    }
    for (const std::size_t at : largest)
        written.numbers += fmt::format("{}{}", written.numbers.empty() ? "" : " + ", write(at));
    if (terms.size() > largest.size())
    {
        written.numbers += fmt::format(" + {}", put(rest));
        written.which =
            fmt::format(" (largest {} of {} terms written out, the rest as one number)", largest.size(), terms.size());
    }
    return written;
}

std::vector<WorkedStep> miner_steps(const RangeKind& kind, const Spectrum& spectrum, const SnCurve& curve,
                                    const FatigueUtilisation& rating)
{
    std::vector<WorkedStep> steps{knee_step(kind, curve)};
    std::vector<double> damage;
    for (const StressCycles& block : spectrum)
        damage.push_back(block.count / cycles(curve, block.range, Amplitude::variable).cycles);
    for (const std::size_t at : largest_terms(damage)) steps.push_back(kind.range_step(spectrum[at]));
    const WrittenSum now = written_miner(spectrum, curve, 1),
                     then = written_miner(spectrum, curve, rating.stress_scale);
    const std::string slopes =
        fmt::format("m = {:g} above the knee, {:g} below", curve.slope, curve.slope_beyond_variable);
    steps.push_back(worked_step(fmt::format("{}: damage over the life asked for, {}{}", kind.name, slopes, now.which),
                                fmt::format("D = sum of n/(N_k (S_k/d{})^m)", kind.symbol), now.numbers, rating.damage,
                                ""));
    steps.push_back(
        searched_step(fmt::format("{}: factor s on all ranges at which the damage is the {:g} allowed, searched",
                                  kind.name, rating.damage_limit),
                      fmt::format("D(s) = {:g}", rating.damage_limit), rating.stress_scale, ""));
    steps.push_back(worked_step(fmt::format("{}: the damage at that factor{}", kind.name, then.which),
                                fmt::format("D(s) = sum of n/(N_k (S_k/(s d{}))^m)", kind.symbol), then.numbers,
                                then.sum, ""));
    steps.push_back(worked_step(fmt::format("{}: share of the allowed stress", kind.name),
                                fmt::format("u_{} = 1/s", kind.symbol), put_in("1/{}", {rating.stress_scale}),
                                rating.utilisation, ""));
    return steps;
}

std::vector<WorkedStep> squares_steps(double normal, double shear, const Interaction& interaction)
{
    if (interaction.limit != 1)
        return {worked_step("normal stress and shear joined, not in phase", "u = sqrt((u_sigma^2 + u_tau^2)/CV)",
                            put_in("sqrt(({}^2+{}^2)/{})", {normal, shear, interaction.limit}), interaction.utilisation,
                            "")};
    return {worked_step(interaction.note, normal == 0 ? "u = u_tau" : "u = u_sigma", put(normal == 0 ? shear : normal),
                        interaction.utilisation, "")};
}

std::vector<WorkedStep> cubes_and_fifths_steps(double normal, double shear, const Interaction& interaction)
{
    const double u = interaction.utilisation;
    if (normal == 0 || shear == 0)
        return {worked_step(normal == 0 ? "shear alone" : "normal stress alone",
                            normal == 0 ? "u = u_tau" : "u = u_sigma", put(normal == 0 ? shear : normal), u, "")};
    return {searched_step("normal stress and shear joined: u by which both are divided to meet the rule, searched",
                          "(u_sigma/u)^3 + (u_tau/u)^5 = 1", u, ""),
            worked_step("the rule at that u", "(u_sigma/u)^3 + (u_tau/u)^5",
                        put_in("({}/{})^3+({}/{})^5", {normal, u, shear, u}),
                        std::pow(normal / u, 3) + std::pow(shear / u, 5), "")};
}

WorkedStep thickness_step(double fatigue_class, double thickness_mm, double exponent, double result)
{
    return worked_step("class for a part thicker than 25 mm", "FAT_t = FAT (25/t)^n",
                       put_in("{}*(25/{})^{}", {fatigue_class, thickness_mm, exponent}), result, "MPa");
}

}  // namespace splicewright
