// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/table_model_base.h"

#include <QCollator>
#include <QSortFilterProxyModel>

#include <functional>

namespace miterbook {

/// Sorts and finds rows of a table. The blank row is always there and always last. Rows do not jump
/// or vanish while they are typed into: order and filter are taken anew only when asked for.
class TableProxy final : public QSortFilterProxyModel {
    Q_OBJECT
public:
    explicit TableProxy(TableModelBase& model, QObject* parent = nullptr);

    /// Only rows in which every word of `words` occurs in some cell.
    void setFind(const QString& words);
    /// Besides: only rows (of the model) that pass; null: all.
    void setRowFilter(std::function<bool(int)> passes);

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    bool rowHas(int row, const QString& word) const;

    TableModelBase& m_model;
    QStringList m_words;
    std::function<bool(int)> m_passes;
    QCollator m_collator;
};

} // namespace miterbook
