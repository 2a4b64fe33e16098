// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of figures that are filled anew while somebody works: only what differs is touched.
#include "figures/figure_view.h"
#include "widgets/seen_refresh.h"

#include <QAbstractItemModelTester>
#include <QHeaderView>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

std::vector<FigureRow> rowsOf(const QStringList& words) {
    std::vector<FigureRow> rows;
    for (const QString& word : words)
        rows.push_back(
            {{{word, std::nullopt}, {u"7"_s, 7.0}, {u"end"_s, std::nullopt}}, word, false});
    return rows;
}

QStringList manyWords(int count) {
    QStringList words;
    for (int i = 0; i < count; ++i)
        words << u"word %1"_s.arg(i);
    return words;
}

TEST(FigureModel, TellsWhichRowsDiffer) {
    FigureModel model({u"What"_s, u"Count"_s, u"End"_s});
    const QAbstractItemModelTester tester(
        &model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.setRows(rowsOf({u"a"_s, u"b"_s, u"c"_s})), (std::vector<int>{0, 1, 2}));
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    EXPECT_EQ(model.setRows(rowsOf({u"a"_s, u"x"_s, u"c"_s})), std::vector<int>{1});
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(model.setRows(rowsOf({u"a"_s, u"x"_s})), std::vector<int>());
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.setRows(rowsOf({u"a"_s, u"x"_s, u"y"_s})), std::vector<int>{2});
}

TEST(FigureView, WidensForOneLongCellAndNeverNarrows) {
    FigureView view(u"Words"_s, {u"What"_s, u"Count"_s, u"End"_s});
    view.resize(900, 400);
    QStringList words = manyWords(60);
    view.setRows(rowsOf(words));
    view.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&view));
    const QHeaderView* header = view.table()->horizontalHeader();
    const int before = header->sectionSize(0);
    words[3] = u"a text that is a good deal longer than any word that stood here"_s;
    view.setRows(rowsOf(words));
    const int wide = header->sectionSize(0);
    EXPECT_GT(wide, before);
    EXPECT_GE(wide, view.table()->fontMetrics().horizontalAdvance(words[3]));
    words[3] = u"short"_s;
    view.setRows(rowsOf(words));
    EXPECT_EQ(header->sectionSize(0), wide) << "nothing jumps while somebody types";
}

TEST(FigureView, WidensAlikeForFewRowsAndForMany) {
    const QString longest = u"the longest words of all that are written into this one column"_s;
    const auto widthAfter = [&](int changed) {
        FigureView view(u"Words"_s, {u"What"_s, u"Count"_s, u"End"_s});
        view.resize(900, 700);
        QStringList words = manyWords(20);
        view.setRows(rowsOf(words));
        view.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&view));
        for (int i = 0; i < changed; ++i)
            words[i] = longest;
        view.setRows(rowsOf(words));
        return view.table()->horizontalHeader()->sectionSize(0);
    };
    EXPECT_EQ(widthAfter(1), widthAfter(20));
}

TEST(SeenRefresh, FillsWhatIsSeenAtOnceAndTheRestWhenItIsShown) {
    QWidget page;
    int filled = 0;
    auto* refresh = new SeenRefresh(&page, [&] { ++filled; });
    refresh->want();
    EXPECT_EQ(filled, 0) << "nobody sees it";
    page.show();
    EXPECT_EQ(filled, 1);
    refresh->want();
    EXPECT_EQ(filled, 2);
    page.hide();
    page.show();
    EXPECT_EQ(filled, 2) << "nothing has changed since";
    page.hide();
    refresh->want();
    refresh->want();
    EXPECT_EQ(filled, 2);
    page.show();
    EXPECT_EQ(filled, 3) << "once for both";
}

} // namespace
} // namespace miterbook
