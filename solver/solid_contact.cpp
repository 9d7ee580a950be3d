// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/solid_contact.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

#include "cases/problem.h"
#include "solver/contact_pressure.h"
#include "solver/solid_loads.h"

namespace splicewright
{

namespace
{

// Tolerance of the iteration while pairs open and close, and how it falls once they do not.
constexpr double rough_tolerance = 1e-2, finer_by = 0.01, settled_tolerance = 1e-6;
// What a pair may pull or overlap for each unit of that tolerance before it counts as wrong: what an iteration leaves
// unbalanced pulls and overlaps by itself. Over the largest pressure, and mm; by trial.
constexpr double pull_of_noise = 1, overlap_of_noise = 1e-2;
// Steps without headway, in the number of pairs that are wrong, before the iteration grows finer or, where it is fine
// already, only the worst are exchanged.
constexpr int patience = 4;
constexpr double worst_share = 0.5;
// Times that a pair opens before it no longer sticks.
constexpr int often = 3;
// An open pair that overlaps by more than this part of what an answer may have is closed.
constexpr double overlap_share = 0.01;
// Pairs exchanged since the preconditioner was made, of all, from which it is made anew for the units.
constexpr double renew_share = 0.1;

double least_modulus(const SolidBody& body)
{
    double least = INFINITY;
    for (const ElasticConstants& steel : body.steel) least = std::min(least, steel.E);
    return least;
}

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
    int times_opened = 0, times_turned = 0;
    std::array<Eigen::Vector3d, 2> along{Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()};  // unit, along the faces
    double stiffness = 0;               // N/mm, E times the root of the area: about what a pair gives way by
    Eigen::Vector3d friction{0, 0, 0};  // N on `second`: found where it sticks, given where it slips
    Eigen::Vector3d slip{0, 0, 0};      // mm, of `second` against `first`; zero where it sticks

