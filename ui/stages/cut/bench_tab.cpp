// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/bench_tab.h"

#include "cut/cut_checks.h"
#include "cut/label_sheets.h"
#include "cut/saw_place.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "job/saw_spot_edit.h"
#include "stages/cut/bench_columns.h"
#include "stages/cut/cut_desk.h"
#include "widgets/plain_text.h"
#include "widgets/record_form.h"
#include "widgets/scrolled.h"
#include "widgets/seen_refresh.h"
#include "widgets/table_model.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>
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

/// How much wood moves: `0.033 in`, `0.84 mm`.
QString movementText(Length change, LengthUnit written) {
    const Length moved = std::max(change, -change);
    return written == LengthUnit::millimetres
        ? QObject::tr("%1 mm").arg(moved.toMillimetres(), 0, 'f', 2)
        : QObject::tr("%1 in").arg(moved.toInches(), 0, 'f', 3);
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
        way.fastenerOver > Length()
            ? lengthCell(way.fastenerOver, cut.book().prices.shop().lengths())
            : FigureCell{QObject::tr("any width"), std::nullopt}};
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

/// What is walked on a level; empty where nothing is drawn.
QString walkingOn(const CutDesk& cut, const Level& level) {
    const auto best = sawPlaceOn(cut.whole(), level.id);
    const Room* room = best ? cut.whole().room(best->room) : nullptr;
    if (!room)
        return {};
    const auto run = [&](Length length) {
        return text(formatRunWithUnit(length, cut.book().prices.shop().unit, 0));
    };
    QString said = QObject::tr("%1: best in %2, from where sets are carried %3.")
                       .arg(text(level.name), text(room->name), run(best->walked));
    const SawSpot* put = sawSpotOn(cut.book(), cut.plan(), level.id);
    const auto walked = put ? walkedFrom(cut.whole(), level.id, {put->x, put->y}) : std::nullopt;
    if (walked)
        said += QObject::tr(" Where the saw stands it is %1, %2 more.")
                    .arg(run(*walked), run(std::max(*walked - best->walked, Length())));
    return said;
}

} // namespace

BenchTab::BenchTab(CutDesk& cut, QWidget* parent)
    : QWidget(parent)
    , m_cut(cut)
    , m_joining(new FigureView(tr("Ways of joining"),
          {tr("Casing"), tr("Way"), tr("A set takes"), tr("It costs"), tr("Clamps"),
              tr("Sets an hour"), tr("Biscuits"), tr("Needed over")}))
    , m_sheets(new QComboBox)
    , m_moisture(plainLabel({}))
    , m_walking(plainLabel({})) {
    auto* form = new RecordForm(*benchModel(cut, this));
    form->setAccessibleName(tr("Saw and bench settings"));
    auto* settings = new QWidget;
    auto* left = new QVBoxLayout(settings);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(scrolled(form), 1);
    left->addLayout(labelSheetLine());
    auto* told = new QWidget;
    auto* right = new QVBoxLayout(told);
    right->addWidget(headLabel(tr("Two ways of joining")));
    right->addWidget(m_joining, 1);
    right->addWidget(headLabel(tr("Moisture")));
    m_moisture->setAccessibleDescription(tr("What moisture does"));
    right->addWidget(m_moisture);
    right->addWidget(headLabel(tr("Walking")));
    m_walking->setAccessibleDescription(tr("How far sets are carried"));
    m_walking->setWordWrap(true);
    right->addWidget(m_walking);
    auto* split = new QSplitter;
    split->addWidget(settings);
    split->addWidget(told);
    split->setStretchFactor(1, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(split);
    auto* seen = new SeenRefresh(this, [this] { refresh(); });
    connect(&cut, &CutDesk::reckoned, seen, &SeenRefresh::want);
}

QString BenchTab::moisture() const {
    return m_moisture->text();
}

QString BenchTab::walking() const {
    return m_walking->text();
}

/// Sheets of labels as they are sold; another size is typed into the settings above.
QHBoxLayout* BenchTab::labelSheetLine() {
    m_sheets->setAccessibleName(tr("Label sheet"));
    m_sheets->addItem(tr("of your own size"));
    for (const LabelSheet& sheet : commonLabelSheets())
        m_sheets->addItem(text(labelSheetName(sheet)));
    connect(m_sheets, &QComboBox::activated, this, &BenchTab::takeLabelSheet);
    auto* name = new QLabel(tr("&Label sheet"));
    name->setBuddy(m_sheets);
    auto* line = new QHBoxLayout;
    line->addWidget(name);
    line->addWidget(m_sheets, 1);
    return line;
}

void BenchTab::showLabelSheet() {
    const auto sheets = commonLabelSheets();
    const auto at = std::ranges::find_if(
        sheets, [&](const LabelSheet& sheet) { return printsOn(m_cut.book().bench(), sheet); });
    m_sheets->setCurrentIndex(at == sheets.end() ? 0 : static_cast<int>(at - sheets.begin()) + 1);
}

void BenchTab::takeLabelSheet(int choice) {
    if (choice <= 0)
        return showLabelSheet();
    Bench bench = withLabelSheet(
        m_cut.book().bench(), commonLabelSheets()[static_cast<std::size_t>(choice - 1)]);
    bench.id = Id<Bench>(1);
    m_cut.desk().perform(putEdit(m_cut.book(), "Choose a label sheet", std::move(bench)));
}

void BenchTab::refresh() {
    showLabelSheet();
    m_joining->setRows(joiningRows(m_cut));
    sayMoisture();
    sayWalking();
}

/// Best and chosen spot of each level shown; the drawing of the plan shows both as well.
void BenchTab::sayWalking() {
    QStringList lines;
    for (const Level& level : m_cut.whole().levels) {
        if (m_cut.level() && level.id != m_cut.level())
            continue;
        if (const QString line = walkingOn(m_cut, level); !line.isEmpty())
            lines << line;
    }
    if (lines.isEmpty())
        lines << tr("No room with openings in its walls is drawn on this level yet, so how far "
                    "sets are carried cannot be told.");
    else
        lines << tr("There and back, one way for each set. On the drawing of the plan, M puts "
                    "saw and bench where you click.");
    m_walking->setText(lines.join(QLatin1Char('\n')));
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
    const LengthStyle style = m_cut.book().prices.shop().lengths();
    if (profile) {
        const double c = changeCoefficient(bench.wood, bench.grain);
        const Length change = widthChange(profile->width, c, from, to);
        const MiterChange miter = miterChange(profile->width, c, from, to);
        said += QLatin1Char('\n')
            + tr("Casing %1 wide of %2 gets %3 %4; a miter joined now opens %5 at the %6.")
                  .arg(text(formatLengthWithUnit(profile->width, style)))
                  .arg(text(word(bench.wood)))
                  .arg(movementText(change, style.unit))
                  .arg(change < Length() ? tr("narrower") : tr("wider"))
                  .arg(movementText(miter.gap, style.unit))
                  .arg(miter.opens == MiterEnd::toe ? tr("toe (outside)") : tr("heel (inside)"));
    }
    said += QLatin1Char('\n')
        + tr(
            "Rack it in the heated house until it has come to rest; how long that takes is left to "
            "practice and a moisture meter. The reckoning holds from 6 to 14 %.");
    m_moisture->setText(said);
}

} // namespace miterbook
