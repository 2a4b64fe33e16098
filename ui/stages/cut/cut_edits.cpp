// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/cut_edits.h"

#include "cut/progress.h"
#include "job/rack_edits.h"

namespace miterbook {

namespace {

std::string piecesText(std::size_t count) {
    return count == 1 ? "1 piece" : std::to_string(count) + " pieces";
}

} // namespace

Edit tickEdit(const Book& book, IdSource& ids, Id<Plan> plan, const SawSheet& sheet,
    const std::vector<std::size_t>& pieces, PieceState state) {
    std::vector<CutPiece> rows = ticked(
        sheet, pieces, state, plan, book.sheet(plan).of<CutPiece>(), ids);
    EditBuilder edit(book, "Mark " + piecesText(pieces.size()) + " " + std::string(word(state)));
    keepRack(edit, ids, plan, rows);
    for (CutPiece& row : rows)
        edit.put(std::move(row));
    return edit.take();
}

Edit keepNumbersEdit(
    const Book& book, IdSource& ids, Id<Plan> plan, const SawSheet& sheet, Id<Level> level) {
    EditBuilder edit(book, "Keep the numbers of the saw sheet");
    for (CutPiece& row : listed(sheet, level, plan, book.sheet(plan).of<CutPiece>(), ids))
        edit.put(std::move(row));
    return edit.take();
}

Edit planSizesEdit(const Book& book, IdSource& ids, Id<Plan> plan,
    const std::vector<OpeningUnit>& units, Id<Level> level) {
    EditBuilder edit(book, "Start measures from the plan's sizes");
    for (const OpeningUnit& unit : units) {
        if (unit.isMeasured() || (level && unit.opening.level != level))
            continue;
        Measure measure = unit.measure;
        if (!measure.id)
            measure.id = ids.next<Measure>();
        measure.plan = plan;
        measure.position = unit.place;
        measure.widthTop = measure.widthBottom = unit.opening.width;
        measure.heightLeft = measure.heightRight = unit.opening.height;
        edit.put(std::move(measure));
    }
    return edit.take();
}

Edit forgetTestsEdit(const Book& book, Id<Plan> plan) {
    EditBuilder edit(book, "Forget the test cuts");
    for (const auto& [id, test] : book.sheet(plan).of<SawTest>())
        edit.remove(id);
    return edit.take();
}

} // namespace miterbook
