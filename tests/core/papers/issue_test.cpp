// SPDX-License-Identifier: GPL-3.0-or-later
// What was issued stays as it is, and prints for ever as it did.
#include "basics/sha256.h"
#include "job/logo_edits.h"
#include "papers/freeze.h"
#include "papers/heading.h"
#include "papers/write_paper.h"
#include "support/billed_house.h"
#include "support/memory_keeper.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {
namespace {

using testing::HasSubstr;

class Issue : public testing::Test {
protected:
    Issue()
        : m_keeper(billedHouse())
        , m_workbook(Workbook::open(m_keeper).value()) {}
    void SetUp() override { ASSERT_TRUE(m_workbook.openPlan(lot7Plan)); }

    const Book& book() const { return m_workbook.book(); }
    Result<void> draw(const std::vector<std::pair<PieceOfWork, int>>& percents, int onDay,
        bool withExtra = false, std::vector<Backcharge> backcharges = {}) {
        return issue(m_workbook,
            drawOf(book(), marchDay(onDay), percents, withExtra, std::move(backcharges)));
    }
    const IssuedPaper& paper(int number) const {
        const Invoice* invoice = book().jobs.of<Invoice>().find(invoiceNumbered(book(), number));
        return *book().sheet(lot7Plan).of<IssuedPaper>().find(invoice->paper);
    }
    Result<void> perform(const Result<Edit>& edit) {
        return edit ? m_workbook.perform(*edit) : Result<void>(edit.error());
    }
    std::string refusal(const Edit& edit) {
        const auto done = m_workbook.perform(edit);
        return done ? std::string("done") : done.error().sentence;
    }

