// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/workbook.h"
#include "store/safety/backups.h"
#include "support/billed_house.h"
#include "support/book_files.h"

#include <filesystem>
#include <fstream>

namespace miterbook {

/// A clock that a test sets; seconds go on by themselves so that no two entries share one.
class SetClock final : public Clock {
public:
    explicit SetClock(std::string_view day) { set(day); }
    void set(std::string_view day) { m_today = *parseIsoDate(day); }
    void goOn(int days) { m_today = addDays(m_today, days); }
    Date today() const override { return m_today; }
    std::string timestamp() const override {
        const int second = m_count++ % 60;
        return isoDate(m_today) + "T12:00:" + (second < 10 ? "0" : "") + std::to_string(second)
            + "Z";
    }

private:
    Date m_today;
    mutable int m_count = 0;
};

/// A folder with a book of a house with two invoices and whatever edits a test makes.
class SafeBook : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(createBook(m_path, billedHouse(), {&m_clock, {}}).ok());
        issueTwoInvoices();
    }

    void issueTwoInvoices() {
        edit([](Workbook& workbook) {
            ASSERT_TRUE(workbook.openPlan(lot7Plan).ok());
            for (const int percent : {30, 60}) {
                const auto issued = issue(workbook,
                    drawOf(
                        workbook.book(), marchDay(percent / 3), {{PieceOfWork::doors, percent}}));
                ASSERT_TRUE(issued.ok()) << issued.error().sentence;
            }
        });
    }

    /// Opens the book for writing and does something with it.
    template <class Do>
    void edit(Do work) {
        auto keeper = openBook(m_path, OpenMode::write, {&m_clock, {}});
        ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
        auto workbook = Workbook::open(**keeper);
        ASSERT_TRUE(workbook.ok()) << workbook.error().sentence;
        work(*workbook);
    }
    /// One edit: builder 10 gets a note.
    void note(const std::string& text) {
        edit([&](Workbook& workbook) {
            Builder builder = *workbook.book().prices.of<Builder>().find(harrow);
            builder.note = text;
            const auto done = workbook.perform(putEdit(workbook.book(), "Note " + text, builder));
            ASSERT_TRUE(done.ok()) << done.error().sentence;
        });
    }
    static std::string noteOf(const std::string& path) {
        auto keeper = openBook(path, OpenMode::look);
        EXPECT_TRUE(keeper.ok()) << (keeper ? "" : keeper.error().sentence);
        return keeper ? (*keeper)->load()->prices.of<Builder>().find(harrow)->note : "none";
    }
    Book whole(const std::string& path) {
        auto keeper = openBook(path, OpenMode::look);
        EXPECT_TRUE(keeper.ok()) << (keeper ? "" : keeper.error().sentence);
        return keeper ? loadWhole(**keeper).value() : Book();
    }

    BookFolder m_folder;
    std::string m_path = m_folder.book();
    SetClock m_clock{"2026-03-20"};
};

} // namespace miterbook
