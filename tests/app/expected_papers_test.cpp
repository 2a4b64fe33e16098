// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch_run.h"
#include "support/approved_text.h"

#include <QTemporaryDir>

namespace miterbook {
namespace {

struct Sample {
    const char* folder;
    const char* plan;
};

/// The papers of a sample plan, whole, as sample-jobs/<folder>/expected keeps them: from the
/// exchange file through the book, the takeoff, the stick plans and the estimate to the paper's
/// text.
class ExpectedPapers : public testing::TestWithParam<Sample> {
protected:
    void SetUp() override {
        ASSERT_EQ(
            runBatch({"new", m_book, "--shop", "Abara & Winship, Finish Carpentry"}).status, 0);
        const std::string folder = GetParam().folder;
        const BatchRun brought = runBatch(
            {"bring", m_book, sampleFile(folder + "/" + folder + ".miterplan")});
        ASSERT_EQ(brought.status, 0) << brought.err;
    }
    void expectPaper(const std::string& name) {
        const BatchRun run = runBatch(
            {"print", name, m_book, "--plan", GetParam().plan, "--date", "2026-04-20", "--text"});
        ASSERT_EQ(run.status, 0) << run.err;
        expectSameAsFile(run.out, sampleFile(GetParam().folder + ("/expected/" + name) + ".txt"));
    }

    QTemporaryDir m_folder;
    std::string m_book = m_folder.filePath(QStringLiteral("shop.miterbook")).toStdString();
};

TEST_P(ExpectedPapers, Bid) {
    expectPaper("bid");
}

TEST_P(ExpectedPapers, Takeoff) {
    expectPaper("takeoff");
}

TEST_P(ExpectedPapers, Order) {
    expectPaper("order");
}

TEST_P(ExpectedPapers, PriceSheet) {
    expectPaper("price-sheet");
}

INSTANTIATE_TEST_SUITE_P(SampleJobs, ExpectedPapers,
    testing::Values(Sample{"larkspur", "Larkspur 2400"}, Sample{"ravine", "Ravine House"},
        Sample{"wren", "Wren"}),
    [](const auto& sample) { return std::string(sample.param.folder); });

} // namespace
} // namespace miterbook
