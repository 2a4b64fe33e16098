// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/cell_block.h"

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

/// A cell that a spreadsheet would take for a formula.
bool seemsFormula(QStringView cell) {
    if (cell.isEmpty() || !u"=+-@"_s.contains(cell.front()))
        return false;
    const bool signedNumber = cell.size() > 1 && cell.front() == u'-' && cell[1].isDigit();
    return !signedNumber;
}

/// An apostrophe keeps a spreadsheet from reckoning with the text.
QString guarded(const QString& cell) {
    return seemsFormula(cell) ? u'\'' + cell : cell;
}

QString unguarded(const QString& cell) {
    return cell.startsWith(u'\'') && seemsFormula(QStringView(cell).sliced(1)) ? cell.mid(1) : cell;
}

QString quoted(const QString& cell) {
    const bool plain = !cell.contains(u'\t') && !cell.contains(u'\n') && !cell.startsWith(u'"');
    if (plain)
        return cell;
    return u'"' + QString(cell).replace(u"\""_s, u"\"\""_s) + u'"';
}

/// Walks the text once; a quote opens a quoted cell only at the cell's start, because inch marks
/// stand at the end of cells.
class BlockReader {
public:
    explicit BlockReader(const QString& text)
        : m_text(text) {}

    CellBlock read() {
        while (m_at < m_text.size()) {
            m_line.append(unguarded(cell()));
            if (m_at >= m_text.size())
                break;
            const bool lineEnds = m_text[m_at++] == u'\n';
            if (lineEnds)
                m_block.append(std::exchange(m_line, {}));
            else if (m_at == m_text.size())
                m_line.append(QString());
        }
        if (!m_line.isEmpty())
            m_block.append(m_line);
        return m_block;
    }

private:
    QString cell() {
        if (m_text[m_at] == u'"' && closesAt(m_at + 1) >= 0)
            return quotedCell();
        const qsizetype start = m_at;
        while (m_at < m_text.size() && m_text[m_at] != u'\t' && m_text[m_at] != u'\n')
            ++m_at;
        return m_text.mid(start, m_at - start);
    }
    /// Where the quote that closes the cell stands: before a tab, a line end or the end.
    qsizetype closesAt(qsizetype from) const {
        for (qsizetype i = from; i < m_text.size(); ++i) {
            if (m_text[i] != u'"')
                continue;
            const bool last = i + 1 == m_text.size();
            if (!last && m_text[i + 1] == u'"')
                ++i;
            else if (last || m_text[i + 1] == u'\t' || m_text[i + 1] == u'\n')
                return i;
            else
                return -1;
        }
        return -1;
    }
    QString quotedCell() {
        const qsizetype end = closesAt(m_at + 1);
        QString cell = m_text.mid(m_at + 1, end - m_at - 1).replace(u"\"\""_s, u"\""_s);
        m_at = end + 1;
        return cell;
    }

    const QString& m_text;
    qsizetype m_at = 0;
    QStringList m_line;
    CellBlock m_block;
};

} // namespace

QString writeCellBlock(const CellBlock& block) {
    QStringList lines;
    for (const QStringList& row : block) {
        QStringList cells;
        for (const QString& cell : row)
            cells.append(quoted(guarded(cell)));
        lines.append(cells.join(u'\t'));
    }
    return lines.join(u'\n') + u'\n';
}

CellBlock readCellBlock(const QString& tabbed) {
    QString text = tabbed;
    text.replace(u"\r\n"_s, u"\n"_s).replace(u'\r', u'\n');
    return BlockReader(text).read();
}

} // namespace miterbook
