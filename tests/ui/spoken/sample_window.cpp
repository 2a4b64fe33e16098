// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spoken/sample_window.h"

#include "app/batch_run.h"
#include "stages/bid/bid_stage.h"
#include "stages/bill/bill_stage.h"
#include "stages/cut/cut_stage.h"
#include "stages/hours/hours_stage.h"
#include "stages/order/order_stage.h"
#include "stages/plan/plan_stage.h"
#include "stages/review/review_stage.h"
#include "stages/takeoff/takeoff_stage.h"

#include <QTest>

#include <gtest/gtest.h>

namespace miterbook {

namespace {

template <class Kind>
std::unique_ptr<Stage> make(Desk& desk, FigureDesk& figures) {
    return std::make_unique<Kind>(desk, figures);
}

void expectDone(const std::vector<std::string>& words) {
    const BatchRun run = runBatch(words);
    EXPECT_EQ(run.status, 0) << run.err;
}

void changeShop(const std::string& path, const std::function<void(Shop&)>& change) {
    auto opened = openWorkbook(path, OpenMode::write);
    ASSERT_TRUE(opened.ok());
    Shop shop = opened->book().prices.shop();
    change(shop);
    EXPECT_TRUE(opened->perform(putEdit(opened->book(), "Say how the shop writes", shop)).ok());
}

} // namespace

SampleWindow::SampleWindow(const std::function<void(Shop&)>& prepare)
    : m_clock(Date(std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25))) {
    const std::string path = m_folder.filePath(QStringLiteral("shop.miterbook")).toStdString();
    expectDone({"new", path});
    if (prepare)
        changeShop(path, prepare);
    expectDone({"bring", path, sampleFile("larkspur/larkspur.miterplan")});
    expectDone({"sample", path, "--date", "2026-11-25", "--houses", "3"});
    auto opened = openWorkbook(path, OpenMode::write);
    EXPECT_TRUE(opened.ok());
    m_keeper = std::move(opened->keeper);
    m_desk = std::make_unique<Desk>(std::move(opened->workbook), m_clock);
    m_window = std::make_unique<MainWindow>(*m_desk, m_services,
        std::vector<StageFactory>{make<PlanStage>, make<TakeoffStage>, make<BidStage>,
            make<OrderStage>, make<CutStage>, make<HoursStage>, make<BillStage>,
            make<ReviewStage>});
    m_window->resize(1500, 900);
    m_window->show();
    m_window->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
}

SampleWindow::~SampleWindow() {
    m_window->figures().stopSearch();
}

JobRef SampleWindow::underway() const {
    for (const auto& [id, house] : m_desk->book().jobs.of<House>()) {
        if (house.stage == HouseStage::underway)
            return {house.work, id, {}};
    }
    ADD_FAILURE() << "the sample has no house underway";
    return {};
}

JobRef SampleWindow::firstPlan() const {
    for (const auto& [id, plan] : m_desk->book().jobs.of<Plan>()) {
        if (plan.set)
            return {id, {}, {}};
    }
    ADD_FAILURE() << "the sample has no plan";
    return {};
}

} // namespace miterbook
