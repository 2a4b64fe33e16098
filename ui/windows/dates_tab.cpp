// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/dates_tab.h"

#include "basics/quote.h"
#include "desk/desk.h"
#include "job/schedule.h"
#include "papers/icalendar.h"
#include "printing/export_paper.h"
#include "widgets/columns.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"
#include "windows/timeline.h"

#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <set>

namespace miterbook {

namespace {

QStringList houseNames(const HouseDate&, const Book& book) {
    QStringList names;
    for (const auto& [id, house] : book.jobs.of<House>())
        names << text(house.name);
    return names;
}

Result<void> chooseHouse(HouseDate& date, const QString& typed, const Book& book) {
    for (const auto& [id, house] : book.jobs.of<House>()) {
        if (text(house.name) == typed.trimmed()) {
            date.house = id;
            return {};
        }
    }
    return badInput("There is no house " + inQuotes(utf8(typed)) + ".");
}

/// Names separated by commas; a name that nobody of the crew has is refused.
Result<void> readCrew(HouseDate& date, const QString& typed, const Book& book) {
    std::vector<Id<CrewMember>> crew;
    for (const QString& each : typed.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        Id<CrewMember> found;
        for (const auto& [id, member] : book.prices.of<CrewMember>()) {
            if (text(member.name).compare(each.trimmed(), Qt::CaseInsensitive) == 0)
                found = id;
        }
        if (!found)
            return badInput("Nobody in the crew is called " + inQuotes(utf8(each.trimmed())) + ".");
        crew.push_back(found);
    }
    date.crew = std::move(crew);
    return {};
}

constexpr Column<HouseDate> dateColumns[] = {
    Column<HouseDate>{.title = QT_TRANSLATE_NOOP("Column", "House"),
        .kind = CellKind::choice,
        .read =
            [](const HouseDate& date, const Book& book) {
                const House* house = book.house(date.house);
                return house ? text(house->name) : QString();
            },
        .edit = chooseHouse,
        .choices = houseNames},
    wordColumn<&HouseDate::kind>(QT_TRANSLATE_NOOP("Column", "What")),
    dateColumn<&HouseDate::from>(QT_TRANSLATE_NOOP("Column", "From")),
    dateColumn<&HouseDate::to>(QT_TRANSLATE_NOOP("Column", "To")),
    Column<HouseDate>{.title = QT_TRANSLATE_NOOP("Column", "Crew"),
        .read = [](const HouseDate& date, const Book& book) { return text(crewNames(book, date)); },
        .edit = readCrew},
    textColumn<&HouseDate::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

TableModelBase* dateModel(Desk& desk, QObject* parent) {
    TableSpec<HouseDate> spec;
    spec.name = DatesTab::tr("Dates of the houses");
    spec.columns = dateColumns;
    spec.rows = [&desk] { return datesOf(desk.book(), {}); };
    spec.blank = [&desk](int) {
        HouseDate blank;
        const auto& houses = desk.book().jobs.of<House>();
        if (!houses.empty())
            blank.house = std::prev(houses.end())->first; // the one begun last
        blank.from = desk.clock().today();
        return blank;
    };
    spec.check = checkHouseDate;
    spec.title = [&desk](const HouseDate& date) {
        const House* house = desk.book().house(date.house);
        return std::string(word(date.kind)) + (house ? " of " + house->name : std::string());
    };
    spec.emptyHint = DatesTab::tr("Type a house, what happens there, and the days: delivery, first "
                                  "trip, second trip, punch.");
    return new TableModel<HouseDate>(desk, std::move(spec), parent);
}

} // namespace

DatesTab::DatesTab(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_timeline(new Timeline)
    , m_clashes(plainLabel({})) {
    auto* panel = new TablePanel(*dateModel(desk, this));
    m_table = &panel->table();
    auto* save = new QPushButton(tr("Save as &calendar\u2026"));
    connect(save, &QPushButton::clicked, this, &DatesTab::saveCalendar);
    panel->addBeside(save);
    m_clashes->setAccessibleDescription(tr("Clashes"));
    QFont bold = m_clashes->font();
    bold.setBold(true);
    m_clashes->setFont(bold);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(panel, 2);
    layout->addWidget(m_clashes);
    layout->addWidget(m_timeline, 1);
    connect(&desk, &Desk::changed, this, &DatesTab::refresh);
    refresh();
}

QString DatesTab::clashWords() const {
    return m_clashes->isHidden() ? QString() : m_clashes->text();
}

void DatesTab::refresh() {
    const Book& book = m_desk.book();
    std::set<Id<HouseDate>> clashing;
    QStringList sentences;
    for (const DateClash& clash : clashes(book)) {
        clashing.insert(clash.first);
        clashing.insert(clash.second);
        sentences << tr("CLASH: %1").arg(text(clashSentence(book, clash)));
    }
    m_clashes->setText(sentences.join(QLatin1Char('\n')));
    m_clashes->setVisible(!sentences.isEmpty());
    constexpr int shownDaysBack = 30;
    const Date today = m_desk.clock().today();
    std::vector<Timeline::Bar> bars;
    for (const HouseDate& date : datesOf(book, {})) {
        const House* house = book.house(date.house);
        if (!house || date.lastDay() < addDays(today, -shownDaysBack))
            continue;
        QString words = text(word(date.kind));
        if (const std::string crew = crewNames(book, date); !crew.empty())
            words += QStringLiteral(": ") + text(crew);
        bars.push_back(
            {text(house->name), words, date.from, date.lastDay(), clashing.contains(date.id)});
    }
    m_timeline->setVisible(!bars.empty());
    m_timeline->setBars(std::move(bars), today);
}

void DatesTab::saveCalendar() {
    const auto calendar = calendarOf(
        m_desk.book(), datesOf(m_desk.book(), {}), m_desk.clock().timestamp());
    if (!calendar) {
        m_desk.refuse(calendar.error());
        return;
    }
    const QString path = QFileDialog::getSaveFileName(window(), tr("Save as calendar"),
        QDir::home().filePath(QStringLiteral("houses.ics")), tr("Calendar (*.ics)"));
    if (path.isEmpty())
        return;
    if (auto written = writeWholeFile(path, QByteArray::fromStdString(*calendar)); !written)
        m_desk.refuse(written.error());
}

} // namespace miterbook
