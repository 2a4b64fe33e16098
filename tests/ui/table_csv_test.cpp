// SPDX-License-Identifier: GPL-3.0-or-later
// A table of the book goes out as CSV and comes in again as it was, or not at all.
#include "ui/ui_kit.h"
#include "widgets/data_table.h"
#include "windows/book_tables.h"
#include "windows/profiles_panel.h"
#include "windows/table_csv.h"
#include "windows/table_file.h"

#include <QFile>
#include <QTemporaryDir>
#include <QPushButton>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

/// All texts of a table, row by row, in the order of their words: rows have no order of their own.
QStringList textsOf(const TableModelBase& model) {
    QStringList rows;
    for (int row = 0; row < model.realRows(); ++row) {
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column)
            cells << model.index(row, column).data(Qt::EditRole).toString();
        rows << cells.join(u'|');
    }
    rows.sort();
    return rows;
}

class TableCsv : public testing::Test {
protected:
    TableModelBase& show(QWidget* page) {
        m_page.reset(page);
        return page->findChild<DataTable*>()->cells();
    }
    static void removeAll(TableModelBase& model) {
        std::vector<int> rows;
        for (int row = 0; row < model.realRows(); ++row)
            rows.push_back(row);
        ASSERT_TRUE(model.removeRowsAt(rows));
        ASSERT_EQ(model.realRows(), 0);
    }
    void refuses(TableModelBase& model, const std::string& csv, const QString& sentence) {
        const QStringList before = textsOf(model);
        EXPECT_FALSE(bringTableCsv(model, csv));
        EXPECT_TRUE(m_kit.refused().contains(sentence)) << m_kit.refused().toStdString();
        EXPECT_EQ(textsOf(model), before);
    }

    UiKit m_kit;
    std::unique_ptr<QWidget> m_page;
};

TEST_F(TableCsv, ComesBackAsItWas) {
    Desk& desk = m_kit.desk();
    for (const auto make : {partsTable, consumablesTable, ratesTable, factorsTable,
             piecePricesTable, crewTable, burdenTable, buildersTable, profilesPanel}) {
        TableModelBase& model = show(make(desk));
        const auto brought = bringTableCsv(model, tableCsv(model));
        ASSERT_TRUE(brought) << model.name().toStdString() << m_kit.refused().toStdString();
        EXPECT_EQ(brought->added + brought->changed, 0) << model.name().toStdString();
        EXPECT_EQ(brought->same, model.realRows()) << model.name().toStdString();
        EXPECT_TRUE(brought->notUnderstood.isEmpty());
    }
}

TEST_F(TableCsv, FillsATableThatIsEmpty) {
    TableModelBase& model = show(ratesTable(m_kit.desk()));
    const QStringList before = textsOf(model);
    ASSERT_GT(before.size(), 20);
    const std::string csv = tableCsv(model);
    removeAll(model);
    const auto brought = bringTableCsv(model, csv);
    ASSERT_TRUE(brought) << m_kit.refused().toStdString();
    EXPECT_EQ(brought->added, before.size());
    const QStringList after = textsOf(model);
    EXPECT_EQ(after.size(), before.size());
    for (qsizetype i = 0; i < std::min(after.size(), before.size()); ++i) {
        // Task and minutes; what is brought in is the shop's own, whatever it was before.
        EXPECT_EQ(after[i].section(u'|', 0, 1), before[i].section(u'|', 0, 1));
    }
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(model.realRows(), 0) << "one gesture";
}

TEST_F(TableCsv, ChangesAndAddsInOneGesture) {
    TableModelBase& model = show(crewTable(m_kit.desk()));
    const int rows = model.realRows();
    ASSERT_GT(rows, 0);
    const QString first = model.index(0, 0).data().toString();
    const std::string csv = "wage an hour;Shoe size;NAME\n31.50;9;" + first.toStdString()
        + "\n27.25;10;\"Okoye, Ada\"\n";
    const auto brought = bringTableCsv(model, csv);
    ASSERT_TRUE(brought) << m_kit.refused().toStdString();
    EXPECT_EQ(brought->changed, 1);
    EXPECT_EQ(brought->added, 1);
    EXPECT_EQ(brought->notUnderstood, QStringList{u"Shoe size"_s});
    EXPECT_EQ(model.index(0, 1).data().toString(), u"31.50"_s);
    EXPECT_EQ(model.realRows(), rows + 1);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(model.realRows(), rows);
}

TEST_F(TableCsv, IsRefusedWhole) {
    TableModelBase& model = show(crewTable(m_kit.desk()));
    refuses(model, "", u"nothing in the file"_s);
    refuses(model, "Who,Wage an hour\nAda,30\n", u"no column \"Name\""_s);
    refuses(model, "Name,Wage an hour\nAda,30\nBo,lots\n", u"Line 3 of the file, column Wage"_s);
    const std::string first = model.index(0, 0).data().toString().toStdString();
    refuses(model, "Name,Wage an hour\n" + first + ",30\n" + first + ",31\n",
        u"Line 3: the row is the same as that of line 2"_s);
    refuses(model, "Name,\"Wage an hour, EUR\"\nAda,30\n", u"another unit"_s);
    refuses(model, "Name,Wage an hour\n,30\n", u"nothing under \"Name\""_s);
}

TEST_F(TableCsv, TextThatLooksLikeAFormulaGoesOutGuardedAndComesBack) {
    TableModelBase& model = show(buildersTable(m_kit.desk()));
    ASSERT_TRUE(model.writeCells(
        {{model.blankRow(), 0, u"=1+1 Homes"_s, 0}}, TableModelBase::Gesture::type));
    const std::string csv = tableCsv(model);
    EXPECT_NE(csv.find("'=1+1 Homes"), std::string::npos);
    const auto brought = bringTableCsv(model, csv);
    ASSERT_TRUE(brought);
    EXPECT_EQ(brought->added + brought->changed, 0);
}

TEST_F(TableCsv, AFileSaysWhatItDid) {
    TableModelBase& model = show(crewTable(m_kit.desk()));
    EXPECT_NE(m_page->findChild<QPushButton*>(), nullptr);
    QTemporaryDir folder;
    const QString path = folder.filePath(u"crew.csv"_s);
    EXPECT_TRUE(bringTableFile(model, path).isEmpty());
    EXPECT_TRUE(m_kit.refused().contains(u"crew.csv"_s)) << m_kit.refused().toStdString();
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("Name,Wage an hour\nAda Okoye,30\n");
    file.close();
    EXPECT_EQ(bringTableFile(model, path),
        u"crew.csv: 1 row added, 0 changed, 0 as they were. Undo takes it back."_s);
}

} // namespace
} // namespace miterbook
