// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/exact_length.h"
#include "io/exchange_form.h"
#include "io/json_text.h"
#include "io/name_index.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace miterbook {

namespace {

using ::testing::HasSubstr;

TEST(ExactLength, WritesTheShortestExactForm) {
    EXPECT_EQ(exactLengthText(Length()), "0");
    EXPECT_EQ(exactLengthText(Length::inches(36)), "36");
    EXPECT_EQ(exactLengthText(Length::sixteenths(568)), "35 1/2");
    EXPECT_EQ(exactLengthText(Length::sixtyFourths(1)), "1/64");
    EXPECT_EQ(exactLengthText(Length::millimetres(902)), "902mm");
    EXPECT_EQ(exactLengthText(Length::tenthsOfMillimetre(9025)), "902.5mm");
    EXPECT_EQ(exactLengthText(Length::nanometres(7)), "7nm");
    EXPECT_EQ(exactLengthText(Length::millimetres(254)), "10")
        << "an inch length, not a metric one";
}

TEST(ExactLength, ReadsBackEveryLength) {
    std::mt19937_64 random(3);
    for (int i = 0; i < 5000; ++i) {
        const std::int64_t grain = i % 3 == 0 ? 1 : i % 3 == 1 ? 100'000 : 396'875;
        const auto most = static_cast<std::uint64_t>(longestSensible.nm() / grain);
        const auto length = Length::nanometres(static_cast<std::int64_t>(random() % most) * grain);
        const auto read = readExactLength(exactLengthText(length));
        ASSERT_TRUE(read.ok()) << exactLengthText(length);
        ASSERT_EQ(read->nm(), length.nm());
    }
}

TEST(ExactLength, ReadsTheTradesForms) {
    EXPECT_EQ(*readExactLength("2-8"), Length::inches(32));
    EXPECT_EQ(*readExactLength("2'11-1/2"), Length::sixteenths(568));
    EXPECT_FALSE(readExactLength("-7nm").ok());
    EXPECT_FALSE(readExactLength("7.5nm").ok());
    EXPECT_FALSE(readExactLength("nm").ok());
    EXPECT_THAT(readExactLength("99999999999999nm").error().sentence, HasSubstr("300 ft"));
}

TEST(JsonText, SaysWhereItBreaks) {
    EXPECT_THAT(
        readJsonText("{\n  \"a\": 1\n  \"b\": 2\n}").error().sentence, HasSubstr("Line 3, column"));
    EXPECT_THAT(readJsonText("").error().sentence, HasSubstr("Line 1, column 1"));
    EXPECT_THAT(readJsonText("{\"a\": 1").error().sentence, HasSubstr("is not JSON"));
    EXPECT_FALSE(readJsonText("{\"a\": 1e999}").ok());
    EXPECT_FALSE(readJsonText("{\"a\": \"\xFF\"}").ok());
}

TEST(JsonText, RefusesTwinKeys) {
    EXPECT_EQ(readJsonText(R"({"a": {"b": 1, "b": 2}})").error().sentence,
        "The key \"b\" stands twice in one entry.");
    EXPECT_TRUE(readJsonText(R"({"a": {"b": 1}, "c": {"b": 2}, "d": [{"b": 3}, {"b": 4}]})").ok());
}

TEST(JsonText, SurvivesDepthAndNoise) {
    EXPECT_FALSE(readJsonText(std::string(200'000, '[')).ok());
    EXPECT_TRUE(readJsonText(std::string(50'000, '[') + std::string(50'000, ']')).ok());
    std::mt19937 random(5);
    for (int i = 0; i < 2000; ++i) {
        std::string text;
        for (unsigned n = random() % 30; n > 0; --n)
            text += "{}[]:,\"a1\\ \n"[random() % 12];
        const auto json = readJsonText(text);
        EXPECT_TRUE(json.ok() || !json.error().sentence.empty());
    }
}

TEST(JsonText, LaysOutOneRowALine) {
    const Json json = {{"plan", {{"name", "A"}}},
        {"rows", Json::array({{{"mark", "W1"}, {"n", 1}}, {{"mark", "W2"}, {"list", {1, 2}}}})},
        {"none", Json::array()}};
    EXPECT_EQ(layOutJson(json),
        "{\n"
        "  \"plan\": {\"name\": \"A\"},\n"
        "  \"rows\": [\n"
        "    {\"mark\": \"W1\", \"n\": 1},\n"
        "    {\"mark\": \"W2\", \"list\": [1, 2]}\n"
        "  ],\n"
        "  \"none\": []\n"
        "}\n");
}

TEST(JsonText, BreaksLongRows) {
    const std::string note(70, 'n');
    const Json row = {{"mark", "W1"}, {"size", "36"}, {"note", note}, {"hand", "left"}};
    EXPECT_EQ(layOutJson({{"rows", Json::array({row})}}),
        "{\n"
        "  \"rows\": [\n"
        "    {\"mark\": \"W1\", \"size\": \"36\",\n"
        "      \"note\": \""
            + note
            + "\",\n"
              "      \"hand\": \"left\"}\n"
              "  ]\n"
              "}\n");
}

TEST(JsonText, NoLineIsLongerThanItMustBe) {
    Json list = Json::array();
    for (int i = 0; i < 9; ++i)
        list.push_back({{"length", i}, {"price", "12.50"}, {"origin", "starter"}});
    const Json json = {{"rows", Json::array({{{"name", "A"}, {"sticks", list}, {"note", "z"}}})}};
    std::string text = layOutJson(json);
    EXPECT_EQ(*readJsonText(text), json);
    EXPECT_THAT(
        text, HasSubstr("    {\"name\": \"A\",\n      \"sticks\": [\n        {\"length\": 0, "));
    for (std::size_t end = 0; (end = text.find('\n')) != std::string::npos; text.erase(0, end + 1))
        EXPECT_LE(end, 100U);
}

TEST(NameIndex, RefersByTheFirstNameThatIsAlone) {
    NameIndex names;
    names.add(10, {"101", "Bath"});
    names.add(11, {"", "Bath"});
    names.add(12, {"101", "Den"});
    names.add(13, {"", "#1"});
    EXPECT_EQ(names.textOf(10), "#1");
    EXPECT_EQ(names.textOf(11), "#2");
    EXPECT_EQ(names.textOf(12), "Den");
    EXPECT_EQ(names.textOf(13), "#4") << "a name that looks like a place is not used";
    EXPECT_EQ(names.textOf(99), "");
    for (const std::int64_t id : {10, 11, 12, 13})
        EXPECT_EQ(*names.find(names.textOf(id)), id);
}

TEST(NameIndex, SaysWhatIsNotFound) {
    NameIndex names;
    names.add(10, {"Bath"});
    names.add(11, {"Bath"});
    names.addOutside(12, "Oak");
    EXPECT_EQ(*names.find("Oak"), 12);
    EXPECT_THAT(names.find("Den").error().sentence, HasSubstr("none called \"Den\""));
    EXPECT_EQ(names.find("Den").error().fault, Fault::notFound);
    EXPECT_THAT(names.find("Bath").error().sentence, HasSubstr("several are called \"Bath\""));
    for (const char* place : {"#0", "#3", "#", "#1x", "#-1"})
        EXPECT_FALSE(names.find(place).ok()) << place;
}

TEST(ExchangeForm, WritesOutlinesAsTheyAreTyped) {
    using Walls = ExchangeForm<std::vector<Wall>>;
    std::vector<Wall> walls(4);
    walls[0].length = walls[2].length = Length::feet(12);
    walls[1].length = walls[3].length = Length::sixteenths(174 * 16 + 8);
    EXPECT_EQ(Walls::write(walls, {}), Json("12' x 14' 6 1/2"));
    walls[0].length = Length::tenthsOfMillimetre(36'001);
    EXPECT_TRUE(Walls::write(walls, {}).is_array()) << "no fraction of an inch is exact";
    EXPECT_EQ(*Walls::read(Walls::write(walls, {}), {}), walls);
}

TEST(ExchangeForm, ReadsNumbersAsPeopleWriteThem) {
    const PlanRefs refs;
    EXPECT_EQ(*ExchangeForm<Length>::read(35.5, refs), Length::sixteenths(568));
    EXPECT_EQ(*ExchangeForm<Length>::read(36, refs), Length::inches(36));
    EXPECT_EQ(*ExchangeForm<Money>::read(12.5, refs), Money::cents(1250));
    EXPECT_EQ(*ExchangeForm<Quantity>::read("1.125", refs), Quantity::thousandths(1125));
    EXPECT_EQ(*ExchangeForm<Angle>::read(22.5, refs), Angle::hundredths(2250));
    EXPECT_FALSE(ExchangeForm<Angle>::read(22.555, refs).ok());
    EXPECT_FALSE(ExchangeForm<Angle>::read(1e300, refs).ok());
    EXPECT_FALSE(ExchangeForm<int>::read(1.5, refs).ok());
    EXPECT_FALSE(ExchangeForm<int>::read(-1, refs).ok());
    EXPECT_FALSE(ExchangeForm<int>::read(1'000'001, refs).ok());
    EXPECT_FALSE(ExchangeForm<bool>::read(1, refs).ok());
    EXPECT_FALSE(ExchangeForm<std::string>::read("a\x01", refs).ok());
    EXPECT_FALSE(ExchangeForm<Length>::read(Json::array(), refs).ok());
    EXPECT_THAT(
        ExchangeForm<Hand>::read("up", refs).error().sentence, HasSubstr("none, left, right"));
}

TEST(ExchangeForm, EveryAngleComesBack) {
    for (std::int64_t h = 0; h <= 18'000; ++h) {
        const Json json = Json::parse(ExchangeForm<Angle>::write(Angle::hundredths(h), {}).dump());
        ASSERT_EQ(ExchangeForm<Angle>::read(json, {})->hundredths(), h);
    }
}

} // namespace

} // namespace miterbook
