// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/saw_check_tab.h"

#include "cut/cut_checks.h"
#include "desk/desk.h"
#include "papers/cut_words.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/cut_edits.h"
#include "widgets/columns.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/seen_refresh.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr Column<SawTest> testColumns[] = {
    lengthColumn<&SawTest::set>(QT_TRANSLATE_NOOP("Column", "Stop set to")),
    lengthColumn<&SawTest::measured>(QT_TRANSLATE_NOOP("Column", "Piece measured")),
    angleColumn<&SawTest::corner>(QT_TRANSLATE_NOOP("Column", "Corner of two, degrees")),
};

TableModelBase* testModel(CutDesk& cut, QObject* parent) {
    TableSpec<SawTest> spec;
    spec.name = SawCheckTab::tr("Test cuts");
    spec.columns = testColumns;
    spec.rows = [&cut] {
        std::vector<SawTest> rows;
        for (const auto& [id, test] : cut.book().sheet(cut.plan()).of<SawTest>())
            rows.push_back(test);
        return rows;
    };
    spec.blank = [&cut](int) {
        SawTest test;
        test.plan = cut.plan();
        return test;
    };
    spec.check = checkSawTest;
    spec.emptyHint = SawCheckTab::tr("Set the stop, cut a scrap, and type both; a square corner of "
                                     "two scraps checks the angle.");
    auto* model = new TableModel<SawTest>(cut.desk(), std::move(spec), parent);
    QObject::connect(&cut, &CutDesk::reckoned, model, &TableModelBase::refresh);
    return model;
}

/// Casing of windows, for what an angle error opens.
Length faceOf(const CutDesk& cut) {
    const Profile* profile = cut.book().prices.profile(cut.whole().plan.windowCasing);
    return profile ? profile->width : Length();
}

/// Too fine for the fractions of a tape.
QString fineText(Length gap, LengthUnit written) {
    if (written == LengthUnit::millimetres)
        return QObject::tr("%1 mm").arg(gap.toMillimetres(), 0, 'f', 2);
    return QObject::tr("%1 in (%2 mm)")
        .arg(gap.toInches(), 0, 'f', 3)
        .arg(gap.toMillimetres(), 0, 'f', 2);
}

/// What the bow is asked of to begin with: a quarter of an inch over 8 ft, or 6 mm over 2.4 m.
struct UsualBow {
    QString bow;
    QString stick;
};

UsualBow usualBow(LengthUnit written) {
    return written == LengthUnit::millimetres
        ? UsualBow{QStringLiteral("6"), QStringLiteral("2400")}
        : UsualBow{QStringLiteral("1/4"), QStringLiteral("96")};
}

} // namespace

SawCheckTab::SawCheckTab(CutDesk& cut, QWidget* parent)
    : QWidget(parent)
    , m_cut(cut)
    , m_model(testModel(cut, this))
    , m_result(plainLabel({}))
    , m_written(cut.book().prices.shop().unit)
    , m_bow(new QLineEdit(usualBow(m_written).bow))
    , m_stick(new QLineEdit(usualBow(m_written).stick))
    , m_bowResult(plainLabel({})) {
    auto* panel = new TablePanel(*m_model);
    m_table = &panel->table();
    auto* reset = new QPushButton(tr("Tape or fence was reset"));
    connect(reset, &QPushButton::clicked, this, &SawCheckTab::forget);
    panel->addBeside(reset);
    m_result->setAccessibleDescription(tr("What the test cuts tell"));
    m_bowResult->setAccessibleDescription(tr("What the bow does"));
    auto* form = new QFormLayout;
    form->addRow(tr("&Bow of the stick"), m_bow);
    form->addRow(tr("&Over a length of"), m_stick);
    form->addRow(m_bowResult);
    for (QLineEdit* edit : {m_bow, m_stick})
        connect(edit, &QLineEdit::textChanged, this, &SawCheckTab::sayBow);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hintLabel(
        tr("Power off before the stop is moved. Cut two or three scraps as the station stands.")));
    layout->addWidget(panel, 1);
    layout->addWidget(m_result);
    layout->addWidget(headLabel(tr("A bowed stick")));
    layout->addLayout(form);
    auto* seen = new SeenRefresh(this, [this] { refresh(); });
    connect(&cut, &CutDesk::reckoned, seen, &SeenRefresh::want);
}

QString SawCheckTab::result() const {
    return m_result->text();
}

void SawCheckTab::refresh() {
    const LengthStyle style = sawStyle(m_cut.book().prices.shop());
    const SawCorrection& correction = m_cut.figures().correction;
    QStringList lines;
    if (correction.cuts == 0)
        lines << tr("No test cut yet: the sheet's settings are as reckoned.");
    else
        lines << tr("Every setting on the sheet carries %1 (%2 test cuts, apart by %3).")
                     .arg(text(signedLength(correction.add, style)))
                     .arg(correction.cuts)
                     .arg(text(formatLengthWithUnit(correction.spread, style)));
    if (m_cut.figures().corner) {
        const AngleError error = angleError(90, *m_cut.figures().corner, faceOf(m_cut), 4);
        lines << tr(
            "Each cut is %1\u00b0 %2 45\u00b0. One corner opens %3 at the %4; four of them come "
            "to %5 in a frame's last corner.")
                     .arg(std::abs(error.perCut), 0, 'f', 2)
                     .arg(error.perCut < 0 ? tr("under") : tr("over"))
                     .arg(fineText(error.cornerGap, style.unit))
                     .arg(error.perCut < 0 ? tr("toe") : tr("heel"))
                     .arg(fineText(error.lastCornerGap, style.unit));
    }
    m_result->setText(lines.join(QLatin1Char('\n')));
    heedUnit();
    sayBow();
}

/// What was typed was typed in the shop's unit: when that changes, the question begins anew.
void SawCheckTab::heedUnit() {
    const LengthUnit now = m_cut.book().prices.shop().unit;
    if ((now == LengthUnit::millimetres) != (m_written == LengthUnit::millimetres)) {
        m_bow->setText(usualBow(now).bow);
        m_stick->setText(usualBow(now).stick);
    }
    m_written = now;
}

void SawCheckTab::sayBow() {
    const LengthUnit unit = m_cut.book().prices.shop().unit;
    const auto bow = parseLength(utf8(m_bow->text()), unit);
    const auto stick = parseLength(utf8(m_stick->text()), unit);
    if (!bow || !stick) {
        m_bowResult->setText(text((bow ? stick : bow).error().sentence));
        return;
    }
    const Length fence = m_cut.book().bench().fence;
    const double off = bowedStickError(*bow, *stick, fence);
    m_bowResult->setText(tr(
        "With %1 of it against the fence the angle is off by %2\u00b0 once the stick is nailed "
        "straight: a corner of two such cuts opens %3. Hold the stick straight, or pick another.")
                             .arg(text(
                                 formatLengthWithUnit(fence, m_cut.book().prices.shop().lengths())))
                             .arg(off, 0, 'f', 2)
                             .arg(fineText(
                                 angleError(90, 90 - 2 * off, faceOf(m_cut), 1).cornerGap, unit)));
}

void SawCheckTab::forget() {
    m_cut.desk().perform(forgetTestsEdit(m_cut.book(), m_cut.plan()));
}

} // namespace miterbook
