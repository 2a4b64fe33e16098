// SPDX-License-Identifier: GPL-3.0-or-later
// start_bench [FILE]: what it takes from a book of ten years, with 12 000 invoices, to the Houses
// page on the screen and to the office; the best of five. Run it with QT_QPA_PLATFORM=offscreen.
#include "growth/grown_book.h"

#include "desk/desk.h"
#include "store/book_file.h"
#include "windows/houses_page.h"
#include "windows/office_page.h"

#include <QApplication>
#include <QFileInfo>

#include <chrono>
#include <cstdio>

namespace miterbook {
namespace {

/// Milliseconds since it was last asked.
class StopWatch {
public:
    double lap() {
        const auto now = std::chrono::steady_clock::now();
        const std::chrono::duration<double, std::milli> time = now - m_last;
        m_last = now;
        return time.count();
    }

private:
    std::chrono::steady_clock::time_point m_last = std::chrono::steady_clock::now();
};

struct Laps {
    double open = 0;
    double made = 0;
    double shown = 0;
    double money = 0;
    double office = 0;

    double toHouses() const { return open + made + shown; }
};

Laps startOnce(const std::string& path) {
    Laps laps;
    StopWatch watch;
    const auto keeper = openBook(path, OpenMode::look);
    auto workbook = Workbook::open(**keeper);
    laps.open = watch.lap();
    const SystemClock clock;
    Desk desk(*std::move(workbook), clock);
    MoneyDesk money(desk);
    HousesPage page(desk, money);
    laps.made = watch.lap();
    page.resize(1400, 900);
    page.show();
    (void)page.grab();
    laps.shown = watch.lap();
    MoneyDesk fresh(desk);
    (void)fresh.houses();
    laps.money = watch.lap();
    OfficePage office(desk, money);
    office.resize(1400, 900);
    office.show();
    (void)office.grab();
    laps.office = watch.lap();
    return laps;
}

void row(const char* what, double value, const char* aim) {
    std::printf("%-52s %9.1f ms  %s\n", what, value, aim);
}

int run(const std::string& path) {
    if (!QFileInfo::exists(QString::fromStdString(path)) && !makeGrownBook(path, {}))
        return 1;
    Laps best = startOnce(path);
    for (int again = 0; again < 4; ++again) {
        const Laps laps = startOnce(path);
        best = laps.toHouses() < best.toHouses() ? laps : best;
    }
    row("book opened and loaded", best.open, "");
    row("Houses page made", best.made, "");
    row("Houses page shown and painted", best.shown, "");
    row("all of that", best.toHouses(), "1000");
    row("money of all houses reckoned (in the page above)", best.money, "");
    row("office made and painted after that", best.office, "");
    return 0;
}

} // namespace
} // namespace miterbook

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    return miterbook::run(argc > 1 ? argv[1] : "ten-years.miterbook");
}
