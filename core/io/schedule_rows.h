// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/row_reader.h"

namespace miterbook {

/// One record of each kind of schedule as a row. What is wrong with it is in the reader; the row is
/// good when nothing was rejected. Levels and rooms that the plan has are set.
ScheduleRow windowRow(RowReader& reader);
ScheduleRow doorRow(RowReader& reader);
ScheduleRow roomRow(RowReader& reader);

} // namespace miterbook
