// SPDX-License-Identifier: GPL-3.0-or-later
// Papers about money, as approved; and what they must never show.
#include "papers/bill_papers.h"
#include "papers/freeze.h"
#include "papers/ledger_csv.h"
#include "papers/write_paper.h"
#include "support/approved_text.h"
#include "support/billed_house.h"
#include "support/memory_keeper.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {
namespace {

using testing::HasSubstr;
using testing::Not;

/// Lot 7 with two draws, a deposit, a credit note, a void, retainage released and a payment.
class BillPapers : public testing::Test {
protected:
    BillPapers()
        : m_keeper(lettered())
        , m_workbook(Workbook::open(m_keeper).value()) {}
    void SetUp() override {
        ASSERT_TRUE(m_workbook.openPlan(lot7Plan));
        const Backcharge scratched = *book().jobs.of<Backcharge>().find(scratchedDoor);
        ASSERT_TRUE(issue(m_workbook, makeDeposit(billing(), marchDay(2), Money::dollars(1000))));
        ASSERT_TRUE(issue(m_workbook,
            drawOf(book(), marchDay(10), {{PieceOfWork::doors, 50}, {PieceOfWork::base, 20}})));
        ASSERT_TRUE(issue(m_workbook,
            drawOf(book(), marchDay(24), {{PieceOfWork::doors, 100}, {PieceOfWork::windows, 40}},
                true, {scratched})));
        creditDoors();
        ASSERT_TRUE(issue(m_workbook, makeRelease(billing(), marchDay(30), Money::dollars(100))));
        ASSERT_TRUE(perform(voidInvoice(book(), m_workbook.ids(), invoiceNumbered(book(), 5),
            marchDay(31), "asked for too early")));
        ASSERT_TRUE(perform(recordPayment(
            book(), m_workbook.ids(), {{}, harrow, marchDay(28), Money::dollars(2500), "1077"})));
    }

    static Book lettered() {
        Book book = billedHouse();
        Shop shop = book.prices.shop();
        shop.address = "4 Mill Road\nRidge";
        shop.phone = "555 0134";
        book.prices.of<Shop>().put(shop);
        Builder builder = *book.prices.of<Builder>().find(harrow);
        builder.contact = "R. Haas";
        builder.address = "80 Harrow Way\nRidge";
        book.prices.of<Builder>().put(builder);
        BillingSetup setup = book.billing();
        setup.prefix = "T-";
        setup.lateNote = "Please let us know when we can expect it.";
        book.jobs.of<BillingSetup>().put(setup);
        Terms terms;
        terms.id = Id<Terms>(1);
        terms.paymentTerms = "Net 30 days.";
        book.prices.of<Terms>().put(terms);
        return book;
    }
    void creditDoors() {
        const auto draw = findBill(book(), invoiceNumbered(book(), 3));
        ASSERT_TRUE(issue(m_workbook,
            makeCredit(*draw, billsOf(book(), lot7),
                {{draw->lines.front().id, Money::dollars(250)}}, marchDay(26),
                "Two doors were left out")));
    }
    Result<void> perform(const Result<Edit>& edit) {
        return edit ? m_workbook.perform(*edit) : Result<void>(edit.error());
    }
    const Book& book() const { return m_workbook.book(); }
    Billing billing() const { return billingOf(book(), lot7).value(); }
    Paper issued(int number) const {
        const Invoice* invoice = book().jobs.of<Invoice>().find(invoiceNumbered(book(), number));
        return paperAsIssued(
            *book().sheet(lot7Plan).of<IssuedPaper>().find(invoice->paper), book().prices)
            .value();
    }

    MemoryKeeper m_keeper;
    Workbook m_workbook;
};

TEST_F(BillPapers, Invoices) {
    expectApproved(paperText(issued(1)), "deposit.txt");
    expectApproved(paperText(issued(3)), "invoice.txt");
    expectApproved(paperCsv(issued(3)), "invoice.csv");
    expectApproved(paperJson(issued(3)), "invoice.json");
    expectApproved(paperText(issued(4)), "credit-note.txt");
    expectApproved(paperText(issued(5)), "retainage.txt");
}

TEST_F(BillPapers, Statement) {
    expectApproved(
        paperText(statementPaper(book(), harrow, marchDay(1), marchDay(31))), "statement.txt");
    // Thirty days and the seven of the setup later the first draw is late.
    const Paper late = statementPaper(book(), harrow, marchDay(20), marchDay(70));
    expectApproved(paperText(late), "statement-late.txt");
    expectApproved(paperCsv(late), "statement-late.csv");
}

TEST_F(BillPapers, Extras) {
    Extra asked = *book().jobs.of<Extra>().find(windowSeat);
    expectApproved(paperText(extraPaper(book(), asked, marchDay(4))), "extra-approved.txt");
    asked.id = Id<Extra>(999);
    asked.state = ExtraState::priced;
    asked.note = "Paint grade, hinged lid.\nBy the tenth if it can be.";
    expectApproved(paperText(extraPaper(book(), asked, marchDay(4))), "extra.txt");
}

TEST_F(BillPapers, NeverShowHoursOrCosts) {
    const Extra extra = *book().jobs.of<Extra>().find(windowSeat);
    for (const std::string& text : {paperText(issued(3)), paperText(issued(4)),
             paperText(extraPaper(book(), extra, marchDay(4))),
             paperText(statementPaper(book(), harrow, marchDay(1), marchDay(31)))}) {
        for (const char* word : {"hour", "Hour", "cost", "Cost", "labour", "margin", "markup"})
            EXPECT_THAT(text, Not(HasSubstr(word)));
    }
}

TEST_F(BillPapers, JournalLinesBalance) {
    const std::string csv = ledgerCsv(book(), marchDay(1), marchDay(31));
    expectApproved(csv, "journal.csv");
    EXPECT_EQ(ledgerCsv(book(), marchDay(60), marchDay(61)),
        "Date,Document,Account,Debit,Credit,Memo\r\n");
}

} // namespace
} // namespace miterbook
