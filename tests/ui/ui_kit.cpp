// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/ui_kit.h"

#include "book/starter_book.h"
#include "job/start_house.h"
#include "support/sample_house.h"
#include "widgets/data_table.h"
#include "widgets/table_proxy.h"

#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

namespace miterbook {

namespace {

Book sampleBook(Id<Plan>& plan, Id<Variant>& elevation, Id<Variant>& crownPack) {
    IdSource ids(10); // the one-row tables have id 1
    Book book;
    book.prices = starterBook(ids);
    Builder builder;
    builder.id = ids.next<Builder>();
    builder.name = "Hollis Homes";
    book.prices.of<Builder>().put(builder);
    PlanSet set;
    set.id = ids.next<PlanSet>();
    set.builder = builder.id;
    set.name = "Mill Creek";
    book.jobs.of<PlanSet>().put(set);
    const SampleHouse sample = sampleHouse(book.prices, ids);
    Plan row = sample.plan;
    row.set = set.id;
    book.jobs.of<Plan>().put(row);
    book.sheets[row.id] = sample.rows;
    plan = row.id;
    elevation = sample.elevation;
    crownPack = sample.crownPack;
    return book;
}

Workbook opened(Keeper& keeper) {
    auto workbook = Workbook::open(keeper);
    return std::move(workbook).value();
}

} // namespace

UiKit::UiKit()
    : m_keeper(sampleBook(m_plan, m_elevation, m_crownPack))
    , m_clock(Date(std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)))
    , m_desk(std::make_unique<Desk>(opened(m_keeper), m_clock)) {
    m_refused = std::make_unique<QSignalSpy>(m_desk.get(), &Desk::refused);
    m_desk->openPlan(m_plan);
}

QString UiKit::refused() const {
    return m_refused->isEmpty() ? QString() : m_refused->last().first().toString();
}

const Opening* UiKit::openingOf(const std::string& mark) const {
    for (const auto& [id, opening] : book().sheet(m_plan).of<Opening>()) {
        if (opening.mark == mark && !opening.variant)
            return &opening;
    }
    return nullptr;
}

Id<House> UiKit::startHouse(const std::string& name) {
    HouseStart start;
    start.plan = m_plan;
    start.name = name;
    start.started = m_clock.today();
    const auto edit = miterbook::startHouse(book(), m_desk->ids(), start);
    if (!edit || !m_desk->perform(*edit))
        return {};
    return std::prev(book().jobs.of<House>().end())->first;
}

QLineEdit* editorOf(const DataTable& table) {
    for (QWidget* child : table.viewport()->findChildren<QWidget*>()) {
        if (auto* box = qobject_cast<QComboBox*>(child); box && box->isVisible())
            return box->lineEdit();
        if (auto* line = qobject_cast<QLineEdit*>(child); line && line->isVisible())
            return line;
    }
    return nullptr;
}

void typeCell(DataTable& table, const QString& typed, Qt::Key leave) {
    if (!editorOf(table))
        QTest::keyClick(&table, Qt::Key_F2);
    QLineEdit* editor = editorOf(table);
    ASSERT_NE(editor, nullptr) << "the cell cannot be typed into";
    editor->selectAll();
    QTest::keyClicks(editor, typed);
    QWidget* receiver = editor;
    if (auto* box = qobject_cast<QComboBox*>(editor->parentWidget())) {
        box->setEditText(typed); // no list may stand over the key that follows
        receiver = box;
    }
    QTest::keyClick(receiver, leave);
    QApplication::processEvents();
}

int columnOf(const DataTable& table, const QString& title) {
    for (int column = 0; column < table.cells().columnCount(); ++column) {
        if (table.cells().title(column) == title)
            return column;
    }
    ADD_FAILURE() << "no column " << title.toStdString();
    return 0;
}

void goTo(DataTable& table, int row, const QString& title) {
    table.setCurrentIndex(table.proxy().index(row, columnOf(table, title)));
}

QString cellText(const DataTable& table, int row, const QString& title) {
    return table.proxy().index(row, columnOf(table, title)).data(Qt::EditRole).toString();
}

} // namespace miterbook
