// SPDX-License-Identifier: GPL-3.0-or-later
// Issues invoices, letting the book go after each: `invoice_writer BOOK COUNT`. Waits while another
// program holds the book.
#include "store/book_file.h"
#include "support/billed_house.h"

#include <QCoreApplication>
#include <QThread>

#include <cstdio>

namespace miterbook {
namespace {

Result<void> issueOne(BookKeeper& keeper) {
    auto workbook = Workbook::open(keeper);
    if (!workbook)
        return workbook.error();
    if (auto opened = workbook->openPlan(lot7Plan); !opened)
        return opened;
    const auto billing = billingOf(workbook->book(), lot7);
    if (!billing)
        return billing.error();
    return issue(*workbook, makeDeposit(*billing, marchDay(1), Money::dollars(1)));
}

int issueAll(const char* path, int count) {
    while (count > 0) {
        const auto keeper = openBook(path, OpenMode::write);
        if (!keeper && keeper.error().fault == Fault::conflict) {
            QThread::usleep(300);
            continue;
        }
        const auto done = keeper ? issueOne(**keeper) : Result<void>(keeper.error());
        if (!done) {
            std::fprintf(stderr, "%s\n", done.error().sentence.c_str());
            return 1;
        }
        --count;
    }
    return 0;
}

} // namespace
} // namespace miterbook

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    return argc == 3 ? miterbook::issueAll(argv[1], std::atoi(argv[2])) : 2;
}
