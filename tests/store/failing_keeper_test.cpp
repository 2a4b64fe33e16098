// SPDX-License-Identifier: GPL-3.0-or-later
// A keeper that fails at the n-th statement leaves memory and file as they were, for every n.
#include "job/start_house.h"
#include "job/workbook.h"
#include "support/book_files.h"

#include <optional>

namespace miterbook {
namespace {

/// Lets `left` statements through, then none; fewer than 0: all.
struct Budget {
    int left = -1;
    bool operator()(std::string_view) {
        if (left < 0)
            return true;
        return left-- > 0;
    }
};

class FailingKeeper : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(createBook(m_folder.book(), smallBook()).ok());
        const StoreOptions options{nullptr, [this](std::string_view sql) { return m_budget(sql); }};
        auto opened = openBook(m_folder.book(), OpenMode::write, options);
        ASSERT_TRUE(opened.ok()) << opened.error().sentence;
        m_keeper = std::move(opened).value();
        auto workbook = Workbook::open(*m_keeper);
        ASSERT_TRUE(workbook.ok());
        m_workbook.emplace(std::move(workbook).value());
        ASSERT_TRUE(m_workbook->openPlan(Id<Plan>(31)).ok());
    }

    /// Fails the edit at statement 1, 2, ... until it is done; value: how many failed.
    int failUntilDone(const Edit& edit) {
        const Book memory = m_workbook->book();
        const std::string file = bytesOf(m_folder.book());
        for (int n = 0;; ++n) {
            m_budget.left = n;
            const auto done = m_workbook->perform(edit);
            m_budget.left = -1;
            if (done)
                return n;
            EXPECT_EQ(done.error().fault, Fault::storage) << done.error().sentence;
            EXPECT_EQ(m_workbook->book(), memory) << "at statement " << n;
            EXPECT_EQ(bytesOf(m_folder.book()), file) << "at statement " << n;
        }
    }

    BookFolder m_folder;
    Budget m_budget;
    std::unique_ptr<BookKeeper> m_keeper;
    std::optional<Workbook> m_workbook;
};

TEST_F(FailingKeeper, StartingAHouse) {
    const HouseStart start{Id<Plan>(31), {{}, {Id<Variant>(40)}}, "Lot 3", "3", "", noDate};
    const auto edit = startHouse(m_workbook->book(), m_workbook->ids(), start);
    ASSERT_TRUE(edit.ok()) << edit.error().sentence;
    // House, work plan, level, room and one opening, ties of the last four; and begin, journal,
    // last id, commit.
    EXPECT_EQ(failUntilDone(*edit), 13);
    EXPECT_EQ(*loadWhole(*m_keeper), m_workbook->book());
}

TEST_F(FailingKeeper, RemovingAPlan) {
    const Edit edit = removePlan(m_workbook->book(), Id<Plan>(31));
    // Each of 7 rows is looked at before it goes; and begin, journal, last id, commit.
    EXPECT_EQ(failUntilDone(edit), 18);
    EXPECT_EQ(*loadWhole(*m_keeper), m_workbook->book());
}

TEST_F(FailingKeeper, CreatingABookLeavesNoFile) {
    const std::string path = m_folder.file("new.miterbook");
    for (int n = 0;; ++n) {
        Budget budget{n};
        const StoreOptions options{nullptr, [&](std::string_view sql) { return budget(sql); }};
        const auto made = createBook(path, smallBook(), options);
        if (made) {
            EXPECT_GT(n, 100);
            break;
        }
        // Once the file has its name it is whole, whatever fails afterwards.
        if (!bytesOf(path).empty()) {
            auto opened = openBook(path, OpenMode::look);
            ASSERT_TRUE(opened.ok()) << opened.error().sentence;
            EXPECT_EQ(*loadWhole(**opened), smallBook());
            break;
        }
        EXPECT_TRUE(bytesOf(path + ".part").empty());
    }
}

} // namespace
} // namespace miterbook
