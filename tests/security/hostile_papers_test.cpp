// SPDX-License-Identifier: GPL-3.0-or-later
// Names that are formulas, markup, control characters or endless, in every paper and export.
#include "job/row_json.h"
#include "papers/icalendar.h"
#include "papers/ledger_csv.h"
#include "papers/paper_list.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"
#include "security/hostile_texts.h"
#include "support/billed_house.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace miterbook {
namespace {

/// The fields of CSV, read as a spreadsheet reads them.
std::vector<std::string> csvFields(const std::string& csv) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        const char c = csv[i];
        if (quoted && c == '"' && i + 1 < csv.size() && csv[i + 1] == '"') {
            fields.back() += '"';
            ++i;
        } else if (c == '"') {
            quoted = !quoted;
        } else if (!quoted && (c == ',' || c == '\n' || c == '\r')) {
            fields.emplace_back();
        } else {
            fields.back() += c;
        }
    }
    EXPECT_FALSE(quoted) << "a quote is never closed";
    return fields;
}

bool isNumber(const std::string& text) {
    return !text.empty() && text.find_first_not_of("0123456789.-") == std::string::npos;
}

void expectNoFormula(const std::string& csv, const std::string& where) {
    for (const std::string& field : csvFields(csv)) {
        if (field.empty() || isNumber(field))
            continue;
        EXPECT_EQ(std::string("=+-@\t\r\n").find(field.front()), std::string::npos)
            << where << ": " << field.substr(0, 80);
    }
}

/// Control characters but for line ends, and bytes that are no UTF-8.
void expectPlain(const std::string& text, const std::string& where) {
    EXPECT_TRUE(std::ranges::none_of(text, [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte < 0x20 && c != '\n' && c != '\r') || byte == 0x7f || byte == 0xff
            || byte == 0xfe;
    })) << where;
}

class HostilePapers : public testing::TestWithParam<int> {
protected:
    std::string textNow() const {
        const auto n = static_cast<std::size_t>(GetParam());
        return n < hostileTexts().size() ? hostileTexts()[n] : veryLongText();
    }
};

TEST_P(HostilePapers, StayPapers) {
    SampleJob sample;
    poison(sample.book, textNow());
    for (const PaperKind& kind : paperKinds) {
        for (const PaperJob& job : {sample.planJob(), sample.houseJob()}) {
            const Paper paper = kind.build(job, sample.figures);
            const std::string where = std::string(kind.name) + ", text "
                + std::to_string(GetParam());
            expectPlain(paperText(paper), where);
            expectNoFormula(paperCsv(paper), where);
            const auto json = parseJson(paperJson(paper));
            EXPECT_TRUE(json.ok()) << where;
        }
    }
}

TEST_P(HostilePapers, ForgeNoEventInACalendar) {
    Book book = billedHouse();
    poison(book, textNow());
    HouseDate date;
    date.id = Id<HouseDate>(900);
    date.house = lot7;
    date.from = marchDay(4);
    poison(date, textNow());
    const auto calendar = calendarOf(book, {date}, "2026-03-01T12:00:00Z");
    ASSERT_TRUE(calendar.ok()) << calendar.error().sentence;
    std::size_t begins = 0;
    std::size_t start = 0;
    while (start < calendar->size()) {
        const std::size_t end = calendar->find("\r\n", start);
        ASSERT_NE(end, std::string::npos) << "every line ends with CR LF";
        const std::string line = calendar->substr(start, end - start);
        EXPECT_LE(line.size(), 75U);
        EXPECT_EQ(line.find_first_of("\r\n"), std::string::npos);
        begins += line == "BEGIN:VEVENT" ? 1 : 0;
        start = end + 2;
    }
    EXPECT_EQ(begins, 1U);
}

TEST_P(HostilePapers, MakeNoFormulaInALedger) {
    Book book = billedHouse();
    poison(book, textNow());
    Payment payment;
    payment.id = Id<Payment>(901);
    payment.builder = harrow;
    payment.date = marchDay(5);
    payment.amount = Money::dollars(100);
    poison(payment, textNow());
    book.jobs.of<Payment>().put(payment);
    expectNoFormula(ledgerCsv(book, marchDay(1), marchDay(31)), "the ledger");
}

INSTANTIATE_TEST_SUITE_P(
    Each, HostilePapers, testing::Range(0, static_cast<int>(hostileTexts().size()) + 1));

} // namespace
} // namespace miterbook
