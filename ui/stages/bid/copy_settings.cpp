// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/copy_settings.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "job/sent_bids.h"
#include "widgets/field_dialog.h"

#include <QComboBox>

#include <algorithm>

namespace miterbook {

namespace {

/// A plan that settings can be copied to, as it is named in the list.
struct Goal {
    QString name;
    Id<Plan> plan;
};

QString goalName(const Book& book, const Plan& plan) {
    const Builder* builder = book.builderOf(plan);
    const QString whose = builder ? QStringLiteral(" \u00b7 ") + text(builder->name) : QString();
    if (const House* house = book.house(plan.house))
        return QObject::tr("house %1").arg(text(house->name)) + whose;
    return QObject::tr("plan %1").arg(text(plan.name)) + whose;
}

std::vector<Goal> goalsFor(const Book& book, Id<Plan> from) {
    std::vector<Goal> goals;
    for (const auto& [id, plan] : book.jobs.of<Plan>()) {
        if (id != from)
            goals.push_back({goalName(book, plan), id});
    }
    std::ranges::sort(goals, [](const Goal& a, const Goal& b) {
        return QString::localeAwareCompare(a.name, b.name) < 0;
    });
    return goals;
}

} // namespace

void copySettingsDialog(Desk& desk, Id<Plan> from, QWidget* parent) {
    const std::vector<Goal> goals = goalsFor(desk.book(), from);
    if (goals.empty()) {
        desk.refuse(Error{Fault::notFound, "There is no other plan or house to copy them to."});
        return;
    }
    QStringList names;
    for (const Goal& goal : goals)
        names << goal.name;
    FieldDialog dialog(QObject::tr("Copy the bid's settings"), QObject::tr("Copy them"), parent);
    auto* to = dialog.addChoice(QObject::tr("&To"), names);
    dialog.addHint(
        QObject::tr("How it is priced, profit, overhead, trips, rules, allowances and the "
                    "words on the bid. The plan itself stays as it is."));
    Result<Edit> edit = Edit();
    const bool said = dialog.run([&]() -> Result<void> {
        edit = copyBidSettings(desk.book(), desk.ids(), from,
            goals[static_cast<std::size_t>(to->currentIndex())].plan);
        return edit ? Result<void>() : Result<void>(edit.error());
    });
    if (said)
        desk.perform(*edit);
}

} // namespace miterbook
