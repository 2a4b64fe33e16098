// SPDX-License-Identifier: GPL-3.0-or-later
// What is used cannot be removed, and the sentence says by what.
#include "job/start_house.h"
#include "job/workbook.h"
#include "support/book_files.h"

namespace miterbook {
namespace {

class References : public testing::Test {
protected:
    void SetUp() override {
        auto made = createBook(m_folder.book(), smallBook());
        ASSERT_TRUE(made.ok()) << made.error().sentence;
        m_keeper = std::move(made).value();
        m_before = *loadWhole(*m_keeper);
    }
    void expectConflict(const Edit& edit, const std::string& sentence) {
        const auto written = m_keeper->write(edit);
        ASSERT_FALSE(written.ok()) << edit.sentence;
        EXPECT_EQ(written.error().fault, Fault::conflict);
        EXPECT_EQ(written.error().sentence, sentence);
        EXPECT_EQ(*loadWhole(*m_keeper), m_before);
        EXPECT_EQ(m_keeper->journal()->size(), 1U);
    }
    template <class Row>
    Edit removal(std::int64_t id) {
        return EditBuilder(m_before, "Remove").remove(Id<Row>(id)).take();
    }
    BookFolder m_folder;
    std::unique_ptr<BookKeeper> m_keeper;
    Book m_before;
};

TEST_F(References, AProfileWithSticks) {
    expectConflict(
        removal<Profile>(20), "The profile \"Flat casing\" is still used by the stick 21.");
}

TEST_F(References, ARoomWithSeveralOpenings) {
    expectConflict(removal<Room>(42),
        "The room \"Great room\" is still used by the opening \"W1\" and 2 more.");
}

TEST_F(References, ABuilderWithPlans) {
    expectConflict(removal<Builder>(10),
        "The builder \"Harrow Homes\" is still used by the plan set \"Harrow Series\".");
}

TEST_F(References, ARowThatNamesWhatIsNotThere) {
    Plan plan = *m_before.plan(Id<Plan>(31));
    plan.crown = Id<Profile>(77);
    expectConflict(putEdit(m_before, "Crown", plan),
        "The plan \"Aspen\" names a profile that is not in the book.");
}

TEST_F(References, ARowAndWhatHangsOnItGoTogetherInAnyOrder) {
    EditBuilder edit(m_before, "Remove the casing");
    Plan plan = *m_before.plan(Id<Plan>(31));
    plan.windowCasing = {};
    edit.remove(Id<Profile>(20)).remove(Id<Stick>(21)).put(plan);
    const auto written = m_keeper->write(edit.take());
    EXPECT_TRUE(written.ok()) << written.error().sentence;
}

TEST_F(References, AWholePlanGoes) {
    const auto written = m_keeper->write(removePlan(m_before, Id<Plan>(31)));
    ASSERT_TRUE(written.ok()) << written.error().sentence;
    EXPECT_TRUE(loadWhole(*m_keeper)->sheets.empty());
}

TEST_F(References, APlanWithAHouse) {
    auto workbook = Workbook::open(*m_keeper);
    ASSERT_TRUE(workbook->openPlan(Id<Plan>(31)).ok());
    const HouseStart start{Id<Plan>(31), {}, "Lot 7", "7", "", noDate};
    ASSERT_TRUE(workbook->perform(*startHouse(workbook->book(), workbook->ids(), start)).ok());
    const auto gone = workbook->perform(removePlan(workbook->book(), Id<Plan>(31)));
    ASSERT_FALSE(gone.ok());
    EXPECT_EQ(gone.error().sentence, "The plan \"Aspen\" is still used by the house \"Lot 7\".");
}

TEST_F(References, AnEditOnOldGroundIsRefused) {
    Builder builder = *m_before.prices.of<Builder>().find(Id<Builder>(10));
    builder.phone = "555-0100";
    const Edit first = putEdit(m_before, "Phone", builder);
    builder.phone = "555-0199";
    const Edit second = putEdit(m_before, "Other phone", builder);
    ASSERT_TRUE(m_keeper->write(first).ok());
    const auto late = m_keeper->write(second);
    ASSERT_FALSE(late.ok());
    EXPECT_EQ(late.error().fault, Fault::conflict);
    const auto twice = m_keeper->write({"Again", {{std::nullopt, AnyRow(builder)}}});
    ASSERT_FALSE(twice.ok());
    EXPECT_EQ(twice.error().fault, Fault::conflict);
}

} // namespace
} // namespace miterbook
