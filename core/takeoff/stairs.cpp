// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/stairs.h"

#include "takeoff/conditions.h"
#include "takeoff/geometry.h"
#include "takeoff/splice.h"

namespace miterbook {

namespace {

/// The labour rate of treads and risers is for a flight of so many risers.
constexpr int risersPerFlight = 14;

/// Counts one stair.
class StairCutter {
public:
    StairCutter(const Stair& stair, Tally& tally)
        : m_stair(stair)
        , m_tally(tally)
        , m_source(tally.sourceOf(stair)) {}

    void cut() {
        cutSkirts();
        cutTreads();
        cutRail();
        cutPosts();
    }

private:
    void cutSkirts() {
        const int count = m_stair.closedSkirts + m_stair.openSkirts;
        const Profile* skirt = count > 0 ? board(m_stair.skirt, "skirt", m_stair.skirtLength, count)
                                         : nullptr;
        addTask(Task::closedSkirt, Quantity::count(m_stair.closedSkirts), skirt);
        addTask(Task::openSkirt, Quantity::count(m_stair.openSkirts), skirt);
    }

    void cutTreads() {
        if (!m_stair.treadsAndRisers || m_stair.risers <= 0)
            return;
        addTask(Task::treadsAndRisers,
            Quantity::thousandths(roundedQuotient(Wide(m_stair.risers) * 1000, risersPerFlight)),
            nullptr);
        addPart(PartUse::treadKit, m_stair.risers);
    }

    void cutRail() {
        if (m_stair.rail == RailStyle::none)
            return;
        if (m_stair.railLength <= Length()) {
            m_tally.problem(m_source, m_source.name + " has a rail without a length.");
            return;
        }
        m_handrail = board(m_stair.handrail, "handrail", m_stair.railLength, 1);
        addTask(m_stair.rail == RailStyle::postToPost ? Task::railPostToPost : Task::railOverPost,
            Quantity::runningFeet(m_stair.railLength), m_handrail);
    }

    void cutPosts() {
        addTask(Task::newel, Quantity::count(m_stair.newels), m_handrail);
        addPart(PartUse::newel, m_stair.newels);
        const int count = balusterCount();
        addTask(Task::baluster, Quantity::count(count), m_handrail);
        addPart(PartUse::baluster, count);
    }

    int balusterCount() const {
        const Length gap = m_tally.practice().balusterGap;
        if (m_stair.balusters > 0)
            return m_stair.balusters;
        if (m_stair.balusterRun <= Length() || m_stair.balusterWidth <= Length() || gap <= Length())
            return 0;
        return balusters(m_stair.balusterRun, m_stair.balusterWidth, gap).count;
    }

    const Profile* board(Id<Profile> profile, std::string part, Length length, int count) {
        const Profile* stock = profile ? m_tally.usable(profile, m_source, part) : nullptr;
        if (!stock)
            return nullptr;
        if (length <= Length()) {
            m_tally.problem(m_source, m_source.name + ": its " + part + " has no length.");
            return nullptr;
        }
        Piece piece;
        piece.work = PieceOfWork::stairs;
        piece.source = m_source;
        piece.profile = profile;
        piece.part = std::move(part);
        piece.count = count;
        addRun(std::move(piece), length, m_tally);
        return stock;
    }

    void addTask(Task task, Quantity quantity, const Profile* profile) {
        if (quantity > Quantity())
            m_tally.add(TaskCount{PieceOfWork::stairs, task, quantity,
                conditionsFor(m_tally, m_source, profile), m_source, {}});
    }

    void addPart(PartUse use, int count) {
        if (count > 0)
            m_tally.add(PartCount{PieceOfWork::stairs, use, count, m_source});
    }

    const Stair& m_stair;
    Tally& m_tally;
    Source m_source;
    const Profile* m_handrail = nullptr;
};

} // namespace

void takeStair(const Stair& stair, Tally& tally) {
    StairCutter(stair, tally).cut();
}

} // namespace miterbook
