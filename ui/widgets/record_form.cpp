// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/record_form.h"

#include "widgets/plain_text.h"
#include "widgets/rest_watcher.h"
#include "widgets/table_model_base.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace miterbook {

RecordForm::RecordForm(TableModelBase& model, QWidget* parent)
    : QWidget(parent)
    , m_model(model)
    , m_layout(new QFormLayout) {
    auto* whole = new QVBoxLayout(this);
    whole->addLayout(m_layout);
    whole->addStretch(1); // what is left over does not part the fields
    m_layout->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_layout->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    build();
    connect(&model, &QAbstractItemModel::dataChanged, this, &RecordForm::showAll);
    connect(&model, &QAbstractItemModel::rowsInserted, this, &RecordForm::showAll);
    connect(&model.desk(), &Desk::refused, this, [this](const QString& sentence) {
        if (m_committing < 0)
            return;
        QLabel* below = m_fields[static_cast<std::size_t>(m_committing)].below;
        below->setText(sentence);
        below->show();
    });
    showAll();
}

void RecordForm::build() {
    for (int column = 0; column < m_model.columnCount(); ++column) {
        Field field{makeEditor(column), plainLabel({})};
        field.editor->setAccessibleName(m_model.titleWithUnit(column));
        field.below->hide();
        auto* name = new QLabel(m_model.titleWithUnit(column));
        name->setTextFormat(Qt::PlainText);
        name->setBuddy(field.editor);
        auto* both = new QVBoxLayout;
        both->setSpacing(2);
        both->addWidget(field.editor, 0, Qt::AlignLeft);
        both->addWidget(field.below);
        m_layout->addRow(name, both);
        m_fields.push_back(field);
    }
}

QWidget* RecordForm::makeEditor(int column) {
    const int letter = fontMetrics().averageCharWidth();
    if (m_model.isComputed(column))
        return plainLabel({});
    switch (m_model.kind(column)) {
    case CellKind::check: {
        auto* box = new QCheckBox;
        connect(box, &QCheckBox::clicked, this, [this, column] { commit(column); });
        return box;
    }
    case CellKind::choice: {
        auto* box = new QComboBox;
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        connect(box, &QComboBox::activated, this, [this, column] { commit(column); });
        return box;
    }
    case CellKind::lines: {
        auto* edit = new QPlainTextEdit;
        edit->setTabChangesFocus(true);
        edit->setMinimumWidth(60 * letter);
        edit->setFixedHeight(fontMetrics().lineSpacing() * 6);
        new RestWatcher(edit, [this, column] { commit(column); });
        return edit;
    }
    default: {
        auto* line = new QLineEdit;
        const bool wide = m_model.kind(column) == CellKind::text;
        line->setMinimumWidth((wide ? 48 : 14) * letter);
        if (!wide)
            line->setMaximumWidth(14 * letter);
        connect(line, &QLineEdit::editingFinished, this, [this, column] { commit(column); });
        return line;
    }
    }
}

QString RecordForm::typed(int column) const {
    const QWidget* editor = m_fields[static_cast<std::size_t>(column)].editor;
    if (const auto* line = qobject_cast<const QLineEdit*>(editor))
        return line->text();
    if (const auto* lines = qobject_cast<const QPlainTextEdit*>(editor))
        return lines->toPlainText();
    if (const auto* choice = qobject_cast<const QComboBox*>(editor))
        return choice->currentText();
    const auto* check = qobject_cast<const QCheckBox*>(editor);
    return check && check->isChecked() ? QStringLiteral("yes") : QStringLiteral("no");
}

void RecordForm::commit(int column) {
    if (m_committing >= 0)
        return;
    m_committing = column;
    m_fields[static_cast<std::size_t>(column)].below->hide();
    const bool taken = m_model.writeCells(
        {{0, column, typed(column), 0}}, TableModelBase::Gesture::type);
    m_committing = -1;
    if (taken)
        show(column);
}

void RecordForm::show(int column) {
    if (m_model.realRows() == 0)
        return;
    const Field& field = m_fields[static_cast<std::size_t>(column)];
    const QModelIndex index = m_model.index(0, column);
    const QString cell = index.data(Qt::EditRole).toString();
    if (auto* line = qobject_cast<QLineEdit*>(field.editor); line && line->text() != cell) {
        line->setText(cell);
    } else if (auto* lines = qobject_cast<QPlainTextEdit*>(field.editor)) {
        if (lines->toPlainText() != cell)
            lines->setPlainText(cell);
    } else if (auto* choice = qobject_cast<QComboBox*>(field.editor)) {
        choice->clear();
        choice->addItems(m_model.choices(index));
        choice->setCurrentText(cell);
    } else if (auto* check = qobject_cast<QCheckBox*>(field.editor)) {
        check->setChecked(m_model.number(0, column) != 0);
    } else if (auto* label = qobject_cast<QLabel*>(field.editor)) {
        label->setText(cell);
    }
}

void RecordForm::showAll() {
    for (int column = 0; column < m_model.columnCount(); ++column) {
        // A field that holds a refused text keeps it until it is put right.
        if (m_fields[static_cast<std::size_t>(column)].below->isHidden() && column != m_committing)
            show(column);
    }
}

} // namespace miterbook
