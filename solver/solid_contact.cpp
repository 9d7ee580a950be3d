// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_contact.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <limits>
#include <utility>

#include "cases/problem.h"
#include "solver/solid_contact_parts.h"
#include "solver/solid_loads.h"

namespace splicewright
{

namespace
{

// Tolerance of the iteration while pairs open and close, and how it falls once they do not.
constexpr double rough_tolerance = 1e-2, finer_by = 0.01, settled_tolerance = 1e-6;
// Steps without headway, in the number of pairs that are wrong, before the iteration grows finer or, where it is fine
// already, only the worst are exchanged.
constexpr int patience = 4;
constexpr double worst_share = 0.5;
// Pairs exchanged since the preconditioner was made, of all, from which it is made anew for the units.
constexpr double renew_share = 0.1;

double least_modulus(const SolidBody& body)
{
    double least = INFINITY;
    for (const ElasticConstants& steel : body.steel) least = std::min(least, steel.E);
    return least;
}

}  // namespace

SolidContact::SolidContact(const SolidMesh& mesh, SolidBody body, std::vector<ContactSurface> surfaces,
                           SolidSettings settings, ContactSettings contact)
    : parts_(std::make_unique<Parts>(mesh, std::move(surfaces), settings, contact))
{
    parts_->own_springs = body.springs;
    parts_->spring_modulus = contact.stiffness * least_modulus(body);
    body.springs = parts_->springs(parts_->touches);
    parts_->own_system = std::make_unique<SolidSystem>(mesh, std::move(body), settings);
    parts_->system = parts_->own_system.get();
}

SolidContact::SolidContact(const SolidMesh& mesh, SolidSystem& system, std::vector<ContactSurface> surfaces,
                           SolidSettings settings, ContactSettings contact)
    : parts_(std::make_unique<Parts>(mesh, std::move(surfaces), settings, contact))
{
    parts_->own_springs = system.body().springs;
    parts_->spring_modulus = contact.stiffness * least_modulus(system.body());
    parts_->system = &system;
}

SolidContact::~SolidContact() = default;
SolidContact::SolidContact(SolidContact&&) noexcept = default;

const SolidSetUp& SolidContact::set_up() const { return parts_->system->set_up(); }

ContactAnswer SolidContact::solution(const SolidMesh& mesh, const NodeForces& load)
{
    return solution(mesh, std::vector<ContactUnit>{{load}});
}

// One after the other: the sum is solved roughly while pairs are exchanged, then finer; once none is wrong all units
// are solved to the end, which shows whether that holds.
class SolidContact::Search
{
public:
    Search(const Parts& parts, const SolidMesh& mesh, const std::vector<ContactUnit>& units, const ContactStart& start)
        : p_(parts), mesh_(mesh), of_units_(start.displacements)
    {
        sum_ = NodeForces::Zero(3, p_.places.cols());
        for (const ContactUnit& unit : units)
        {
            loads_.push_back(unit.force);
            factors_.push_back(unit.factor);
            opened_.push_back(unit.opened);
            sum_ += unit.factor * unit.force;
        }
        EXPECTS(p_.contact.friction == 0 || factors_[0] != 0);
        now_ = p_.touches;
        for (Touch& touch : now_) touch.stiffness = p_.spring_modulus / p_.contact.stiffness * std::sqrt(touch.area);
        if (start.closed.empty()) return;
        for (Touch& touch : now_) touch.closed = start.closed[touch.surface][touch.place];
        of_sum_ = sum_of(of_units_, factors_);
        renew();
    }

    ContactAnswer answer()
    {
        for (answer_.steps = 1; answer_.steps <= p_.contact.most_steps; ++answer_.steps)
            if (step()) return finished();
        throw ContactUnsettled(
            {"", 0, 0, "contact", fmt::format("{:.1e} mm, {:.1e}", answer_.penetration, answer_.tension),
             fmt::format("penetration must fall to {:.1e} mm and pull to {:.1e} of the largest pressure",
                         p_.contact.penetration, p_.contact.tension),
             "a part may come loose: check what holds it, or treat the faces as tied or free"});
    }

private:
    // True when the units are solved and nothing is wrong.
    bool step()
    {
        std::vector<SolidAnswer> solved = searching_
                                              ? p_.solved({rubbed_sum()}, {true}, now_, start_of_sum(), tolerance_)
                                              : p_.solved(rubbed_loads(), opened_, now_, of_units_, p_.tolerance);
        p_.read(solved, searching_ ? std::vector<double>{1.0} : factors_, now_);
        int most = 0;
        for (const SolidAnswer& of : solved)
        {
            answer_.iterations += of.iterations;
            most = std::max(most, of.iterations);
        }
        const Violation worst = p_.violation(now_);
        answer_.penetration = worst.penetration;
        answer_.tension = worst.tension;
        std::vector<Touch> next = now_;
        int wrong = exchange(next, worst, p_.contact, without_headway_ < patience ? 0 : worst_share,
                             searching_ ? tolerance_ : 0);
        // First all that touches sticks, until what touches is known: friction is a part of that pressure.
        if (wrong == 0 && tolerance_ <= settled_tolerance) wrong = rub(next, p_.contact);
        if (searching_ || wrong > 0) now_ = std::move(next);
        if (!searching_ && wrong == 0)
        {
            answer_.units = std::move(solved);
            return true;
        }
        take(std::move(solved));
        exchanged_ += wrong;
        if (most > p_.contact.most_iterations) renew();
        go_on(wrong);
        return false;
    }

