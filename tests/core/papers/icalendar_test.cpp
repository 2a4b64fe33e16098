// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/icalendar.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {
namespace {

using testing::HasSubstr;
using testing::Not;

constexpr Id<House> oak{1};
constexpr Id<House> elm{2};
constexpr Id<CrewMember> marta{11};
constexpr Id<CrewMember> jon{12};

Date day(int number) {
    return std::chrono::year(2026) / 3 / number;
}

Book twoHouses() {
    Book book;
    Shop shop;
    shop.id = Id<Shop>(1);
    shop.name = "Lindqvist Trim";
    book.prices.of<Shop>().put(shop);
    for (const auto& [id, name] : {std::pair(oak, "Lot 7"), std::pair(elm, "Lot 9; Elm, \"B\"")}) {
        House house;
        house.id = id;
        house.name = name;
        house.address = "12 Alder Lane\nRidge";
        book.jobs.of<House>().put(house);
    }
    book.prices.of<CrewMember>().put({marta, "Marta", {}, true});
    book.prices.of<CrewMember>().put({jon, "Jon", {}, true});
    return book;
}

HouseDate dateAt(int id, Id<House> house, int from, int to, std::vector<Id<CrewMember>> crew) {
    return {Id<HouseDate>(id), house, HouseDateKind::firstTrip, day(from),
        to == 0 ? noDate : day(to), std::move(crew), {}};
}

/// Content lines, unfolded as RFC 5545, 3.1 says: a line break and the one space behind it go.
std::string unfolded(std::string text) {
    for (std::size_t at = text.find("\r\n "); at != std::string::npos; at = text.find("\r\n ", at))
        text.erase(at, 3);
    return text;
}

// [pub] RFC 5545, 3.3.11: backslash, semicolon and comma are escaped by a backslash, a line break
// is \n; its own example of a description.
TEST(Calendar, EscapesText) {
    EXPECT_EQ(calendarText("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."),
        "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
    EXPECT_EQ(calendarText("a;b,c\\d:e\"f"), "a\\;b\\,c\\\\d:e\"f");
    EXPECT_EQ(calendarText("a\r\nb\tc\x01"), "a\\nb c");
}

// [pub] RFC 5545, 3.1: lines are no longer than 75 octets, excluding the line break.
TEST(Calendar, FoldsLinesAtSeventyFiveOctets) {
    EXPECT_EQ(calendarLine("SUMMARY:short"), "SUMMARY:short\r\n");
    const std::string exact(75, 'x');
    EXPECT_EQ(calendarLine(exact), exact + "\r\n");
    EXPECT_EQ(calendarLine(exact + "yz"), exact + "\r\n yz\r\n");
    for (std::size_t size = 0; size < 400; ++size) {
        std::string line;
        while (line.size() < size)
            line += size % 3 == 0 ? "½" : size % 3 == 1 ? "木a" : "🪚";
        const std::string folded = calendarLine(line);
        EXPECT_EQ(unfolded(folded), line + "\r\n");
        for (std::size_t from = 0; from < folded.size();) {
            const std::size_t to = folded.find("\r\n", from);
            EXPECT_LE(to - from, 75U) << "of " << size;
            if (to + 2 < folded.size()) {
                EXPECT_NE(static_cast<unsigned char>(folded[to + 3]) & 0xC0U, 0x80U)
                    << "a character is parted, of " << size;
            }
            from = to + 2;
        }
    }
}

TEST(Calendar, OfAHousesDates) {
    const Book book = twoHouses();
    const auto calendar = calendarOf(
        book, {dateAt(5, elm, 4, 6, {marta, jon})}, "2026-02-01T08:00:00Z");
    ASSERT_TRUE(calendar);
    const std::string text = unfolded(*calendar);
    EXPECT_THAT(text, testing::StartsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:"));
    EXPECT_THAT(text, testing::EndsWith("END:VEVENT\r\nEND:VCALENDAR\r\n"));
    EXPECT_THAT(text, HasSubstr("DTSTAMP:20260201T080000Z\r\n"));
    EXPECT_THAT(text, HasSubstr("DTSTART;VALUE=DATE:20260304\r\nDTEND;VALUE=DATE:20260307\r\n"));
    EXPECT_THAT(text, HasSubstr("SUMMARY:Lot 9\\; Elm\\, \"B\": first trip\r\n"));
    EXPECT_THAT(text, HasSubstr("LOCATION:12 Alder Lane\\, Ridge\r\n"));
    EXPECT_THAT(text, HasSubstr("DESCRIPTION:Crew: Marta\\, Jon\r\n"));
    std::string bare = *calendar;
    for (std::size_t at = bare.find("\r\n"); at != std::string::npos; at = bare.find("\r\n", at))
        bare.erase(at, 2);
    EXPECT_EQ(bare.find_first_of("\r\n"), std::string::npos) << "every break is CR LF";
}

TEST(Calendar, OfOneDayEndsTheNext) {
    const auto calendar = calendarOf(
        twoHouses(), {dateAt(5, oak, 31, 0, {})}, "2026-02-01T08:00:00Z");
    EXPECT_THAT(*calendar, HasSubstr("DTEND;VALUE=DATE:20260401"));
    EXPECT_THAT(*calendar, Not(HasSubstr("DESCRIPTION")));
}

TEST(Calendar, KeepsTheIdentityOfADate) {
    const Book book = twoHouses();
    const auto uid = [&](const HouseDate& date) {
        const std::string text = unfolded(*calendarOf(book, {date}, "2026-02-01T08:00:00Z"));
        const std::size_t at = text.find("UID:");
        return text.substr(at, text.find("\r\n", at) - at);
    };
    EXPECT_EQ(uid(dateAt(5, oak, 4, 6, {})), uid(dateAt(5, elm, 9, 9, {jon})));
    EXPECT_NE(uid(dateAt(5, oak, 4, 6, {})), uid(dateAt(6, oak, 4, 6, {})));
}

TEST(Calendar, OfNothingIsRefused) {
    EXPECT_FALSE(calendarOf(twoHouses(), {}, "2026-02-01T08:00:00Z"));
}

TEST(Clashes, AreOfOnePersonAtTwoHouses) {
    Book book = twoHouses();
    book.jobs.of<HouseDate>().put(dateAt(5, oak, 4, 6, {marta, jon}));
    book.jobs.of<HouseDate>().put(dateAt(6, elm, 6, 9, {marta}));
    book.jobs.of<HouseDate>().put(dateAt(7, elm, 5, 0, {}));
    book.jobs.of<HouseDate>().put(dateAt(8, oak, 6, 7, {marta}));
    book.jobs.of<HouseDate>().put(dateAt(9, elm, 20, 25, {jon}));
    book.jobs.of<HouseDate>().put(dateAt(10, oak, 21, 22, {jon}));
    const auto found = clashes(book);
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0], (DateClash{Id<HouseDate>(5), Id<HouseDate>(6), marta, day(6), day(6)}));
    EXPECT_EQ(found[1].to, day(7));
    EXPECT_EQ(clashSentence(book, found[2]),
        "Jon is to be at Lot 9; Elm, \"B\" (first trip) and at Lot 7 (first trip) from 2026-03-21 "
        "to 2026-03-22.");
}

} // namespace
} // namespace miterbook
