// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/contract.h"
#include "widgets/column.h"

#include <span>
#include <vector>

namespace miterbook {

class BillDesk;

/// One line of the schedule of values as the page shows it.
struct DrawRow {
    ValueKey key;
    std::string label;
    Money agreed;
    Percent done;
    Money billed;       ///< before
    bool byWork = true; ///< done is typed here; else it comes from stages or completion

    bool isWork() const { return !key.extra; }
    Money now() const { return share(agreed, done) - billed; }
    bool operator==(const DrawRow&) const = default;
};

std::span<const Column<DrawRow>> drawColumns();
std::vector<DrawRow> drawRows(const BillDesk& bill);

/// The columns of a contract's terms, and of a stage.
std::span<const Column<Contract>> termColumns();
std::span<const Column<ContractStage>> stageColumns();

} // namespace miterbook