    [[nodiscard]] double pull() const { return closed ? -force / area : 0; }  // MPa
    [[nodiscard]] double overlap() const { return closed ? 0 : -gap_now; }    // mm
    // What opens time and again may pull only because it sticks: it slips when it touches again.
    void open()
    {
        closed = false;
        sticks = ++times_opened < often;
        friction.setZero();
    }
    [[nodiscard]] bool is_stuck() const { return closed && rough && sticks; }
    [[nodiscard]] bool slips() const { return closed && rough && !sticks; }
};

// Two unit vectors across a third.
std::array<Eigen::Vector3d, 2> across(const Eigen::Vector3d& normal)
{
    const Eigen::Vector3d first = normal.unitOrthogonal();
    return {first, normal.cross(first)};
}

struct Violation
{
    double penetration = 0, tension = 0;  // mm; relative to the peak
    double allowed_pull = 0;              // MPa
};

// Exchanges what is wrong by more than a share of the worst; returns how many pairs were wrong. tolerance: of the
// iteration; 0 where it ran to the end.
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

// Coulomb's law for what was read: lets go what sticks beyond it, stops what its friction drives, and turns the
// friction of the others against their slip. Returns how many pairs changed; the forces of those that slip on count as
// one more while they change too much.
int rub(std::vector<Touch>& touches, const ContactSettings& allowed)
{
    double most = 0;
    for (const Touch& touch : touches)
        if (touch.rough && touch.closed) most = std::max(most, allowed.friction * touch.force);
    int wrong = 0;
    double change = 0, all = 0;
    for (Touch& touch : touches)
    {
        if (!touch.rough) continue;
        if (!touch.closed) continue;
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
            // What would turn about time and again is driven both ways by its friction.
            const bool turns = trial.dot(touch.friction) < 0;
            touch.times_turned += turns ? 1 : 0;
            if ((size <= limit && touch.slip.squaredNorm() > 0) || (turns && touch.times_turned > 1))
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

}  // namespace

struct SolidContact::Parts
{
    Parts(const SolidMesh& mesh, std::vector<ContactSurface> given, const SolidSettings& settings,
          const ContactSettings& chosen);

    std::vector<ContactSurface> surfaces;
    ContactSettings contact;
    double tolerance = 0;
    Eigen::Matrix3Xd places;  // [3, n mesh nodes] mm
    std::vector<PairSpring> own_springs;
    double spring_modulus = 0;  // N/mm for each mm of the root of an area
    std::vector<Touch> touches;
    std::unique_ptr<SolidSystem> own_system;
    SolidSystem* system = nullptr;

    [[nodiscard]] std::vector<PairSpring> springs(const std::vector<Touch>& now) const;
    [[nodiscard]] NodeForces friction(const std::vector<Touch>& now) const;  // of what slips
    [[nodiscard]] std::vector<SolidAnswer> solved(const std::vector<NodeForces>& loads, const std::vector<bool>& opened,
                                                  const std::vector<Touch>& now,
                                                  std::vector<Eigen::Matrix3Xd> displacements, double to) const;
    void read(const std::vector<SolidAnswer>& answers, const std::vector<double>& factors,
              std::vector<Touch>& now) const;
    [[nodiscard]] std::vector<std::vector<double>> forces(const std::vector<Touch>& now) const;
    [[nodiscard]] Violation violation(const std::vector<Touch>& now) const;
    void finish(const std::vector<Touch>& now, ContactAnswer& answer) const;
};

SolidContact::Parts::Parts(const SolidMesh& mesh, std::vector<ContactSurface> given, const SolidSettings& settings,
                           const ContactSettings& chosen)
    : surfaces(std::move(given)), contact(chosen), tolerance(settings.tolerance)
{
    std::map<std::pair<std::int32_t, std::int32_t>, int> of_pair;
    for (std::size_t s = 0; s < surfaces.size(); ++s)
        for (std::size_t i = 0; i < surfaces[s].places.size(); ++i)
        {
            const ContactPlace& place = surfaces[s].places[i];
            if (place.first == place.second) continue;
            touches.push_back({s, i, {place.first, place.second, place.normal, -place.gap}, place.area});
            ++of_pair[{place.first, place.second}];
        }
    EXPECTS(contact.friction >= 0 && contact.friction <= 0.6);
    for (Touch& touch : touches)
    {
        touch.rough = contact.friction > 0 && of_pair[{touch.pair.first, touch.pair.second}] == 1;
        touch.along = across(touch.pair.direction);
    }
    places.resize(3, static_cast<Eigen::Index>(mesh.nodes.size()));
    for (std::size_t i = 0; i < mesh.nodes.size(); ++i)
        places.col(static_cast<Eigen::Index>(i)) =
            Eigen::Vector3d(mesh.nodes[i][0], mesh.nodes[i][1], mesh.nodes[i][2]);
}

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

std::vector<PairSpring> SolidContact::Parts::springs(const std::vector<Touch>& now) const
{
    std::vector<PairSpring> result = own_springs;
    for (const Touch& touch : now)
    {
        if (!touch.closed) continue;
        const double stiffness = spring_modulus * std::sqrt(touch.area);
        result.push_back({touch.pair.first, touch.pair.second, touch.pair.direction, stiffness});
        if (!touch.is_stuck()) continue;
        for (const Eigen::Vector3d& along : touch.along)
            result.push_back({touch.pair.first, touch.pair.second, along, stiffness});
    }
    return result;
}

NodeForces SolidContact::Parts::friction(const std::vector<Touch>& now) const
{
    NodeForces result = NodeForces::Zero(3, places.cols());
    for (const Touch& touch : now)
    {
        if (!touch.slips()) continue;
        result.col(touch.pair.second) += touch.friction;
        result.col(touch.pair.first) -= touch.friction;
    }
    return result;
}

std::vector<SolidAnswer> SolidContact::Parts::solved(const std::vector<NodeForces>& loads,
                                                     const std::vector<bool>& opened, const std::vector<Touch>& now,
                                                     std::vector<Eigen::Matrix3Xd> displacements, double to) const
{
    SolidStart start{{}, opened, std::move(displacements), to};
    for (const Touch& touch : now)
    {
        if (touch.closed) start.pairs.push_back(touch.pair);
        if (!touch.is_stuck()) continue;
        for (const Eigen::Vector3d& along : touch.along)
            start.pairs.push_back({touch.pair.first, touch.pair.second, along, 0});
    }
    return system->solution(loads, own_springs, start).loads;
}

void SolidContact::Parts::read(const std::vector<SolidAnswer>& answers, const std::vector<double>& factors,
                               std::vector<Touch>& now) const
{
    std::size_t held = 0;
    const auto next_force = [&]
    {
        double force = 0;
        for (std::size_t k = 0; k < answers.size(); ++k) force += factors[k] * answers[k].pair_forces[held];
        ++held;
        return force;
    };
    for (Touch& touch : now)
    {
        touch.force = touch.gap_now = 0;
        touch.slip.setZero();
        if (touch.closed) touch.force = next_force();
        if (touch.is_stuck())
        {
            touch.friction.setZero();
            for (const Eigen::Vector3d& along : touch.along) touch.friction += next_force() * along;
        }
        if (touch.closed && !touch.slips()) continue;
        Eigen::Vector3d apart = Eigen::Vector3d::Zero();
        for (std::size_t k = 0; k < answers.size(); ++k)
            apart += factors[k] *
                     (answers[k].displacement.col(touch.pair.second) - answers[k].displacement.col(touch.pair.first));
        const double open = touch.pair.direction.dot(apart);
        if (touch.closed) touch.slip = apart - open * touch.pair.direction;
        else touch.gap_now = open - touch.pair.opening;
    }
}

Violation SolidContact::Parts::violation(const std::vector<Touch>& now) const
{
    Violation worst;
    double pull = 0;
    for (const Touch& touch : now)
    {
        worst.penetration = std::max(worst.penetration, touch.overlap());
        pull = std::max(pull, touch.pull());
    }
    double peak = contact.nominal_stress;
    const auto all = forces(now);
    for (std::size_t s = 0; s < surfaces.size(); ++s)
        for (const double p : contact_pressure(surfaces[s], all[s])) peak = std::max(peak, p);
    worst.allowed_pull = contact.tension * peak;
    if (pull > 0) worst.tension = peak > 0 ? pull / peak : 1;
    return worst;
}

std::vector<std::vector<double>> SolidContact::Parts::forces(const std::vector<Touch>& now) const
{
    std::vector<std::vector<double>> result;
    for (const ContactSurface& surface : surfaces) result.emplace_back(surface.places.size(), 0.0);
    for (const Touch& touch : now) result[touch.surface][touch.place] = touch.force;
    return result;
}

// Pressures of the contact that was found.
void SolidContact::Parts::finish(const std::vector<Touch>& now, ContactAnswer& answer) const
{
    const auto all = forces(now);
    std::vector<std::vector<Eigen::Vector3d>> along;
    std::vector<std::vector<char>> sticks;
    for (const ContactSurface& surface : surfaces)
    {
        along.emplace_back(surface.places.size(), Eigen::Vector3d::Zero());
        sticks.emplace_back(surface.places.size(), char{0});
    }
    for (const Touch& touch : now)
    {
        if (touch.closed) along[touch.surface][touch.place] = touch.friction;
        sticks[touch.surface][touch.place] = touch.is_stuck() && touch.force > 0 ? 1 : 0;
    }
    for (std::size_t s = 0; s < surfaces.size(); ++s)
    {
        answer.surfaces.push_back(
            contact_state(surfaces[s], all[s], std::move(along[s]), places, answer.solid.displacement));
        answer.surfaces.back().sticks = std::move(sticks[s]);
        for (const double pressure : answer.surfaces.back().pressure)
            answer.peak_pressure = std::max(answer.peak_pressure, pressure);
    }
    for (const SolidAnswer& unit : answer.units)
    {
        std::vector<Touch> of_unit = now;
        read({unit}, {1.0}, of_unit);
        answer.unit_forces.push_back(forces(of_unit));
    }
    for (const Touch& touch : now) answer.closed += touch.closed && touch.force > 0 ? 1 : 0;
}

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
            const bool rough = tolerance_ > (p_.contact.friction > 0 ? p_.tolerance : settled_tolerance);
            if (!searching_ || (without_headway_ >= patience && rough))
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
