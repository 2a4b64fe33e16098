// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/snapshot.h"

#include "store/file_header.h"
#include "store/new_file.h"
#include "store/safety/snapshot_copy.h"
#include "store/safety/soundness.h"

namespace miterbook {

namespace {

std::string edits(std::int64_t count) {
    return std::to_string(count) + (count == 1 ? " change" : " changes");
}

Error refusal(const std::string& book, const std::string& snapshot, const Lineage& lineage) {
    const std::string name = shownName(snapshot);
    switch (lineage.kinship) {
    case Kinship::same:
        return {Fault::conflict,
            name + " holds what " + shownName(book) + " holds already. Nothing was done."};
    case Kinship::behind:
        return {Fault::conflict,
            name + " is older than " + shownName(book) + ", which has " + edits(lineage.ours)
                + " more. Nothing was done."};
    case Kinship::parted:
        return {Fault::conflict,
            name + " and " + shownName(book)
                + " have been changed side by side: " + edits(lineage.theirs) + " there, "
                + edits(lineage.ours) + " here, that the other lacks. Nothing was done; open "
                + name + " beside it and enter what is missing."};
    default:
        return {Fault::notOurs,
            name + " is not a copy of " + shownName(book) + " but another book. Nothing was done."};
    }
}

Result<Lineage> lineageOf(const std::string& book, const std::string& snapshot) {
    const auto ours = openForReading(book);
    if (!ours)
        return ours.error();
    const auto theirs = openForReading(snapshot);
    if (!theirs)
        return theirs.error();
    return compareLineage(*ours, *theirs);
}

} // namespace

Result<void> writeSnapshot(const std::string& book, const std::string& snapshot) {
    auto reading = openForReading(book);
    if (!reading)
        return reading.error();
    return makeNewFile(snapshot, [&](const std::string& part) -> Result<void> {
        if (auto copied = copyInSteps(*reading->connection, part); !copied)
            return copied;
        return checkSoundness(part);
    });
}

Result<TakenIn> takeInSnapshot(
    const std::string& book, const std::string& snapshot, const Clock& clock) {
    const auto lineage = lineageOf(book, snapshot);
    if (!lineage)
        return lineage.error();
    if (lineage->kinship != Kinship::ahead)
        return refusal(book, snapshot, *lineage);
    auto replaced = replaceBook(book, snapshot, clock);
    if (!replaced)
        return replaced.error();
    return TakenIn{*lineage, *std::move(replaced)};
}

} // namespace miterbook
