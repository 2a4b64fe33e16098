// SPDX-License-Identifier: GPL-3.0-or-later
// Books of every format there has been: opened, backed up, brought up, salvaged.
#include "store/safety/book_check.h"
#include "store/safety/brought_up.h"
#include "store/safety/old_book.h"
#include "store/safety/safety_kit.h"
#include "store/safety/salvage.h"
#include "support/billed_house.h"

namespace miterbook {
namespace {

class OldFormat : public testing::TestWithParam<int> {
protected:
    void SetUp() override { writeOldBook(m_folder.book(), GetParam()); }
    BookFolder m_folder;
    SetClock m_clock{"2026-03-20"};
};

/// The number of a format that is not the present one.
std::vector<int> olderFormats() {
    std::vector<int> formats;
    for (int format = 1; format < formatOf(schemaSteps()); ++format)
        formats.push_back(format);
    return formats;
}

TEST_P(OldFormat, IsBackedUpThenBroughtUpWithAllItHolds) {
    {
        auto keeper = openBook(m_folder.book(), OpenMode::write, {&m_clock, {}});
        ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
        EXPECT_EQ(*loadWhole(**keeper), smallBook());
        EXPECT_TRUE((*keeper)->verify().ok());
    }
    const auto report = checkBook(m_folder.book());
    ASSERT_TRUE(report.ok());
    EXPECT_TRUE(report->sound()) << report->findings.front();
    const auto backups = backupsOf(m_folder.book());
    ASSERT_EQ(backups.size(), 1U);
    EXPECT_EQ(backups.front().reason, BackupReason::olderFormat);
    EXPECT_EQ(readSummary(backups.front().path)->format, GetParam());
}

TEST_P(OldFormat, ForLookingItIsLeftAsItIs) {
    const std::string before = bytesOf(m_folder.book());
    const auto keeper = openBook(m_folder.book(), OpenMode::look);
    ASSERT_FALSE(keeper.ok());
    EXPECT_NE(keeper.error().sentence.find("older format"), std::string::npos);
    EXPECT_EQ(bytesOf(m_folder.book()), before);
    EXPECT_EQ(readSummary(m_folder.book())->plans, 1);
}

TEST_P(OldFormat, IsSalvagedIntoThePresentOne) {
    const std::string saved = m_folder.file("new.miterbook");
    const auto report = salvageBook(m_folder.book(), saved, m_clock);
    ASSERT_TRUE(report.ok()) << report.error().sentence;
    EXPECT_TRUE(report->complete()) << report->lost.front();
    auto keeper = openBook(saved, OpenMode::look);
    ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
    EXPECT_EQ(*loadWhole(**keeper), smallBook());
}

INSTANTIATE_TEST_SUITE_P(Each, OldFormat, testing::ValuesIn(olderFormats()));

/// A billed house with an extra of two lines, as format 8 kept it.
class ExtrasOfFormat8 : public testing::Test {
protected:
    void SetUp() override {
        Book book = billedHouse();
        for (const int dollars : {96, 41}) {
            ExtraLine line;
            line.id = Id<ExtraLine>(800 + dollars);
            line.plan = lot7Plan;
            line.extra = windowSeat;
            line.quantity = Quantity::count(2);
            line.material = Money::dollars(dollars);
            book.sheets[lot7Plan].of<ExtraLine>().put(line);
        }
        writeOldBook(m_folder.book(), 8, book);
    }
    Money materialIn(const std::string& path) {
        auto keeper = openBook(path, OpenMode::write, {&m_clock, {}});
        EXPECT_TRUE(keeper.ok());
        const auto book = (*keeper)->load();
        const Extra* extra = book->jobs.of<Extra>().find(windowSeat);
        return extra ? extra->material : Money();
    }
    BookFolder m_folder;
    SetClock m_clock{"2026-03-20"};
};

TEST_F(ExtrasOfFormat8, GetTheMaterialOfTheirLinesAndStaySound) {
    EXPECT_EQ(materialIn(m_folder.book()), Money::dollars(137));
    const auto report = checkBook(m_folder.book());
    ASSERT_TRUE(report.ok());
    EXPECT_TRUE(report->sound()) << report->findings.front();
}

TEST_F(ExtrasOfFormat8, AreSalvagedWithoutAWord) {
    const std::string saved = m_folder.file("new.miterbook");
    const auto report = salvageBook(m_folder.book(), saved, m_clock);
    ASSERT_TRUE(report.ok()) << report.error().sentence;
    EXPECT_TRUE(report->complete()) << report->lost.front();
    EXPECT_EQ(materialIn(saved), Money::dollars(137));
}

TEST(AsJournalled, ForgivesOnlyTheMaterialThatAStepReckoned) {
    const Extra before = *billedHouse().jobs.of<Extra>().find(windowSeat);
    Extra after = before;
    EXPECT_TRUE(isAsJournalled(before, after));
    after.material = Money::dollars(137);
    EXPECT_TRUE(isAsJournalled(before, after));
    EXPECT_FALSE(isAsJournalled(after, before)) << "what a change said is not lost";
    after.price = Money::dollars(481);
    EXPECT_FALSE(isAsJournalled(before, after));
    EXPECT_FALSE(isAsJournalled(before, *billedHouse().house(lot7)));
}

TEST(NewerFormat, IsRefusedAndItsBytesStay) {
    BookFolder folder;
    std::vector<SchemaStep> steps = schemaSteps();
    steps.push_back({formatOf(steps) + 1, "CREATE TABLE later (id INTEGER PRIMARY KEY) STRICT;\n"});
    ASSERT_TRUE(createBook(folder.book(), smallBook()).ok());
    ASSERT_TRUE(openBookWith(steps, folder.book(), OpenMode::write).ok());
    const std::string before = bytesOf(folder.book());
    for (const OpenMode mode : {OpenMode::write, OpenMode::look}) {
        const auto opened = openBook(folder.book(), mode);
        ASSERT_FALSE(opened.ok());
        EXPECT_EQ(opened.error().fault, Fault::notOurs);
    }
    EXPECT_FALSE(checkBook(folder.book()).ok());
    EXPECT_FALSE(readSummary(folder.book()).ok());
    EXPECT_EQ(bytesOf(folder.book()), before);
}

} // namespace
} // namespace miterbook
