// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;

namespace miterbook {

class Desk;

/// Asks for the builder, plan set, name and floor area of a plan to be begun.
class NewPlanDialog final : public QDialog {
    Q_OBJECT
public:
    explicit NewPlanDialog(Desk& desk, QWidget* parent = nullptr);

    /// The edit that begins the plan; good after exec() was accepted.
    const Edit& edit() const { return m_edit; }

public Q_SLOTS:
    void accept() override;

private:
    void fillSets();
    void refuse(const Error& error);

    Desk& m_desk;
    Edit m_edit;
    QComboBox* m_builder;
    QComboBox* m_set;
    QLineEdit* m_name;
    QLineEdit* m_area;
    QLabel* m_refused;
};

} // namespace miterbook
