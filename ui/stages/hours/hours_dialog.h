// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/hours_reading.h"

#include <QDialog>

#include <optional>

class QLabel;
class QPushButton;

namespace miterbook {

class Desk;
class FigureView;

/// Brings in hours from a CSV, such as a phone's notes: what is good, what the book has already,
/// what is not good and why; then all good rows, or none.
class HoursDialog final : public QDialog {
    Q_OBJECT
public:
    explicit HoursDialog(Desk& desk, QWidget* parent = nullptr);

    /// Reads a file. False: it has been said.
    bool readFile(const QString& path);
    const std::optional<HoursReading>& reading() const { return m_reading; }
    QString message() const;

public Q_SLOTS:
    void bringIn();

private:
    void chooseFile();
    void showReading();

    Desk& m_desk;
    QString m_path;
    std::optional<HoursReading> m_reading;
    QLabel* m_message;
    FigureView* m_good;
    FigureView* m_rejected;
    QPushButton* m_bring;
};

} // namespace miterbook
