// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/schedule_reading.h"

#include <QDialog>

#include <optional>

class QComboBox;
class QDialogButtonBox;
class QFormLayout;
class QLabel;
class QPushButton;

namespace miterbook {

class Desk;
class ScheduleView;

/// Brings in a window, door or room schedule: which column means what, what is good, what is not
/// and why; then all good rows, or none.
class ScheduleDialog final : public QDialog {
    Q_OBJECT
public:
    ScheduleDialog(Desk& desk, ScheduleKind kind, Id<Plan> plan, QWidget* parent = nullptr);

    /// Reads a file; the dialog asks for one itself when it is shown without. False: it has been
    /// said.
    bool readFile(const QString& path);
    const std::optional<ScheduleReading>& reading() const { return m_reading; }

public Q_SLOTS:
    void bringIn();

private:
    void chooseFile();
    void fillLevels();
    void fillColumns();
    void read();
    void takeChoice(const QString& header, int field);
    void addLevels();
    void showReading();

    Desk& m_desk;
    ScheduleKind m_kind;
    ScheduleTarget m_target;
    QString m_path;
    std::string m_bytes;
    std::vector<HeaderChoice> m_choices;
    std::optional<ScheduleReading> m_reading;
    QComboBox* m_level;
    QWidget* m_columns = nullptr;
    QFormLayout* m_mapping = nullptr;
    QLabel* m_message;
    QPushButton* m_addLevels;
    ScheduleView* m_view;
    QPushButton* m_bring;
};

} // namespace miterbook
