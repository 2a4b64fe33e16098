// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch_run.h"

#include <QFile>
#include <QTemporaryDir>

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

#include <map>

namespace miterbook {
namespace {

class PackCommand : public testing::Test {
protected:
    std::string file(const char* name, const char* text) {
        const QString path = m_folder.filePath(QString::fromLatin1(name));
        QFile out(path);
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(text);
        return path.toStdString();
    }
    nlohmann::json packed(const char* pieces, const char* sticks, const char* kerf) {
        const BatchRun run = runBatch(
            {"pack", file("p.csv", pieces), file("s.csv", sticks), "--kerf", kerf, "--json", "-"});
        EXPECT_EQ(run.status, 0) << run.err;
        return nlohmann::json::parse(run.out, nullptr, false);
    }

    QTemporaryDir m_folder;
};

// [calc] Four 3 ft pieces without kerf: one 12 ft stick at 10 beats two 8 ft sticks at 6.
TEST_F(PackCommand, BuysTheCheapestSticks) {
    const auto plan = packed(
        "length,count,label\n36,4,a\n", "length,price,have\n96,6,\n144,10,\n", "0");
    EXPECT_EQ(plan["cost"], 1000);
    EXPECT_EQ(plan["bound"], 1000);
    EXPECT_EQ(plan["proven"], true);
    ASSERT_EQ(plan["sticks"].size(), 1U);
    EXPECT_EQ(plan["sticks"][0]["length"], 144);
    EXPECT_EQ(plan["sticks"][0]["pieces"].size(), 4U);
}

// [calc] With a 1/8 kerf four 36 in pieces need 144 3/8: the 12 ft stick takes three.
TEST_F(PackCommand, MindsTheKerf) {
    const auto plan = packed("length,count\n36,4\n", "length,price,have\n96,6,\n144,10,\n", "1/8");
    EXPECT_EQ(plan["cost"], 1200);
}

TEST_F(PackCommand, TakesWhatIsOnHandFirst) {
    const auto plan = packed(
        "length,count\n35 1/2,1\n", "length,price,have\n40,0,1\n96,6,\n", "1/8");
    EXPECT_EQ(plan["cost"], 0);
    EXPECT_EQ(plan["sticks"][0]["pieces"][0], 35.5);
}

TEST_F(PackCommand, SaysWhichPieceComesOutOfNoStick) {
    const BatchRun run = runBatch({"pack", file("p.csv", "length,count\n100,1\n"),
        file("s.csv", "length,price,have\n96,6,\n"), "--text"});
    EXPECT_EQ(run.status, 1);
    EXPECT_NE(run.err.find("1 piece cannot be cut"), std::string::npos) << run.err;
}

// [calc] 2 x 60 and 3 x 40 from two 100s: 60 + 40 twice, one 40 is short.
TEST_F(PackCommand, SaysHowMuchIsShortAndCutsTheRest) {
    const BatchRun run = runBatch({"pack", file("p.csv", "length,count\n60,2\n40,3\n"),
        file("s.csv", "length,price,have\n100,5,2\n"), "--kerf", "0", "--json", "-"});
    EXPECT_EQ(run.status, 1);
    EXPECT_NE(
        run.err.find("1 piece cannot be cut from these sticks: 3' 4\" in all"), std::string::npos)
        << run.err;
    const auto plan = nlohmann::json::parse(run.out, nullptr, false);
    ASSERT_EQ(plan["short"].size(), 1U);
    EXPECT_EQ(plan["short"][0]["length"], 40);
    EXPECT_EQ(plan["short"][0]["count"], 1);
    EXPECT_EQ(plan["cost"], 1000);
    EXPECT_EQ(plan["proven"], false);
}

// [calc] A 100 in piece from a 120 at 10.00 leaves 20 in; from a 196 at 16.00 it leaves 8 ft,
// at 1.00 a foot worth 8.00: 8.00 in the end.
TEST_F(PackCommand, CountsWhatIsKept) {
    const std::string pieces = file("p.csv", "length,count\n100,1\n");
    const std::string sticks = file("s.csv", "length,price,have\n120,10,\n196,16,\n");
    const BatchRun plain = runBatch({"pack", pieces, sticks, "--kerf", "0", "--text"});
    EXPECT_NE(plain.out.find("Cost 10.00;"), std::string::npos) << plain.out;
    const BatchRun kept = runBatch(
        {"pack", pieces, sticks, "--kerf", "0", "--salvage", "1", "--shortest", "2'", "--text"});
    EXPECT_NE(
        kept.out.find("Cost 8.00 (sticks 16.00, less 8.00 for remainders kept)"), std::string::npos)
        << kept.out;
    const BatchRun tooShort = runBatch(
        {"pack", pieces, sticks, "--kerf", "0", "--salvage", "1", "--shortest", "8'1", "--text"});
    EXPECT_NE(tooShort.out.find("Cost 10.00;"), std::string::npos) << tooShort.out;
}

TEST_F(PackCommand, RefusesASenselessSalvage) {
    const BatchRun run = runBatch({"pack", file("p.csv", "length,count\n100,1\n"),
        file("s.csv", "length,price\n120,10\n"), "--salvage", "-1"});
    EXPECT_EQ(run.status, 1);
    EXPECT_NE(run.err.find("--salvage"), std::string::npos) << run.err;
}

// [calc] 100 000 in sticks take three of 33 333 1/4 in each, one less with a kerf of 1/8.
TEST_F(PackCommand, TakesVeryLongSticks) {
    const char* pieces = "length,count\n33333.25,6\n";
    const char* sticks = "length,price,have\n100000,50000,\n";
    EXPECT_EQ(packed(pieces, sticks, "0")["cost"], 2 * 5'000'000);
    EXPECT_EQ(packed("length,count\n33333.3,6\n", sticks, "1/8")["cost"], 3 * 5'000'000);
}

TEST_F(PackCommand, CutsExactlyFiftyThousandPieces) {
    std::string pieces = "length,count\n";
    for (int i = 0; i < 500; ++i)
        pieces += std::to_string(12 + i * 0.36) + ",100\n";
    const auto plan = packed(pieces.c_str(), "length,price,have\n96,7.36,\n192,15.55,\n", "1/8");
    std::map<double, int> cut;
    for (const auto& stick : plan["sticks"])
        for (const auto& piece : stick["pieces"])
            cut[piece.get<double>()] += stick["times"].get<int>();
    EXPECT_EQ(cut.size(), 500U);
    for (const auto& [length, count] : cut)
        EXPECT_EQ(count, 100) << length;
    EXPECT_TRUE(plan["short"].empty());
}

TEST_F(PackCommand, SaysWhereACellCannotBeRead) {
    const BatchRun run = runBatch({"pack", file("p.csv", "length,count\n36 1/0,1\n"),
        file("s.csv", "length,price,have\n96,6,\n"), "--text"});
    EXPECT_EQ(run.status, 1);
    EXPECT_NE(run.err.find("36 1/0"), std::string::npos) << run.err;
    EXPECT_NE(run.err.find("line 2"), std::string::npos) << run.err;
}

} // namespace
} // namespace miterbook
