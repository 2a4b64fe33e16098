// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/job_papers.h"

#include <array>

namespace miterbook {

/// One paper that can be made of a job. Batch commands, previews and exports know them from here.
struct PaperKind {
    std::string_view name;    ///< "bid": typed, and in JSON
    std::string_view title;   ///< "Bid": in menus
    std::string_view forWhom; ///< who gets it
    Paper (*build)(const PaperJob& job, const JobFigures& figures);
    bool byLevel = false; ///< can be made for one level only
    bool ofSet = false;   ///< of every plan of the plan's set: all of them have to be opened
    bool ofShop = false;  ///< neither of a plan nor of a house; its figures are not looked at
};

inline constexpr std::array paperKinds{
    PaperKind{"bid", "Bid", "the builder", bidPaper},
    PaperKind{"price-sheet", "Plan price sheet", "the builder", priceSheetPaper, false, true},
    PaperKind{"worksheet", "Bid worksheet", "the shop", worksheetPaper},
    PaperKind{"takeoff", "Takeoff", "the shop", takeoffPaper, true},
    PaperKind{"plan", "Marked plan", "the crew", planPaper, true},
    PaperKind{"order", "Material order", "the yard", orderPaper},
    PaperKind{"measure", "Measure sheet", "the crew", measurePaper, true},
    PaperKind{"saw-sheet", "Saw sheet", "the crew", sawSheetPaper, true},
    PaperKind{"sticks", "Stick diagrams", "the crew", sticksPaper, true},
    PaperKind{"labels", "Labels", "the crew", labelsPaper, true},
    PaperKind{"assembly", "Assembly sheet", "the crew", assemblyPaper, true},
    PaperKind{"time-sheet", "Time sheet", "the crew", timeSheetPaper, false, false, true},
    PaperKind{"pay-sheet", "Pay sheet", "the shop", paySheetPaper, false, false, true},
    PaperKind{"house-review", "House review", "the shop", houseReviewPaper},
    PaperKind{
        "plan-comparison", "Houses compared", "the shop", planComparisonPaper, false, false, true},
};

/// The paper of a name; nullptr when there is none.
constexpr const PaperKind* findPaper(std::string_view name) {
    for (const PaperKind& kind : paperKinds) {
        if (kind.name == name)
            return &kind;
    }
    return nullptr;
}

} // namespace miterbook
