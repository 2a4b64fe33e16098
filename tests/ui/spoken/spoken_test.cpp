// SPDX-License-Identifier: GPL-3.0-or-later
// Whoever hears the screen instead of seeing it: everything that can take the focus, on every page,
// dialog and menu of the sample book, says what it is called and what it is.
#include "ui/spoken/sample_window.h"
#include "ui/spoken/spoken_tree.h"
#include "ui/spoken/window_walk.h"
#include "widgets/spoken_role.h"

#include <QAccessible>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTableWidget>

#include <gtest/gtest.h>

#include <functional>
#include <map>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

/// The sample book's window, as a screen reader is told of it.
class SpokenTest : public testing::Test {
protected:
    SpokenTest() { QAccessible::setActive(true); }
    ~SpokenTest() override { QAccessible::setActive(false); }

    void listen(QWidget& shown, const QString& where) {
        if (qobject_cast<QFileDialog*>(&shown))
            return; // Qt's own
        if (const auto* menu = qobject_cast<QMenu*>(&shown))
            return listenTo(*menu, where);
        const SpokenTree tree = spokenTree(shown);
        m_controls += tree.controls;
        m_cells += tree.cells;
        m_roles.insert(tree.roles.begin(), tree.roles.end());
        for (const QString& fault : tree.faults)
            m_faults.emplace(fault, where);
    }
    void listenTo(const QMenu& menu, const QString& where) {
        for (const QAction* action : menu.actions()) {
            if (!action->isSeparator() && action->text().isEmpty())
                m_faults.emplace(u"an item of a menu has no words"_s, where);
        }
    }
    void expectAllNamed() const {
        for (const auto& [fault, where] : m_faults)
            ADD_FAILURE() << where.toStdString() << ":" << fault.toStdString();
    }

    SampleWindow m_sample;
    int m_controls = 0;
    int m_cells = 0;
    std::set<QString> m_roles;
    std::map<QString, QString> m_faults; ///< and where it was met first
};

TEST_F(SpokenTest, EveryControlOfTheWindowSaysWhatItIs) {
    WindowWalk walk(m_sample.window(), m_sample.desk(),
        [this](QWidget& shown, const QString& where) { listen(shown, where); });
    walk.everyPlace();
    walk.everyStage(m_sample.underway());
    walk.everyStage(m_sample.firstPlan());
    expectAllNamed();
    // That the walk went everywhere, and not only past empty pages:
    for (const QString& title : {u"Backups"_s, u"Bring in hours"_s, u"Bring in windows"_s,
             u"Issue the draw"_s, u"Keys"_s, u"Marked plan"_s, u"New plan"_s, u"Record a payment"_s,
             u"Saw sheet"_s, u"Send the bid"_s, u"Start a house"_s, u"What builders owe, by age"_s})
        EXPECT_TRUE(walk.dialogs().contains(title)) << title.toStdString();
    for (const QString& role :
        {u"Button"_s, u"ButtonMenu"_s, u"Canvas"_s, u"Chart"_s, u"CheckBox"_s, u"ComboBox"_s,
            u"Document"_s, u"EditableText"_s, u"List"_s, u"PageTabList"_s, u"Table"_s, u"Tree"_s})
        EXPECT_TRUE(m_roles.contains(role)) << role.toStdString();
    EXPECT_GT(walk.pressed(), 200);
    EXPECT_GT(m_controls, 2000);
    EXPECT_GT(m_cells, 2000);
}

/// A widget with one child, shown.
template <class Kind>
SpokenTree treeOver(const std::function<void(Kind&)>& made) {
    QWidget window;
    auto* child = new Kind(&window);
    made(*child);
    window.show();
    return spokenTree(window);
}

TEST(SpokenTree, FindsAControlWithoutAName) {
    EXPECT_EQ(treeOver<QPushButton>([](QPushButton&) {}).faults.size(), 1);
    EXPECT_TRUE(treeOver<QPushButton>([](QPushButton& button) {
        button.setText(u"Add"_s);
    }).faults.isEmpty());
    EXPECT_EQ(treeOver<QLineEdit>([](QLineEdit&) {}).faults.size(), 1);
}

TEST(SpokenTree, FindsWhatTakesTheFocusAndSaysNotWhatItIs) {
    const auto drawing = [](QWidget& widget) {
        widget.setAccessibleName(u"Drawing"_s);
        widget.setFocusPolicy(Qt::StrongFocus);
    };
    EXPECT_EQ(treeOver<QWidget>(drawing).faults.size(), 1);
    EXPECT_TRUE(treeOver<QWidget>([&](QWidget& widget) {
        speakAs(widget, QAccessible::Canvas);
        drawing(widget);
    }).faults.isEmpty());
}

TEST(SpokenTree, FindsALabelWhoseTextIsNotHeard) {
    const auto total = [](QLabel& label) { label.setText(u"5 rows"_s); };
    EXPECT_TRUE(treeOver<QLabel>(total).faults.isEmpty());
    EXPECT_EQ(treeOver<QLabel>([&](QLabel& label) {
        total(label);
        label.setAccessibleName(u"Totals"_s);
    }).faults.size(),
        1);
}

TEST(SpokenTree, FindsAnEmptyCellsName) {
    QTableWidget table(1, 1);
    table.setAccessibleName(u"Table"_s);
    table.setHorizontalHeaderLabels({u"Width"_s});
    table.show();
    const SpokenTree silent = spokenTree(table);
    EXPECT_EQ(silent.faults.size(), 1) << silent.faults.join(u'\n').toStdString();
    table.setItem(0, 0, new QTableWidgetItem(u"36"_s));
    EXPECT_TRUE(spokenTree(table).faults.isEmpty());
}

} // namespace
} // namespace miterbook
