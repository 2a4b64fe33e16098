// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "desk/text.h"
#include "figures/figure_model.h"

namespace miterbook {

/// Cells of computed figures, written as everywhere in the book. Static: papers have functions of
/// the same names for cells of theirs, and the linker does not tell them apart by what they return.
static inline FigureCell wordCell(std::string_view words) {
    return {text(words), std::nullopt};
}
static inline FigureCell countCell(std::int64_t count) {
    return {QString::number(count), static_cast<double>(count)};
}
static inline FigureCell moneyCell(Money money) {
    return {text(formatMoney(money)), static_cast<double>(money.cents())};
}
static inline FigureCell lengthCell(Length length, LengthStyle style) {
    return {text(formatLength(length, style)), static_cast<double>(length.nm())};
}
static inline FigureCell feetCell(Length length) {
    return {text(formatFeet(length)), static_cast<double>(length.nm())};
}
/// Running feet or metres.
static inline FigureCell runCell(Length length, LengthUnit written) {
    return {text(formatRun(length, written)), static_cast<double>(length.nm())};
}
static inline FigureCell hoursCell(Hours hours) {
    return {text(formatHours(hours)), static_cast<double>(hours.minutes())};
}
static inline FigureCell quantityCell(Quantity quantity) {
    return {text(formatQuantity(quantity)), quantity.toDouble()};
}
static inline FigureCell percentCell(Percent percent) {
    return {text(formatPercent(percent)) + QStringLiteral(" %"), percent.fraction()};
}
static inline FigureCell emptyCell() {
    return {};
}

/// Sentences one under another.
static inline QString lines(const std::vector<std::string>& sentences) {
    QStringList all;
    for (const std::string& sentence : sentences)
        all << text(sentence);
    return all.join(QLatin1Char('\n'));
}

} // namespace miterbook
