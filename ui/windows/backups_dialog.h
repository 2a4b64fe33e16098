// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "windows/safety_services.h"

#include <QDialog>

class QPushButton;
class QTreeWidget;

namespace miterbook {

/// The backups of the book with what each holds. Accepted when one is to be put in its place.
class BackupsDialog final : public QDialog {
    Q_OBJECT
public:
    explicit BackupsDialog(const std::vector<BackupLine>& backups, QWidget* parent = nullptr);

    /// The file of the backup that is chosen; empty for none.
    QString chosen() const;

private:
    void fill(const std::vector<BackupLine>& backups);
    void showChoice();

    QTreeWidget* m_list;
    QPushButton* m_restore;
};

} // namespace miterbook
