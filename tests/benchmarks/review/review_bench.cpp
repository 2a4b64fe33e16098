// SPDX-License-Identifier: GPL-3.0-or-later
// review_bench [FOLDER]: makes a ten-year book with 400 000 time entries and measures what the
// screens wait for. Medians of five runs, in milliseconds of the wall clock.
#include "review/ten_year_book.h"

#include "job/house_review.h"
#include "job/rate_review.h"
#include "job/week_pay.h"
#include "job/workbook.h"
#include "store/book_file.h"

#include <QCoreApplication>
#include <QFile>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>

namespace miterbook {
namespace {

double median(const std::function<void()>& work) {
    std::vector<double> times;
    for (int run = 0; run < 5; ++run) {
        const auto begun = std::chrono::steady_clock::now();
        work();
        times.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
                .count());
    }
    std::ranges::sort(times);
    return times[times.size() / 2];
}

void say(const char* what, double milliseconds) {
    std::printf("%-58s %8.1f ms\n", what, milliseconds);
}

/// Opens the book anew each time, so that nothing is in memory already.
void measureOpening(BookKeeper& keeper) {
    say("book at opening, with the sums of its time", median([&] { (void)keeper.load(); }));
    say("a week's entries", median([&] {
        const Date first{std::chrono::year(2020), std::chrono::month(3), std::chrono::day(2)};
        (void)keeper.loadTime({{}, std::pair(first, addDays(first, 6))});
    }));
    say("tasks of all bids that were won", median([&] { (void)keeper.loadSoldTasks(); }));
}

void measurePictures(const Book& book, const SoldTasks& sold) {
    std::vector<HouseResult> results;
    say("results of all finished houses", median([&] { results = finishedResults(book); }));
    for (const CompareBy by : {CompareBy::plan, CompareBy::builder, CompareBy::year}) {
        const std::string what = "houses compared by " + std::string(word(by));
        say(what.c_str(), median([&] { (void)compareHouses(results, by); }));
    }
    say("picture: results and comparison by plan",
        median([&] { (void)compareHouses(finishedResults(book), CompareBy::plan); }));
    say("what loses money", median([&] { (void)losses(results); }));
    std::vector<TaskSighting> seen;
    std::vector<TaskRate> rates;
    say("what houses say of tasks", median([&] { seen = allSightings(book, sold); }));
    say("all rates learned, by conditions too", median([&] { rates = taskRates(book, seen); }));
    const auto most = std::ranges::max_element(
        rates, {}, [](const TaskRate& rate) { return rate.sightings.size(); });
    say("picture: trend of the rate with most houses", median([&] { (void)trendOf(*most); }));
    std::printf(
        "%zu houses, %zu rates, %zu sightings\n", results.size(), rates.size(), seen.size());
}

int run(const std::string& path) {
    if (!makeTenYearBook(path, {}))
        return 1;
    const auto keeper = openBook(path, OpenMode::look);
    if (!keeper) {
        std::fprintf(stderr, "%s\n", keeper.error().sentence.c_str());
        return 1;
    }
    measureOpening(**keeper);
    const auto book = (*keeper)->load();
    const auto sold = (*keeper)->loadSoldTasks();
    if (!book || !sold)
        return 1;
    measurePictures(*book, *sold);
    return 0;
}

} // namespace
} // namespace miterbook

int main(int count, char** arguments) {
    const QCoreApplication application(count, arguments);
    const std::string folder = count > 1 ? arguments[1] : "/tmp";
    const std::string path = folder + "/ten-years.miterbook";
    QFile::remove(QString::fromStdString(path));
    const int status = miterbook::run(path);
    QFile::remove(QString::fromStdString(path));
    return status;
}
