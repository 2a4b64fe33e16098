// SPDX-License-Identifier: GPL-3.0-or-later
// No number of an invoice is given twice or left out, whoever writes.
#include "store/book_repository.h"
#include "store/edit_writer.h"
#include "store/job_repository.h"
#include "store/plan_repository.h"
#include "support/billed_house.h"
#include "support/book_files.h"

#include <QProcess>

#include <set>

namespace miterbook {
namespace {

class Issuing : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(createBook(m_folder.book(), billedHouse()).ok()); }
    std::set<int> numbers() {
        auto keeper = openBook(m_folder.book(), OpenMode::look);
        const auto book = loadWhole(**keeper);
        std::set<int> found;
        for (const auto& [id, invoice] : book->jobs.of<Invoice>())
            EXPECT_TRUE(found.insert(invoice.number).second) << invoice.number << " twice";
        EXPECT_EQ(found.size(), book->sheet(lot7Plan).of<IssuedPaper>().size());
        return found;
    }
    BookFolder m_folder;
};

TEST_F(Issuing, TwoProgramsAtOnceLeaveNoGapAndNoDouble) {
    constexpr int each = 25;
    const QStringList arguments{QString::fromStdString(m_folder.book()), QString::number(each)};
    QProcess first;
    QProcess second;
    for (QProcess* program : {&first, &second}) {
        program->setProcessChannelMode(QProcess::ForwardedErrorChannel);
        program->start(QStringLiteral(MITERBOOK_INVOICE_WRITER), arguments);
    }
    for (QProcess* program : {&first, &second}) {
        ASSERT_TRUE(program->waitForFinished(120'000));
        ASSERT_EQ(program->exitCode(), 0);
    }
    const std::set<int> found = numbers();
    ASSERT_EQ(found.size(), 2U * each);
    EXPECT_EQ(*found.begin(), 1);
    EXPECT_EQ(*found.rbegin(), 2 * each);
}

/// What a program that writes past the lock has in memory.
Book read(Connection& connection) {
    Book book;
    book.prices = loadPrices(connection).value();
    book.jobs = loadJobs(connection).value();
    book.sheets[lot7Plan] = loadPlanRows(connection, lot7Plan).value();
    return book;
}

Edit depositEdit(const Book& book, std::int64_t firstId) {
    IdSource ids(firstId);
    return issueBill(
        book, ids, *makeDeposit(*billingOf(book, lot7), marchDay(2), Money::dollars(1)))
        .value();
}

TEST_F(Issuing, EvenWithoutTheLockTheFileGivesANumberOnce) {
    const auto one = Connection::open(m_folder.book(), Access::readWrite);
    const auto other = Connection::open(m_folder.book(), Access::readWrite);
    ASSERT_TRUE(one && other);
    const Edit first = depositEdit(read(**one), 1000);
    const Edit second = depositEdit(read(**other), 2000);
    ASSERT_TRUE(writeEdit(**one, "2026-03-01T08:00:00Z", first));
    const auto refused = writeEdit(**other, "2026-03-01T08:00:01Z", second);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().fault, Fault::conflict);
    EXPECT_NE(refused.error().sentence.find("number"), std::string::npos)
        << refused.error().sentence;
    ASSERT_TRUE(writeEdit(**other, "2026-03-01T08:00:02Z", depositEdit(read(**other), 2000)));
    EXPECT_EQ(numbers(), (std::set{1, 2}));
}

} // namespace
} // namespace miterbook
