// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QString>

#include <optional>
#include <vector>

namespace miterbook {

/// One computed number or word of a table that is only read.
struct FigureCell {
    QString text;
    std::optional<double> number; ///< to sort by; the cell is set to the right when there is one

    bool operator==(const FigureCell&) const = default;
};

/// One row: its cells, where they come from in plain sentences, and whether it stands out as a
/// total.
struct FigureRow {
    std::vector<FigureCell> cells;
    QString from;
    bool strong = false;

    bool operator==(const FigureRow&) const = default;
};

/// A table of computed figures. Setting rows changes only what differs, so selection and scroll
/// position stay while the user types elsewhere.
class FigureModel : public QAbstractTableModel {
    Q_OBJECT
public:
    static constexpr int sortRole = Qt::UserRole;
    static constexpr int fromRole = Qt::UserRole + 1;

    explicit FigureModel(QStringList titles, QObject* parent = nullptr);

    /// Returns the places of the rows that differ from what stood there.
    std::vector<int> setRows(std::vector<FigureRow> rows);
    const std::vector<FigureRow>& rows() const { return m_rows; }
    /// Whether a column holds numbers: its title is set to the right like them.
    bool isNumeric(int column) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void fit(std::size_t count);

    QStringList m_titles;
    std::vector<FigureRow> m_rows;
};

} // namespace miterbook
