// SPDX-License-Identifier: GPL-3.0-or-later
// Time entries are read when they are asked for; what they add up to is known from the start.
#include "job/any_row.h"
#include "job/workbook.h"
#include "support/book_files.h"

namespace miterbook {
namespace {

constexpr Id<CrewMember> omar{900};
constexpr Id<House> lot12{901};

Date day(int n) {
    return addDays(Date{std::chrono::year(2026), std::chrono::month(3), std::chrono::day(2)}, n);
}

TimeEntry entry(std::int64_t id, int n, Id<House> house, TimeKind kind = TimeKind::work) {
    TimeEntry made;
    made.id = Id<TimeEntry>(id);
    made.date = day(n);
    made.person = omar;
    made.house = house;
    made.kind = kind;
    made.time = Hours::minutes(90);
    made.done = Quantity::count(2);
    return made;
}

class TimeInTheFile : public testing::Test {
protected:
    void SetUp() override {
        Book book = smallBook();
        CrewMember person;
        person.id = omar;
        person.name = "Omar Quist";
        book.prices.of<CrewMember>().put(person);
        Plan work;
        work.id = Id<Plan>(902);
        work.name = "Aspen";
        work.house = lot12;
        book.jobs.of<Plan>().put(work);
        House house;
        house.id = lot12;
        house.plan = Id<Plan>(31);
        house.work = work.id;
        house.name = "Lot 12";
        book.jobs.of<House>().put(house);
        for (const TimeEntry& each : {entry(910, 0, lot12), entry(911, 1, lot12),
                 entry(912, 9, lot12), entry(913, 1, {}), entry(914, 9, lot12, TimeKind::callback),
                 entry(915, 10, lot12, TimeKind::callback)})
            book.time.change(nullptr, &each);
        m_whole = book;
        auto keeper = createBook(m_folder.book(), book);
        ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
        m_keeper = std::move(*keeper);
    }
    Workbook open() {
        auto workbook = Workbook::open(*m_keeper);
        EXPECT_TRUE(workbook.ok());
        return std::move(*workbook);
    }
    BookFolder m_folder;
    Book m_whole;
    std::unique_ptr<BookKeeper> m_keeper;
};

TEST_F(TimeInTheFile, SumsAreThereAndEntriesAreNot) {
    const Workbook workbook = open();
    EXPECT_TRUE(workbook.book().time.read().empty());
    EXPECT_EQ(workbook.book().time.of(lot12), m_whole.time.of(lot12));
    EXPECT_EQ(workbook.book().time.of({}), m_whole.time.of({}));
}

TEST_F(TimeInTheFile, DaysBringEveryHouse) {
    Workbook workbook = open();
    ASSERT_TRUE(workbook.openDays(day(0), day(6)).ok());
    EXPECT_EQ(workbook.book().time.read().size(), 3U);
    EXPECT_EQ(workbook.book().time.of(lot12), m_whole.time.of(lot12));
}

TEST_F(TimeInTheFile, AHouseBringsItsOwn) {
    Workbook workbook = open();
    ASSERT_TRUE(workbook.openPlan(Id<Plan>(902)).ok());
    EXPECT_EQ(workbook.book().time.read().size(), 5U);
}

TEST_F(TimeInTheFile, AChangeIsInMemoryAndFileAlike) {
    Workbook workbook = open();
    ASSERT_TRUE(workbook.openDays(day(0), day(6)).ok());
    TimeEntry longer = entry(911, 1, lot12);
    longer.time = Hours::whole(4);
    ASSERT_TRUE(workbook.perform(putEdit(workbook.book(), "Revise", longer)).ok());
    EXPECT_EQ(m_keeper->load()->time.of(lot12), workbook.book().time.of(lot12));
}

} // namespace
} // namespace miterbook
