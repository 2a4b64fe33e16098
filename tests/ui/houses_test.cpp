// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/ui_kit.h"
#include "widgets/data_table.h"
#include "widgets/table_proxy.h"
#include "windows/houses_page.h"
#include "windows/new_plan_dialog.h"
#include "windows/start_house_dialog.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

TEST(Houses, ShowPriceAndHoursOnceTheyAreKnown) {
    UiKit kit;
    ASSERT_TRUE(kit.startHouse("Lot 14"));
    MoneyDesk money(kit.desk());
    HousesPage page(kit.desk(), money);
    page.resize(1200, 500);
    page.show();
    auto* table = page.findChild<DataTable*>();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return !cellText(*table, 0, u"Hours bid"_s).isEmpty(); }, 60'000));
    EXPECT_GT(cellText(*table, 0, u"Hours bid"_s).toDouble(), 10);
    EXPECT_EQ(cellText(*table, 0, u"Builder"_s), u"Hollis Homes"_s);
    EXPECT_EQ(cellText(*table, 0, u"Started"_s), u"2026-11-25"_s);
}

TEST(Houses, TheStageIsTypedAndFiltered) {
    UiKit kit;
    ASSERT_TRUE(kit.startHouse("Lot 14"));
    ASSERT_TRUE(kit.startHouse("Lot 15"));
    MoneyDesk money(kit.desk());
    HousesPage page(kit.desk(), money);
    page.show();
    auto* table = page.findChild<DataTable*>();
    goTo(*table, 1, u"Stage"_s);
    typeCell(*table, u"won"_s);
    EXPECT_EQ(std::prev(kit.book().jobs.of<House>().end())->second.stage, HouseStage::won);
    QComboBox* filter = nullptr;
    for (QComboBox* box : page.findChildren<QComboBox*>()) {
        if (box->accessibleName() == u"Stage of the houses shown"_s)
            filter = box;
    }
    ASSERT_NE(filter, nullptr);
    filter->setCurrentText(u"won"_s);
    EXPECT_EQ(table->proxy().rowCount(), 1);
    filter->setCurrentIndex(0);
    EXPECT_EQ(table->proxy().rowCount(), 2);
}

TEST(Houses, WinningKeepsTheBidAndFinishingNotesTheDay) {
    UiKit kit;
    const Id<House> house = kit.startHouse("Lot 14");
    MoneyDesk money(kit.desk());
    HousesPage page(kit.desk(), money);
    page.show();
    auto* table = page.findChild<DataTable*>();
    goTo(*table, 0, u"Stage"_s);
    typeCell(*table, u"won"_s);
    EXPECT_FALSE(kit.book().soldBid(kit.book().house(house)->work).empty());
    EXPECT_GT(cellText(*table, 0, u"Hours bid"_s).toDouble(), 10) << "at once: it is in the book";
    goTo(*table, 0, u"Stage"_s);
    typeCell(*table, u"finished"_s);
    EXPECT_EQ(cellText(*table, 0, u"Finished"_s), u"2026-11-25"_s);
    kit.desk().undoStack().undo();
    kit.desk().undoStack().undo();
    EXPECT_TRUE(kit.book().soldBid(kit.book().house(house)->work).empty());
}

TEST(Houses, DaysAreTypedAsPeopleDo) {
    UiKit kit;
    const Id<House> house = kit.startHouse("Lot 14");
    MoneyDesk money(kit.desk());
    HousesPage page(kit.desk(), money);
    page.show();
    auto* table = page.findChild<DataTable*>();
    const auto typed = [&](const QString& words) {
        goTo(*table, 0, u"Started"_s);
        typeCell(*table, words);
        return isoDate(kit.book().house(house)->started);
    };
    EXPECT_EQ(typed(u"11/20/2026"_s), "2026-11-20");
    EXPECT_EQ(typed(u"Nov 3"_s), "2026-11-03");
    EXPECT_EQ(typed(u"1/7"_s), "2027-01-07") << "the nearest such day";
    EXPECT_EQ(typed(u"2.12.26"_s), "2026-12-02");
    EXPECT_EQ(typed(u"2026-11-25"_s), "2026-11-25");
    EXPECT_EQ(typed(u"soon"_s), "2026-11-25");
    EXPECT_TRUE(kit.refused().contains(u"is not a date"_s)) << kit.refused().toStdString();
}

