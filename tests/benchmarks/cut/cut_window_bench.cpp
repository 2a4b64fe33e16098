// SPDX-License-Identifier: GPL-3.0-or-later
// A tick on the saw sheet of a level of 100 openings in the whole window, with every stage there.
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "stages/bid/bid_stage.h"
#include "stages/bill/bill_stage.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/cut_page.h"
#include "stages/cut/cut_stage.h"
#include "stages/hours/hours_stage.h"
#include "stages/order/order_stage.h"
#include "stages/plan/plan_stage.h"
#include "stages/review/review_stage.h"
#include "stages/takeoff/takeoff_stage.h"
#include "support/level_house.h"
#include "support/memory_keeper.h"
#include "ui/ui_kit.h"
#include "windows/job_page.h"
#include "windows/main_window.h"

#include <QApplication>
#include <QImage>
#include <QStandardPaths>
#include <QTabWidget>

#include <benchmark/benchmark.h>

using namespace miterbook;

namespace {

template <class Kind>
std::unique_ptr<Stage> make(Desk& desk, FigureDesk& figures) {
    return std::make_unique<Kind>(desk, figures);
}

/// The window with the house's saw sheet in view.
class SawWindow {
public:
    SawWindow()
        : m_house(60, 40, 12)
        , m_keeper(m_house.book)
        , m_clock(Date(std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)))
        , m_desk(Workbook::open(m_keeper).value(), m_clock)
        , m_window(m_desk, m_services,
              {make<PlanStage>, make<TakeoffStage>, make<BidStage>, make<OrderStage>,
                  make<CutStage>, make<HoursStage>, make<BillStage>, make<ReviewStage>})
        , m_image(1500, 900, QImage::Format_ARGB32_Premultiplied) {
        constexpr int cutStage = 4;
        m_window.resize(1500, 900);
        m_window.show();
        m_window.showJob({m_house.plan, m_house.house, {}});
        m_window.findChild<JobPage*>()->showStage(cutStage);
        m_page = m_window.findChild<CutPage*>();
        m_page->tabs().setCurrentIndex(1);
        while (!m_window.figures().settled())
            QApplication::processEvents(QEventLoop::WaitForMoreEvents, 100);
        draw();
    }

    CutDesk& cut() { return m_page->cut(); }
    void draw() {
        QApplication::processEvents();
        m_window.render(&m_image);
    }

private:
    LevelHouse m_house;
    MemoryKeeper m_keeper;
    FixedClock m_clock;
    Desk m_desk;
    NoServices m_services;
    MainWindow m_window;
    CutPage* m_page = nullptr;
    QImage m_image;
};

void tickInTheWindow(benchmark::State& state) {
    SawWindow window;
    window.cut().tick({0}, PieceState::cut);
    std::size_t at = 0;
    for (auto _ : state) {
        const SawSheet& sheet = window.cut().figures().sheet;
        at = (at + 1) % sheet.pieces.size();
        window.cut().tick({at}, sheet.pieces[at].isCut() ? PieceState::listed : PieceState::cut);
        window.draw();
    }
}

/// Painting alone, to be taken off the above.
void windowDrawn(benchmark::State& state) {
    SawWindow window;
    for (auto _ : state)
        window.draw();
}

BENCHMARK(tickInTheWindow)->Unit(benchmark::kMillisecond);
BENCHMARK(windowDrawn)->Unit(benchmark::kMillisecond);

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
