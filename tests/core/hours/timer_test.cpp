// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/time_kit.h"

#include "hours/timer.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

Timer begun(std::string at) {
    Timer timer;
    timer.id = Id<Timer>(1);
    timer.person = lena;
    timer.house = lot12;
    timer.work = PieceOfWork::crown;
    timer.day = weekday(0);
    timer.started = std::move(at);
    return timer;
}

} // namespace

TEST(Moment, IsSecondsSince1970) {
    EXPECT_EQ(parseMoment("1970-01-01T00:00:00Z").value(), 0);
    // [pub] POSIX.1-2017, rationale A.4.16, and the "billennium": 1,000,000,000 seconds.
    EXPECT_EQ(parseMoment("2001-09-09T01:46:40Z").value(), 1'000'000'000);
    for (const char* bad : {"", "2026-03-02", "2026-02-30T00:00:00Z", "2026-03-02T24:00:00Z",
             "2026-03-02T10:60:00Z", "2026-03-02T1a:00:00Z", "2026-03-02T10:00:00+"})
        EXPECT_FALSE(parseMoment(bad)) << bad;
}

TEST(Timer, RunsOnWhileNobodyLooks) {
    // As it was read from the book after a crash.
    const auto entry = timedEntry(
        begun("2026-03-02T08:00:00Z"), "2026-03-02T10:29:40Z", Id<TimeEntry>(9));
    ASSERT_TRUE(entry);
    EXPECT_EQ(entry->time, Hours::minutes(150));
    EXPECT_EQ(entry->id, Id<TimeEntry>(9));
    EXPECT_EQ(entry->date, weekday(0));
    EXPECT_EQ(entry->person, lena);
    EXPECT_EQ(entry->house, lot12);
    EXPECT_EQ(entry->work, PieceOfWork::crown);
}

TEST(Timer, AddsUpOverPauses) {
    Timer timer = paused(begun("2026-03-02T08:00:00Z"), "2026-03-02T09:00:00Z").value();
    EXPECT_FALSE(timer.running());
    EXPECT_EQ(secondsRun(timer, "2026-03-02T12:00:00Z").value(), 3600);
    EXPECT_EQ(paused(timer, "2026-03-02T12:00:00Z").value(), timer);
    timer = resumed(timer, "2026-03-02T12:00:00Z").value();
    EXPECT_EQ(secondsRun(timer, "2026-03-02T12:30:00Z").value(), 5400);
    EXPECT_EQ(resumed(timer, "2026-03-02T12:30:00Z").value(), timer);
}

TEST(Timer, CountsPastMidnightToTheDayItBegan) {
    const auto entry = timedEntry(
        begun("2026-03-02T23:00:00Z"), "2026-03-03T01:00:00Z", Id<TimeEntry>(9));
    EXPECT_EQ(entry->date, weekday(0));
    EXPECT_EQ(entry->time, Hours::whole(2));
}

TEST(Timer, ThatWasForgottenAsksHowLong) {
    const auto entry = timedEntry(
        begun("2026-03-02T08:00:00Z"), "2026-03-05T08:00:00Z", Id<TimeEntry>(9));
    ASSERT_FALSE(entry);
    EXPECT_EQ(entry.error().sentence,
        "The timer of 2026-03-02 has run for 72.0 hours; say how long the work took.");
}

TEST(Timer, IsNeverNegative) {
    EXPECT_EQ(secondsRun(begun("2026-03-02T08:00:00Z"), "2026-03-02T07:00:00Z").value(), 0);
    EXPECT_EQ(timedEntry(begun("2026-03-02T08:00:00Z"), "2026-03-02T08:00:01Z", {})->time,
        Hours::minutes(1));
    EXPECT_FALSE(secondsRun(begun("this morning"), "2026-03-02T07:00:00Z"));
}
