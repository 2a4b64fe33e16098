// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch_run.h"

#include <QFile>
#include <QTemporaryDir>

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

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
        const BatchRun run = runBatch({"pack", file("p.csv", pieces), file("s.csv", sticks),
            "--kerf", kerf, "--json", "-"});
        EXPECT_EQ(run.status, 0) << run.err;
        return nlohmann::json::parse(run.out, nullptr, false);
    }

    QTemporaryDir m_folder;
};

// [calc] Four 3 ft pieces without kerf: one 12 ft stick at 10 beats two 8 ft sticks at 6.
TEST_F(PackCommand, BuysTheCheapestSticks) {
    const auto plan = packed("length,count,label\n36,4,a\n", "length,price,have\n96,6,\n144,10,\n", "0");
    EXPECT_EQ(plan["cost"], 1000);
    EXPECT_EQ(plan["bound"], 1000);
    EXPECT_EQ(plan["proven"], true);
    ASSERT_EQ(plan["sticks"].size(), 1U);
    EXPECT_EQ(plan["sticks"][0]["length"], 144);
    EXPECT_EQ(plan["sticks"][0]["pieces"].size(), 4U);
}

// [calc] With a 1/8 kerf four 36 in pieces need 144 3/8: the 12 ft stick takes three.
TEST_F(PackCommand, MindsTheKerf) {
    const auto plan
        = packed("length,count\n36,4\n", "length,price,have\n96,6,\n144,10,\n", "1/8");
    EXPECT_EQ(plan["cost"], 1200);
}

TEST_F(PackCommand, TakesWhatIsOnHandFirst) {
    const auto plan
        = packed("length,count\n35 1/2,1\n", "length,price,have\n40,0,1\n96,6,\n", "1/8");
    EXPECT_EQ(plan["cost"], 0);
    EXPECT_EQ(plan["sticks"][0]["pieces"][0], 35.5);
}

TEST_F(PackCommand, SaysWhichPieceComesOutOfNoStick) {
    const BatchRun run = runBatch({"pack", file("p.csv", "length,count\n100,1\n"),
        file("s.csv", "length,price,have\n96,6,\n"), "--text"});
    EXPECT_EQ(run.status, 1);
    EXPECT_NE(run.err.find("1 piece cannot be cut"), std::string::npos) << run.err;
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
