// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch_run.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

/// A book with a sample plan in it.
class BatchWalk : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_EQ(runBatch({"new", m_book}).status, 0);
        const BatchRun brought = runBatch(
            {"bring", m_book, sampleFile("larkspur/larkspur.miterplan")});
        ASSERT_EQ(brought.status, 0) << brought.err;
    }
    nlohmann::json paper(std::string name, std::string of, std::string which) {
        const BatchRun run = runBatch({"print", name, m_book, of, which, "--json", "-"});
        EXPECT_EQ(run.status, 0) << run.err;
        return nlohmann::json::parse(run.out, nullptr, false);
    }

    QTemporaryDir m_folder;
    std::string m_book = m_folder.filePath(QStringLiteral("shop.miterbook")).toStdString();
    const std::string m_plan = "Larkspur 2400";
};

TEST_F(BatchWalk, ListsPlansWithElevationsAndOptions) {
    const BatchRun run = runBatch({"list", m_book});
    EXPECT_EQ(run.status, 0);
    EXPECT_NE(run.out.find("Brindle Fork Homes / Larkspur 2400"), std::string::npos) << run.out;
    EXPECT_NE(run.out.find("elevation: B"), std::string::npos) << run.out;
    EXPECT_NE(run.out.find("option: Crown pack"), std::string::npos) << run.out;
}

TEST_F(BatchWalk, StartsAHouseThatCostsWhatThePlanWithItsOptionsDoes) {
    const BatchRun started = runBatch({"start", m_book, "--plan", m_plan, "--house", "Lot 14",
        "--elevation", "B", "--option", "Crown pack"});
    ASSERT_EQ(started.status, 0) << started.err;
    const auto house = paper("bid", "--house", "Lot 14");
    const BatchRun run = runBatch({"print", "bid", m_book, "--plan", m_plan, "--elevation", "B",
        "--option", "Crown pack", "--json", "-"});
    const auto plan = nlohmann::json::parse(run.out, nullptr, false);
    EXPECT_GT(house["totals"].size(), 0U);
    EXPECT_EQ(house["totals"], plan["totals"]);
    EXPECT_NE(house["totals"], paper("bid", "--plan", m_plan)["totals"]);
}

TEST_F(BatchWalk, WritesEachPaperAsPdf) {
    for (const std::string name : {"bid", "takeoff", "order"}) {
        const QString pdf = m_folder.filePath(QString::fromStdString(name + ".pdf"));
        const BatchRun run = runBatch(
            {"print", name, m_book, "--plan", m_plan, "--pdf", pdf.toStdString()});
        EXPECT_EQ(run.status, 0) << run.err;
        QFile file(pdf);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    }
}

TEST_F(BatchWalk, BringsSchedulesIntoAPlanThatItBegins) {
    const BatchRun run = runBatch({"bring", m_book, "--builder", "Brindle Fork Homes", "--plan",
        "From schedules", "--rooms", sampleFile("larkspur/rooms.csv"), "--windows",
        sampleFile("larkspur/windows.csv"), "--doors", sampleFile("larkspur/doors.csv")});
    EXPECT_EQ(run.status, 0) << run.err;
    const auto takeoff = paper("takeoff", "--plan", "From schedules");
    EXPECT_EQ(takeoff["paper"], "takeoff");
    EXPECT_GT(takeoff["tables"].size(), 0U);
}

TEST_F(BatchWalk, BringsNothingOfAScheduleWithBadRowsUnlessAsked) {
    const std::string windows = sampleFile("ravine/windows.csv");
    const BatchRun refused = runBatch(
        {"bring", m_book, "--builder", "B", "--plan", "P", "--windows", windows});
    EXPECT_EQ(refused.status, 1);
    EXPECT_NE(refused.err.find("--good-rows"), std::string::npos) << refused.err;
    EXPECT_NE(refused.err.find("line "), std::string::npos) << refused.err;
    const BatchRun list = runBatch({"list", m_book});
    EXPECT_EQ(list.out.find("B / P"), std::string::npos) << "a plan was begun: " << list.out;
    const BatchRun taken = runBatch(
        {"bring", m_book, "--builder", "B", "--plan", "P", "--windows", windows, "--good-rows"});
    EXPECT_EQ(taken.status, 0) << taken.err;
    EXPECT_NE(taken.out.find("windows brought in"), std::string::npos) << taken.out;
}

TEST_F(BatchWalk, RefusesInOneSentence) {
    EXPECT_EQ(runBatch({"new", m_book}).status, 1);
    const BatchRun noPlan = runBatch({"print", "bid", m_book, "--plan", "Nowhere", "--text"});
    EXPECT_EQ(noPlan.status, 1);
    EXPECT_NE(noPlan.err.find("Larkspur 2400"), std::string::npos) << noPlan.err;
    EXPECT_EQ(runBatch({"print", "poem", m_book, "--plan", m_plan, "--text"}).status, 1);
    EXPECT_EQ(runBatch({"print", "bid", m_book, "--plan", m_plan}).status, 1);
    EXPECT_EQ(runBatch({"list", m_book, "more"}).status, 1);
    EXPECT_EQ(runBatch({"list", sampleFile("FORMAT.md")}).status, 1);
}

TEST_F(BatchWalk, EveryCommandSaysWhatItTakes) {
    for (const std::string name : {"new", "bring", "list", "start", "print", "pack"}) {
        const BatchRun help = runBatch({name, "--help"});
        EXPECT_EQ(help.status, 0);
        EXPECT_NE(help.out.find("Usage"), std::string::npos) << name;
    }
}

} // namespace
} // namespace miterbook
