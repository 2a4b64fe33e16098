// SPDX-License-Identifier: GPL-3.0-or-later
// growth_bench [FILE]: makes the book of ten years (or takes the one that is there) and prints what
// opening it costs, against the same rows read by SQLite's C API alone, in one run.
#include "growth/bare_read.h"
#include "growth/grown_book.h"

#include "job/workbook.h"
#include "store/book_file.h"
#include "store/safety/backups.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <functional>

namespace miterbook {
namespace {

using Steady = std::chrono::steady_clock;

double milliseconds(const std::function<void()>& work) {
    const auto begun = Steady::now();
    work();
    return std::chrono::duration<double, std::milli>(Steady::now() - begun).count();
}

double medianOf(int runs, const std::function<void()>& work) {
    std::vector<double> times;
    for (int run = 0; run < runs; ++run)
        times.push_back(milliseconds(work));
    std::ranges::sort(times);
    return times[times.size() / 2];
}

/// Resident memory in MB, as the kernel says it.
double memoryNow() {
    std::ifstream status("/proc/self/status");
    std::string word;
    double kilobytes = 0;
    while (status >> word) {
        if (word == "VmRSS:" && status >> kilobytes)
            break;
    }
    return kilobytes / 1024;
}

void row(const char* what, double value, const char* unit, const char* aim) {
    std::printf("%-52s %9.1f %-3s %s\n", what, value, unit, aim);
}

int measure(const std::string& path) {
    row("size of the file",
        static_cast<double>(QFileInfo(QString::fromStdString(path)).size()) / 1e6, "MB", "");
    const auto statements = openingStatements();
    long rows = 0;
    const double bare = medianOf(5, [&] { rows = bareRead(path, statements); });
    row("rows in memory after opening", static_cast<double>(rows), "", "");
    row("the same rows by the C API alone", bare, "ms", "");
    const double before = memoryNow();
    const double whole = medianOf(5, [&] {
        const auto keeper = openBook(path, OpenMode::look);
        const auto workbook = Workbook::open(**keeper);
        (void)workbook;
    });
    row("book opened, checked and loaded", whole, "ms", "400 to the Houses screen");
    row("  against the C API", whole / bare, "x", "3.5");
    const auto keeper = openBook(path, OpenMode::look);
    auto workbook = Workbook::open(**keeper);
    row("memory of the loaded book", memoryNow() - before, "MB", "150 in all");
    std::vector<Id<Plan>> works;
    for (const auto& [id, house] : workbook->book().jobs.of<House>())
        works.push_back(house.work);
    std::size_t next = 0;
    row("one house opened", medianOf(25, [&] { (void)workbook->openPlan(works[next += 7]); }), "ms",
        "50");
    row("what a backup list says of a book", medianOf(5, [&] { (void)readSummary(path); }), "ms",
        "");
    row("a backup, looked over",
        milliseconds([&] { (void)makeBackup(path, BackupReason::daily, SystemClock()); }), "ms",
        "in the background");
    row("memory of the whole program", memoryNow(), "MB", "150");
    return 0;
}

int run(const std::string& path) {
    if (!QFileInfo::exists(QString::fromStdString(path))) {
        bool made = false;
        row("the book is made", milliseconds([&] { made = makeGrownBook(path, {}); }), "ms", "");
        if (!made)
            return 1;
    }
    return measure(path);
}

} // namespace
} // namespace miterbook

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    return miterbook::run(argc > 1 ? argv[1] : "ten-years.miterbook");
}
