// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/profiles_panel.h"

#include "book/stick_prices.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "job/stick_edits.h"
#include "widgets/columns.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "windows/book_table.h"
#include "windows/price_list_dialog.h"
#include "windows/price_list_file.h"
#include "windows/section_picture.h"

#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr Column<Profile> profileColumns[] = {
    textColumn<&Profile::name>(QT_TRANSLATE_NOOP("Column", "Profile")),
    wordColumn<&Profile::use>(QT_TRANSLATE_NOOP("Column", "Run as")),
    lengthColumn<&Profile::thickness>(QT_TRANSLATE_NOOP("Column", "Thickness")),
    lengthColumn<&Profile::width>(QT_TRANSLATE_NOOP("Column", "Width")),
    wordColumn<&Profile::section>(QT_TRANSLATE_NOOP("Column", "Section")),
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
    Column<Stick>{.title = QT_TRANSLATE_NOOP("Column", "By length"),
        .kind = CellKind::runPrice,
        .number = pricePerFoot,
        .write =
            [](std::int64_t value, const Book& book) {
                const UnitPrice one = priceSaid(
                    UnitPrice::tenThousandths(value), Unit::linearFoot, book.prices.shop().unit);
                return text(formatMoney(Money::cents(roundedQuotient(one.tenThousandths(), 100))));
            },
        .whereFrom
        = [](const Stick&,
              const Book&) { return QObject::tr("The price of one stick over its length."); }},
    checkColumn<&Stick::stocked>(QT_TRANSLATE_NOOP("Column", "Yard stocks it")),
    wordColumn<&Stick::origin>(QT_TRANSLATE_NOOP("Column", "From")).computed(),
};

bool isMetric(const Desk& desk) {
    return desk.book().prices.shop().unit == LengthUnit::millimetres;
}

/// The commonest stock, so that a name alone makes a sound row.
Profile beginProfile(const Desk& desk) {
    Profile profile;
    profile.thickness = isMetric(desk) ? Length::millimetres(18) : Length::sixteenths(11);
    profile.width = isMetric(desk) ? Length::millimetres(57) : Length::sixteenths(36);
    return profile;
}

TableSpec<Stick> stickSpec(Desk& desk, const std::shared_ptr<Id<Profile>>& of) {
    const auto begin = [&desk, of](int) {
        Stick stick;
        stick.profile = *of;
        stick.length = isMetric(desk) ? Length::millimetres(4800) : Length::feet(16);
        return stick;
    };
    TableSpec<Stick> spec = bookSpec<Stick>(desk, QObject::tr("Sticks"), stickColumns, begin);
    spec.rows = [&desk, of] { return desk.book().prices.sticksOf(*of); };
    spec.store = [&desk](EditBuilder& edit, Stick stick) {
        putStick(edit, desk.ids(), std::move(stick), desk.clock().today());
    };
    spec.remove = [](EditBuilder& edit, const Stick& stick) { removeStick(edit, stick.id); };
    spec.title = [&desk](const Stick& stick) {
        return "stick of " + std::string(desk.book().prices.profileName(stick.profile));
    };
    spec.emptyHint = QObject::tr("Type the lengths the yard sells and what one stick costs.");
    return spec;
}

/// The dated prices of the profile's sticks, the latest first.
std::vector<FigureRow> historyRows(const PriceBook& prices, Id<Profile> profile) {
    std::vector<FigureRow> rows;
    for (const Stick& stick : prices.sticksOf(profile)) {
        auto history = priceHistory(prices, stick.id);
        std::ranges::reverse(history);
        for (const StickPrice& price : history) {
            const bool begun = !prices.day().ok() || price.from <= prices.day();
            FigureRow row;
            row.cells = {lengthCell(stick.length, prices.shop().lengths()),
                wordCell(isoDate(price.from)), moneyCell(price.price),
                {QObject::tr("%1 a %2").arg(
                     text(formatUnitPrice(price.quoted)), text(word(price.per))),
                    std::nullopt},
                wordCell(price.supplier)};
            row.from = begun
                ? QObject::tr("In force from that day until the next one of this stick.")
                : QObject::tr("Not in force yet.");
            rows.push_back(std::move(row));
        }
    }
    return rows;
}

/// The sticks of the current profile, with the history of their prices below.
struct StickSide {
    QWidget* whole = new QWidget;
    QLabel* of = headLabel({});
    SectionPicture* section = new SectionPicture;
    FigureView* history = new FigureView(QObject::tr("Prices by day"),
        {QObject::tr("Stick"), QObject::tr("From"), QObject::tr("Price of one"),
            QObject::tr("Quoted"), QObject::tr("Supplier")});

    StickSide(Desk& desk, TableModelBase& sticks) {
        auto* bring = new QPushButton(QObject::tr("&Bring in a supplier's prices\u2026"));
        bring->setAutoDefault(false);
        QObject::connect(bring, &QPushButton::clicked, whole,
            [&desk, this_ = whole] { PriceListDialog(desk, this_->window()).exec(); });
        auto* save = new QPushButton(QObject::tr("&Save prices as CSV\u2026"));
        save->setAutoDefault(false);
        QObject::connect(save, &QPushButton::clicked, whole,
            [&desk, this_ = whole] { savePriceList(desk, this_->window()); });
        auto* files = new QHBoxLayout;
        files->addWidget(bring);
        files->addWidget(save);
        files->addStretch(1);
        auto* split = new QSplitter(Qt::Vertical);
        split->addWidget(section);
        split->addWidget(new TablePanel(sticks));
        split->addWidget(history);
        split->setChildrenCollapsible(false);
        auto* layout = new QVBoxLayout(whole);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(of);
        layout->addWidget(split, 1);
        layout->addLayout(files);
    }
};

} // namespace

QWidget* profilesPanel(Desk& desk) {
    auto* both = new QSplitter;
    auto* profiles = new TableModel<Profile>(desk,
        bookSpec<Profile>(desk, QObject::tr("Profiles"), profileColumns,
            [&desk](int) { return beginProfile(desk); }),
        both);
    auto* left = new TablePanel(*profiles);
    addFileButton(*left);
    const auto current = std::make_shared<Id<Profile>>();
    auto* sticks = new TableModel<Stick>(desk, stickSpec(desk, current), both);
    const StickSide side(desk, *sticks);
    both->addWidget(left);
    both->addWidget(side.whole);
    both->setStretchFactor(0, 3);
    both->setStretchFactor(1, 2);
    const auto show = [=, &desk, &left = left->table()] {
        const Profile* profile = profiles->rowAt(left.currentRow());
        *current = profile ? profile->id : Id<Profile>();
        side.of->setText(
            profile ? QObject::tr("Sticks of %1").arg(text(profile->name)) : QObject::tr("Sticks"));
        side.whole->setEnabled(profile != nullptr);
        side.section->show(profile, desk.book().prices.shop().lengths());
        sticks->refresh();
        side.history->setRows(historyRows(desk.book().prices, *current));
    };
    QObject::connect(&left->table(), &DataTable::currentRowChanged, both, show);
    QObject::connect(profiles, &QAbstractItemModel::dataChanged, both, show);
    QObject::connect(&desk, &Desk::changed, both,
        [=, &desk] { side.history->setRows(historyRows(desk.book().prices, *current)); });
    left->table().setCurrentIndex(left->table().model()->index(0, 0));
    show();
    return both;
}

} // namespace miterbook
