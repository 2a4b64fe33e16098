// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/plan_revision.h"

#include <QDialog>

class QListWidget;
class QPushButton;

namespace miterbook {

/// What a revised plan would change in a house, each line to be ticked: taken over, or left as the
/// house has it. What is not ticked is asked another time.
class RevisionDialog final : public QDialog {
    Q_OBJECT
public:
    explicit RevisionDialog(std::vector<PlanRevision> revisions, QWidget* parent = nullptr);

    QListWidget& list() const { return *m_list; }
    std::vector<PlanRevision> chosen() const;
    /// Whether what is ticked is taken over; else the house keeps its own.
    bool takes() const { return m_takes; }

private:
    void end(bool takes);
    void showChosen();

    std::vector<PlanRevision> m_revisions;
    QListWidget* m_list;
    QPushButton* m_take;
    QPushButton* m_keep;
    bool m_takes = false;
};

} // namespace miterbook
