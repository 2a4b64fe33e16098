// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/takeoff/takeoff_rows.h"

#include "book/said_words.h"
#include "figures/figure_cells.h"
#include "takeoff/forgotten.h"
#include "takeoff/totals.h"

namespace miterbook {

namespace {

std::string_view levelName(const WholePlan& whole, Id<Level> id) {
    const Level* level = whole.level(id);
    return level ? std::string_view(level->name) : std::string_view();
}

std::string_view roomName(const WholePlan& whole, Id<Room> id) {
    const Room* room = whole.room(id);
    return room ? std::string_view(room->name) : std::string_view();
}

QString endText(const PieceEnd& end) {
    QString said = text(word(end.cut));
    if (end.cut == EndCut::miter)
        said += QStringLiteral(" %1°").arg(end.sawAngle, 0, 'f', end.sawAngle == 45.0 ? 0 : 1);
    if (end.bevel != 0)
        said += QStringLiteral(" / %1°").arg(end.bevel, 0, 'f', 1);
    return said;
}

FigureRow pieceRow(const Piece& piece, const JobFigures& figures, const PriceBook& prices) {
    const LengthStyle style = prices.shop().lengths();
    FigureRow row;
    row.cells = {wordCell(levelName(figures.whole, piece.source.level)),
        wordCell(piece.source.name), wordCell(piece.part),
        wordCell(prices.profileName(piece.profile)), lengthCell(piece.shortPoint, style),
        lengthCell(piece.longPoint, style), {endText(piece.left), std::nullopt},
        {endText(piece.right), std::nullopt}, countCell(piece.count)};
    row.from = QObject::tr("%1 of %2, in %3. Short point %4, long point %5.")
                   .arg(text(piece.part), text(piece.source.name), text(word(piece.work)),
                       text(formatLengthWithUnit(piece.shortPoint, style)),
                       text(formatLengthWithUnit(piece.longPoint, style)));
    return row;
}

template <class Share, class Say>
QString sharesText(const std::vector<Share>& shares, Say say) {
    QStringList all;
    for (const Share& share : shares)
        all << QStringLiteral("%1 %2").arg(text(share.source.name), say(share));
    return all.join(QStringLiteral(", "));
}

FigureRow profileRow(const ProfileTotal& total, const PriceBook& prices) {
    const LengthUnit written = prices.shop().unit;
    const std::string unit = unitText(Unit::linearFoot, written);
    return {{wordCell(word(total.work)), wordCell(prices.profileName(total.profile)),
                runCell(total.running, written), wordCell(unit), countCell(total.pieces)},
        sharesText(total.shares,
            [&](const auto& share) {
                return text(formatRun(share.running, written) + ' ' + unit);
            }),
        false};
}

FigureRow taskRow(const TaskTotal& total, LengthUnit written) {
    const Unit unit = unitOf(total.task);
    return {{wordCell(word(total.work)), wordCell(said(total.task, written)),
                quantityCell(amountSaid(total.quantity, unit, written)),
                wordCell(unitText(unit, written)), emptyCell()},
        sharesText(total.shares,
            [&](const auto& share) {
                return text(formatQuantity(amountSaid(share.quantity, unit, written), 2));
            }),
        false};
}

FigureRow partRow(const PartTotal& total) {
    return {{wordCell(word(total.work)), wordCell(word(total.use)), countCell(total.count),
                wordCell("each"), emptyCell()},
        sharesText(total.shares, [](const auto& share) { return QString::number(share.count); }),
        false};
}

std::vector<FigureRow> rowsOf(const Totals& sums, const PriceBook& prices) {
    std::vector<FigureRow> rows;
    for (const ProfileTotal& total : sums.profiles)
        rows.push_back(profileRow(total, prices));
    for (const TaskTotal& total : sums.tasks)
        rows.push_back(taskRow(total, prices.shop().unit));
    for (const PartTotal& total : sums.parts)
        rows.push_back(partRow(total));
    return rows;
}

FigureRow remarkRow(const Remark& remark, const WholePlan& whole, const char* kind) {
    return {{wordCell(kind), wordCell(levelName(whole, remark.source.level)),
                wordCell(remark.source.name), wordCell(remark.sentence)},
        text(remark.sentence), remark.weight == Remark::Weight::problem};
}

} // namespace

std::vector<FigureRow> pieceRows(const JobFigures& figures, const PriceBook& prices) {
    std::vector<FigureRow> rows;
    rows.reserve(figures.takeoff.pieces.size());
    for (const Piece& piece : figures.takeoff.pieces)
        rows.push_back(pieceRow(piece, figures, prices));
    return rows;
}

std::vector<FigureRow> placeRows(const JobFigures& figures, const PriceBook& prices) {
    std::vector<FigureRow> rows;
    for (const PlaceTotals& place : totalsByPlace(figures.takeoff, figures.whole)) {
        for (FigureRow& row : rowsOf(place.totals, prices)) {
            const FigureCell where[]{
                wordCell(place.level ? levelName(figures.whole, place.level) : "whole plan"),
                wordCell(roomName(figures.whole, place.room))};
            row.cells.insert(row.cells.begin(), std::begin(where), std::end(where));
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

std::vector<FigureRow> totalRows(const JobFigures& figures, const PriceBook& prices) {
    return rowsOf(totals(figures.takeoff), prices);
}

std::vector<FigureRow> remarkRows(
    const JobFigures& figures, const PriceBook& prices, const Table<Dismissal>& dismissals) {
    std::vector<FigureRow> rows;
    for (const Remark& remark : standing(figures.takeoff.remarks, dismissals)) {
        const bool problem = remark.weight == Remark::Weight::problem;
        rows.push_back(remarkRow(remark, figures.whole, problem ? "not counted" : "look at"));
    }
    for (const Remark& remark : standing(forgotten(figures.whole, prices), dismissals))
        rows.push_back(remarkRow(remark, figures.whole, "forgotten?"));
    return rows;
}

} // namespace miterbook
