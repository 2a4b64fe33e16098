// SPDX-License-Identifier: GPL-3.0-or-later
// The list of backups, and what the Book menu does so that a book is not lost.
#include "ui/ui_kit.h"
#include "windows/backups_dialog.h"
#include "windows/main_window.h"

#include <QApplication>
#include <QMenuBar>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

std::vector<BackupLine> someBackups() {
    return {{u"/b/3"_s, u"2026-11-26 07:10"_s, u"when the book was opened"_s,
                u"14 houses, 3 plans; last change 2026-11-25 17:20: Revise window W4"_s,
                u"2.4 MB"_s, true},
        {u"/b/2"_s, u"2026-11-25 07:05"_s, u"as it was found, damaged"_s,
            u"The book file is damaged."_s, u"2.4 MB"_s, false},
        {u"/b/1"_s, u"2026-11-24 07:00"_s, u"of the day"_s,
            u"<b>13 houses</b>, 3 plans; last change 2026-11-23 16:00: Begin the book"_s,
            u"2.3 MB"_s, true}};
}

QPushButton* restoreButton(const BackupsDialog& dialog) {
    for (QPushButton* button : dialog.findChildren<QPushButton*>()) {
        if (button->text().contains(u"in the book's place"_s))
            return button;
    }
    return nullptr;
}

TEST(BackupsDialog, TheLatestIsChosenAndKeysWalkTheList) {
    BackupsDialog dialog(someBackups());
    dialog.show();
    EXPECT_EQ(dialog.chosen(), u"/b/3"_s);
    EXPECT_TRUE(restoreButton(dialog)->isEnabled());
    auto* list = dialog.findChild<QTreeWidget*>();
    EXPECT_FALSE(list->accessibleName().isEmpty());
    list->setCurrentItem(list->topLevelItem(1));
    EXPECT_EQ(dialog.chosen(), QString()) << "a backup that cannot be read is not put back";
    EXPECT_FALSE(restoreButton(dialog)->isEnabled());
    list->setCurrentItem(list->topLevelItem(2));
    EXPECT_EQ(dialog.chosen(), u"/b/1"_s);
    QTest::mouseClick(restoreButton(dialog), Qt::LeftButton);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
    if (!folder.isEmpty())
        dialog.grab().save(folder + u"/backups.png"_s);
}

TEST(BackupsDialog, WithoutBackupsThereIsNothingToPutBack) {
    BackupsDialog dialog({});
    EXPECT_EQ(dialog.chosen(), QString());
    EXPECT_FALSE(restoreButton(dialog)->isEnabled());
}

/// The Book menu of a window, its dialogs answered.
class SafetyMenu : public testing::Test {
protected:
    SafetyMenu()
        : m_window(m_kit.desk(), m_services, {}) {
        m_services.kept.lines = someBackups();
        m_window.show();
    }
    ~SafetyMenu() override { m_window.figures().stopSearch(); }

    void choose(const QString& words) {
        for (QAction* action : m_window.menuBar()->actions().first()->menu()->actions()) {
            if (action->text().remove(u'&').startsWith(words))
                return action->trigger();
        }
        FAIL() << "no " << words.toStdString() << " in the menu";
    }
    /// Answers each dialog that opens by pressing the button whose words begin so.
    void answerWith(const QStringList& words) {
        m_answers = words;
        QTimer::singleShot(0, &m_window, [this] { answerNext(); });
    }
    void answerNext() {
        QWidget* dialog = QApplication::activeModalWidget();
        if (!dialog || m_answers.isEmpty())
            return;
        const QString wanted = m_answers.takeFirst();
        QTimer::singleShot(0, &m_window, [this] { answerNext(); });
        if (auto* box = qobject_cast<QMessageBox*>(dialog))
            m_said = box->text() + u'\n' + box->informativeText();
        for (QPushButton* button : dialog->findChildren<QPushButton*>()) {
            if (button->text().remove(u'&').startsWith(wanted))
                return button->click();
        }
        ADD_FAILURE() << "no button " << wanted.toStdString();
        dialog->close();
    }

    UiKit m_kit;
    NoServices m_services;
    MainWindow m_window;
    QStringList m_answers;
    QString m_said;
};

TEST_F(SafetyMenu, ABackupIsPutBackAfterAQuestion) {
    answerWith({u"Put this one"_s, u"Put it back"_s});
    choose(u"Backups"_s);
    EXPECT_EQ(m_services.kept.restored, u"/b/3"_s);
}

TEST_F(SafetyMenu, WhoeverKeepsTheBookHasNothingChanged) {
    answerWith({u"Put this one"_s, u"Keep"_s});
    choose(u"Backups"_s);
    EXPECT_EQ(m_services.kept.restored, QString());
}

TEST_F(SafetyMenu, ACheckSaysWhatItFound) {
    answerWith({u"OK"_s});
    choose(u"Check the book"_s);
    EXPECT_TRUE(m_said.startsWith(u"Nothing is wrong"_s)) << m_said.toStdString();
    m_services.kept.findings = QStringList{u"Invoice 3 is not what was issued."_s};
    answerWith({u"OK"_s});
    choose(u"Check the book"_s);
    EXPECT_TRUE(m_said.contains(u"damaged"_s)) << m_said.toStdString();
    EXPECT_TRUE(m_said.contains(u"Invoice 3"_s)) << m_said.toStdString();
}

} // namespace
} // namespace miterbook
