// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/field_dialog.h"

#include "basics/number_text.h"
#include "desk/text.h"
#include "widgets/column_text.h"
#include "widgets/plain_text.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace miterbook {

FieldDialog::FieldDialog(const QString& title, const QString& yes, QWidget* parent)
    : QDialog(parent)
    , m_form(new QFormLayout)
    , m_refused(plainLabel({})) {
    setWindowTitle(title);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(yes, QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &FieldDialog::tryIt);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    m_refused->setAccessibleName(tr("What was refused"));
    QFont bold = m_refused->font();
    bold.setBold(true);
    m_refused->setFont(bold);
    m_refused->hide();
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(m_form);
    layout->addWidget(m_refused);
    layout->addStretch(1);
    layout->addWidget(buttons);
    setMinimumWidth(fontMetrics().averageCharWidth() * 60);
}

void FieldDialog::addRow(const QString& label, QWidget* field) {
    auto* words = new QLabel(label);
    words->setTextFormat(Qt::PlainText);
    words->setBuddy(field);
    m_form->addRow(words, field);
}

QLineEdit* FieldDialog::addText(const QString& label, const QString& start) {
    auto* line = new QLineEdit(start);
    addRow(label, line);
    line->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    return line;
}

QLineEdit* FieldDialog::addDate(const QString& label, Date start) {
    return addText(label, text(isoDate(start)));
}

QLineEdit* FieldDialog::addMoney(const QString& label, Money start) {
    return addText(label, start == Money() ? QString() : text(formatMoney(start)));
}

QComboBox* FieldDialog::addChoice(const QString& label, const QStringList& choices) {
    auto* box = new QComboBox;
    box->addItems(choices);
    addRow(label, box);
    box->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    return box;
}

QCheckBox* FieldDialog::addCheck(const QString& words, bool checked) {
    auto* box = new QCheckBox(menuText(words));
    box->setChecked(checked);
    m_form->addRow(box);
    return box;
}

void FieldDialog::addHint(const QString& words) {
    m_form->addRow(hintLabel(words));
}

void FieldDialog::addStep(const QString& words, std::function<Result<void>()> step) {
    auto* button = new QPushButton(words);
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, [this, step = std::move(step)] { say(step()); });
    m_form->addRow(button);
}

bool FieldDialog::run(std::function<Result<void>()> done) {
    m_done = std::move(done);
    return exec() == QDialog::Accepted;
}

void FieldDialog::tryIt() {
    if (say(m_done()))
        accept();
}

bool FieldDialog::say(const Result<void>& result) {
    m_refused->setVisible(!result.ok());
    m_refused->setText(result ? QString() : text(result.error().sentence));
    return result.ok();
}

Result<Date> FieldDialog::dateIn(const QLineEdit& line, const Book& book) {
    auto date = dayIn(line.text(), book);
    if (date && *date == noDate)
        return badInput("Say the day, as 2026-11-25.");
    return date;
}

Result<Money> FieldDialog::moneyIn(const QLineEdit& line) {
    return parseMoney(utf8(line.text().trimmed()));
}

} // namespace miterbook
