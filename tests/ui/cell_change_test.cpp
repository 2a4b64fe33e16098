// SPDX-License-Identifier: GPL-3.0-or-later
// Many cells changed in one gesture.
#include "widgets/cell_change.h"

#include "ui/ui_kit.h"
#include "widgets/data_table.h"
#include "windows/book_tables.h"

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

TEST(CellChange, IsAShareOnlyWithSignAndPercent) {
    EXPECT_EQ(readCellChange(u"+3 %"_s).by, Percent::whole(3));
    EXPECT_EQ(readCellChange(u" - 2.5%"_s).by, Percent::basisPoints(-250));
    EXPECT_EQ(readCellChange(u"+12,25 %"_s).by, Percent::basisPoints(1225));
    for (const char* other : {"3 %", "+3", "-3", "+1.234 %", "+ %", "pine", ""}) {
        const QString typed = QString::fromLatin1(other);
        EXPECT_FALSE(readCellChange(typed).by) << other;
        EXPECT_EQ(readCellChange(typed).put, typed);
    }
}

TEST(CellChange, RoundsHalfAwayFromZero) {
    EXPECT_EQ(changedBy(1000, Percent::whole(3)), 1030);
    EXPECT_EQ(changedBy(50, Percent::whole(1)), 51) << "50.5";
    EXPECT_EQ(changedBy(-50, Percent::whole(1)), -51);
    EXPECT_EQ(changedBy(999, Percent::whole(-100)), 0);
}

class ChangeCells : public testing::Test {
protected:
    ChangeCells()
        : m_page(partsTable(m_kit.desk()))
        , m_table(*m_page->findChild<DataTable*>()) {
        m_price = columnOf(m_table, u"Price"_s);
    }
    void select(int firstRow, int lastRow, int firstColumn, int lastColumn) {
        const QAbstractItemModel& model = *m_table.model();
        m_table.selectionModel()->select(
            {model.index(firstRow, firstColumn), model.index(lastRow, lastColumn)},
            QItemSelectionModel::ClearAndSelect);
    }
    std::int64_t cents(int row) { return m_table.cells().number(row, m_price); }

    UiKit m_kit;
    std::unique_ptr<QWidget> m_page;
    DataTable& m_table;
    int m_price = 0;
};

TEST_F(ChangeCells, RaisesPricesInOneGesture) {
    const std::int64_t first = cents(0);
    const std::int64_t second = cents(1);
    const std::int64_t third = cents(2);
    ASSERT_GT(first, 0);
    select(0, 1, m_price, m_price);
    ASSERT_TRUE(m_table.changeSelected(u"+10 %"_s).ok());
    EXPECT_EQ(cents(0), changedBy(first, Percent::whole(10)));
    EXPECT_EQ(cents(1), changedBy(second, Percent::whole(10)));
    EXPECT_EQ(cents(2), third);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(cents(0), first);
    EXPECT_EQ(cents(1), second);
}

TEST_F(ChangeCells, PutsOneTextIntoAll) {
    select(0, 2, m_price, m_price);
    ASSERT_TRUE(m_table.changeSelected(u"4.25"_s).ok());
    for (int row = 0; row < 3; ++row)
        EXPECT_EQ(cents(row), 425);
}

TEST_F(ChangeCells, RefusesWholeWhatDoesNotFit) {
    const std::int64_t first = cents(0);
    select(0, 1, 0, m_price); // names as well as prices
    auto refused = m_table.changeSelected(u"+10 %"_s);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().sentence.find("percentage"), std::string::npos);
    select(0, 1, m_price, m_price);
    EXPECT_FALSE(m_table.changeSelected(u"a lot"_s).ok());
    EXPECT_EQ(cents(0), first);
    m_table.clearSelection();
    EXPECT_FALSE(m_table.changeSelected(u"1"_s).ok());
}

} // namespace
} // namespace miterbook
