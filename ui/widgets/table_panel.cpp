// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/table_panel.h"

#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/table_proxy.h"

#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

TablePanel::TablePanel(TableModelBase& model, QWidget* parent)
    : QWidget(parent)
    , m_model(model)
    , m_table(new DataTable(model))
    , m_top(new QHBoxLayout)
    , m_find(new QLineEdit)
    , m_totals(hintLabel({})) {
    m_find->setPlaceholderText(tr("Find in %1").arg(model.name().toLower()));
    m_find->setAccessibleName(m_find->placeholderText());
    m_find->setClearButtonEnabled(true);
    m_find->setMaximumWidth(fontMetrics().averageCharWidth() * 40);
    m_totals->setWordWrap(false);
    m_totals->setAlignment(Qt::AlignRight);
    m_totals->setAccessibleDescription(tr("Totals"));
    m_top->addWidget(m_find, 1);
    m_top->addStretch(0);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(m_top);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_totals);

    auto* find = new QShortcut(QKeySequence::Find, this);
    find->setContext(Qt::WidgetWithChildrenShortcut);
    connect(
        find, &QShortcut::activated, m_find, [this] { m_find->setFocus(Qt::ShortcutFocusReason); });
    connect(m_find, &QLineEdit::textChanged, &m_table->proxy(), &TableProxy::setFind);
    connect(m_find, &QLineEdit::returnPressed, m_table, [this] { m_table->setFocus(); });
    const TableProxy* proxy = &m_table->proxy();
    connect(proxy, &QAbstractItemModel::dataChanged, this, &TablePanel::showTotals);
    connect(proxy, &QAbstractItemModel::rowsInserted, this, &TablePanel::showTotals);
    connect(proxy, &QAbstractItemModel::rowsRemoved, this, &TablePanel::showTotals);
    connect(proxy, &QAbstractItemModel::layoutChanged, this, &TablePanel::showTotals);
    showTotals();
}

void TablePanel::addBeside(QWidget* control) {
    m_top->addWidget(control);
}

void TablePanel::showTotals() {
    const TableProxy& proxy = m_table->proxy();
    std::vector<int> shown;
    for (int row = 0; row < proxy.rowCount(); ++row) {
        const int source = proxy.mapToSource(proxy.index(row, 0)).row();
        if (source != m_model.blankRow() && m_model.markOf(source) != RowMark::removed)
            shown.push_back(source);
    }
    const auto count = static_cast<int>(shown.size());
    QStringList parts{count == m_model.realRows()
            ? counted(count, tr("1 row"), tr("%1 rows"))
            : tr("%1 of %2 rows").arg(count).arg(m_model.realRows())};
    for (int column = 0; column < m_model.columnCount(); ++column) {
        if (!m_model.isSummed(column))
            continue;
        std::int64_t sum = 0;
        for (const int row : shown)
            sum += m_model.number(row, column);
        parts.append(m_model.titleWithUnit(column) + u" "_s + m_model.written(sum, column));
    }
    m_totals->setText(parts.join(u"     "_s));
}

} // namespace miterbook
