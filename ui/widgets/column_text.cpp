// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/column_text.h"

#include "basics/typed_date.h"
#include "job/book.h"

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

Result<int> chosenOf(const QStringList& choices, const QString& typed) {
    const QString wanted = typed.trimmed();
    int found = -1;
    int beginning = 0;
    for (int i = 0; i < choices.size(); ++i) {
        if (choices[i].compare(wanted, Qt::CaseInsensitive) == 0)
            return i;
        if (!wanted.isEmpty() && choices[i].startsWith(wanted, Qt::CaseInsensitive)) {
            ++beginning;
            found = i;
        }
    }
    if (beginning == 1)
        return found;
    QStringList named = choices;
    named.removeAll(QString());
    constexpr qsizetype longestList = 12;
    if (named.size() > longestList)
        named = named.mid(0, longestList) << u"\u2026"_s;
    return badInput("\"" + utf8(wanted) + "\" is not one of: " + utf8(named.join(u", "_s)) + ".");
}

Result<bool> parseYesNo(const QString& typed) {
    const QString word = typed.trimmed().toLower();
    if (QStringList{u"yes"_s, u"y"_s, u"x"_s, u"1"_s, u"true"_s}.contains(word))
        return true;
    if (QStringList{QString(), u"no"_s, u"n"_s, u"0"_s, u"false"_s}.contains(word))
        return false;
    return badInput("\"" + utf8(typed.trimmed()) + "\" is neither yes nor no.");
}

QString onOneLine(const QString& lines) {
    QStringList parts = lines.split(u'\n');
    parts.removeAll(QString());
    return parts.join(u" / "_s);
}

QString narrowTitle(const QString& title) {
    constexpr qsizetype longest = 8;
    constexpr qsizetype shortest = 3; // a unit alone has no line of its own
    if (title.size() <= longest)
        return title;
    qsizetype best = -1;
    qsizetype width = title.size();
    for (qsizetype at = title.indexOf(u' '); at >= 0; at = title.indexOf(u' ', at + 1)) {
        const qsizetype rest = title.size() - at - 1;
        const qsizetype wider = std::max(at, rest);
        if (wider < width && std::min(at, rest) >= shortest) {
            width = wider;
            best = at;
        }
    }
    QString broken = title;
    if (best >= 0)
        broken[best] = u'\n';
    return broken;
}

Result<Date> dayIn(const QString& typed, const Book& book) {
    if (typed.trimmed().isEmpty())
        return noDate;
    return parseNearDate(utf8(typed), book.prices.shop().monthFirst, book.prices.day());
}

} // namespace miterbook
