// SPDX-License-Identifier: GPL-3.0-or-later
// From a started house to the papers at the saw.
#include "app/batch_run.h"

#include <QFile>
#include <QTemporaryDir>

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class BatchCut : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_EQ(runBatch({"new", m_book}).status, 0);
        ASSERT_EQ(runBatch({"bring", m_book, sampleFile("larkspur/larkspur.miterplan")}).status, 0);
        ASSERT_EQ(
            runBatch({"start", m_book, "--plan", "Larkspur 2400", "--house", "Lot 14"}).status, 0);
    }
    std::string file(const char* name) const {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }
    std::string write(const char* name, const QByteArray& text) {
        QFile out(QString::fromStdString(file(name)));
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(text);
        return file(name);
    }
    nlohmann::json paper(std::string name) {
        const BatchRun run = runBatch({"print", name, m_book, "--house", "Lot 14", "--json", "-"});
        EXPECT_EQ(run.status, 0) << run.err;
        return nlohmann::json::parse(run.out, nullptr, false);
    }

    QTemporaryDir m_folder;
    std::string m_book = m_folder.filePath(QStringLiteral("shop.miterbook")).toStdString();
};

TEST_F(BatchCut, WritesThePapersOfTheSaw) {
    for (const std::string name : {"measure", "saw-sheet", "sticks", "labels", "assembly"}) {
        const std::string pdf = file((name + ".pdf").c_str());
        const BatchRun run = runBatch({"print", name, m_book, "--house", "Lot 14", "--pdf", pdf});
        EXPECT_EQ(run.status, 0) << run.err;
        QFile in(QString::fromStdString(pdf));
        ASSERT_TRUE(in.open(QIODevice::ReadOnly));
        EXPECT_TRUE(in.readAll().startsWith("%PDF-"));
    }
    EXPECT_GT(
        paper("saw-sheet")["totals"]["pieces"], paper("saw-sheet")["totals"]["stop settings"]);
    EXPECT_EQ(paper("labels")["totals"]["labels"], paper("saw-sheet")["totals"]["pieces"]);
}

TEST_F(BatchCut, BringsBackTheMeasureSheetThatItPrints) {
    const std::string csv = file("measure.csv");
    ASSERT_EQ(runBatch({"print", "measure", m_book, "--house", "Lot 14", "--csv", csv}).status, 0);
    const BatchRun brought = runBatch({"bring", m_book, "--house", "Lot 14", "--measures", csv});
    EXPECT_EQ(brought.status, 0) << brought.err << brought.out;
    EXPECT_EQ(paper("measure")["totals"]["measured"], 0) << "nothing was filled in";
    const std::string name = paper("measure")["tables"][0]["rows"][1][1];
    const std::string filled = write("filled.csv",
        QByteArray::fromStdString("opening,width,height,diagonal up\n" + name + ",31 1/2,44,54\n"));
    ASSERT_EQ(runBatch({"bring", m_book, "--house", "Lot 14", "--measures", filled}).status, 0);
    const nlohmann::json sheet = paper("measure");
    EXPECT_EQ(sheet["totals"]["measured"], 1);
    EXPECT_EQ(sheet["tables"][0]["rows"][0][1], name) << "the file's order is the order walked";
    ASSERT_EQ(runBatch({"print", "measure", m_book, "--house", "Lot 14", "--csv", csv}).status, 0);
    ASSERT_EQ(runBatch({"bring", m_book, "--house", "Lot 14", "--measures", csv}).status, 0);
    EXPECT_EQ(paper("measure"), sheet) << "the same comes back";
}

TEST_F(BatchCut, RefusesBadMeasuresUnlessAsked) {
    const std::string csv = write("m.csv", "opening,width,height\nZ99,36,60\n");
    const BatchRun refused = runBatch({"bring", m_book, "--house", "Lot 14", "--measures", csv});
    EXPECT_EQ(refused.status, 1);
    EXPECT_NE(refused.err.find("line 2, Z99"), std::string::npos) << refused.err;
    EXPECT_EQ(
        runBatch({"bring", m_book, "--house", "Lot 14", "--measures", csv, "--good-rows"}).status,
        0);
    EXPECT_EQ(runBatch({"bring", m_book, "--measures", csv}).status, 1);
    EXPECT_EQ(runBatch({"bring", m_book, "--house", "Nowhere", "--measures", csv}).status, 1);
}

} // namespace
} // namespace miterbook
