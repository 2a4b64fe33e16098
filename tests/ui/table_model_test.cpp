// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/checks.h"
#include "ui/ui_kit.h"
#include "widgets/columns.h"
#include "widgets/table_model.h"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

constexpr Column<Part> partColumns[] = {
    textColumn<&Part::name>("Part"),
    moneyColumn<&Part::price>("Price").sum(),
    checkColumn<&Part::builderSupplies>("Builder supplies"),
    wordColumn<&Part::origin>("From").computed(),
};

class TableModelTest : public testing::Test {
protected:
    TableModelTest()
        : m_model(m_kit.desk(), spec())
        , m_tester(&m_model, QAbstractItemModelTester::FailureReportingMode::Fatal) {}

    TableSpec<Part> spec() {
        TableSpec<Part> spec;
        spec.name = u"Parts"_s;
        spec.columns = partColumns;
        spec.rows = [this] {
            std::vector<Part> rows;
            for (const auto& [id, row] : m_kit.book().prices.of<Part>())
                rows.push_back(row);
            return rows;
        };
        spec.blank = [](int) { return Part(); };
        spec.check = [this](const Part& part) { return check(part, m_kit.book().prices); };
        spec.copied = [](Part& part, int) {
            part.name += " copy";
            part.use = PartUse::other;
        };
        return spec;
    }
    QModelIndex cell(int row, int column) const { return m_model.index(row, column); }
    bool type(int row, int column, const QString& typed) {
        return m_model.setData(cell(row, column), typed, Qt::EditRole);
    }

    UiKit m_kit;
    TableModel<Part> m_model;
    QAbstractItemModelTester m_tester;
};

TEST_F(TableModelTest, ShowsRowsAndABlankOne) {
    ASSERT_GT(m_model.realRows(), 2);
    EXPECT_EQ(m_model.rowCount(), m_model.realRows() + 1);
    EXPECT_EQ(m_model.blankRow(), m_model.realRows());
    EXPECT_EQ(cell(m_model.blankRow(), 0).data().toString(), QString());
    EXPECT_EQ(m_model.headerData(1, Qt::Horizontal, Qt::DisplayRole).toString(), u"Price, $"_s);
    EXPECT_EQ(cell(0, 3).data().toString(), u"starter"_s);
}

TEST_F(TableModelTest, ATypedCellIsOneEditAndBecomesTheShopsOwn) {
    const int writes = m_kit.keeper().writes();
    ASSERT_TRUE(type(0, 1, u"12.50"_s));
    EXPECT_EQ(m_kit.keeper().writes(), writes + 1);
    EXPECT_EQ(m_model.rows()[0].price, Money::cents(1250));
    EXPECT_EQ(cell(0, 3).data().toString(), u"yours"_s);
    EXPECT_EQ(
        m_kit.desk().undoStack().undoText(), u"Revise part "_s + text(m_model.rows()[0].name));
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(cell(0, 3).data().toString(), u"starter"_s);
}

TEST_F(TableModelTest, TheSameTextIsNoEdit) {
    const int writes = m_kit.keeper().writes();
    EXPECT_TRUE(type(0, 1, cell(0, 1).data(Qt::EditRole).toString()));
    EXPECT_EQ(m_kit.keeper().writes(), writes);
    EXPECT_FALSE(m_kit.desk().undoStack().canUndo());
}

TEST_F(TableModelTest, ABadTextIsRefusedWithItsSentence) {
    EXPECT_FALSE(type(0, 1, u"a lot"_s));
    EXPECT_TRUE(m_kit.refused().contains(u"a lot"_s)) << m_kit.refused().toStdString();
    EXPECT_FALSE(type(0, 0, u" "_s));
    EXPECT_EQ(m_kit.refused(), u"A part needs a name."_s);
    EXPECT_EQ(m_kit.keeper().writes(), 0);
}

TEST_F(TableModelTest, AFailedWriteLeavesEverything) {
    const Part before = m_model.rows()[0];
    m_kit.keeper().failWith("The disk is full.");
    EXPECT_FALSE(type(0, 1, u"1"_s));
    EXPECT_EQ(m_kit.refused(), u"The disk is full."_s);
    EXPECT_EQ(m_model.rows()[0], before);
}

