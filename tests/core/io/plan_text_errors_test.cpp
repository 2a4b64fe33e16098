// SPDX-License-Identifier: GPL-3.0-or-later
#include "book_fixture.h"
#include "io/plan_text.h"
#include "random_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace miterbook {

namespace {

using ::testing::HasSubstr;

Error refused(const std::string& text) {
    const Book book;
    IdSource ids;
    const auto edit = readPlanText(book, ids, text);
    return edit ? Error{Fault::conflict, "(was read)"} : edit.error();
}

/// A text with one more key.
std::string with(const std::string& more) {
    return R"({"miterbook": "plan", "version": 1, "plan": {"name": "P"}, )" + more + "}";
}

std::string sentence(const std::string& more) {
    return refused(with(more)).sentence;
}

TEST(PlanTextErrors, SayWhatTheFileIs) {
    EXPECT_EQ(refused("[1, 2]").fault, Fault::notOurs);
    EXPECT_EQ(refused(R"({"name": "x"})").fault, Fault::notOurs);
    EXPECT_EQ(refused(R"({"miterbook": "book", "version": 1})").fault, Fault::notOurs);
    EXPECT_THAT(
        refused(R"({"miterbook": "plan"})").sentence, HasSubstr("does not say its version"));
    const Error newer = refused(R"({"miterbook": "plan", "version": 3, "new key": 1})");
    EXPECT_EQ(newer.fault, Fault::notOurs);
    EXPECT_THAT(newer.sentence, HasSubstr("newer program (version 3"));
    EXPECT_THAT(
        refused(R"({"miterbook": "plan", "version": 1})").sentence, HasSubstr("no \"plan\""));
    EXPECT_THAT(refused(R"({"miterbook": "plan", "version": 1, "plan": {}})").sentence,
        HasSubstr("a name is needed"));
}

TEST(PlanTextErrors, SayTheLineOfWhatIsNoJson) {
    EXPECT_THAT(refused("{\"miterbook\": \"plan\",\n \"version\": 1\n \"plan\": 2}").sentence,
        HasSubstr("Line 3, column"));
}

TEST(PlanTextErrors, SayThePlace) {
    EXPECT_THAT(sentence(R"("openings": [{"mark": "W1"}, {"mark": "W4", "width": "36 1/0"}])"),
        HasSubstr("openings[2] W4: width: \"36 1/0\" divides by zero"));
    EXPECT_THAT(sentence(R"("openings": [{"kind": "barn door"}])"),
        HasSubstr("openings[1]: kind: \"barn door\" is none of window, prehung door"));
    EXPECT_THAT(
        sentence(
            R"("options": [{"name": "Loft", "rooms": [{"name": "Den", "walls": "12', x'"}]}])"),
        HasSubstr("options[1] Loft: rooms[1] Den: walls: Wall 2"));
    EXPECT_THAT(sentence(R"("rooms": [{"walls": [{"length": "12"}, {"corner": "round"}]}])"),
        HasSubstr("rooms[1]: walls: wall 2: corner: \"round\" is none of inside"));
    EXPECT_THAT(sentence(R"("stairs": [{"name": "S", "risers": "many"}])"),
        HasSubstr("stairs[1] S: risers: a whole number"));
    EXPECT_THAT(
        sentence(R"("levels": [{"name": "M", "upper": 1}])"), HasSubstr("upper: true or false"));
    EXPECT_THAT(sentence(R"("profiles": [{"name": "X", "width": "2", "thickness": "1",
        "sticks": [{"length": "96", "price": "free"}]}])"),
        HasSubstr("profiles[1] X: sticks[1]: price"));
}

TEST(PlanTextErrors, SayWhatMeansNothing) {
    EXPECT_EQ(sentence(R"("rums": [])"), "\"rums\" means nothing here.");
    EXPECT_EQ(sentence(R"("rooms": [{"name": "Den", "colour": "red"}])"),
        "rooms[1] Den: \"colour\" means nothing here.");
    EXPECT_THAT(sentence(R"("rooms": [{"id": 4}])"), HasSubstr("\"id\" means nothing"));
    EXPECT_THAT(sentence(R"("rooms": [{"plan": "P"}])"), HasSubstr("\"plan\" means nothing"));
    EXPECT_THAT(
        sentence(R"("options": [{"name": "O", "kind": "elevation"}])"), HasSubstr("\"kind\""));
    EXPECT_THAT(
        sentence(R"("rooms": [{"name": "Den", "name": "Bar"}])"), HasSubstr("stands twice"));
    EXPECT_THAT(sentence(R"("builder": {"nmae": "x"})"), HasSubstr("builder: \"nmae\""));
}

