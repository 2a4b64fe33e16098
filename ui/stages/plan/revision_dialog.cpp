// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/revision_dialog.h"

#include "desk/text.h"
#include "widgets/plain_text.h"

#include <QDialogButtonBox>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace miterbook {

RevisionDialog::RevisionDialog(std::vector<PlanRevision> revisions, QWidget* parent)
    : QDialog(parent)
    , m_revisions(std::move(revisions))
    , m_list(new QListWidget)
    , m_take(new QPushButton(tr("&Take over what is ticked")))
    , m_keep(new QPushButton(tr("&Keep the house's own there"))) {
    setWindowTitle(tr("The builder's plan has been revised"));
    m_list->setAccessibleName(tr("What the plan now says otherwise"));
    m_list->setWordWrap(true);
    m_list->setAlternatingRowColors(true);
    for (const PlanRevision& revision : m_revisions) {
        auto* item = new QListWidgetItem(text(sentenceOf(revision)), m_list);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(Qt::Checked);
    }
    m_list->setCurrentRow(0);
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(m_take, QDialogButtonBox::ActionRole);
    buttons->addButton(m_keep, QDialogButtonBox::ActionRole);
    buttons->addButton(tr("Later"), QDialogButtonBox::RejectRole);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hintLabel(
        tr("Space ticks a line. What was measured and cut for this house stays with its opening; "
           "the won bid stays as it was sent.")));
    layout->addWidget(m_list, 1);
    layout->addWidget(buttons);
    connect(m_take, &QPushButton::clicked, this, [this] { end(true); });
    connect(m_keep, &QPushButton::clicked, this, [this] { end(false); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_list, &QListWidget::itemChanged, this, &RevisionDialog::showChosen);
    resize(760, 420);
    showChosen();
}

std::vector<PlanRevision> RevisionDialog::chosen() const {
    std::vector<PlanRevision> chosen;
    for (int row = 0; row < m_list->count(); ++row) {
        if (m_list->item(row)->checkState() == Qt::Checked)
            chosen.push_back(m_revisions[static_cast<std::size_t>(row)]);
    }
    return chosen;
}

void RevisionDialog::showChosen() {
    const bool any = !chosen().empty();
    m_take->setEnabled(any);
    m_keep->setEnabled(any);
}

void RevisionDialog::end(bool takes) {
    m_takes = takes;
    accept();
}

} // namespace miterbook