TEST(Houses, OneNameOnOnePlanSetIsRefused) {
    UiKit kit;
    ASSERT_TRUE(kit.startHouse("Lot 14"));
    const Id<House> other = kit.startHouse("Lot 15");
    House twin = *kit.book().house(other);
    twin.name = "lot 14";
    EXPECT_FALSE(kit.desk().perform(putEdit(kit.book(), "Rename", twin)));
    EXPECT_TRUE(kit.refused().contains(u"give this one another name"_s))
        << kit.refused().toStdString();
    EXPECT_EQ(kit.book().house(other)->name, "Lot 15");
}

TEST(Houses, ThoseInTroubleComeFirst) {
    UiKit kit;
    ASSERT_TRUE(kit.startHouse("Lot 14"));
    const Id<House> late = kit.startHouse("Lot 15");
    MoneyDesk money(kit.desk());
    HousesPage page(kit.desk(), money);
    page.show();
    auto* table = page.findChild<DataTable*>();
    for (const int row : {0, 1}) {
        goTo(*table, row, u"Stage"_s);
        typeCell(*table, u"underway"_s);
    }
    TimeEntry entry;
    entry.id = kit.desk().ids().next<TimeEntry>();
    entry.date = kit.desk().clock().today();
    entry.person = kit.book().prices.of<CrewMember>().begin()->first;
    entry.house = late;
    entry.time = Hours::whole(20);
    entry.done = Quantity::count(2);
    ASSERT_TRUE(kit.desk().perform(putEdit(kit.book(), "Hours", entry)));
    EXPECT_EQ(cellText(*table, 1, u"Used"_s), u"20.0"_s);
    EXPECT_TRUE(cellText(*table, 1, u"Against the bid"_s).startsWith(u"heading "_s));
    for (QAction* action : page.actions()) {
        if (action->text().contains(u"trouble"_s))
            action->trigger();
    }
    EXPECT_EQ(cellText(*table, 0, u"House"_s), u"Lot 15"_s);
}

TEST(Houses, EnterOpensTheHouse) {
    UiKit kit;
    const Id<House> house = kit.startHouse("Lot 14");
    MoneyDesk money(kit.desk());
    HousesPage page(kit.desk(), money);
    page.show();
    JobRef opened;
    QObject::connect(&page, &HousesPage::opened, [&](const JobRef& job) { opened = job; });
    auto* table = page.findChild<DataTable*>();
    goTo(*table, 0, u"House"_s);
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_EQ(opened.house, house);
    EXPECT_EQ(opened.plan, kit.book().house(house)->work);
}

TEST(StartHouse, IsRefusedInTheDialogAndStays) {
    UiKit kit;
    ASSERT_TRUE(kit.startHouse("Lot 14"));
    StartHouseDialog dialog(kit.desk(), kit.plan());
    dialog.accept();
    EXPECT_NE(dialog.result(), QDialog::Accepted);
    bool said = false;
    for (const QLabel* label : dialog.findChildren<QLabel*>())
        said = said || label->text() == u"A house needs a name, such as its lot."_s;
    EXPECT_TRUE(said);
    for (QLineEdit* line : dialog.findChildren<QLineEdit*>()) {
        if (line->placeholderText().contains(u"Lot 14"_s))
            line->setText(u"Lot 16"_s);
    }
    dialog.accept();
    ASSERT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(dialog.edit().sentence, "Start house Lot 16");
}

TEST(NewPlan, BeginsAPlanForANewBuilder) {
    UiKit kit;
    NewPlanDialog dialog(kit.desk());
    dialog.findChild<QComboBox*>()->setEditText(u"Oakline"_s);
    for (QLineEdit* line : dialog.findChildren<QLineEdit*>()) {
        if (!qobject_cast<QComboBox*>(line->parentWidget()) && line->placeholderText().isEmpty())
            line->setText(u"Birch"_s);
    }
    dialog.accept();
    ASSERT_EQ(dialog.result(), QDialog::Accepted);
    ASSERT_TRUE(kit.desk().perform(dialog.edit()));
    EXPECT_EQ(kit.book().prices.of<Builder>().size(), 2U);
}

} // namespace
} // namespace miterbook
