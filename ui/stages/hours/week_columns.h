// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/hours/week_desk.h"
#include "widgets/column.h"

#include <span>

namespace miterbook {

/// The columns of the week grid for a week that begins on a day: person, house, what, seven days,
/// and what they add up to.
std::span<const Column<WeekRow>> weekColumns(WeekStart start);

/// The same three for single entries, with date, hours, units and note.
std::span<const Column<TimeEntry>> entryColumns();

/// "doors", "prehung door", "travel": what somebody did, in one word.
QString whatText(PieceOfWork work, Task task, TimeKind kind, LengthUnit written);
/// All that can be chosen there.
QStringList whatChoices(LengthUnit written);
QString personText(Id<CrewMember> person, const Book& book);
/// "shop" for the shop's own time.
QString houseText(Id<House> house, const Book& book);

/// Hours of a day, and units finished behind a slash: "7.5", "7.5 / 6", nothing.
QString dayText(const WeekCell& cell);
Result<WeekCell> readDay(const QString& typed);

} // namespace miterbook
