// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/cell_change.h"

#include <QRegularExpression>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

CellChange readCellChange(const QString& typed) {
    static const QRegularExpression share(
        u"^\\s*([+-])\\s*(\\d{1,4})(?:[.,](\\d{1,2}))?\\s*%\\s*$"_s);
    const auto match = share.match(typed);
    if (!match.hasMatch())
        return {std::nullopt, typed};
    const std::int64_t points = match.capturedView(2).toInt() * 100
        + match.captured(3).leftJustified(2, u'0').toInt();
    return {Percent::basisPoints(match.capturedView(1) == u"-" ? -points : points), {}};
}

std::int64_t changedBy(std::int64_t number, Percent by) {
    return roundedQuotient(
        Wide(number) * (Percent::hundred() + by).basisPoints(), Percent::hundred().basisPoints());
}

} // namespace miterbook
