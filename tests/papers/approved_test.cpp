// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/paper_list.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"
#include "support/approved_text.h"

#include <gmock/gmock.h>

#include <algorithm>

using namespace miterbook;
using testing::ContainsRegex;
using testing::Not;

namespace {

Paper paperOf(std::string_view name, const PaperJob& job, const JobFigures& figures) {
    return findPaper(name)->build(job, figures);
}

} // namespace

class ApprovedPaper : public testing::TestWithParam<std::string_view> {};

TEST_P(ApprovedPaper, OfAPlan) {
    const SampleJob job;
    expectApproved(paperText(paperOf(GetParam(), job.planJob(), job.figures)),
        std::string(GetParam()) + ".plan.txt");
}

TEST_P(ApprovedPaper, OfAHouse) {
    const SampleJob job;
    const Paper paper = paperOf(GetParam(), job.houseJob(), job.figures);
    const std::string name(GetParam());
    expectApproved(paperText(paper), name + ".house.txt");
    expectApproved(paperJson(paper), name + ".house.json");
    expectApproved(paperCsv(paper), name + ".house.csv");
}

TEST_P(ApprovedPaper, InMillimetres) {
    SampleJob job;
    job.shop().unit = LengthUnit::millimetres;
    job.shop().currency = "€";
    job.shop().monthFirst = false;
    job.refresh();
    const std::string text = paperText(paperOf(GetParam(), job.houseJob(), job.figures));
    expectApproved(text, std::string(GetParam()) + ".metric.txt");
    EXPECT_THAT(
        text, Not(ContainsRegex("(^|[^a-zA-Z])(LF|SF|ft|feet|foot|inch|inches)([^a-z]|$)")));
    EXPECT_THAT(text, Not(ContainsRegex("[0-9][\"']")));
}

TEST_P(ApprovedPaper, ThatIsNotComplete) {
    SampleJob job;
    job.figures.estimate.problems.push_back("The book has no rate for \"mantel\".");
    job.figures.buy.problems.push_back("No stick of Flat casing is priced.");
    job.figures.takeoff.remarks.push_back(
        {Remark::Weight::problem, {}, "W9 has no profile for its casing; that is not counted."});
    expectApproved(paperText(paperOf(GetParam(), job.planJob(), job.figures)),
        std::string(GetParam()) + ".incomplete.txt");
}

namespace {

std::vector<std::string_view> allPapers() {
    std::vector<std::string_view> names;
    for (const PaperKind& kind : paperKinds) {
        if (!kind.ofShop)
            names.push_back(kind.name);
    }
    return names;
}

} // namespace

INSTANTIATE_TEST_SUITE_P(
    Papers, ApprovedPaper, testing::ValuesIn(allPapers()), [](const auto& paper) {
        std::string name(paper.param);
        std::ranges::replace(name, '-', '_');
        return name;
    });
