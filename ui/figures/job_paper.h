// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "desk/job_ref.h"
#include "job/figures.h"
#include "papers/paper.h"

#include <optional>
#include <string_view>

class QWidget;

namespace miterbook {

class Desk;
class FigureDesk;

/// A paper of a plan or house by its name in papers/paper_list.h: from the figures on the screen
/// when they are that job's and settled, else reckoned anew with the thorough stick plan, so that
/// what is printed is what the screen comes to. A paper of the whole shop is of the week of a day;
/// no day: today. What takes long is reckoned on another thread, with progress and cancel over
/// `parent`. Errors: no such paper, a plan that cannot be opened, Fault::cancelled.
Result<Paper> jobPaper(Desk& desk, const FigureDesk& figures, std::string_view name,
    const JobRef& job, Date on = noDate, QWidget* parent = nullptr);

/// The figures on the screen where they are the job's and its stick plans have settled; what is
/// printed goes by none but these or by figures reckoned thoroughly anew.
std::optional<JobFigures> settledFigures(const FigureDesk& figures, const JobRef& job);

} // namespace miterbook
