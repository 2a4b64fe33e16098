// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/starter_book.h"
#include "io/file_bytes.h"
#include "io/pack_lists.h"
#include "io/plan_text.h"
#include "io/schedule_edit.h"
#include "job/new_plan.h"
#include "job/row_check.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

using ::testing::Each;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

std::string fileText(const std::string& name) {
    const auto bytes = readFileBytes(std::string(MITERBOOK_SOURCE_DIR) + "/sample-jobs/" + name);
    EXPECT_TRUE(bytes.ok()) << (bytes ? "" : bytes.error().sentence);
    return bytes ? *bytes : std::string();
}

class SampleJob : public ::testing::TestWithParam<const char*> {
protected:
    SampleJob() { m_book.prices = starterBook(m_ids); }

    std::string file(const std::string& name) const { return fileText(GetParam() + ("/" + name)); }
    std::string planText() const { return file(std::string(GetParam()) + ".miterplan"); }

    void perform(const Edit& edit) {
        ASSERT_TRUE(checkRows(m_book, edit)) << checkRows(m_book, edit).error().sentence;
        ASSERT_TRUE(check(m_book, edit));
        apply(m_book, edit);
    }

    Id<Plan> bring() {
        const auto edit = readPlanText(m_book, m_ids, planText());
        EXPECT_TRUE(edit.ok()) << (edit ? "" : edit.error().sentence);
        if (edit)
            perform(*edit);
        return std::prev(m_book.jobs.of<Plan>().end())->first;
    }

    /// Reads a schedule into the plan the way a user would: levels that are missing are added.
    ScheduleReading read(ScheduleKind kind, Id<Plan> plan) {
        const std::string bytes = file(std::string(word(kind)) + ".csv");
        const Id<Level> level = m_book.sheet(plan).of<Level>().begin()->first;
        auto reading = readSchedule(kind, bytes, m_book, {plan, level});
        if (reading && !reading->missingLevels.empty()) {
            perform(levelsEdit(m_book, m_ids, plan, reading->missingLevels));
            reading = readSchedule(kind, bytes, m_book, {plan, level});
        }
        EXPECT_TRUE(reading.ok());
        if (!reading)
            return {};
        perform(scheduleEdit(m_book, m_ids, {plan, level}, *reading, "file.csv"));
        return *reading;
    }

    IdSource m_ids;
    Book m_book;
};

TEST_P(SampleJob, IsWrittenAsItWasRead) {
    const Id<Plan> plan = bring();
    Book empty;
    IdSource ids;
    const auto alone = readPlanText(empty, ids, planText());
    ASSERT_TRUE(alone.ok()) << alone.error().sentence; // needs nothing that the book must have
    apply(empty, *alone);
    EXPECT_EQ(writePlanText(empty, empty.jobs.of<Plan>().begin()->first), planText());
    EXPECT_FALSE(m_book.sheet(plan).of<Opening>().empty());
}

TEST_P(SampleJob, HasSoundVariants) {
    const Id<Plan> plan = bring();
    std::vector<Id<Variant>> all;
    for (const auto& [id, variant] : m_book.sheet(plan).of<Variant>()) {
        const WholePlan whole = wholePlan(*m_book.plan(plan), m_book.sheet(plan), {{}, {id}});
        EXPECT_TRUE(whole.remarks.empty() || variant.kind == VariantKind::elevation)
            << variant.name;
    }
    EXPECT_GE(m_book.sheet(plan).of<Variant>().size(), 2U);
}

/// The openings of a plan by mark; what a schedule can tell.
std::map<std::string, const Opening*> byMark(const PlanRows& rows) {
    std::map<std::string, const Opening*> found;
    for (const auto& [id, opening] : rows.of<Opening>()) {
        if (!opening.variant)
            found[opening.mark] = &opening;
    }
    return found;
}

/// Wall without base, whether its place is said or not: a schedule tells how much, a drawing where.
Length withoutBase(const Room& room) {
    Length sum = room.baseBreak;
    for (const BaseBreak& each : room.breaks)
        sum += each.length;
    return sum;
}