TEST(PlanTextErrors, SayWhatHasTheWrongShape) {
    EXPECT_THAT(sentence(R"("rooms": {"name": "Den"})"), HasSubstr("rooms: a list"));
    EXPECT_THAT(sentence(R"("rooms": ["Den"])"), HasSubstr("rooms[1]: an entry in braces"));
    EXPECT_THAT(sentence(R"("builder": "Hollis")"), HasSubstr("builder: an entry in braces"));
    EXPECT_THAT(sentence(R"("rooms": [{"name": ["Den"]}])"), HasSubstr("a text or number"));
}

TEST(PlanTextErrors, SayWhatIsNotThere) {
    EXPECT_THAT(sentence(R"("openings": [{"mark": "W1", "room": "Den"}])"),
        HasSubstr("openings[1] W1: room: there is none called \"Den\""));
    EXPECT_THAT(sentence(R"("rooms": [{"name": "A"}, {"name": "A"}], "openings": [{"room": "A"}])"),
        HasSubstr("several are called \"A\""));
    EXPECT_THAT(sentence(R"("openings": [{"room": "#1"}])"), HasSubstr("no \"#1\" in the file"));
    EXPECT_THAT(sentence(R"("options": [{"name": "O", "openings": [{"changes": "W9"}]}])"),
        HasSubstr("options[1] O: openings[1] W9: changes: there is none called \"W9\""));
    EXPECT_THAT(sentence(R"("openings": [{"casing": "No such casing"}])"),
        HasSubstr("casing: there is none"));
}

TEST(PlanTextErrors, SayWhatIsAbsurd) {
    EXPECT_THAT(
        sentence(R"("openings": [{"mark": "W1", "count": 0}])"), HasSubstr("openings[1] W1: W1"));
    EXPECT_THAT(sentence(R"("openings": [{"mark": "W1", "width": "401'"}])"), HasSubstr("300 ft"));
    EXPECT_THAT(
        sentence(R"("levels": [{"name": "M", "ceiling": "200'"}])"), HasSubstr("levels[1] M"));
    EXPECT_THAT(
        sentence(R"("closets": [{"name": "C", "count": 9999}])"), HasSubstr("closets[1] C"));
    EXPECT_THAT(sentence(R"("options": [{"note": "x"}])"), HasSubstr("has no name"));
    EXPECT_THAT(sentence(R"("options": [{"name": "x", "swaps": [{}]}])"), HasSubstr("swaps[1]"));
    EXPECT_THAT(sentence(R"("profiles": [{"name": "X"}])"), HasSubstr("profiles[1] X"));
    EXPECT_THAT(sentence(R"("profiles": [{"name": "X", "width": 2, "thickness": 1},
        {"name": "X", "width": 2, "thickness": 1}])"),
        HasSubstr("twice"));
}

TEST(PlanTextErrors, ProfilesOfTheBookMayBeNamed) {
    BookFixture fixture;
    const auto edit = readPlanText(fixture.book, fixture.ids,
        with(R"("openings": [{"mark": "W1", "casing": "Flat casing"}])"));
    ASSERT_TRUE(edit.ok()) << edit.error().sentence;
    const auto* opening = edit->changes.back().after->as<Opening>();
    ASSERT_TRUE(opening);
    EXPECT_EQ(opening->casing, fixture.profile("Flat casing"));
}

TEST(PlanTextErrors, DamagedTextsAreReadOrRefusedWithASentence) {
    BookFixture fixture;
    const std::string whole = writePlanText(fixture.book, RandomPlan(fixture, 5).make());
    std::mt19937 random(9);
    int read = 0;
    for (int i = 0; i < 1500; ++i) {
        std::string text = whole;
        for (unsigned n = 1 + random() % 3; n > 0; --n)
            text[random() % text.size()] = "\"{}[],:0aW#-\n"[random() % 13];
        if (i % 5 == 0)
            text.resize(random() % text.size());
        const Book book;
        IdSource ids;
        const auto edit = readPlanText(book, ids, text);
        read += edit.ok();
        EXPECT_TRUE(edit.ok() || !edit.error().sentence.empty());
    }
    EXPECT_LT(read, 1500);
}

} // namespace

} // namespace miterbook
