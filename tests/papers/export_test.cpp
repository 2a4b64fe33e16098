// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/sample_job.h"
#include "papers/write_paper.h"
#include "printing/export_paper.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>

using namespace miterbook;
using testing::HasSubstr;

namespace {

std::string contents(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

} // namespace

TEST(Export, WritesWhatTheEndingSays) {
    const QTemporaryDir folder;
    const SampleJob job;
    const Paper paper = orderPaper(job.planJob(), job.figures);
    const auto exported = [&](const char* name) {
        const QString path = folder.filePath(QString::fromLatin1(name));
        const Result<void> done = exportPaper(paper, PageSize::letter, path);
        EXPECT_TRUE(done) << name;
        return contents(path);
    };
    EXPECT_EQ(exported("order.csv"), paperCsv(paper));
    EXPECT_EQ(exported("order.JSON"), paperJson(paper));
    EXPECT_EQ(exported("order.txt"), paperText(paper));
    EXPECT_TRUE(exported("order.pdf").starts_with("%PDF-"));
}

TEST(Export, RefusesAnEndingItDoesNotKnow) {
    const QTemporaryDir folder;
    const Result<void> done = exportPaper(
        {}, PageSize::letter, folder.filePath(QStringLiteral("order.doc")));
    ASSERT_FALSE(done);
    EXPECT_THAT(done.error().sentence, HasSubstr(".pdf, .csv, .json or .txt"));
    EXPECT_TRUE(QDir(folder.path()).isEmpty());
}

TEST(Export, SaysWhyAPathCannotBeWritten) {
    const QTemporaryDir folder;
    const Result<void> done = exportPaper(
        {}, PageSize::letter, folder.filePath(QStringLiteral("none/order.csv")));
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().fault, Fault::storage);
    EXPECT_THAT(done.error().sentence, HasSubstr("none/order.csv"));
}
