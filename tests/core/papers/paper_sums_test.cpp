// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever the rates, rules and quantities: every paper with prices adds up to the cent, and what
// is printed for an option is the price with it less the price without.
#include "book/starter_book.h"
#include "job/price_sheet.h"
#include "papers/bid_paper.h"
#include "papers/bid_parts.h"
#include "support/sample_house.h"

#include <gtest/gtest.h>

#include <random>

namespace miterbook {
namespace {

constexpr Date november{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

/// The sample house with prices, rates and rules drawn from a seed.
class RandomBid {
public:
    explicit RandomBid(unsigned seed)
        : m_random(seed) {
        IdSource ids(10);
        book.prices = starterBook(ids);
        PlanSet set;
        set.id = ids.next<PlanSet>();
        set.name = "Mill Creek";
        book.jobs.of<PlanSet>().put(set);
        house = sampleHouse(book.prices, ids);
        house.plan.set = set.id;
        book.jobs.of<Plan>().put(house.plan);
        book.sheets[house.plan.id] = house.rows;
        changePrices(ids);
        changeRules(ids);
        changeQuantities();
    }

    std::int64_t upTo(unsigned most) { return static_cast<std::int64_t>(m_random() % (most + 1)); }

    Book book;
    SampleHouse house;

private:
    template <class Row, class Change>
    void each(Change change) {
        const Table<Row> before = book.prices.of<Row>();
        for (const auto& [id, held] : before) {
            Row row = held;
            change(row);
            book.prices.of<Row>().put(row);
        }
    }

    void changePrices(IdSource& ids) {
        each<LabourRate>(
            [&](LabourRate& rate) { rate.minutes = MinutesPerUnit::hundredths(1 + upTo(9000)); });
        each<Stick>([&](Stick& stick) { stick.price = Money::cents(1 + upTo(6000)); });
        each<Part>([&](Part& part) { part.price = Money::cents(upTo(20'000)); });
        for (const auto& [task, text] : Words<Task>::list) {
            if (upTo(2) == 0) {
                book.prices.of<PiecePrice>().put({ids.next<PiecePrice>(), task,
                    UnitPrice::tenThousandths(1 + upTo(2'000'000)), Origin::shop, upTo(3) == 0});
            }
        }
        Terms terms = book.prices.terms();
        terms.materialTax = Percent::basisPoints(upTo(1000));
        terms.hourlyRate = Money::cents(upTo(9000));
        book.prices.of<Terms>().put(terms);
    }

    void changeRules(IdSource& ids) {
        BidSetup setup = setupFrom(book.prices.terms(), house.plan.id);
        setup.id = ids.next<BidSetup>();
        setup.pricing = upTo(1) == 0 ? Pricing::costAndProfit : Pricing::piecePrices;
        setup.profitKind = upTo(1) == 0 ? ProfitKind::markupOnCost : ProfitKind::marginOnPrice;
        setup.profit = Percent::basisPoints(upTo(5000));
        setup.overhead = Percent::basisPoints(upTo(2500));
        setup.contingency = Percent::basisPoints(upTo(1500));
        setup.delivery = Money::cents(upTo(40'000));
        setup.roundTo = Money::cents(upTo(2) == 0 ? 0 : upTo(10'000));
        setup.minimum = Money::cents(upTo(3) == 0 ? upTo(5'000'000) : 0);
        setup.quoteUnits = upTo(1) == 0;
        setup.onePage = upTo(2) == 0;
        for (std::int64_t i = upTo(3); i > 0; --i)
            setup.allowances.push_back(
                {"Allowance", PieceOfWork::hardware, Money::cents(upTo(90'000))});
        for (std::int64_t i = upTo(4); i > 0; --i)
            setup = withOtherWay(
                setup, Words<Task>::list[m_random() % Words<Task>::list.size()].value);
        book.jobs.of<BidSetup>().put(setup);
    }

    void changeQuantities() {
        auto& openings = book.sheets[house.plan.id].of<Opening>();
        const Table<Opening> before = openings;
        for (const auto& [id, held] : before) {
            Opening opening = held;
            if (!opening.variant)
                opening.width += Length::sixteenths(static_cast<int>(upTo(64)));
            openings.put(opening);
        }
    }

    std::mt19937 m_random;
};

Money amountOf(const Cell& cell) {
    std::string digits = cell.exact;
    const std::size_t point = digits.find('.');
    EXPECT_NE(point, std::string::npos) << cell.text;
    digits.erase(point, 1);
    return Money::cents(std::stoll(digits));
}

const PaperTable* tableCalled(const Paper& paper, std::string_view title) {
    for (const Block& block : paper.blocks) {
        const auto* table = std::get_if<PaperTable>(&block);
        if (table && table->title == title)
            return table;
    }
    return nullptr;
}

class PaperSums : public testing::TestWithParam<unsigned> {};

TEST_P(PaperSums, ABidsLinesAreItsTotalAndItsAlternatesExact) {
    RandomBid made(GetParam());
    const Id<Plan> plan = made.house.plan.id;
    const JobFigures figures = figuresFor(made.book, plan, {}, Effort::thorough);
    const PaperJob job{made.book, plan, {}, {}, november};
    const Paper paper = bidPaper(job, figures);
    const PaperTable* prices = tableCalled(paper, "Work and price");
    ASSERT_NE(prices, nullptr);
    Money lines;
    for (const PaperTable::Row& row : prices->rows) {
        ASSERT_EQ(row.cells.size(), prices->columns.size());
        if (row.kind == PaperTable::Kind::plain)
            lines += amountOf(row.cells.back());
        else {
            EXPECT_EQ(amountOf(row.cells.back()), lines);
        }
    }
    EXPECT_EQ(lines, figures.estimate.total.price);
    EXPECT_EQ(amountOf(paper.totals.front().second), lines);
    const PaperTable* alternates = tableCalled(paper, alternatesTitle);
    ASSERT_NE(alternates, nullptr);
    ASSERT_EQ(alternates->rows.size(), 1U); // the crown pack
    const JobFigures with = figuresFor(
        made.book, plan, {{}, {made.house.crownPack}}, Effort::thorough);
    EXPECT_EQ(amountOf(alternates->rows.front().cells.back()),
        with.estimate.total.price - figures.estimate.total.price);
    if (const PaperTable* allowed = tableCalled(paper, "Allowances, in the price")) {
        Money sum;
        for (const PaperTable::Row& row : allowed->rows)
            sum += amountOf(row.cells.back());
        EXPECT_EQ(sum, figures.estimate.total.allowances);
    }
}

TEST_P(PaperSums, APriceSheetPrintsExactDifferences) {
    RandomBid made(GetParam() + 1000);
    const Id<Plan> plan = made.house.plan.id;
    const Paper paper = priceSheetPaper({made.book, plan, {}, {}, november}, {});
    const PaperTable* sheet = nullptr;
    for (const Block& block : paper.blocks) {
        if (const auto* table = std::get_if<PaperTable>(&block))
            sheet = table;
    }
    ASSERT_NE(sheet, nullptr);
    ASSERT_EQ(sheet->rows.size(), 2U); // the plan, the crown pack
    const auto price = [&](const Selection& selection) {
        return figuresFor(made.book, plan, selection, Effort::thorough).estimate.total.price;
    };
    const std::vector<Id<Variant>> columns{{}, made.house.elevation};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        EXPECT_EQ(amountOf(sheet->rows[0].cells[i + 1]), price({columns[i], {}}));
        EXPECT_EQ(amountOf(sheet->rows[1].cells[i + 1]),
            price({columns[i], {made.house.crownPack}}) - price({columns[i], {}}));
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, PaperSums, testing::Range(0U, 12U));

} // namespace
} // namespace miterbook
