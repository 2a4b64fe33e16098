// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"
#include "hours/week_entry.h"
#include "job/edit.h"

#include <QObject>

#include <map>
#include <set>

namespace miterbook {

class Desk;
class FigureDesk;

/// A line of the week as it is typed into: of one person at one thing.
struct WeekRow {
    WeekLine line;
    WeekKey was;            ///< the key of the entries behind it
    std::int64_t place = 0; ///< what makes it the same row while its key is typed over
    bool approved = false;

    bool operator==(const WeekRow&) const = default;
};

/// The week that the Hours page shows, of everybody at all houses, kept up with the book.
class WeekDesk final : public QObject {
    Q_OBJECT
public:
    WeekDesk(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);

    Desk& desk() const { return m_desk; }
    const Book& book() const;
    Date today() const;
    /// The house on the screen; none for a plan.
    Id<House> house() const;
    Date first() const { return m_first; }
    Date last() const { return addDays(m_first, 6); }
    /// Shows the week that a day is in; false where it cannot be read.
    bool showWeekOf(Date day);
    /// All entries of the week, and the same as a grid.
    std::vector<TimeEntry> entries() const;
    Week week() const { return weekGrid(entries(), m_first); }
    std::vector<WeekRow> rows();
    /// What a new line begins with.
    WeekRow blank() const;

    /// Errors: nobody is named, or a day cannot be so.
    Result<void> check(const WeekRow& row) const;
    /// Puts a line as it was typed; a line without hours is kept on the screen until it has some.
    void store(EditBuilder& edit, const WeekRow& row);
    /// Takes the entries of a line out of the book.
    void remove(EditBuilder& edit, const WeekRow& row);
    /// The lines of the week before, to be filled in. False, and the desk has said why, where that
    /// week has none or all are here already.
    bool repeatLastWeek();
    bool approve();
    /// Takes back the approvals of the week.
    bool takeBackApproval();
    bool isApproved() const;

Q_SIGNALS:
    void changed();

private:
    Result<EntryChange> changeFor(const WeekRow& row, IdSource& ids) const;
    std::vector<TimeEntry> behind(const WeekKey& key) const;
    std::int64_t placeOf(const WeekKey& key);
    void follow();

    Desk& m_desk;
    FigureDesk& m_figures;
    Date m_first = noDate;
    std::set<WeekKey> m_waiting; ///< lines without hours
    std::map<WeekKey, std::int64_t> m_places;
    std::int64_t m_lastPlace = 0;
};

} // namespace miterbook
