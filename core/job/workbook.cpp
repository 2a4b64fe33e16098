// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/workbook.h"

#include "job/any_row.h"
#include "job/row_check.h"

namespace miterbook {

Result<Workbook> Workbook::open(Keeper& keeper) {
    auto book = keeper.load();
    if (!book)
        return book.error();
    auto lastId = keeper.lastId();
    if (!lastId)
        return lastId.error();
    return Workbook(keeper, std::move(book).value(), *lastId);
}

Result<void> Workbook::openPlan(Id<Plan> plan) {
    if (m_book.isOpen(plan))
        return {};
    const Plan* held = m_book.plan(plan);
    if (!held)
        return Error{Fault::notFound, "That plan is not in the book any more."};
    auto rows = m_keeper->loadPlan(plan);
    if (!rows)
        return rows.error();
    if (held->house) {
        const auto time = m_keeper->loadTime({held->house, {}});
        if (!time)
            return time.error();
        m_book.time.addRead(*time);
    }
    m_book.sheets.insert_or_assign(plan, std::move(rows).value());
    return {};
}

Result<void> Workbook::openDays(Date first, Date last) {
    bool open = true;
    for (Date day = first; day <= last; day = addDays(day, 1))
        open = open && m_days.contains(day);
    if (open)
        return {};
    const auto time = m_keeper->loadTime({{}, std::pair(first, last)});
    if (!time)
        return time.error();
    m_book.time.addRead(*time);
    for (Date day = first; day <= last; day = addDays(day, 1))
        m_days.insert(day);
    return {};
}

Result<void> Workbook::perform(const Edit& edit) {
    if (edit.empty())
        return {};
    if (auto checked = checkRows(m_book, edit); !checked)
        return checked;
    if (auto checked = check(m_book, edit); !checked)
        return checked;
    if (auto written = m_keeper->write(edit); !written)
        return written;
    apply(m_book, edit);
    m_ids.skipTo(highestId(edit)); // whoever made the ids, they are taken now
    return {};
}

} // namespace miterbook
