// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_round.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "solver/sites.h"

namespace splicewright
{
namespace
{

constexpr std::size_t stretches = 72;
constexpr int angles_of_turn = 120;  // as site_peak

double worst_over_a_turn(const SiteStress& site, Eigen::Index place, const CombinedLoad& load)
{
    const int n = load.bending == 0 ? 1 : angles_of_turn;
    double worst = 0;
    for (int k = 0; k < n; ++k)
        worst = std::max(worst, von_mises(point_stress(site, place, load, 2 * std::numbers::pi * k / n)));
    return worst;
}

RoundCurve curve_of(const SiteAnswer& site, const CombinedLoad& load)
{
    std::array<double, stretches> worst{};
    constexpr double turn = 2 * std::numbers::pi;
    for (const SiteStress& bracket : site.brackets)
        for (Eigen::Index i = 0; i < bracket.around.size(); ++i)
        {
            const double around = std::fmod(bracket.around(i) + 2 * turn, turn) / turn;
            double& known = worst[std::min(static_cast<std::size_t>(around * stretches), stretches - 1)];
            known = std::max(known, worst_over_a_turn(bracket, i, load));
        }
    RoundCurve curve{site.id, {}};
    for (std::size_t k = 0; k < stretches; ++k)
        if (worst[k] > 0) curve.points.emplace_back((static_cast<double>(k) + 0.5) * 360 / stretches, worst[k]);
    return curve;
}

}  // namespace

std::vector<RoundCurve> stress_round_the_weld(const MeridianAnswer& answer, const CombinedLoad& load, Side side)
{
    std::vector<RoundCurve> curves;
    for (const char* edge : {"bar-toe", "root", "sleeve-toe"})
        for (const SiteAnswer& site : answer.sites)
            if (site.id == fmt::format("{}.{}", edge, name_of(side)))
                if (RoundCurve curve = curve_of(site, load); !curve.points.empty()) curves.push_back(std::move(curve));
    return curves;
}

}  // namespace splicewright
