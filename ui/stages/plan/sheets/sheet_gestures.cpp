// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/sheet_gestures.h"

#include "plan/plan_checks.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr int usualScale = 48; // 1/4 in to the foot

} // namespace

Length firstScale(const SheetPage& page) {
    if (page.unitInHouse() > Length())
        return page.unitInHouse();
    if (page.unitOnPaper() > Length())
        return page.unitOnPaper() * usualScale;
    return Length::fromInches(Length::feet(60).toInches() / std::max(page.size().width(), 1.0));
}

Result<Edit> sheetAdded(const Book& book, IdSource& ids, Id<Plan> plan, Id<Level> level,
    const NewSheet& sheet, PlanPoint at) {
    if (!level)
        return badInput("The plan needs a level before a sheet can lie under it.");
    SheetFile file{{}, plan, sheet.name, sheet.content};
    if (auto fine = checkSheetFile(file); !fine)
        return fine.error();
    EditBuilder edit(book, "Lay " + sheet.name + " under the level");
    for (const auto& [id, held] : book.sheet(plan).of<SheetFile>()) {
        if (held.content == file.content)
            file.id = id;
    }
    if (!file.id) {
        file.id = ids.next<SheetFile>();
        edit.put(file);
    }
    Underlay underlay;
    underlay.id = ids.next<Underlay>();
    underlay.plan = plan;
    underlay.level = level;
    underlay.file = file.id;
    underlay.page = sheet.page;
    underlay.scale = sheet.scale;
    underlay.x = at.x;
    underlay.y = at.y;
    edit.put(underlay);
    return edit.take();
}

Edit sheetChanged(const Book& book, const Underlay& underlay, const std::string& what) {
    return putEdit(book, what, underlay);
}

Edit sheetRemoved(const Book& book, const Underlay& underlay) {
    EditBuilder edit(book, "Take the sheet away from under the level");
    edit.remove(underlay.id);
    bool used = false;
    for (const auto& [plan, rows] : book.sheets) {
        for (const auto& [id, each] : rows.of<Underlay>())
            used = used || (id != underlay.id && each.file == underlay.file);
    }
    const SheetFile* file = findRow(book, underlay.file);
    if (!used && file && file->plan == underlay.plan)
        edit.remove(underlay.file);
    return edit.take();
}

} // namespace miterbook
