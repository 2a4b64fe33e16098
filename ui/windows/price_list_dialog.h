// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/price_list.h"

#include <QDialog>

#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace miterbook {

class Desk;
class FigureView;

/// Brings in a supplier's price list from a CSV: what changes by how much and from which day, what
/// is not good and why; then the whole list, or nothing of it.
class PriceListDialog final : public QDialog {
    Q_OBJECT
public:
    explicit PriceListDialog(Desk& desk, QWidget* parent = nullptr);

    /// Reads a file. False: it has been said.
    bool readFile(const QString& path);
    const std::optional<PriceListReading>& reading() const { return m_reading; }
    QString message() const;
    FigureView& changes() const { return *m_changes; }
    FigureView& rejected() const { return *m_rejected; }

public Q_SLOTS:
    void bringIn();

private:
    QWidget* askPart();
    void chooseFile();
    void readAgain();
    Result<PriceListReading> readNow() const;
    void showReading();
    QString summary() const;

    Desk& m_desk;
    QString m_path;
    std::string m_bytes;
    std::optional<PriceListReading> m_reading;
    QLineEdit* m_supplier;
    QLineEdit* m_from;
    QComboBox* m_per;
    QLabel* m_message;
    FigureView* m_changes;
    FigureView* m_rejected;
    QPushButton* m_bring;
};

} // namespace miterbook
