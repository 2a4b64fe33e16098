// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/risk.h"

#include <boost/math/distributions/students_t.hpp>

#include <cassert>
#include <cmath>

namespace miterbook {

namespace {

using StudentT = boost::math::students_t_distribution<double>;

double hoursOf(Hours hours) {
    return static_cast<double>(hours.minutes()) / 60.0;
}

Hours hoursFrom(double hours) {
    return Hours::minutes(std::llround(hours * 60.0));
}

/// A sum of estimated variances and the degrees of freedom it has.
class FreeVariance {
public:
    FreeVariance(double variance, double freedom)
        : m_variance(variance)
        , m_perFreedom(variance * variance / freedom) {}

    FreeVariance& operator+=(const FreeVariance& other) {
        m_variance += other.m_variance;
        m_perFreedom += other.m_perFreedom;
        return *this;
    }
    friend FreeVariance operator+(FreeVariance a, const FreeVariance& b) { return a += b; }
    double variance() const { return m_variance; }
    double freedom() const { return m_variance * m_variance / m_perFreedom; }

private:
    double m_variance;
    double m_perFreedom; ///< sum of variance^2 / degrees of freedom
};

} // namespace

RiskOutlook::RiskOutlook(const Estimate& estimate, const RiskBelief& belief)
    : m_houses(belief.houses)
    , m_bidHours(hoursOf(estimate.total.hours))
    , m_crewRate(estimate.crewRate)
    , m_fixed(estimate.total.foreseen() - estimate.total.labour)
    , m_price(estimate.total.price) {
    addWorks(estimate, belief);
}

/// Mean of each work's hours, variance of all: lognormals that share the house's part.
void RiskOutlook::addWorks(const Estimate& estimate, const RiskBelief& belief) {
    std::vector<double> means;
    for (const WorkTotal& total : estimate.works) {
        if (total.hours <= Hours())
            continue;
        const WorkBelief& known = belief.of(total.work);
        const double middle = hoursOf(total.hours) * std::exp(known.drift);
        const double variance = known.variance + belief.houseVariance;
        means.push_back(middle * std::exp(variance / 2));
        m_mean += means.back();
        const FreeVariance parts = FreeVariance(belief.houseVariance, belief.houseFreedom)
            + FreeVariance(known.variance, known.freedom);
        const double reach = quantile(StudentT(parts.freedom()), 0.95) * std::sqrt(variance);
        m_works.push_back(
            {total.work, total.hours, hoursFrom(means.back()), hoursFrom(middle * std::exp(-reach)),
                hoursFrom(middle * std::exp(reach)), 0, known.houses});
    }
    if (m_works.empty())
        return;
    const double together = std::expm1(belief.houseVariance);
    FreeVariance sum(m_mean * m_mean * together, belief.houseFreedom);
    for (std::size_t i = 0; i < means.size(); ++i) {
        const WorkBelief& known = belief.of(m_works[i].work);
        const double own = means[i] * means[i]
            * (std::expm1(belief.houseVariance + known.variance) - together);
        sum += FreeVariance(own, known.freedom);
        m_works[i].share = means[i] * m_mean * together + own; // covariance with all hours
    }
    for (WorkRisk& work : m_works)
        work.share /= sum.variance();
    m_freedom = sum.freedom();
    const double logVariance = std::log1p(sum.variance() / (m_mean * m_mean));
    m_spread = std::sqrt(logVariance);
    m_middle = std::log(m_mean) - logVariance / 2;
}

Hours RiskOutlook::expected() const {
    return hoursFrom(m_mean);
}

Hours RiskOutlook::hoursAt(double certainty) const {
    assert(certainty > 0 && certainty < 1);
    return any()
        ? hoursFrom(std::exp(m_middle + m_spread * quantile(StudentT(m_freedom), certainty)))
        : Hours();
}

Money RiskOutlook::costAt(double certainty) const {
    const Hours hours = hoursAt(certainty);
    return m_fixed + Money::cents(roundedQuotient(Wide(m_crewRate.cents()) * hours.minutes(), 60));
}

double RiskOutlook::chanceBelow(double hours) const {
    if (!any() || hours <= 0)
        return 0;
    return cdf(StudentT(m_freedom), (std::log(hours) - m_middle) / m_spread);
}

double RiskOutlook::breakEvenHours() const {
    if (m_crewRate <= Money())
        return 0;
    return static_cast<double>((m_price - m_fixed).cents())
        / static_cast<double>(m_crewRate.cents());
}

} // namespace miterbook