    [[nodiscard]] NodeForces rubbed_sum() const { return sum_ + p_.friction(now_); }

    // What slips at the sum goes with the first unit.
    [[nodiscard]] std::vector<NodeForces> rubbed_loads() const
    {
        std::vector<NodeForces> loads = loads_;
        if (p_.contact.friction > 0) loads[0] += p_.friction(now_) / factors_[0];
        return loads;
    }

    void go_on(int wrong)
    {
        without_headway_ = wrong < fewest_ ? 0 : without_headway_ + 1;
        fewest_ = wrong > 0 ? std::min(fewest_, wrong) : std::numeric_limits<int>::max();
        if (wrong > 0)
        {
            // A rough solution may not see what a fine one found, nor how a pair moves that is let go.
            const bool can_be_finer = tolerance_ > (p_.contact.friction > 0 ? p_.tolerance : settled_tolerance);
            if (!searching_ || (without_headway_ >= patience && can_be_finer))
            {
                tolerance_ = std::max(p_.tolerance, finer_by * tolerance_);
                without_headway_ = 0;
                fewest_ = std::numeric_limits<int>::max();
            }
            searching_ = true;
            return;
        }
        searching_ = tolerance_ > settled_tolerance;
        if (searching_) tolerance_ = std::max(settled_tolerance, finer_by * tolerance_);
        if (searching_) return;
        start_unit_from_sum();
        if (exchanged_ > renew_share * static_cast<double>(now_.size())) renew();
    }

    void take(std::vector<SolidAnswer> solved)
    {
        if (searching_)
        {
            of_sum_ = std::move(solved[0].displacement);
            return;
        }
        of_units_.clear();
        for (SolidAnswer& of : solved) of_units_.push_back(std::move(of.displacement));
        of_sum_ = sum_of(of_units_, factors_);
    }

    // The first unit is what the sum has beside the others.
    void start_unit_from_sum()
    {
        if (factors_[0] == 0) return;
        of_units_.resize(loads_.size());
        Eigen::Matrix3Xd first = of_sum_;
        for (std::size_t k = 1; k < of_units_.size(); ++k)
            if (factors_[k] != 0 && of_units_[k].cols() > 0) first -= factors_[k] * of_units_[k];
        of_units_[0] = first / factors_[0];
    }

    [[nodiscard]] std::vector<Eigen::Matrix3Xd> start_of_sum() const
    {
        return of_sum_.cols() > 0 ? std::vector{of_sum_} : std::vector<Eigen::Matrix3Xd>{};
    }

    void renew()
    {
        p_.system->precondition_for(mesh_, p_.springs(now_));
        ++answer_.renewals;
        exchanged_ = 0;
    }

    ContactAnswer finished()
    {
        answer_.solid = sum_of(answer_.units, factors_);
        p_.finish(now_, answer_);
        return std::move(answer_);
    }

    const Parts& p_;
    const SolidMesh& mesh_;
    std::vector<NodeForces> loads_;
    std::vector<double> factors_;
    std::vector<bool> opened_;
    NodeForces sum_;
    std::vector<Touch> now_;
    std::vector<Eigen::Matrix3Xd> of_units_;  // [units] where they begin
    Eigen::Matrix3Xd of_sum_;
    ContactAnswer answer_;
    double tolerance_ = rough_tolerance;
    bool searching_ = true;
    int exchanged_ = 0;  // since the preconditioner was made
    int fewest_ = std::numeric_limits<int>::max(), without_headway_ = 0;
};

ContactAnswer SolidContact::solution(const SolidMesh& mesh, const std::vector<ContactUnit>& units,
                                     const ContactStart& start)
{
    const auto begun = std::chrono::steady_clock::now();
    ContactAnswer answer = Search(*parts_, mesh, units, start).answer();
    answer.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
    return answer;
}

}  // namespace splicewright
