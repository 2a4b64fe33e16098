// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cells.h"
#include "papers/cut_words.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

namespace miterbook {

namespace {

constexpr double pointsPerInch = 72;

PaperLabels sheetOf(const Bench& bench) {
    PaperLabels labels;
    labels.columns = bench.labelColumns;
    labels.rows = bench.labelRows;
    labels.width = bench.labelWidth.toInches() * pointsPerInch;
    labels.height = bench.labelHeight.toInches() * pointsPerInch;
    labels.left = bench.labelLeft.toInches() * pointsPerInch;
    labels.top = bench.labelTop.toInches() * pointsPerInch;
    labels.gap = bench.labelGap.toInches() * pointsPerInch;
    return labels;
}

PaperLabels::Label labelOf(const SheetPiece& piece, const PriceBook& prices, LengthStyle style) {
    PaperLabels::Label label;
    const std::string& part = piece.piece.key.part;
    label.first = oneLine(piece.piece.source.name) + "  " + oneLine(part);
    const bool sameAtBothEnds = piece.shortPoint == piece.longPoint;
    label.lines = {
        formatLengthWithUnit(piece.shortPoint, style) + (sameAtBothEnds ? "" : " short point"),
        "Stop " + std::to_string(piece.stop)
            + (piece.stick != 0 ? ", stick " + std::to_string(piece.stick) : "") + ", "
            + oneLine(prices.profileName(piece.piece.profile))};
    label.arrow = part.ends_with("leg") || part.starts_with("side ");
    return label;
}

} // namespace

Paper labelsPaper(const PaperJob& job, const JobFigures& figures) {
    const SawSheet sheet = cutFiguresFor(job.book, figures).sheet;
    Paper paper = beginPaper("labels", "Labels", job);
    paper.type = Paper::Type::labels;
    PaperLabels labels = sheetOf(job.book.bench());
    const LengthStyle style = sawStyle(job.book.prices.shop());
    for (const SheetStop* stop : stopsOn(sheet, job.level)) {
        for (const std::size_t at : stop->pieces) {
            if (sheet.pieces[at].state <= PieceState::cut)
                labels.labels.push_back(labelOf(sheet.pieces[at], job.book.prices, style));
        }
    }
    paper.totals.emplace_back("labels", countCell(static_cast<int>(labels.labels.size())));
    if (labels.labels.empty())
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"No piece to label yet."}});
    else
        paper.blocks.emplace_back(std::move(labels));
    return paper;
}

} // namespace miterbook
