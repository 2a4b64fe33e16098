// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/result.h"
#include "basics/words.h"
#include "desk/text.h"

#include <QString>
#include <QStringList>

namespace miterbook {

struct Book;

/// Which of `choices` is meant by what was typed: the same text in any case, else the only one that
/// begins with it. Errors: a sentence with the choices.
Result<int> chosenOf(const QStringList& choices, const QString& typed);

/// Reads yes, no, x, 1, 0, true, false and nothing (no).
Result<bool> parseYesNo(const QString& typed);

/// One line for several: parts joined by " / ".
QString onOneLine(const QString& lines);

/// The title of a column of numbers, which are narrower than what is said over them: in two lines
/// where it is long and has several words.
QString narrowTitle(const QString& title);

/// The trade words of an enumeration.
template <Worded E>
QStringList wordsOf() {
    QStringList list;
    for (const auto& entry : Words<E>::list)
        list.append(text(entry.text));
    return list;
}

template <Worded E>
Result<E> chosenWord(const QString& typed) {
    const auto at = chosenOf(wordsOf<E>(), typed);
    if (!at)
        return at.error();
    return Words<E>::list[static_cast<std::size_t>(*at)].value;
}

/// A day as people type it, slashes read as the shop writes them; without a year the such day
/// nearest to the one on which the book is looked at. Nothing typed is no date. Error: one
/// sentence.
Result<Date> dayIn(const QString& typed, const Book& book);

} // namespace miterbook
