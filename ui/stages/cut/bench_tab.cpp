// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/bench_tab.h"

#include "cut/cut_checks.h"
#include "cut/saw_place.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/cut/bench_columns.h"
#include "stages/cut/cut_desk.h"
#include "widgets/plain_text.h"
#include "widgets/record_form.h"
#include "widgets/table_model.h"

#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include <cmath>

namespace miterbook {

namespace {

TableModelBase* benchModel(CutDesk& cut, QObject* parent) {
    TableSpec<Bench> spec;
    spec.name = BenchTab::tr("Saw and bench");
    spec.columns = benchColumns();
    spec.rows = [&cut] { return std::vector<Bench>{cut.book().bench()}; };
    spec.check = checkBench;
    spec.store = [](EditBuilder& edit, Bench row) {
        row.id = Id<Bench>(1);
        edit.put(std::move(row));
    };
    spec.title = [](const Bench&) { return std::string(Describe<Bench>::noun); };
    return new TableModel<Bench>(cut.desk(), std::move(spec), parent);
}

Money cents(double value) {
    return Money::cents(std::llround(value));
}

/// One casing by both ways: minutes, money, clamps, pace.
FigureRow joiningRow(const CutDesk& cut, const Profile& profile, JoiningChoice choice) {
    const Bench& bench = cut.book().bench();
    const double rate = static_cast<double>(cut.book().prices.crewRate().cents());
    const WayOfJoining way = wayOfJoining(bench, choice);
    const SetCost cost = setCost(way, 4, profile.width, rate);
    FigureRow row;
    row.cells = {wordCell(profile.name), wordCell(bench.joiningName(choice)),
        {QObject::tr("%1 min").arg(cost.minutes, 0, 'f', 1), cost.minutes},
        moneyCell(cents(cost.cents)), countCell(cost.clamps),
        {QString::number(cost.setsPerHour, 'f', 1), cost.setsPerHour},
        wordCell(cost.fastened ? "yes" : "no"),
        lengthCell(way.fastenerOver, cut.book().prices.shop().lengths())};
    row.from = QObject::tr(
        "A set of four corners: minutes of hands at the crew's %1 an hour, and "
        "goods. Clamps that would never keep the bench waiting; sets an hour with "
        "the %2 there are.")
                   .arg(text(formatMoney(cut.book().prices.crewRate())))
                   .arg(way.corner.clamps);
    return row;
}

std::vector<FigureRow> joiningRows(const CutDesk& cut) {
    std::vector<FigureRow> rows;
    const Plan& plan = cut.whole().plan;
    Id<Profile> before;
    for (const Id<Profile> id : {plan.windowCasing, plan.doorCasing}) {
        const Profile* profile = id == before ? nullptr : cut.book().prices.profile(id);
        before = id;
        if (!profile)
            continue;
        rows.push_back(joiningRow(cut, *profile, JoiningChoice::first));
        rows.push_back(joiningRow(cut, *profile, JoiningChoice::second));
    }
    return rows;
}

} // namespace

BenchTab::BenchTab(CutDesk& cut, QWidget* parent)
    : QWidget(parent)
    , m_cut(cut)
    , m_joining(new FigureView(tr("Ways of joining"),
          {tr("Casing"), tr("Way"), tr("A set takes"), tr("It costs"), tr("Clamps"),
              tr("Sets an hour"), tr("Biscuits"), tr("Needed over")}))
    , m_moisture(plainLabel({}))
    , m_walking(plainLabel({})) {
    auto* area = new QScrollArea;
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setWidget(new RecordForm(*benchModel(cut, area)));
    area->widget()->setAccessibleName(tr("Saw and bench settings"));
    auto* told = new QWidget;
    auto* right = new QVBoxLayout(told);
    right->addWidget(headLabel(tr("Two ways of joining")));
    right->addWidget(m_joining, 1);
    right->addWidget(headLabel(tr("Moisture")));
    m_moisture->setAccessibleName(tr("What moisture does"));
    right->addWidget(m_moisture);
    right->addWidget(headLabel(tr("Walking")));
    m_walking->setAccessibleName(tr("How far sets are carried"));
    m_walking->setWordWrap(true);
    right->addWidget(m_walking);
    auto* split = new QSplitter;
    split->addWidget(area);
    split->addWidget(told);
    split->setStretchFactor(1, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(split);
    connect(&cut, &CutDesk::reckoned, this, &BenchTab::refresh);
    refresh();
}

QString BenchTab::moisture() const {
    return m_moisture->text();
}

QString BenchTab::walking() const {
    return m_walking->text();
}

void BenchTab::refresh() {
    m_joining->setRows(joiningRows(m_cut));
    sayMoisture();
    sayWalking();
}

/// The best spot for the saw, which the drawing of the plan shows as well.
void BenchTab::sayWalking() {
    const WholePlan& whole = m_cut.whole();
    const auto saw = sawPlaceOn(whole, m_cut.level());
    const Room* room = saw ? whole.room(saw->room) : nullptr;
    m_walking->setText(room
            ? tr("The saw stands best in %1: from there sets are carried %2 ft to their openings "
                 "and back. The drawing of the plan shows the spot.")
                  .arg(text(room->name), text(formatFeet(saw->walked, 0)))
            : tr("No room with openings in its walls is drawn on this level yet, so how far sets "
                 "are carried cannot be told."));
}

void BenchTab::sayMoisture() {
    const Bench& bench = m_cut.book().bench();
    const double from = equilibriumMoisture(bench.rackTemperature, bench.rackHumidity.fraction());
    const double to = equilibriumMoisture(bench.houseTemperature, bench.houseHumidity.fraction());
    const Profile* profile = m_cut.book().prices.profile(m_cut.whole().plan.windowCasing);
    QString said = tr(
        "The trim comes to rest at %1 % where it lies and at %2 % in the finished house.")
                       .arg(from, 0, 'f', 1)
                       .arg(to, 0, 'f', 1);
    if (profile) {
        const double c = changeCoefficient(bench.wood, bench.grain);
        const Length change = widthChange(profile->width, c, from, to);
        const MiterChange miter = miterChange(profile->width, c, from, to);
        said += QLatin1Char('\n')
            + tr("Casing %1 wide of %2 gets %3 in %4; a miter joined now opens %5 in at the %6.")
                  .arg(text(
                      formatLengthWithUnit(profile->width, m_cut.book().prices.shop().lengths())))
                  .arg(text(word(bench.wood)))
                  .arg(std::abs(change.toInches()), 0, 'f', 3)
                  .arg(change < Length() ? tr("narrower") : tr("wider"))
                  .arg(miter.gap.toInches(), 0, 'f', 3)
                  .arg(miter.opens == MiterEnd::toe ? tr("toe (outside)") : tr("heel (inside)"));
    }
    said += QLatin1Char('\n')
        + tr(
            "Rack it in the heated house until it has come to rest; how long that takes is left to "
            "practice and a moisture meter. The reckoning holds from 6 to 14 %.");
    m_moisture->setText(said);
}

} // namespace miterbook
