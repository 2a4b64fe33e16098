// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/stop_rows.h"

#include "cut/stop_groups.h"
#include "figures/figure_cells.h"
#include "papers/cut_words.h"
#include "stages/cut/cut_desk.h"
#include "takeoff/tally.h"

#include <cmath>

namespace miterbook {

namespace {

LengthStyle styleOf(const CutDesk& cut) {
    return sawStyle(cut.book().prices.shop());
}

/// A mark that is read as well as seen.
QString cutText(std::size_t cut, std::size_t all) {
    if (cut == all)
        return QObject::tr("\u2713 all cut");
    return cut == 0 ? QString() : QObject::tr("%1 cut").arg(cut);
}

/// What becomes of what a stick has left.
QString remainderText(const CutDesk& cut, const SheetStick& stick, std::size_t done) {
    if (stick.racked)
        return QObject::tr("in the rack");
    const bool kept = stick.left >= cut.book().prices.practice().keepOffcut;
    if (!kept || done < stick.pieces.size())
        return {};
    return QObject::tr("for the rack");
}

QString warningOf(const CutDesk& cut, const SheetStop& stop) {
    return text(stopWarning(
        cut.figures().sheet, stop, cut.book().prices.practice(), cut.book().bench(), styleOf(cut)));
}

FigureRow stopRow(const CutDesk& cut, const SheetStop& stop) {
    const LengthStyle style = styleOf(cut);
    const Length add = cut.figures().correction.add;
    const Level* level = cut.whole().level(stop.level);
    FigureRow row;
    row.cells = {countCell(stop.number),
        {cutText(static_cast<std::size_t>(stop.cut), stop.pieces.size()), std::nullopt},
        lengthCell(stop.setting + add, style),
        stop.offset > Length() ? lengthCell(stop.offset, style) : emptyCell(),
        countCell(static_cast<std::int64_t>(stop.pieces.size())), wordCell(endsText(stop)),
        wordCell(angleText(stop)), wordCell(cut.book().prices.profileName(stop.profile)),
        wordCell(level ? level->name : std::string()),
        wordCell(servedText(cut.figures().sheet, stop, style)), wordCell(sticksText(stop))};
    row.from = QObject::tr("Short point %1; in brackets what each reveal is moved by.")
                   .arg(text(formatLengthWithUnit(stop.setting, style)));
    if (add != Length())
        row.from += QObject::tr(" The setting carries %1 from the saw check.")
                        .arg(text(signedLength(add, style)));
    if (const QString warning = warningOf(cut, stop); !warning.isEmpty())
        row.from += QLatin1Char('\n') + warning;
    return row;
}

QString minutesText(double minutes) {
    const long whole = std::lround(minutes);
    return QObject::tr("%1 h %2").arg(whole / 60).arg(whole % 60, 2, 10, QLatin1Char('0'));
}

QString jointText(const AssemblySet& set) {
    if (set.fasteners == 0)
        return QObject::tr("adhesive alone");
    return set.fasteners == 1 ? QObject::tr("one biscuit a corner")
                              : QObject::tr("two biscuits a corner");
}

FigureRow setRow(const CutDesk& cut, const AssemblySet& set) {
    FigureRow row;
    const bool made = set.state == PieceState::assembled;
    row.cells = {wordCell(set.name), wordCell(word(set.state)), countCell(set.corners),
        {jointText(set), std::nullopt}, wordCell(cut.book().prices.profileName(set.profile)),
        lengthCell(set.longest, styleOf(cut)),
        set.onFloor ? FigureCell{QObject::tr("floor, by the opening"), std::nullopt}
                    : FigureCell{QObject::tr("bench"), std::nullopt},
        made || set.onFloor ? emptyCell() : FigureCell{minutesText(set.times.off), set.times.off}};
    row.from = set.onFloor
        ? QObject::tr("A side over %1 is joined on the floor beside its opening.")
              .arg(text(formatLengthWithUnit(cut.book().bench().floorFrame, styleOf(cut))))
        : QObject::tr(
            "Begun as soon as its last piece is cut; off the bench when its last clamp is "
            "free, counted from the start of assembling.");
    return row;
}

} // namespace

QStringList stopTitles() {
    return {QObject::tr("No."), QObject::tr("Cut"), QObject::tr("Set to"),
        QObject::tr("Second stop"), QObject::tr("Pieces"), QObject::tr("Ends"),
        QObject::tr("Angle"), QObject::tr("Profile"), QObject::tr("Level"), QObject::tr("For"),
        QObject::tr("Sticks")};
}

std::vector<FigureRow> stopRows(const CutDesk& cut) {
    std::vector<FigureRow> rows;
    for (const SheetStop* stop : cut.stops())
        rows.push_back(stopRow(cut, *stop));
    return rows;
}

QStringList stopPieceTitles() {
    return {QObject::tr("Piece"), QObject::tr("State"), QObject::tr("Wanted"),
        QObject::tr("Set to"), QObject::tr("Reveal moved"), QObject::tr("Stick"),
        QObject::tr("Look at")};
}

std::vector<FigureRow> stopPieceRows(const CutDesk& cut, const SheetStop& stop) {
    const LengthStyle style = styleOf(cut);
    std::vector<FigureRow> rows;
    for (const std::size_t at : stop.pieces) {
        const SheetPiece& piece = cut.figures().sheet.pieces[at];
        const Length moved = revealError(piece.piece.shortPoint, piece.shortPoint);
        FigureRow row;
        row.cells = {wordCell(piece.piece.source.name + " " + piece.piece.key.part),
            wordCell(word(piece.state)), lengthCell(piece.piece.shortPoint, style),
            lengthCell(piece.shortPoint, style),
            {text(fineText(moved, style)), static_cast<double>(moved.nm())},
            piece.stick != 0 ? countCell(piece.stick) : wordCell("none left"),
            wordCell(piece.differs ? "the opening wants it otherwise now" : "")};
        row.from = piece.piece.measured ? QObject::tr("Cut for what was measured.")
                                        : QObject::tr("Cut for the plan's size: not measured yet.");
        rows.push_back(std::move(row));
    }
    return rows;
}

QStringList stickTitles() {
    return {QObject::tr("Stick"), QObject::tr("Cut"), QObject::tr("Profile"), QObject::tr("Length"),
        QObject::tr("From"), QObject::tr("Left"), QObject::tr("Remainder"), QObject::tr("Pieces")};
}

std::vector<FigureRow> stickRows(const CutDesk& cut) {
    const LengthStyle style = styleOf(cut);
    const SawSheet& sheet = cut.figures().sheet;
    std::vector<FigureRow> rows;
    for (const SheetStick& stick : sheet.sticks) {
        QStringList pieces;
        std::size_t done = 0;
        for (const std::size_t at : stick.pieces) {
            const SheetPiece& piece = sheet.pieces[at];
            done += piece.isCut() ? 1 : 0;
            pieces << text(formatLength(piece.shortPoint, style) + " " + piece.piece.source.name)
                    + (piece.isCut() ? QStringLiteral(" \u2713") : QString());
        }
        FigureRow row;
        row.cells = {countCell(stick.number), {cutText(done, stick.pieces.size()), std::nullopt},
            wordCell(cut.book().prices.profileName(stick.profile)),
            {text(stickText(stick.length, style.unit)), static_cast<double>(stick.length.nm())},
            wordCell(stick.fromRack ? "rack" : "new"), lengthCell(stick.left, style),
            {remainderText(cut, stick, done), std::nullopt},
            {pieces.join(QStringLiteral("  |  ")), std::nullopt}};
        row.from = QObject::tr(
            "%1 of %2 pieces cut. What is left is after kerfs; lengths are short "
            "points.")
                       .arg(done)
                       .arg(stick.pieces.size());
        rows.push_back(std::move(row));
    }
    return rows;
}

QStringList setTitles() {
    return {QObject::tr("Set"), QObject::tr("State"), QObject::tr("Corners"), QObject::tr("Joint"),
        QObject::tr("Casing"), QObject::tr("Longest side"), QObject::tr("Where"),
        QObject::tr("Off the bench")};
}

std::vector<FigureRow> setRows(const CutDesk& cut) {
    std::vector<FigureRow> rows;
    for (const AssemblySet& set : cut.assembly().bench)
        rows.push_back(setRow(cut, set));
    for (const AssemblySet& set : cut.assembly().floor)
        rows.push_back(setRow(cut, set));
    return rows;
}

} // namespace miterbook
