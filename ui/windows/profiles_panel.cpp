// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/profiles_panel.h"

#include "widgets/columns.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "windows/book_table.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr Column<Profile> profileColumns[] = {
    textColumn<&Profile::name>(QT_TRANSLATE_NOOP("Column", "Profile")),
    wordColumn<&Profile::use>(QT_TRANSLATE_NOOP("Column", "Run as")),
    lengthColumn<&Profile::thickness>(QT_TRANSLATE_NOOP("Column", "Thickness")),
    lengthColumn<&Profile::width>(QT_TRANSLATE_NOOP("Column", "Width")),
    textColumn<&Profile::material>(QT_TRANSLATE_NOOP("Column", "Material")),
    wordColumn<&Profile::finish>(QT_TRANSLATE_NOOP("Column", "Finish")),
    checkColumn<&Profile::hardwood>(QT_TRANSLATE_NOOP("Column", "Hardwood")),
    wordColumn<&Profile::joint>(QT_TRANSLATE_NOOP("Column", "Inside corners")),
    angleColumn<&Profile::springAngle>(QT_TRANSLATE_NOOP("Column", "Spring angle")),
    checkColumn<&Profile::symmetric>(QT_TRANSLATE_NOOP("Column", "Turns end for end")),
    wordColumn<&Profile::origin>(QT_TRANSLATE_NOOP("Column", "From")).computed(),
    textColumn<&Profile::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

/// Cents for a foot of a stick, in 1/10 000 dollars.
std::int64_t pricePerFoot(const Stick& stick) {
    if (stick.length <= Length())
        return 0;
    return roundedQuotient(
        Wide(stick.price.cents()) * 100 * 12 * Length::nmPerInch, Wide(stick.length.nm()));
}

constexpr Column<Stick> stickColumns[] = {
    lengthColumn<&Stick::length>(QT_TRANSLATE_NOOP("Column", "Stick length")),
    moneyColumn<&Stick::price>(QT_TRANSLATE_NOOP("Column", "Price of one")),
    Column<Stick>{.title = QT_TRANSLATE_NOOP("Column", "A foot"), .kind = CellKind::money,
        .number = pricePerFoot,
        .write = [](std::int64_t value, const Book&) {
            return text(formatMoney(Money::cents(roundedQuotient(value, 100))));
        },
        .whereFrom = [](const Stick&, const Book&) {
            return QObject::tr("The price of one stick over its length in feet.");
        }},
    checkColumn<&Stick::stocked>(QT_TRANSLATE_NOOP("Column", "Yard stocks it")),
    wordColumn<&Stick::origin>(QT_TRANSLATE_NOOP("Column", "From")).computed(),
};

Profile beginProfile(int) {
    Profile profile; // the commonest stock, so that a name alone makes a sound row
    profile.thickness = Length::sixteenths(11);
    profile.width = Length::sixteenths(36);
    return profile;
}

TableSpec<Stick> stickSpec(Desk& desk, const std::shared_ptr<Id<Profile>>& of) {
    const auto begin = [of](int) {
        Stick stick;
        stick.profile = *of;
        stick.length = Length::feet(16);
        return stick;
    };
    TableSpec<Stick> spec = bookSpec<Stick>(desk, QObject::tr("Sticks"), stickColumns, begin);
    spec.rows = [&desk, of] {
        std::vector<Stick> sticks;
        for (const auto& [id, stick] : desk.book().prices.of<Stick>()) {
            if (stick.profile == *of)
                sticks.push_back(stick);
        }
        std::ranges::stable_sort(sticks, {}, &Stick::length);
        return sticks;
    };
    spec.title = [&desk](const Stick& stick) {
        return "stick of " + std::string(desk.book().prices.profileName(stick.profile));
    };
    spec.emptyHint = QObject::tr("Type the lengths the yard sells and what one stick costs.");
    return spec;
}

} // namespace

QWidget* profilesPanel(Desk& desk) {
    auto* both = new QSplitter;
    auto* profiles = new TableModel<Profile>(
        desk, bookSpec<Profile>(desk, QObject::tr("Profiles"), profileColumns, beginProfile), both);
    auto* left = new TablePanel(*profiles);
    const auto current = std::make_shared<Id<Profile>>();
    auto* sticks = new TableModel<Stick>(desk, stickSpec(desk, current), both);
    auto* of = headLabel({});
    auto* right = new QWidget;
    auto* layout = new QVBoxLayout(right);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(of);
    layout->addWidget(new TablePanel(*sticks), 1);
    both->addWidget(left);
    both->addWidget(right);
    both->setStretchFactor(0, 3);
    both->setStretchFactor(1, 2);
    const auto show = [=, &left = left->table()] {
        const Profile* profile = profiles->rowAt(left.currentRow());
        *current = profile ? profile->id : Id<Profile>();
        of->setText(profile ? QObject::tr("Sticks of %1").arg(text(profile->name))
                            : QObject::tr("Sticks"));
        right->setEnabled(profile != nullptr);
        sticks->refresh();
    };
    QObject::connect(&left->table(), &DataTable::currentRowChanged, both, show);
    QObject::connect(profiles, &QAbstractItemModel::dataChanged, both, show);
    left->table().setCurrentIndex(left->table().model()->index(0, 0));
    show();
    return both;
}

} // namespace miterbook
