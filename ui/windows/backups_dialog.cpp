// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/backups_dialog.h"

#include "widgets/plain_text.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr int pathRole = Qt::UserRole;

QTreeWidget* listOfBackups() {
    auto* list = new QTreeWidget;
    list->setHeaderLabels({BackupsDialog::tr("When"), BackupsDialog::tr("Made"),
        BackupsDialog::tr("Holds"), BackupsDialog::tr("Size")});
    list->setRootIsDecorated(false);
    list->setUniformRowHeights(true);
    list->setAllColumnsShowFocus(true);
    list->setAccessibleName(BackupsDialog::tr("Backups"));
    return list;
}

} // namespace

BackupsDialog::BackupsDialog(const std::vector<BackupLine>& backups, QWidget* parent)
    : QDialog(parent)
    , m_list(listOfBackups()) {
    setWindowTitle(tr("Backups"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    m_restore = buttons->addButton(
        tr("&Put this one in the book's place"), QDialogButtonBox::ActionRole);
    connect(m_restore, &QPushButton::clicked, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_list, &QTreeWidget::currentItemChanged, this, &BackupsDialog::showChoice);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(plainLabel(
        tr("A backup is made when the book has changed since the last one: at opening, and once a "
           "day. The book as it is now is kept as well when another takes its place.")));
    layout->addWidget(m_list, 1);
    if (backups.empty())
        layout->addWidget(hintLabel(tr("There are no backups yet.")));
    layout->addWidget(buttons);
    fill(backups);
    resize(fontMetrics().averageCharWidth() * 120, fontMetrics().height() * 24);
    m_list->setFocus();
}

void BackupsDialog::fill(const std::vector<BackupLine>& backups) {
    for (const BackupLine& line : backups) {
        auto* item = new QTreeWidgetItem(m_list, {line.when, line.why, line.holds, line.size});
        item->setData(0, pathRole, line.readable ? line.path : QString());
        item->setTextAlignment(3, Qt::AlignRight | Qt::AlignVCenter);
        for (int column = 0; !line.readable && column < m_list->columnCount(); ++column)
            item->setForeground(column, palette().brush(QPalette::Disabled, QPalette::Text));
        item->setToolTip(2, safeTip(line.holds));
    }
    for (const int column : {0, 1, 3})
        m_list->resizeColumnToContents(column);
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(2, QHeaderView::Stretch);
    if (m_list->topLevelItemCount() > 0)
        m_list->setCurrentItem(m_list->topLevelItem(0));
    showChoice();
}

void BackupsDialog::showChoice() {
    m_restore->setEnabled(!chosen().isEmpty());
}

QString BackupsDialog::chosen() const {
    const QTreeWidgetItem* item = m_list->currentItem();
    return item ? item->data(0, pathRole).toString() : QString();
}

} // namespace miterbook
