// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/room_name.h"

#include <algorithm>

namespace miterbook {

namespace {

double widthOf(const QString& text, const LabelFont& font) {
    double wide = 0;
    for (const QString& line : text.split(QChar(u'\n')))
        wide = std::max(wide, font.width(line));
    return wide;
}

/// The name in two lines, parted at the space that leaves them narrowest; itself without a space.
QString inTwoLines(const QString& name, const LabelFont& font) {
    QString best = name;
    for (qsizetype at = name.indexOf(QChar(u' ')); at > 0; at = name.indexOf(QChar(u' '), at + 1)) {
        QString parted = name;
        parted[at] = QChar(u'\n');
        if (best == name || widthOf(parted, font) < widthOf(best, font))
            best = parted;
    }
    return best;
}

} // namespace

std::vector<FittedName> fittedNames(const QString& name, const QString& number, QSizeF room,
    const LabelFont& bold, const LabelFont& small) {
    std::vector<FittedName> fitting;
    for (const bool isSmall : {false, true}) {
        const LabelFont& font = isSmall ? small : bold;
        const QString parted = inTwoLines(name, font);
        for (const QString& text : parted == name ? QStringList{name} : QStringList{name, parted}) {
            const double high = font.height() * static_cast<double>(1 + text.count(u'\n'));
            if (widthOf(text, font) <= room.width() && high <= room.height())
                fitting.push_back({text, isSmall});
        }
    }
    if (small.height() > room.height())
        return fitting;
    if (!number.isEmpty() && small.width(number) <= room.width())
        fitting.push_back({number, true});
    const QString cut = small.elided(name, room.width());
    if (cut != name && cut.size() > 3)
        fitting.push_back({cut, true});
    return fitting;
}

} // namespace miterbook