TEST_F(TableModelTest, ARowTypedIntoTheBlankOneTakesItsPlace) {
    const QPersistentModelIndex blank(cell(m_model.blankRow(), 0));
    const int rows = m_model.realRows();
    ASSERT_TRUE(type(m_model.blankRow(), 0, u"Ball catch"_s));
    EXPECT_EQ(m_model.realRows(), rows + 1);
    EXPECT_EQ(blank.row(), rows);
    EXPECT_EQ(blank.data().toString(), u"Ball catch"_s);
    EXPECT_EQ(m_kit.desk().undoStack().undoText(), u"Add part Ball catch"_s);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_model.realRows(), rows);
    m_kit.desk().undoStack().redo();
    EXPECT_EQ(m_model.rows().back().name, "Ball catch");
}

TEST_F(TableModelTest, ABlockIsAllOrNothing) {
    const int real = m_model.realRows();
    const Part first = m_model.rows()[0];
    EXPECT_FALSE(
        m_model.writeCells({{0, 1, u"3"_s, 1}, {real, 0, u"Hook"_s, 2}, {real, 1, u"1 1"_s, 2}},
            TableModelBase::Gesture::paste));
    EXPECT_TRUE(m_kit.refused().startsWith(
        u"Nothing was pasted. Row 2 of what was copied, column Price: "_s))
        << m_kit.refused().toStdString();
    EXPECT_EQ(m_model.rows()[0], first);
    ASSERT_TRUE(
        m_model.writeCells({{0, 1, u"3"_s, 1}, {real, 0, u"Hook"_s, 2}, {real, 1, u"1.10"_s, 2}},
            TableModelBase::Gesture::paste));
    EXPECT_EQ(m_model.realRows(), real + 1);
    EXPECT_EQ(m_kit.desk().undoStack().count(), 1) << "one gesture";
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_model.rows()[0], first);
}

TEST_F(TableModelTest, ComputedColumnsArePassedOver) {
    ASSERT_TRUE(m_model.writeCells({{0, 3, u"yours"_s, 1}}, TableModelBase::Gesture::paste));
    EXPECT_EQ(m_model.rows()[0].origin, Origin::starter);
    EXPECT_FALSE(m_model.flags(cell(0, 3)) & Qt::ItemIsEditable);
}

TEST_F(TableModelTest, RowsAreRemovedAndCopied) {
    const int real = m_model.realRows();
    ASSERT_TRUE(m_model.removeRowsAt({0, 1, m_model.blankRow()}));
    EXPECT_EQ(m_model.realRows(), real - 2);
    EXPECT_EQ(m_kit.desk().undoStack().undoText(), u"Remove 2 rows of Parts"_s);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_model.realRows(), real);
    ASSERT_TRUE(m_model.duplicateRows({0}));
    EXPECT_EQ(m_model.rows().back().name, m_model.rows()[0].name + " copy");
}

TEST_F(TableModelTest, TicksAreCheckBoxes) {
    EXPECT_TRUE(m_model.flags(cell(0, 2)) & Qt::ItemIsUserCheckable);
    const bool before = m_model.rows()[0].builderSupplies;
    ASSERT_TRUE(
        m_model.setData(cell(0, 2), before ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole));
    EXPECT_NE(m_model.rows()[0].builderSupplies, before);
    EXPECT_EQ(cell(0, 2).data(Qt::EditRole).toString(), before ? u"no"_s : u"yes"_s);
}

TEST_F(TableModelTest, RowsKeepTheirPlaceWhenOthersGo) {
    const QPersistentModelIndex third(cell(2, 0));
    const QString name = third.data().toString();
    ASSERT_TRUE(m_model.removeRowsAt({0}));
    EXPECT_EQ(third.row(), 1);
    EXPECT_EQ(third.data().toString(), name);
}

TEST_F(TableModelTest, SpeaksItsCells) {
    EXPECT_EQ(cell(0, 0).data(Qt::AccessibleTextRole).toString(),
        u"Part: "_s + text(m_model.rows()[0].name));
}

} // namespace
} // namespace miterbook
