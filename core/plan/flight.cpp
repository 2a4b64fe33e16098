// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/flight.h"

#include "plan/outline.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

constexpr double cutAt = 0.6;   // of the risers: what is higher is above the cut of a plan
constexpr double arrowSize = 9; // inches

struct Way {
    double x = 0;
    double y = 0;
};

/// From one point to another, and how far that is in inches.
struct Leg {
    PlanPoint from;
    Way way; ///< one inch
    double length = 0;

    Leg(PlanPoint a, PlanPoint b)
        : from(a)
        , way{(b.x - a.x).toInches(), (b.y - a.y).toInches()}
        , length(std::hypot(way.x, way.y)) {
        if (length > 0)
            way = {way.x / length, way.y / length};
    }
    /// So far along it, and so far to the right of it.
    PlanPoint at(double along, double aside) const {
        return from
            + PlanPoint{Length::fromInches(way.x * along - way.y * aside),
                Length::fromInches(way.y * along + way.x * aside)};
    }
};

/// What of a leg is a flight, between the landings at its ends.
struct FlightPart {
    Leg leg;
    double begin = 0;
    double end = 0;
    int risers = 0;

    double net() const { return std::max(end - begin, 0.0); }
};

std::vector<FlightPart> partsOf(const Stair& stair) {
    const auto& line = stair.walkLine;
    const double half = stair.flightWidth.toInches() / 2;
    std::vector<FlightPart> parts;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const Leg leg(line[i], line[i + 1]);
        const bool last = i + 2 == line.size();
        parts.push_back({leg, i == 0 ? 0 : half, last ? leg.length : leg.length - half, 0});
    }
    return parts;
}

/// By length, the largest remainders first.
void shareRisers(std::vector<FlightPart>& parts, int risers) {
    double all = 0;
    for (const FlightPart& part : parts)
        all += part.net();
    if (all <= 0)
        return;
    std::vector<std::pair<double, FlightPart*>> left;
    int given = 0;
    for (FlightPart& part : parts) {
        const double share = risers * part.net() / all;
        part.risers = static_cast<int>(share);
        given += part.risers;
        left.emplace_back(share - part.risers, &part);
    }
    std::ranges::stable_sort(left, [](const auto& a, const auto& b) { return a.first > b.first; });
    for (std::size_t i = 0; given < risers; ++i, ++given)
        ++left[i % left.size()].second->risers;
}

Outline stretch(const Leg& leg, double begin, double end, double half) {
    return {leg.at(begin, -half), leg.at(end, -half), leg.at(end, half), leg.at(begin, half)};
}

} // namespace

FlightDrawing flightOf(const Stair& stair) {
    FlightDrawing drawn;
    if (stair.walkLine.size() < 2)
        return drawn;
    const double half = stair.flightWidth.toInches() / 2;
    std::vector<FlightPart> parts = partsOf(stair);
    shareRisers(parts, stair.risers);
    int number = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const FlightPart& part = parts[i];
        if (i > 0)
            drawn.parts.push_back(stretch(part.leg, -half, half, half)); // the landing
        if (part.net() > 0)
            drawn.parts.push_back(stretch(part.leg, part.begin, part.end, half));
        for (int n = 0; n < part.risers; ++n) {
            const double along = part.begin
                + (part.risers > 1 ? part.net() * n / (part.risers - 1) : 0.0);
            drawn.risers.push_back({part.leg.at(along, -half), part.leg.at(along, half),
                ++number > stair.risers * cutAt});
        }
    }
    drawn.way = stair.walkLine;
    const Leg& last = parts.back().leg;
    drawn.arrow = {last.at(last.length - arrowSize, -arrowSize / 2), stair.walkLine.back(),
        last.at(last.length - arrowSize, arrowSize / 2)};
    return drawn;
}

bool isOn(const FlightDrawing& flight, PlanPoint point) {
    return std::ranges::any_of(
        flight.parts, [&](const Outline& part) { return encloses(part, point); });
}

} // namespace miterbook
