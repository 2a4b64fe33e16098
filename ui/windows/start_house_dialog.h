// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/start_house.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;

namespace miterbook {

class Desk;

/// Asks for plan, elevation, options, name, lot and address of a house to be started.
class StartHouseDialog final : public QDialog {
    Q_OBJECT
public:
    /// `plan` is chosen to begin with; none: the first.
    StartHouseDialog(Desk& desk, Id<Plan> plan, QWidget* parent = nullptr);

    /// The edit that starts the house; good after exec() was accepted.
    const Edit& edit() const { return m_edit; }

public Q_SLOTS:
    void accept() override;

private:
    void fillPlans(Id<Plan> chosen);
    void showPlan();
    HouseStart start() const;

    Desk& m_desk;
    Edit m_edit;
    QComboBox* m_plan;
    QComboBox* m_elevation;
    QListWidget* m_options;
    QLineEdit* m_name;
    QLineEdit* m_lot;
    QLineEdit* m_address;
    QLabel* m_refused;
};

} // namespace miterbook
