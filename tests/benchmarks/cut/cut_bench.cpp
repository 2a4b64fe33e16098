// SPDX-License-Identifier: GPL-3.0-or-later
// A level of 100 openings at the saw: its sheet made anew, and a tick from the key to the picture.
#include "cut/progress.h"
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "papers/job_papers.h"
#include "printing/pdf.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/cut_page.h"
#include "stages/cut/sheet_tab.h"
#include "support/level_house.h"
#include "support/memory_keeper.h"

#include <QApplication>
#include <QImage>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTableView>

#include <benchmark/benchmark.h>

using namespace miterbook;

namespace {

constexpr int windows = 60;
constexpr int doors = 40;
constexpr int rooms = 12;

/// The page of the saw as the window shows it.
class Page {
public:
    Page()
        : m_house(windows, doors, rooms)
        , m_keeper(m_house.book)
        , m_clock(Date(std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)))
        , m_desk(Workbook::open(m_keeper).value(), m_clock)
        , m_figures(m_desk)
        , m_image(1500, 900, QImage::Format_ARGB32_Premultiplied) {
        m_figures.setJob({m_house.plan, m_house.house, {}});
        while (!m_figures.settled())
            QApplication::processEvents(QEventLoop::WaitForMoreEvents, 100);
        m_page = std::make_unique<CutPage>(m_desk, m_figures);
        m_page->resize(1500, 900);
        m_page->tabs().setCurrentIndex(1);
        m_page->show();
        draw();
    }
    CutDesk& cut() { return m_page->cut(); }
    Desk& desk() { return m_desk; }
    void show(int tab) {
        m_page->tabs().setCurrentIndex(tab);
        draw();
    }
    /// Everything that is seen, painted.
    void draw() {
        QApplication::processEvents();
        m_page->render(&m_image);
    }
    void tick(std::size_t piece, PieceState state) { cut().tick({piece}, state); }

private:
    LevelHouse m_house;
    MemoryKeeper m_keeper;
    FixedClock m_clock;
    Desk m_desk;
    FigureDesk m_figures;
    QImage m_image;
    std::unique_ptr<CutPage> m_page;
};

void sheetReady(benchmark::State& state) {
    const LevelHouse house(windows, doors, rooms);
    for (auto _ : state) {
        const JobFigures figures = house.figures();
        const CutFigures cut = cutFiguresFor(house.book, figures);
        benchmark::DoNotOptimize(cut.sheet.stops.size());
        state.counters["pieces"] = static_cast<double>(cut.sheet.pieces.size());
        state.counters["settings"] = static_cast<double>(cut.sheet.stops.size());
    }
}

void sheetAlone(benchmark::State& state) {
    const LevelHouse house(windows, doors, rooms);
    const JobFigures figures = house.figures();
    for (auto _ : state)
        benchmark::DoNotOptimize(cutFiguresFor(house.book, figures).sheet.stops.size());
}

/// The first tick of a level lists all its pieces.
void firstTick(benchmark::State& state) {
    Page page;
    for (auto _ : state) {
        page.tick(0, PieceState::cut);
        page.draw();
        state.PauseTiming();
        page.desk().undoStack().undo();
        page.draw();
        state.ResumeTiming();
    }
}

/// Pieces ticked one after the other with a tab in view: 1 the saw sheet, 2 sticks, 0 measures.
void nextTick(benchmark::State& state) {
    Page page;
    page.tick(0, PieceState::cut);
    page.show(static_cast<int>(state.range(0)));
    std::size_t at = 0;
    for (auto _ : state) {
        const std::size_t count = page.cut().figures().sheet.pieces.size();
        at = (at + 1) % count;
        const bool isCut = page.cut().figures().sheet.pieces[at].isCut();
        page.tick(at, isCut ? PieceState::listed : PieceState::cut);
        page.draw();
    }
}

/// Painting alone, to be taken off the above.
void drawn(benchmark::State& state) {
    Page page;
    for (auto _ : state)
        page.draw();
}

void sheetAsPdf(benchmark::State& state) {
    const LevelHouse house(windows, doors, rooms);
    const JobFigures figures = house.figures();
    for (auto _ : state)
        benchmark::DoNotOptimize(
            paperPdf(sawSheetPaper(house.job(), figures), PageSize::letter).value().size());
}

BENCHMARK(sheetReady)->Unit(benchmark::kMillisecond);
BENCHMARK(sheetAlone)->Unit(benchmark::kMillisecond);
BENCHMARK(firstTick)->Unit(benchmark::kMillisecond);
BENCHMARK(nextTick)->Unit(benchmark::kMillisecond)->Arg(0)->Arg(1)->Arg(2)->Arg(3);
BENCHMARK(drawn)->Unit(benchmark::kMillisecond);
BENCHMARK(sheetAsPdf)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    const QApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
