// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/ui_kit.h"
#include "windows/book_forms.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

template <class Editor>
Editor* named(const QWidget& form, const QString& name) {
    for (Editor* editor : form.findChildren<Editor*>()) {
        if (editor->accessibleName() == name)
            return editor;
    }
    return nullptr;
}

TEST(RecordForm, EachFieldIsOneEdit) {
    UiKit kit;
    const std::unique_ptr<QWidget> form(practiceForm(kit.desk()));
    form->show();
    auto* kerf = named<QLineEdit>(*form, u"Kerf, in"_s);
    ASSERT_NE(kerf, nullptr);
    EXPECT_EQ(kerf->text(), u"1/8"_s);
    kerf->setText(u"3/16"_s);
    Q_EMIT kerf->editingFinished();
    EXPECT_EQ(kit.book().prices.practice().kerf, Length::sixteenths(3));
    EXPECT_EQ(kit.desk().undoStack().undoText(), u"Revise shop practice"_s);
    kit.desk().undoStack().undo();
    EXPECT_EQ(kerf->text(), u"1/8"_s);
}

TEST(RecordForm, ARefusedTextStaysWithItsSentence) {
    UiKit kit;
    const std::unique_ptr<QWidget> form(practiceForm(kit.desk()));
    form->show();
    auto* kerf = named<QLineEdit>(*form, u"Kerf, in"_s);
    kerf->setText(u"9"_s);
    Q_EMIT kerf->editingFinished();
    EXPECT_EQ(kerf->text(), u"9"_s);
    EXPECT_EQ(kit.book().prices.practice().kerf, Length::sixteenths(2));
    EXPECT_TRUE(kit.refused().contains(u"kerf"_s)) << kit.refused().toStdString();
    kerf->setText(u"1/8"_s);
    Q_EMIT kerf->editingFinished();
    EXPECT_EQ(kerf->text(), u"1/8"_s);
}

TEST(RecordForm, ChoicesAndTicksAndLines) {
    UiKit kit;
    const std::unique_ptr<QWidget> form(shopForm(kit.desk()));
    form->show();
    auto* unit = named<QComboBox>(*form, u"Lengths in"_s);
    ASSERT_NE(unit, nullptr);
    unit->setCurrentText(u"millimetres"_s);
    Q_EMIT unit->activated(unit->currentIndex());
    EXPECT_EQ(kit.book().prices.shop().unit, LengthUnit::millimetres);
    auto* month = named<QCheckBox>(*form, u"Dates with the month first"_s);
    ASSERT_NE(month, nullptr);
    const bool before = month->isChecked();
    month->click();
    EXPECT_NE(kit.book().prices.shop().monthFirst, before);
    auto* address = named<QPlainTextEdit>(*form, u"Address"_s);
    ASSERT_NE(address, nullptr);
    address->setPlainText(u"12 Mill Road\nAlder Falls"_s);
    QFocusEvent left(QEvent::FocusOut);
    QCoreApplication::sendEvent(address, &left);
    EXPECT_EQ(kit.book().prices.shop().address, "12 Mill Road\nAlder Falls");
}

} // namespace
} // namespace miterbook