TEST_P(SampleJob, SchedulesSayTheSameAsThePlan) {
    const Id<Plan> whole = bring();
    const auto begun = newPlan(m_book, m_ids, {"Someone", "", "Again", 0});
    ASSERT_TRUE(begun.ok());
    perform(*begun);
    const Id<Plan> plan = std::prev(m_book.jobs.of<Plan>().end())->first;
    const ScheduleReading rooms = read(ScheduleKind::rooms, plan);
    const ScheduleReading windows = read(ScheduleKind::windows, plan);
    const ScheduleReading doors = read(ScheduleKind::doors, plan);
    EXPECT_THAT(rooms.rejected, IsEmpty());
    EXPECT_THAT(doors.rejected, IsEmpty());
    for (const Rejection& each : windows.rejected)
        EXPECT_THAT(each.reason, HasSubstr("not in a schedule")); // the gables of Ravine House
    for (const ScheduleReading* reading : {&rooms, &windows, &doors})
        EXPECT_THAT(reading->unmapped, IsEmpty());

    const auto wanted = byMark(m_book.sheet(whole));
    const auto found = byMark(m_book.sheet(plan));
    EXPECT_EQ(found.size() + windows.rejected.size(), wanted.size());
    for (const auto& [mark, opening] : found) {
        ASSERT_TRUE(wanted.contains(mark)) << mark;
        const Opening& same = *wanted.at(mark);
        EXPECT_EQ(opening->width, same.width) << mark;
        EXPECT_EQ(opening->height, same.height) << mark;
        EXPECT_EQ(opening->count, same.count) << mark;
        EXPECT_EQ(opening->kind, same.kind) << mark;
        EXPECT_EQ(opening->shape, same.shape) << mark;
        EXPECT_EQ(opening->mulls, same.mulls) << mark;
        EXPECT_EQ(opening->style, same.style) << mark;
        EXPECT_EQ(opening->hand, same.hand) << mark;
        EXPECT_EQ(opening->lockset, same.lockset) << mark;
        EXPECT_EQ(opening->deadbolt, same.deadbolt) << mark;
        EXPECT_TRUE(opening->room) << mark;
    }
    std::map<std::string, const Room*> roomOf;
    for (const auto& [id, room] : m_book.sheet(whole).of<Room>()) {
        if (!room.variant)
            roomOf[room.mark] = &room;
    }
    EXPECT_EQ(roomOf.size(), rooms.rows.size());
    for (const auto& [id, room] : m_book.sheet(plan).of<Room>()) {
        EXPECT_EQ(room.name, roomOf.at(room.mark)->name);
        EXPECT_EQ(room.walls, roomOf.at(room.mark)->walls) << room.name;
        EXPECT_EQ(withoutBase(room), withoutBase(*roomOf.at(room.mark))) << room.name;
        EXPECT_EQ(room.shoeChoice, roomOf.at(room.mark)->shoeChoice) << room.name;
        EXPECT_EQ(room.use, roomOf.at(room.mark)->use) << room.name;
    }
}

INSTANTIATE_TEST_SUITE_P(All, SampleJob, ::testing::Values("wren", "larkspur", "ravine"),
    [](const auto& job) { return std::string(job.param); });

TEST(SampleJobs, ThePackListsAreRead) {
    const auto pieces = readPieces(fileText("pack/pieces.csv"));
    ASSERT_TRUE(pieces.ok()) << pieces.error().sentence;
    const auto sticks = readSticks(fileText("pack/sticks.csv"));
    ASSERT_TRUE(sticks.ok()) << sticks.error().sentence;
    EXPECT_EQ(pieces->size(), 8U);
    EXPECT_EQ(sticks->size(), 7U);
}

TEST(FileBytes, SayWhatCannotBeRead) {
    EXPECT_EQ(readFileBytes("/nowhere/at/all.csv").error().fault, Fault::storage);
    EXPECT_THAT(
        readFileBytes("/nowhere/at/all.csv").error().sentence, HasSubstr("/nowhere/at/all.csv"));
    EXPECT_THAT(readFileBytes("/").error().sentence, HasSubstr("is a folder"));
    EXPECT_EQ(fileName("/a/b/windows.csv"), "windows.csv");
}

} // namespace

} // namespace miterbook
