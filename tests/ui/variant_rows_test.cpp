// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/plan_tables.h"
#include "stages/plan/variant_rows.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class VariantRowsTest : public testing::Test {
protected:
    VariantRowsTest()
        : m_tables(m_kit.desk()) {
        m_tables.setTarget({m_kit.plan(), m_kit.crownPack()});
        m_tables.show();
        m_table = m_tables.currentTable();
    }

    UiKit m_kit;
    PlanTables m_tables;
    DataTable* m_table = nullptr;
};

TEST_F(VariantRowsTest, AChangeStaysOutOfTheBasePlan) {
    const Opening base = *m_kit.openingOf("W1");
    goTo(*m_table, 0, u"Width"_s);
    const std::int64_t key = m_table->cells().keyOfRow(0);
    typeCell(*m_table, u"41"_s);
    EXPECT_EQ(*m_kit.openingOf("W1"), base);
    EXPECT_EQ(cellText(*m_table, 0, u"Width"_s), u"41"_s);
    EXPECT_EQ(cellText(*m_table, 0, u"Here"_s), u"changed"_s);
    EXPECT_EQ(m_table->cells().keyOfRow(0), key) << "it is the same row on the screen";
    const Selection chosen{{}, {m_kit.crownPack()}};
    const WholePlan whole = wholePlan(
        *m_kit.book().plan(m_kit.plan()), m_kit.book().sheet(m_kit.plan()), chosen);
    const auto it = std::ranges::find(whole.openings, base.id, &Opening::id);
    ASSERT_NE(it, whole.openings.end());
    EXPECT_EQ(it->width, Length::inches(41));
    m_tables.setTarget({m_kit.plan(), {}});
    EXPECT_NE(cellText(*m_table, 0, u"Width"_s), u"41"_s);
}

TEST_F(VariantRowsTest, ARemovedRowIsStruckThroughAndComesBack) {
    const int rows = m_table->cells().realRows();
    goTo(*m_table, 0, u"Width"_s);
    m_table->removeRows();
    ASSERT_EQ(m_table->cells().realRows(), rows) << "it is still shown";
    EXPECT_EQ(cellText(*m_table, 0, u"Here"_s), u"removed"_s);
    const QModelIndex cell = m_table->model()->index(0, columnOf(*m_table, u"Width"_s));
    EXPECT_TRUE(cell.data(Qt::FontRole).value<QFont>().strikeOut());
    EXPECT_FALSE(cell.flags() & Qt::ItemIsEditable);
    ASSERT_NE(m_kit.openingOf("W1"), nullptr);
    goTo(*m_table, 0, u"Width"_s);
    m_tables.restoreRows();
    EXPECT_EQ(cellText(*m_table, 0, u"Here"_s), QString());
}

TEST_F(VariantRowsTest, AnAddedRowIsTheVariantsOwn) {
    const int rows = m_table->cells().realRows();
    goTo(*m_table, rows, u"Width"_s);
    typeCell(*m_table, u"24"_s);
    ASSERT_EQ(m_table->cells().realRows(), rows + 1);
    EXPECT_EQ(cellText(*m_table, rows, u"Here"_s), u"added"_s);
    m_tables.setTarget({m_kit.plan(), {}});
    EXPECT_EQ(m_table->cells().realRows(), rows);
    m_tables.setTarget({m_kit.plan(), m_kit.crownPack()});
    goTo(*m_table, rows, u"Width"_s);
    m_table->removeRows();
    EXPECT_EQ(m_table->cells().realRows(), rows) << "what it added is simply gone";
}

TEST_F(VariantRowsTest, TheDifferenceIsShownOnlyForAVariant) {
    EXPECT_FALSE(m_table->isColumnHidden(columnOf(*m_table, u"Here"_s)));
    m_tables.setTarget({m_kit.plan(), {}});
    EXPECT_TRUE(m_table->isColumnHidden(columnOf(*m_table, u"Here"_s)));
}

} // namespace
} // namespace miterbook
