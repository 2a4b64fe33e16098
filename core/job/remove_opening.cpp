// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/remove_opening.h"

namespace miterbook {

void removeWithMeasures(EditBuilder& edit, Id<Opening> opening) {
    if (const Opening* row = findRow(edit.book(), opening)) {
        for (const auto& [id, measure] : edit.book().sheet(row->plan).of<Measure>()) {
            if (measure.opening == opening)
                edit.remove(id);
        }
    }
    edit.remove(opening);
}

} // namespace miterbook
