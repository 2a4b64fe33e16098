// SPDX-License-Identifier: GPL-3.0-or-later
// What there can be one of is refused a second time.
#include "job/row_check.h"
#include "job/start_house.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class TwinCheck : public testing::Test {
protected:
    void SetUp() override {
        CrewMember lena;
        lena.id = m_lena;
        lena.name = "Lena";
        m_book.prices.of<CrewMember>().put(lena);
        apply(m_book, start("Lot 12"));
        m_lot12 = std::prev(m_book.jobs.of<House>().end())->first;
    }
    Edit start(const std::string& name, Id<Plan> plan = Id<Plan>(31)) {
        HouseStart start;
        start.plan = plan;
        start.name = name;
        const auto edit = startHouse(m_book, m_ids, start);
        EXPECT_TRUE(edit.ok());
        return edit ? *edit : Edit();
    }
    House added(const std::string& name, Id<Plan> plan = Id<Plan>(31)) {
        apply(m_book, start(name, plan));
        return std::prev(m_book.jobs.of<House>().end())->second;
    }
    template <class Row>
    std::string refusal(const Row& row) const {
        return refusalOf(putEdit(m_book, "Put", row));
    }
    std::string refusalOf(const Edit& edit) const {
        const auto checked = checkRows(m_book, edit);
        return checked ? std::string() : checked.error().sentence;
    }
    template <class Row>
    void keep(const Row& row) {
        EXPECT_EQ(refusal(row), "");
        apply(m_book, putEdit(m_book, "Put", row));
    }
    House lot12() const { return *m_book.house(m_lot12); }

    Book m_book = smallBook();
    IdSource m_ids{1000};
    Id<CrewMember> m_lena{500};
    Id<House> m_lot12;
};

TEST_F(TwinCheck, SomebodyIsPaidInOneWay) {
    keep(CrewPay{Id<CrewPay>(600), m_lena, PayBasis::piece});
    EXPECT_EQ(refusal(CrewPay{Id<CrewPay>(601), m_lena, PayBasis::hourly}),
        "The book says already how Lena is paid; change that line instead.");
    keep(CrewPay{Id<CrewPay>(600), m_lena, PayBasis::hourly});
}

TEST_F(TwinCheck, APieceRateIsSaidOnceForEachPersonAndTask) {
    const UnitPrice pay = UnitPrice::tenThousandths(120'000);
    keep(PieceRate{Id<PieceRate>(610), {}, PieceOfWork::doors, Task::prehungDoor, pay});
    keep(PieceRate{Id<PieceRate>(611), m_lena, PieceOfWork::doors, Task::prehungDoor, pay});
    keep(PieceRate{Id<PieceRate>(612), m_lena, PieceOfWork::doors, Task::other, pay});
    keep(PieceRate{Id<PieceRate>(613), m_lena, PieceOfWork::base, Task::other, pay});
    EXPECT_EQ(refusal(PieceRate{Id<PieceRate>(614), m_lena, PieceOfWork::base, Task::other, pay}),
        "There is a piece rate of Lena for base already; change that one instead.");
    EXPECT_NE(refusal(PieceRate{Id<PieceRate>(615), {}, PieceOfWork::doors, Task::prehungDoor, pay})
                  .find("whoever has no rate of their own"),
        std::string::npos);
}

TEST_F(TwinCheck, ARowChangesIntoNoTwinEither) {
    const UnitPrice pay = UnitPrice::tenThousandths(120'000);
    keep(PieceRate{Id<PieceRate>(610), m_lena, PieceOfWork::doors, Task::other, pay});
    keep(PieceRate{Id<PieceRate>(611), m_lena, PieceOfWork::base, Task::other, pay});
    EXPECT_NE(
        refusal(PieceRate{Id<PieceRate>(611), m_lena, PieceOfWork::doors, Task::other, pay}), "");
}

TEST_F(TwinCheck, TheSecondMayComeWhenTheFirstGoes) {
    keep(CrewPay{Id<CrewPay>(600), m_lena, PayBasis::piece});
    EditBuilder edit(m_book, "Anew");
    edit.remove(Id<CrewPay>(600)).put(CrewPay{Id<CrewPay>(601), m_lena, PayBasis::hourly});
    EXPECT_EQ(refusalOf(edit.take()), "");
}

TEST_F(TwinCheck, AShareDoneIsSaidOnceForEachPieceOfWork) {
    keep(WorkDone{Id<WorkDone>(620), m_lot12, PieceOfWork::doors, Percent::whole(10)});
    keep(WorkDone{Id<WorkDone>(621), m_lot12, PieceOfWork::base, Percent::whole(10)});
    EXPECT_EQ(refusal(WorkDone{Id<WorkDone>(622), m_lot12, PieceOfWork::doors, Percent::whole(20)}),
        "How much of doors is done has been said already; change that instead.");
    EXPECT_EQ(
        refusal(WorkDone{Id<WorkDone>(623), m_lot12, PieceOfWork::crown, Percent::whole(101)}),
        "Crown can be from 0 to 100 % done, not 101 %.");
}

TEST_F(TwinCheck, AHousesNameIsOnceOnAPlanSet) {
    const House other = added("Lot 121");
    for (const char* name : {"Lot 12", "lot 12", " LOT 12 "}) {
        House twin = other;
        twin.name = name;
        EXPECT_NE(refusal(twin).find("already; give this one another name."), std::string::npos)
            << name;
    }
    House free = other;
    free.name = "Lot 13";
    EXPECT_EQ(refusal(free), "");
}

TEST_F(TwinCheck, ASecondOfOneNameIsRefusedWhenItComesIn) {
    House twin = lot12();
    twin.id = Id<House>(800);
    EXPECT_NE(refusal(twin), "");
    twin.name = "Lot 12 B";
    EXPECT_EQ(refusal(twin), "");
}

TEST_F(TwinCheck, AnotherPlanOfTheSetIsTheSameSet) {
    Plan birch = *m_book.plan(Id<Plan>(31));
    birch.id = Id<Plan>(700);
    birch.name = "Birch";
    m_book.jobs.of<Plan>().put(birch);
    m_book.sheets.try_emplace(birch.id);
    House twin = added("Lot 20", birch.id);
    twin.name = "Lot 12";
    EXPECT_NE(refusal(twin), "");
    PlanSet other = *m_book.jobs.of<PlanSet>().find(birch.set);
    other.id = Id<PlanSet>(701);
    other.name = "Hillside";
    m_book.jobs.of<PlanSet>().put(other);
    birch.set = other.id;
    m_book.jobs.of<Plan>().put(birch);
    EXPECT_EQ(refusal(twin), "") << "another builder's Lot 12";
}

TEST_F(TwinCheck, WhatAnOldBookHasTwiceMayStay) {
    House second = added("Lot 20");
    second.name = "Lot 12";
    m_book.jobs.of<House>().put(second); // past the checks, as an old program did
    second.note = "the one by the creek";
    EXPECT_EQ(refusal(second), "");
    second.name = "Lot 12 creek";
    keep(second);
    second.name = "Lot 12";
    EXPECT_NE(refusal(second), "") << "but it is not made so again";
}

TEST_F(TwinCheck, AHouseKeepsItsOwnName) {
    House same = lot12();
    same.name = "LOT 12";
    EXPECT_EQ(refusal(same), "");
}

} // namespace
} // namespace miterbook
