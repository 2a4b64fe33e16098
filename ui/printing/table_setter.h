// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "printing/page_marks.h"
#include "printing/paper_fonts.h"
#include "printing/table_widths.h"

namespace miterbook {

/// Sets a table as slabs: title and heads (again on each page it runs over), one slab for each row.
/// A total is kept with the two rows above it, a group row with the next, the heads with two rows.
class TableSetter {
public:
    /// `width` and `pageHeight` in dots.
    TableSetter(const PaperTable& table, const PaperFonts& fonts, double width, double pageHeight);

    void set(std::vector<Slab>& slabs);

private:
    struct RowText {
        std::vector<QStringList> cells;
        qsizetype lines = 1; ///< of the highest cell
        QStringList below;

        qsizetype all() const { return lines + below.size(); }
    };
    using Kind = PaperTable::Kind;

    void setTitle(std::vector<Slab>& slabs) const;
    void setHeads(SetBlock& block) const;
    std::shared_ptr<const SetBlock> headsAgain() const;
    void setGroup(std::size_t row, std::vector<Slab>& slabs) const;
    void setRow(std::size_t row, std::vector<Slab>& slabs) const;
    RowText rowText(std::size_t row, bool atTop) const;
    SetBlock rowBlock(std::size_t row, const RowText& text, qsizetype from, qsizetype to) const;
    void setCell(SetBlock& block, const QString& text, TextRole role, std::size_t column,
        double baseline) const;
    QStringList belowText(std::size_t row) const;
    double belowStart() const;
    double ruleStart(std::size_t row) const;
    bool keptWithNext(std::size_t row) const;
    bool isTotal(std::size_t row) const;

    const PaperTable& m_table;
    const PaperFonts& m_fonts;
    double m_width;
    double m_pageHeight;
    double m_padding;   ///< above and below the lines of a row
    TextRole m_largest; ///< of the cells: lines of a row are as high
    std::vector<ColumnBox> m_boxes;
    std::shared_ptr<const SetBlock> m_headsAgain;
};

} // namespace miterbook
