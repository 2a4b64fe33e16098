// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/plan_stage.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"
#include "widgets/table_proxy.h"
#include "windows/main_window.h"

#include <QAbstractButton>
#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

std::unique_ptr<Stage> makePlanStage(Desk& desk, FigureDesk& figures) {
    return std::make_unique<PlanStage>(desk, figures);
}

class ModelsTest : public testing::Test {
protected:
    ModelsTest() {
        m_kit.startHouse("Lot 14");
        m_kit.desk().undoStack().clear(); // what is undone below is only what is done there
        m_window = std::make_unique<MainWindow>(
            m_kit.desk(), m_services, std::vector<StageFactory>{makePlanStage});
        m_window->showJob(m_kit.job());
        m_window->figures().stopSearch();
        lookAtEveryPage();
    }

    /// Parts of the book are made when they are first looked at.
    void lookAtEveryPage() {
        for (QListWidget* list : m_window->findChildren<QListWidget*>()) {
            if (list->accessibleName() != u"Parts of the book"_s)
                continue;
            for (int row = 0; row < list->count(); ++row)
                list->setCurrentRow(row);
        }
    }

    UiKit m_kit;
    NoServices m_services;
    std::unique_ptr<MainWindow> m_window;
};

TEST_F(ModelsTest, EveryModelKeepsTheRulesWhileTheBookChanges) {
    const auto tables = m_window->findChildren<DataTable*>();
    ASSERT_GT(tables.size(), 20);
    std::vector<std::unique_ptr<QAbstractItemModelTester>> testers;
    for (DataTable* table : tables) {
        for (QAbstractItemModel* model :
            {static_cast<QAbstractItemModel*>(&table->cells()), table->model()})
            testers.push_back(std::make_unique<QAbstractItemModelTester>(
                model, QAbstractItemModelTester::FailureReportingMode::Fatal));
    }
    const Book before = m_kit.book();
    QUndoStack& undo = m_kit.desk().undoStack();
    const int begun = undo.index(); // a house was started before
    for (DataTable* table : tables) {
        TableModelBase& cells = table->cells();
        if (cells.realRows() == 0)
            continue;
        cells.duplicateRows({0});
        cells.removeRowsAt({cells.realRows() - 1});
        table->sortByColumn(1, Qt::DescendingOrder);
        table->proxy().setFind(u"a"_s);
        table->proxy().setFind({});
    }
    ASSERT_GT(undo.count(), 10);
    while (undo.index() > begun)
        undo.undo();
    EXPECT_EQ(m_kit.book(), before);
    while (undo.canRedo())
        undo.redo();
    while (undo.index() > begun)
        undo.undo();
    EXPECT_EQ(m_kit.book(), before);
}

TEST_F(ModelsTest, EveryControlHasAName) {
    for (const QWidget* widget : m_window->findChildren<QWidget*>()) {
        const bool control = qobject_cast<const QLineEdit*>(widget)
            || qobject_cast<const QComboBox*>(widget)
            || qobject_cast<const QAbstractButton*>(widget)
            || qobject_cast<const QAbstractItemView*>(widget);
        // Qt's own parts, named by the widget they belong to.
        const bool inner = widget->objectName().startsWith(u"qt_"_s)
            || qobject_cast<const QComboBox*>(widget->parentWidget())
            || qobject_cast<const QLineEdit*>(widget->parentWidget())
            || qobject_cast<const QTableView*>(widget->parentWidget())
            || widget->inherits("QHeaderView") || widget->inherits("QComboBoxListView")
            || widget->inherits("QToolBarExtension") || widget->inherits("QTabBar")
            || widget->parentWidget()->inherits("QTabBar")
            || widget->parentWidget()->inherits("QMenuBar");
        if (!control || inner)
            continue;
        QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(
            const_cast<QWidget*>(widget));
        ASSERT_NE(spoken, nullptr);
        EXPECT_FALSE(spoken->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className() << " in "
            << widget->parentWidget()->metaObject()->className();
    }
}

} // namespace
} // namespace miterbook