    MemoryKeeper m_keeper;
    Workbook m_workbook;
};

TEST_F(Issue, GivesTheNextNumberAndFreezesThePaper) {
    ASSERT_TRUE(draw({{PieceOfWork::doors, 50}}, 10));
    ASSERT_TRUE(draw({{PieceOfWork::doors, 100}}, 20));
    const Invoice& second = *book().jobs.of<Invoice>().find(invoiceNumbered(book(), 2));
    EXPECT_EQ(second.work, Money::dollars(2000));
    EXPECT_EQ(second.total(), Money::dollars(2000 - 200 + 160)); // 10 % held, 8 % tax
    EXPECT_EQ(paper(2).amount, second.total());
    EXPECT_EQ(paper(2).sum, sha256(paper(2).paper.text));
    const auto printed = paperAsIssued(paper(2), {});
    ASSERT_TRUE(printed);
    EXPECT_THAT(paperText(*printed), HasSubstr("Invoice 0002"));
}

TEST_F(Issue, PrintsAsItDidWhateverBecomesOfTheBook) {
    ASSERT_TRUE(draw({{PieceOfWork::doors, 50}}, 10));
    const std::string before = paperText(*paperAsIssued(paper(1), {}));
    const std::string sum = paper(1).sum;
    Shop shop = book().prices.shop();
    shop.name = "Another name";
    Builder builder = *book().prices.of<Builder>().find(harrow);
    builder.name = "Another builder";
    Contract contract = *book().contract(lot7);
    contract.values[1].price = Money::dollars(9000);
    ASSERT_TRUE(m_workbook.perform(
        EditBuilder(book(), "Change").put(shop).put(builder).put(contract).take()));
    EXPECT_EQ(paperText(*paperAsIssued(paper(1), {})), before);
    EXPECT_EQ(paper(1).sum, sum);
}

TEST_F(Issue, IsNeverChangedOrTakenAway) {
    const auto edit = issueBill(
        book(), m_workbook.ids(), *drawOf(book(), marchDay(10), {{PieceOfWork::doors, 50}}));
    ASSERT_TRUE(edit);
    ASSERT_TRUE(m_workbook.perform(*edit));
    const std::string stays
        = "The invoice 0001 has been issued and stays as it is: void it or issue a credit note.";
    EXPECT_THAT(refusal(inverse(*edit)), HasSubstr("stays as it is"));
    Invoice changed = *book().jobs.of<Invoice>().find(invoiceNumbered(book(), 1));
    changed.note = "later";
    EXPECT_EQ(refusal(putEdit(book(), "Change", changed)), stays);
    InvoiceLine line = book().sheet(lot7Plan).of<InvoiceLine>().begin()->second;
    line.amount += Money::cents(1);
    EXPECT_EQ(refusal(putEdit(book(), "Change", line)), stays);
    IssuedPaper text = paper(1);
    text.paper.text += ' ';
    text.sum = sha256(text.paper.text);
    EXPECT_THAT(refusal(putEdit(book(), "Change", text)), HasSubstr("stays as it is"));
    EXPECT_THAT(
        refusal(EditBuilder(book(), "Remove").remove(line.id).take()), HasSubstr("stays as it is"));
    line.id = m_workbook.ids().next<InvoiceLine>();
    EXPECT_THAT(refusal(putEdit(book(), "Add", line)), HasSubstr("together with its invoice"));
}

TEST_F(Issue, RefusesANumberThatIsNotTheNext) {
    auto edit = issueBill(
        book(), m_workbook.ids(), *drawOf(book(), marchDay(10), {{PieceOfWork::doors, 50}}));
    for (Change& change : edit->changes) {
        if (const auto* issued = change.after->as<Invoice>()) {
            Invoice invoice = *issued;
            invoice.number = 3;
            change.after = invoice;
        }
    }
    EXPECT_EQ(refusal(*edit), "The next invoice is number 0001, not 0003.");
}

TEST_F(Issue, RefusesSumsAndPapersThatAreNotItsOwn) {
    const auto good = issueBill(
        book(), m_workbook.ids(), *drawOf(book(), marchDay(10), {{PieceOfWork::doors, 50}}));
    const auto with = [&](auto spoil) {
        Edit edit = *good;
        for (Change& change : edit.changes)
            change.after = visitRow(*change.after, [&](auto row) {
                spoil(row);
                return AnyRow(std::move(row));
            });
        return refusal(edit);
    };
    EXPECT_THAT(with([]<class Row>(Row& row) {
        if constexpr (std::is_same_v<Row, InvoiceLine>)
            row.amount += Money::cents(1);
    }),
        HasSubstr("not those of its lines"));
    EXPECT_THAT(with([]<class Row>(Row& row) {
        if constexpr (std::is_same_v<Row, IssuedPaper>)
            row.paper.text += ' ';
    }),
        HasSubstr("SHA-256"));
    EXPECT_THAT(with([]<class Row>(Row& row) {
        if constexpr (std::is_same_v<Row, IssuedPaper>)
            row.number = 7;
    }),
        HasSubstr("together with its paper"));
    EXPECT_TRUE(m_workbook.perform(*good));
}

TEST_F(Issue, BillsAnExtraAndAVoidGivesItBack) {
    ASSERT_TRUE(draw({}, 10, true));
    EXPECT_EQ(book().jobs.of<Extra>().find(windowSeat)->state, ExtraState::billed);
    ASSERT_TRUE(perform(voidInvoice(
        book(), m_workbook.ids(), invoiceNumbered(book(), 1), marchDay(11), "wrong lot")));
    EXPECT_EQ(book().jobs.of<Extra>().find(windowSeat)->state, ExtraState::done);
    EXPECT_EQ(voidInvoice(book(), m_workbook.ids(), invoiceNumbered(book(), 1), marchDay(12), "x")
                  .error()
                  .sentence,
        "Number 1 cannot be voided: it has been voided already.");
    ASSERT_TRUE(draw({}, 12, true)) << "the voided number stays, the next is 2";
    EXPECT_TRUE(invoiceNumbered(book(), 2));
}

TEST_F(Issue, ABackchargeComesOffOnceAndStays) {
    const Backcharge scratched = *book().jobs.of<Backcharge>().find(scratchedDoor);
    ASSERT_TRUE(draw({{PieceOfWork::doors, 50}}, 10, false, {scratched}));
    Backcharge more = scratched;
    more.amount = Money::dollars(90);
    EXPECT_EQ(refusal(putEdit(book(), "Change", more)),
        "The backcharge \"scratched door\" came off invoice 0001 and stays as it is.");
    EXPECT_FALSE(draw({{PieceOfWork::doors, 60}}, 11, false, {scratched}));
}

TEST_F(Issue, WhatWasBilledStaysInWhatWasAgreed) {
    ASSERT_TRUE(draw({{PieceOfWork::doors, 50}}, 10));
    Contract less = *book().contract(lot7);
    less.values[0].price = Money::dollars(1999);
    EXPECT_EQ(refusal(putEdit(book(), "Change", less)),
        "On Lot 7, 2,000.00 has been billed for doors; the price cannot be less.");
    less.values.erase(less.values.begin());
    EXPECT_THAT(refusal(putEdit(book(), "Change", less)), HasSubstr("stays in what was agreed"));
    Extra dearer = *book().jobs.of<Extra>().find(windowSeat);
    dearer.price = Money::dollars(500);
    EXPECT_THAT(refusal(putEdit(book(), "Change", dearer)), HasSubstr("has been agreed at 480.00"));
}

TEST_F(Issue, APaymentPaysNoMoreThanIsAsked) {
    ASSERT_TRUE(draw({{PieceOfWork::doors, 50}}, 10));
    Payment payment{{}, harrow, marchDay(12), Money::dollars(3000), "1077"};
    ASSERT_TRUE(perform(recordPayment(book(), m_workbook.ids(), payment)));
    ASSERT_EQ(book().jobs.of<Allocation>().size(), 1U);
    Allocation part = book().jobs.of<Allocation>().begin()->second;
    EXPECT_EQ(part.amount, Money::dollars(1960));
    part.amount = Money::dollars(2000);
    EXPECT_THAT(refusal(putEdit(book(), "Change", part)), HasSubstr("cannot be paid by more"));
    part.amount = Money::dollars(3500);
    EXPECT_THAT(refusal(putEdit(book(), "Change", part)), HasSubstr("More than the payment"));
    EXPECT_EQ(moneyByHouse(book()).at(lot7).owed, Money());
    ASSERT_TRUE(perform(removePayment(book(), part.payment)));
    EXPECT_EQ(moneyByHouse(book()).at(lot7).owed, Money::dollars(1960));
}

TEST_F(Issue, AHouseWithInvoicesStaysInTheBook) {
    ASSERT_TRUE(draw({{PieceOfWork::doors, 50}}, 10));
    EXPECT_THAT(
        refusal(
            EditBuilder(book(), "Remove").remove(invoiceNumbered(book(), 1)).remove(lot7).take()),
        HasSubstr("stays as it is"));
}

TEST(Freeze, TellsWhenTheTextWasChanged) {
    IssuedPaper row;
    row.kind = IssuedKind::bid;
    row.number = 4;
    Paper paper;
    paper.name = "bid";
    paper.title = "Bid";
    auto frozen = issuedPaper(row, paper);
    ASSERT_TRUE(frozen);
    EXPECT_EQ(*paperAsIssued(*frozen, {}), paper);
    frozen->paper.text[10] ^= 1;
    EXPECT_THAT(
        paperAsIssued(*frozen, {}).error().sentence, HasSubstr("The bid 4 is not what was issued"));
}

TEST(Freeze, KeepsTheLogoThatThePaperWentOutWith) {
    Book book;
    IdSource ids(100);
    const auto put = [&](const Edit& edit) {
        for (const Change& change : edit.changes) {
            if (const auto* logo = change.row().as<Logo>())
                book.prices.of<Logo>().put(*logo);
            if (const auto* shop = change.row().as<Shop>())
                book.prices.of<Shop>().put(*shop);
        }
    };
    const auto take = [&](const char* content) {
        const auto edit = takeLogo(book, ids, "corner.png", "image/png", content);
        ASSERT_TRUE(edit);
        put(*edit);
    };
    const auto begin = [&] { return beginPaper("bid", "Bid", PaperJob{book, {}, {}, {}, noDate}); };
    const auto bare = issuedPaper({}, begin());
    take("the first");
    const auto first = issuedPaper({}, begin());
    take("the second");
    EXPECT_EQ(begin().logo.content.content(), "the second");
    put(leaveLogo(book));
    EXPECT_EQ(begin().logo, PaperLogo());
    EXPECT_EQ(book.prices.of<Logo>().size(), 2U) << "both stay for papers that have them";
    EXPECT_EQ(paperAsIssued(*first, book.prices)->logo.content.content(), "the first");
    EXPECT_EQ(paperAsIssued(*bare, book.prices)->logo, PaperLogo());
    take("the first");
    EXPECT_EQ(book.prices.of<Logo>().size(), 2U) << "no picture is kept twice";
    EXPECT_EQ(begin().logo.content.content(), "the first");
    Logo damaged = book.prices.of<Logo>().begin()->second;
    damaged.content = Bytes("another");
    book.prices.of<Logo>().put(damaged);
    EXPECT_EQ(paperAsIssued(*first, book.prices)->logo.content.size(), 0U)
        << "rather no picture than another";
}

TEST(Freeze, ReadsAPaperOfBeforeThereWereLogos) {
    const Paper paper = [] {
        Paper made;
        made.name = "bid";
        made.title = "Bid";
        return made;
    }();
    std::string text = freezePaper(paper).value();
    const std::string field = R"(,"logo":"")";
    const auto at = text.find(field);
    ASSERT_NE(at, std::string::npos) << text;
    text.erase(at, field.size());
    const auto thawed = thawPaper(text);
    ASSERT_TRUE(thawed) << thawed.error().sentence;
    EXPECT_EQ(*thawed, paper);
}

TEST(Freeze, KeepsEverythingOfAPaper) {
    Paper paper;
    paper.name = "bid";
    paper.title = "Bid \"Ö\"\n";
    paper.letterhead = {"Shop", "line"};
    paper.facts = {{"Builder", "Harrow <b>"}};
    PaperTable table;
    table.title = "T";
    table.toFill = true;
    table.columns = {{"A", PaperColumn::Align::centre, 7, true}, {"B", PaperColumn::Align::right}};
    table.rows = {{PaperTable::Kind::group, {Cell::of("g")}},
        {PaperTable::Kind::total, {Cell{"$1.00", "1.00"}, Cell::of("x")}}};
    paper.blocks = {table, Paragraph{Paragraph::Style::list, {"a", "b"}},
        Signatures{{"who", "Date"}}, Paragraph{Paragraph::Style::caution, {"c"}}};
    paper.totals = {{"price", Cell{"$1.00", "1.00"}}};
    paper.footer = "f";
    paper.type = Paper::Type::wall;
    const auto text = freezePaper(paper);
    ASSERT_TRUE(text);
    const auto back = thawPaper(*text);
    ASSERT_TRUE(back) << back.error().sentence;
    EXPECT_EQ(*back, paper);
    EXPECT_EQ(*freezePaper(*back), *text);
}

TEST(Freeze, RefusesWhatItCannotRead) {
    Paper drawing;
    drawing.blocks = {PaperBars()};
    EXPECT_FALSE(freezePaper(drawing));
    for (const char* text : {"", "{}", "[]", R"({"head":{},"blocks":[{}]})",
             R"({"head":{},"blocks":[{"block":"video"}]})", R"({"head":{"x":1},"blocks":[]})",
             R"({"head":{},"blocks":[{"block":"table","rows":7}]})"})
        EXPECT_FALSE(thawPaper(text)) << text;
}

} // namespace
} // namespace miterbook
