// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/closets.h"

#include "takeoff/conditions.h"
#include "takeoff/splice.h"

#include <algorithm>

namespace miterbook {

namespace {

int rodsOf(const Closet& closet) {
    return closet.kind == ClosetKind::shelves ? 0 : closet.kind == ClosetKind::doubleRod ? 2 : 1;
}

/// A shelf over each rod; shelves alone as many as are said.
int shelvesOf(const Closet& closet) {
    return closet.kind == ClosetKind::shelves ? std::max(closet.shelves, 0) : rodsOf(closet);
}

/// Supports between the ends so that no span is over the shop's [trade practice: 32 to 48 in].
int supportsBetween(Length width, Length span) {
    if (span <= Length())
        return 0;
    return static_cast<int>((width.nm() + span.nm() - 1) / span.nm()) - 1;
}

/// Counts one closet.
class ClosetCutter {
public:
    ClosetCutter(const Closet& closet, Tally& tally)
        : m_closet(closet)
        , m_tally(tally)
        , m_source(tally.sourceOf(closet))
        , m_shelves(shelvesOf(closet) * closet.count) {}

    void cut() {
        const int rods = rodsOf(m_closet) * m_closet.count;
        const Profile* shelf = board(m_closet.shelf, "shelf", m_closet.width, m_shelves);
        board(m_closet.rod, "rod", m_closet.width, rods);
        board(m_closet.cleat, "back cleat", m_closet.width, m_shelves);
        board(m_closet.cleat, "end cleat", m_closet.depth, m_shelves * 2);
        addBrackets(rods);
        addTask(rods > 0, shelf);
    }

private:
    /// Pieces of a profile that may be left to others: none named is nothing counted.
    const Profile* board(Id<Profile> profile, std::string part, Length length, int count) {
        if (!profile || count <= 0 || length <= Length())
            return nullptr;
        const Profile* stock = m_tally.usable(profile, m_source, part);
        if (!stock)
            return nullptr;
        Piece piece;
        piece.work = PieceOfWork::closets;
        piece.source = m_source;
        piece.profile = profile;
        piece.part = std::move(part);
        piece.count = count;
        addRun(std::move(piece), length, m_tally);
        return stock;
    }

    void addBrackets(int rods) {
        const int each = supportsBetween(m_closet.width, m_tally.practice().shelfSupport);
        const int count = each * m_shelves;
        if (count > 0)
            m_tally.add(PartCount{PieceOfWork::closets,
                rods > 0 ? PartUse::closetRodBracket : PartUse::shelfBracket, count, m_source});
    }

    void addTask(bool hung, const Profile* shelf) {
        TaskCount task;
        task.work = PieceOfWork::closets;
        task.task = hung ? Task::shelfAndRod : Task::closetShelf;
        task.quantity = hung ? Quantity::runningFeet(m_closet.width * m_shelves)
                             : Quantity::count(m_shelves);
        task.conditions = conditionsFor(m_tally, m_source, shelf);
        task.source = m_source;
        m_tally.add(std::move(task));
    }

    const Closet& m_closet;
    Tally& m_tally;
    Source m_source;
    int m_shelves;
};

} // namespace

void takeCloset(const Closet& closet, Tally& tally) {
    if (closet.count <= 0 || shelvesOf(closet) == 0)
        return;
    if (closet.width <= Length()) {
        const Source source = tally.sourceOf(closet);
        tally.problem(source, source.name + " has no shelf width; its shelving is not counted.");
        return;
    }
    ClosetCutter(closet, tally).cut();
}

} // namespace miterbook
