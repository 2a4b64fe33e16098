// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/lineage.h"

#include "store/cell.h"

#include <algorithm>

namespace miterbook {

namespace {

/// What an entry of the journal says, in one text; empty where there is none of that number.
Result<std::string> entryText(const BookReading& book, std::int64_t seq) {
    auto statement = book.connection->prepare(
        "SELECT at || char(10) || sentence || char(10) || changes FROM journal WHERE seq = ?");
    if (!statement)
        return statement.error();
    statement->bind(numberCell(seq));
    if (auto ran = statement->run(); !ran)
        return ran.error();
    const auto there = statement->step();
    if (!there)
        return there.error();
    return *there ? cellText(statement->value(0)) : std::string();
}

Result<bool> sameEntry(const BookReading& a, const BookReading& b, std::int64_t seq) {
    const auto one = entryText(a, seq);
    if (!one)
        return one.error();
    const auto other = entryText(b, seq);
    if (!other)
        return other.error();
    return *one == *other;
}

/// The last entry that both have, at most `last`. Equal entries come first, then different ones.
Result<std::int64_t> lastCommon(const BookReading& a, const BookReading& b, std::int64_t last) {
    std::int64_t equal = 0;
    std::int64_t different = last + 1;
    while (different - equal > 1) {
        const std::int64_t middle = equal + (different - equal) / 2;
        const auto same = sameEntry(a, b, middle);
        if (!same)
            return same.error();
        (*same ? equal : different) = middle;
    }
    return equal;
}

Kinship kinshipOf(std::int64_t common, std::int64_t ours, std::int64_t theirs) {
    if (common == 0)
        return Kinship::stranger;
    if (ours > 0)
        return theirs > 0 ? Kinship::parted : Kinship::behind;
    return theirs > 0 ? Kinship::ahead : Kinship::same;
}

} // namespace

Result<Lineage> compareLineage(const BookReading& ours, const BookReading& theirs) {
    const auto mine = summaryOf(ours);
    if (!mine)
        return mine.error();
    const auto other = summaryOf(theirs);
    if (!other)
        return other.error();
    if (mine->created != other->created)
        return Lineage{};
    const auto common = lastCommon(ours, theirs, std::min(mine->edits, other->edits));
    if (!common)
        return common.error();
    if (*common == 0)
        return Lineage{};
    const Lineage counts{Kinship::same, mine->edits - *common, other->edits - *common};
    return Lineage{kinshipOf(*common, counts.ours, counts.theirs), counts.ours, counts.theirs};
}

} // namespace miterbook
