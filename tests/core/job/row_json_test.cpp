// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit_json.h"
#include "job/row_json.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

/// A row with one member of each form.
struct Sample {
    Id<Sample> id;
    Length length;
    Money money;
    bool yes = false;
    int count = 0;
    Date day = noDate;
    HouseStage stage = HouseStage::bidding;
    std::string text;
    std::vector<PolygonSide> sides;
    std::vector<Id<Plan>> plans;

    bool operator==(const Sample&) const = default;
};

} // namespace

template <>
struct Describe<Sample> {
    static constexpr std::string_view table = "sample";
    static constexpr std::string_view noun = "sample";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Sample::id), field("length", &Sample::length),
            field("money", &Sample::money), field("yes", &Sample::yes),
            field("count", &Sample::count), field("day", &Sample::day),
            field("stage", &Sample::stage), field("text", &Sample::text),
            field("sides", &Sample::sides), field("plans", &Sample::plans));
    }
};

namespace {

Sample filled() {
    Sample sample;
    sample.id = Id<Sample>(7);
    sample.length = Length::sixtyFourths(1); // 25.4 mm / 64 = 396 875 nm [calc]
    sample.money = Money::cents(-1050);
    sample.yes = true;
    sample.count = 3;
    sample.day = Date(std::chrono::year(2026) / 11 / 25);
    sample.stage = HouseStage::underway;
    sample.text = "½″ \"x\"\n";
    sample.sides = {{Length::millimetres(1), Angle::degrees(45)}};
    sample.plans = {Id<Plan>(4), Id<Plan>(5)};
    return sample;
}

constexpr const char* written
    = R"({"id":7,"length":396875,"money":-1050,"yes":true,"count":3,"day":"2026-11-25",)"
      R"("stage":"underway","text":"½″ \"x\"\n","sides":[{"length":1000000,"angle":4500}],)"
      R"("plans":[4,5]})";

TEST(RowJson, WritesEachForm) {
    EXPECT_EQ(jsonText(toJson(filled())), written);
}

TEST(RowJson, ReadsWhatItWrote) {
    Sample sample;
    const auto read = readJson(*parseJson(written), sample);
    ASSERT_TRUE(read.ok()) << read.error().sentence;
    EXPECT_EQ(sample, filled());
}

TEST(RowJson, NoneAndNoDate) {
    const Json json = toJson(Sample());
    EXPECT_EQ(json["id"], 0);
    EXPECT_EQ(json["day"], "");
    Sample back = filled();
    ASSERT_TRUE(readJson(json, back).ok());
    EXPECT_EQ(back, Sample());
}

/// The text with one value replaced cannot be read, and the sentence names the field.
void expectUnreadable(const std::string& from, const std::string& to, const std::string& field) {
    std::string text = written;
    text.replace(text.find(from), from.size(), to);
    Sample sample;
    const auto json = parseJson(text);
    ASSERT_TRUE(json.ok()) << text;
    const auto read = readJson(*json, sample);
    ASSERT_FALSE(read.ok()) << text;
    EXPECT_NE(read.error().sentence.find(field), std::string::npos) << read.error().sentence;
}

TEST(RowJson, RefusesWhatIsNotThatValue) {
    expectUnreadable("396875", "396875.5", "The length cannot be read: 396875.5 stands there.");
    expectUnreadable("396875", "9223372036854775808", "The length");
    expectUnreadable("\"count\":3", "\"count\":3000000000", "The count");
    expectUnreadable("true", "1", "The yes");
    expectUnreadable("underway", "asleep", "The stage");
    expectUnreadable("2026-11-25", "2026-02-30", "The day");
    expectUnreadable("[4,5]", "[4,-5]", "The plans");
    expectUnreadable("[4,5]", "4", "The plans");
    expectUnreadable("\"angle\":4500", "\"angel\":4500", "The sides");
    expectUnreadable("\"text\":", "\"txet\":", "It has a field \"txet\" that is not known.");
}

// A row written by a program that did not know the field yet, as in an old journal.
TEST(RowJson, AFieldThatIsNotThereKeepsItsStartingValue) {
    Sample sample;
    sample.text = "kept";
    const auto json = parseJson("{\"count\":7}");
    ASSERT_TRUE(readJson(*json, sample).ok());
    EXPECT_EQ(sample.text, "kept");
    EXPECT_EQ(sample.count, 7);
}

TEST(RowJson, RefusesWhatIsNotJson) {
    EXPECT_FALSE(parseJson("{").ok());
    EXPECT_FALSE(parseJson("").ok());
    EXPECT_TRUE(parseJson(std::string(10'000, '[') + std::string(10'000, ']')).ok());
}

TEST(EditJson, SaysKindBeforeAndAfter) {
    const Book book = smallBook();
    Stick stick = *book.prices.of<Stick>().find(Id<Stick>(21));
    stick.price = Money::cents(1999);
    const Edit edit = putEdit(book, "Price", stick);
    EXPECT_EQ(changesToText(edit.changes),
        R"([{"kind":"stick","before":{"id":21,"profile":20,"length":4267200000,"price":1890,)"
        R"("stocked":true,"origin":"yours"},"after":{"id":21,"profile":20,"length":4267200000,)"
        R"("price":1999,"stocked":true,"origin":"yours"}}])");
    EXPECT_EQ(*changesFromText(changesToText(edit.changes)), edit.changes);
}

TEST(EditJson, NamesTheChangeThatCannotBeRead) {
    const auto sentence = [](const char* text) { return changesFromText(text).error().sentence; };
    EXPECT_EQ(sentence("7"), "The text is not a list of changes.");
    EXPECT_EQ(sentence(R"([{"kind":"roof","after":{}}])"),
        "Change 1 cannot be read: There is no kind of row called roof.");
    EXPECT_EQ(sentence(R"([{"kind":"stick"}])"),
        "Change 1 cannot be read: It has neither a row before nor one after.");
    EXPECT_EQ(
        sentence("[[]]"), "Change 1 cannot be read: It does not say what kind of row was changed.");
}

} // namespace
} // namespace miterbook
