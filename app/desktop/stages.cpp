// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/stages.h"

#include "stages/bid/bid_stage.h"
#include "stages/cut/cut_stage.h"
#include "stages/hours/hours_stage.h"
#include "stages/order/order_stage.h"
#include "stages/plan/plan_stage.h"
#include "stages/review/review_stage.h"
#include "stages/takeoff/takeoff_stage.h"

namespace miterbook {

namespace {

template <class Kind>
std::unique_ptr<Stage> make(Desk& desk, FigureDesk& figures) {
    return std::make_unique<Kind>(desk, figures);
}

} // namespace

std::vector<StageFactory> workingStages() {
    return {make<PlanStage>, make<TakeoffStage>, make<BidStage>, make<OrderStage>, make<CutStage>,
        make<HoursStage>, make<ReviewStage>};
}

} // namespace miterbook
