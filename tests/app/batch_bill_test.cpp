// SPDX-License-Identifier: GPL-3.0-or-later
// Papers about money and journal lines without a window.
#include "app/batch_run.h"
#include "papers/send_bid.h"
#include "store/book_file.h"
#include "support/billed_house.h"

#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

/// A book with one invoice issued on Lot 7.
class BatchBill : public testing::Test {
protected:
    void SetUp() override {
        auto keeper = createBook(m_book, billedHouse());
        ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
        auto workbook = Workbook::open(**keeper);
        ASSERT_TRUE(workbook.ok() && workbook->openPlan(lot7Plan));
        const auto issued = issue(
            *workbook, drawOf(workbook->book(), marchDay(10), {{PieceOfWork::doors, 50}}, true));
        ASSERT_TRUE(issued.ok()) << issued.error().sentence;
    }
    void expectRefused(const BatchRun& run, const std::string& part) {
        EXPECT_EQ(run.status, 1);
        EXPECT_NE(run.err.find(part), std::string::npos) << run.err;
    }

    QTemporaryDir m_folder;
    std::string m_book = m_folder.filePath(QStringLiteral("shop.miterbook")).toStdString();
};

TEST_F(BatchBill, PrintsAnInvoiceByItsNumber) {
    const BatchRun run = runBatch({"print", "invoice", m_book, "--number", "1", "--text"});
    ASSERT_EQ(run.status, 0) << run.err;
    EXPECT_NE(run.out.find("Invoice 0001"), std::string::npos) << run.out;
    EXPECT_NE(run.out.find("Window seat in the bay"), std::string::npos) << run.out;
    const std::string pdf = m_folder.filePath(QStringLiteral("1.pdf")).toStdString();
    ASSERT_EQ(runBatch({"print", "invoice", m_book, "--number", "1", "--pdf", pdf}).status, 0);
    EXPECT_GT(QFileInfo(QString::fromStdString(pdf)).size(), 1000);
    expectRefused(runBatch({"print", "invoice", m_book, "--number", "2", "--text"}), "number 2");
    expectRefused(runBatch({"print", "invoice", m_book, "--text"}), "--number");
}

TEST_F(BatchBill, PrintsABidAsItWasSent) {
    const Id<Plan> aspen(31);
    {
        auto keeper = openBook(m_book, OpenMode::write);
        auto workbook = Workbook::open(**keeper);
        ASSERT_TRUE(workbook.ok() && workbook->openPlan(aspen));
        for (const int day : {1, 2}) {
            const PaperJob job{workbook->book(), aspen, {}, {}, marchDay(day)};
            const auto edit = sendBid(
                job, figuresFor(workbook->book(), aspen, {}, Effort::quick), workbook->ids());
            ASSERT_TRUE(edit.ok()) << edit.error().sentence;
            ASSERT_TRUE(workbook->perform(*edit));
        }
    }
    const BatchRun last = runBatch({"print", "sent-bid", m_book, "--number", "1", "--text"});
    EXPECT_NE(last.out.find("Bid 1, revision 2"), std::string::npos) << last.out << last.err;
    const BatchRun first = runBatch(
        {"print", "sent-bid", m_book, "--number", "1", "--revision", "1", "--text"});
    EXPECT_EQ(first.out.find("revision"), std::string::npos) << first.out;
    EXPECT_NE(first.out.find("3/1/2026"), std::string::npos) << first.out;
    expectRefused(
        runBatch({"print", "sent-bid", m_book, "--number", "1", "--revision", "3", "--text"}),
        "No bid of the number 1 and revision 3 was sent.");
    expectRefused(runBatch({"print", "sent-bid", m_book, "--text"}), "--number");
}

TEST_F(BatchBill, PrintsExtraAndStatement) {
    const BatchRun extra = runBatch({"print", "extra", m_book, "--house", "Lot 7", "--extra",
        "Window seat in the bay", "--text"});
    EXPECT_EQ(extra.status, 0) << extra.err;
    EXPECT_NE(extra.out.find("Approved by"), std::string::npos) << extra.out;
    expectRefused(
        runBatch({"print", "extra", m_book, "--house", "Lot 7", "--extra", "none", "--text"}),
        "it has \"Window seat in the bay\"");
    const BatchRun statement = runBatch({"print", "statement", m_book, "--builder", "Harrow Homes",
        "--from", "2026-03-01", "--date", "2026-03-31", "--text"});
    EXPECT_EQ(statement.status, 0) << statement.err;
    EXPECT_NE(statement.out.find("Invoice 0001"), std::string::npos) << statement.out;
    expectRefused(
        runBatch({"print", "statement", m_book, "--builder", "Nobody", "--text"}), "there are");
}

TEST_F(BatchBill, WritesJournalLines) {
    const BatchRun run = runBatch(
        {"journal", m_book, "--from", "2026-03-01", "--to", "2026-03-31"});
    EXPECT_EQ(run.status, 0) << run.err;
    EXPECT_NE(run.out.find("2026-03-10,Invoice 0001,Accounts receivable,"), std::string::npos)
        << run.out;
    expectRefused(runBatch({"journal", m_book, "--from", "March"}), "March");
}

} // namespace
} // namespace miterbook
