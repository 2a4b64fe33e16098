// SPDX-License-Identifier: GPL-3.0-or-later
// Hours from a file, an invented year, and the papers that are made of them.
#include "app/batch_run.h"

#include <QFile>
#include <QTemporaryDir>

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class BatchHours : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_EQ(runBatch({"new", m_book}).status, 0);
        for (const char* plan :
            {"larkspur/larkspur.miterplan", "wren/wren.miterplan", "ravine/ravine.miterplan"})
            ASSERT_EQ(runBatch({"bring", m_book, sampleFile(plan)}).status, 0);
    }
    std::string write(const char* name, const QByteArray& text) {
        const QString path = m_folder.filePath(QString::fromLatin1(name));
        QFile out(path);
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(text);
        return path.toStdString();
    }
    nlohmann::json paper(std::vector<std::string> arguments) {
        arguments.insert(arguments.end(), {"--json", "-"});
        const BatchRun run = runBatch(arguments);
        EXPECT_EQ(run.status, 0) << run.err;
        return nlohmann::json::parse(run.out, nullptr, false);
    }
    BatchRun sample(const std::string& book) {
        return runBatch({"sample", book, "--date", "2026-11-25"});
    }

    QTemporaryDir m_folder;
    std::string m_book = m_folder.filePath(QStringLiteral("shop.miterbook")).toStdString();
};

TEST_F(BatchHours, ASuppliersPricesComeInWholeOrNotAtAll) {
    const std::string good = write(
        "prices.csv", "Profile,Price,Per\n\"WM 445 casing\",1.75,ft\n\"Nobody's profile\",1,ft\n");
    const BatchRun refused = runBatch({"bring", m_book, "--prices", good, "--from", "2026-05-01"});
    EXPECT_EQ(refused.status, 1);
    EXPECT_NE(refused.err.find("line 3, Profile: The book has no profile \"Nobody's profile\"."),
        std::string::npos)
        << refused.err;
    const BatchRun undated = runBatch({"bring", m_book, "--prices", good, "--from", "May"});
    EXPECT_NE(undated.err.find("May"), std::string::npos) << undated.err;
    const BatchRun bundle = runBatch({"bring", m_book, "--prices", good, "--per", "bundle"});
    EXPECT_NE(bundle.err.find("stick, foot, 100 ft and metre"), std::string::npos) << bundle.err;
}

TEST_F(BatchHours, AFileWithABadRowIsRefusedWholeUnlessGoodRowsAreAskedFor) {
    ASSERT_EQ(
        runBatch({"start", m_book, "--plan", "Larkspur 2400", "--house", "Lot 14"}).status, 0);
    const std::string csv = write("week.csv",
        "Date,Who,House,What,Hours,Units done,Note\n"
        "2026-01-05,Del Harnsworth,Lot 14,doors,6,5,\n"
        "2026-01-05,Ina Pruett,Lot 14,doors,31,5,\n"
        "2026-01-06,Ina Pruett,Lot 14,base,4,200,upper floor\n");
    const BatchRun refused = runBatch({"bring", m_book, "--hours", csv});
    EXPECT_EQ(refused.status, 1);
    EXPECT_NE(refused.err.find("week.csv, line 3, Hours"), std::string::npos) << refused.err;
    const BatchRun good = runBatch({"bring", m_book, "--hours", csv, "--good-rows"});
    EXPECT_EQ(good.status, 0) << good.err;
    EXPECT_NE(good.out.find("2 entries of hours brought in"), std::string::npos) << good.out;
    const BatchRun again = runBatch({"bring", m_book, "--hours", csv, "--good-rows"});
    EXPECT_NE(again.out.find("2 entries are in the book already"), std::string::npos) << again.out;
    const auto sheet = paper({"print", "time-sheet", m_book, "--date", "2026-01-07"});
    EXPECT_EQ(sheet["totals"]["hours"], 10) << sheet.dump();
    const auto pay = paper({"print", "pay-sheet", m_book, "--date", "2026-01-07"});
    EXPECT_GT(pay["totals"]["pay"], 0);
}

TEST_F(BatchHours, ASampleYearHasSomethingTrueToShow) {
    const BatchRun run = sample(m_book);
    ASSERT_EQ(run.status, 0) << run.err;
    const auto compared = paper({"print", "plan-comparison", m_book});
    EXPECT_EQ(compared["totals"]["houses"], 14);
    const auto house = paper({"print", "house-review", m_book, "--house", "Lot 101"});
    EXPECT_NE(house["totals"]["profit"], 0);
    const auto week = paper({"print", "time-sheet", m_book, "--date", "2026-11-24"});
    EXPECT_GT(week["totals"]["hours"], 0) << "two houses are underway";
}

TEST_F(BatchHours, TheSameSampleIsMadeTwice) {
    const std::string other = m_folder.filePath(QStringLiteral("other.miterbook")).toStdString();
    ASSERT_TRUE(QFile::copy(QString::fromStdString(m_book), QString::fromStdString(other)));
    ASSERT_EQ(sample(m_book).status, 0);
    ASSERT_EQ(sample(other).status, 0);
    for (const std::string name : {"Lot 101", "Lot 108"}) {
        const auto first = paper({"print", "house-review", m_book, "--house", name});
        EXPECT_EQ(first, paper({"print", "house-review", other, "--house", name}));
    }
}

TEST_F(BatchHours, APaperOfTheShopIsOfNoHouse) {
    const BatchRun run = runBatch({"print", "time-sheet", m_book, "--house", "Lot 14", "--text"});
    EXPECT_EQ(run.status, 1);
    EXPECT_NE(run.err.find("of the whole shop"), std::string::npos) << run.err;
}

TEST_F(BatchHours, ASampleYearNeedsAPlan) {
    const std::string bare = m_folder.filePath(QStringLiteral("bare.miterbook")).toStdString();
    ASSERT_EQ(runBatch({"new", bare}).status, 0);
    const BatchRun run = sample(bare);
    EXPECT_EQ(run.status, 1);
    EXPECT_NE(run.err.find("needs a plan"), std::string::npos) << run.err;
}

} // namespace
} // namespace miterbook
