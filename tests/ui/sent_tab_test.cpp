// SPDX-License-Identifier: GPL-3.0-or-later
// The Bid page: sending, answers, comparing, won and lost, by keys and dialogs as a user does it.
#include "basics/number_text.h"
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "papers/write_paper.h"
#include "stages/bid/bid_page.h"
#include "stages/bid/sent_tab.h"
#include "ui/ui_kit.h"
#include "widgets/field_dialog.h"

#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class SentTabTest : public testing::Test {
protected:
    SentTabTest()
        : m_figures(m_kit.desk())
        , m_page(m_kit.desk(), m_figures) {
        m_page.resize(1280, 820);
        m_page.show();
        show(m_kit.job());
    }
    ~SentTabTest() override { m_figures.stopSearch(); }

    void show(const JobRef& job) {
        m_kit.desk().openPlan(job.plan);
        m_figures.setJob(job);
        m_page.showJob(job);
        tabs().setCurrentWidget(&tab());
        QApplication::processEvents();
    }
    const Book& book() const { return m_kit.book(); }
    SentTab& tab() const { return m_page.sent(); }
    QTabWidget& tabs() const { return *m_page.findChild<QTabWidget*>(); }
    static QString cell(const FigureView& view, int row, int column) {
        return view.table()->model()->index(row, column).data().toString();
    }
    static int rows(const FigureView& view) { return view.table()->model()->rowCount(); }

    /// Fills in the dialog that comes up next, once the reckoning before it is done, with keys
    /// alone.
    static void answer(const QList<QPair<QString, QString>>& fields = {}, int tries = 2000) {
        QTimer::singleShot(5, qApp, [fields, tries] {
            auto* dialog = qobject_cast<FieldDialog*>(QApplication::activeModalWidget());
            if (!dialog) {
                ASSERT_GT(tries, 0) << "no dialog came up";
                return answer(fields, tries - 1);
            }
            for (const auto& [name, typed] : fields) {
                for (auto* each : dialog->findChildren<QLineEdit*>()) {
                    if (!each->accessibleName().contains(name))
                        continue;
                    each->setFocus();
                    each->selectAll();
                    QTest::keyClicks(each, typed);
                }
            }
            picture(*dialog, dialog->windowTitle());
            auto* box = dialog->findChild<QDialogButtonBox*>();
            for (QAbstractButton* button : box->buttons()) {
                if (box->buttonRole(button) == QDialogButtonBox::AcceptRole)
                    QTest::keyClick(button, Qt::Key_Space);
            }
            if (dialog->isVisible())
                dialog->reject();
        });
    }
    void send(const QString& date) {
        answer({{u"Date"_s, date}});
        tab().send();
    }
    static void picture(QWidget& widget, QString name) {
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
        QApplication::processEvents();
        if (!folder.isEmpty())
            widget.grab().save(
                folder + u"/bid-"_s + name.replace(u' ', u'-').toLower() + u".png"_s);
    }
    void raiseWages() {
        const CrewMember before = std::prev(book().prices.of<CrewMember>().end())->second;
        CrewMember raised = before;
        raised.wage += Money::dollars(5);
        ASSERT_TRUE(m_kit.desk().perform(putEdit(book(), "Raise", raised)));
    }
    const SentBid& lastBid() const { return std::prev(book().jobs.of<SentBid>().end())->second; }

    UiKit m_kit;
    FigureDesk m_figures;
    BidPage m_page;
};

TEST_F(SentTabTest, ABidIsSentNumberedAndStays) {
    send(u"2026-11-20"_s);
    ASSERT_EQ(book().jobs.of<SentBid>().size(), 1U) << m_kit.refused().toStdString();
    EXPECT_EQ(lastBid().number, 1);
    EXPECT_EQ(isoDate(lastBid().date), "2026-11-20");
    EXPECT_EQ(rows(tab().bids()), 1);
    EXPECT_EQ(cell(tab().bids(), 0, 6), u"open"_s);
    const std::string text = paperText(*tab().currentPaper());
    EXPECT_NE(text.find("Bid 1"), std::string::npos);
    raiseWages();
    EXPECT_EQ(paperText(*tab().currentPaper()), text);
    m_kit.desk().undoStack().undo(); // the wage
    m_kit.desk().undoStack().undo(); // the sending: refused
    EXPECT_TRUE(m_kit.refused().contains(u"stays as it is"_s)) << m_kit.refused().toStdString();
    EXPECT_EQ(book().jobs.of<SentBid>().size(), 1U);
}

TEST_F(SentTabTest, TheDraftIsComparedWithWhatWasSent) {
    send(u"2026-11-20"_s);
    const Money sent = lastBid().amount;
    ASSERT_GT(rows(tab().differences()), 3);
    raiseWages();
    const Money draft = m_figures.figures().estimate.total.price;
    ASSERT_GT(draft, sent);
    bool total = false;
    for (int row = 0; row < rows(tab().differences()); ++row) {
        if (cell(tab().differences(), row, 1) != u"Total"_s)
            continue;
        total = true;
        EXPECT_EQ(cell(tab().differences(), row, 4).toStdString(), "+" + formatMoney(draft - sent));
    }
    EXPECT_TRUE(total);
    picture(m_page, u"sent compared"_s);
}

TEST_F(SentTabTest, ARevisionSupersedesAndTheAnswerIsCounted) {
    send(u"2026-11-20"_s);
    raiseWages();
    send(u"2026-11-24"_s);
    ASSERT_EQ(rows(tab().bids()), 2);
    EXPECT_EQ(cell(tab().bids(), 0, 1), u"2"_s);
    EXPECT_TRUE(cell(tab().bids(), 0, 5).startsWith(u'+'));
    EXPECT_EQ(cell(tab().bids(), 1, 6), u"superseded"_s);
    tab().bids().table()->setFocus();
    tab().bids().table()->selectRow(0);
    answer({{u"Note"_s, u"to another shop"_s}, {u"day"_s, u"2026-11-25"_s}});
    tab().lose();
    EXPECT_EQ(lastBid().answer, BidAnswer::lost);
    EXPECT_EQ(lastBid().note, "to another shop");
    tabs().setCurrentIndex(tabs().count() - 1);
    const FigureView& wins = *qobject_cast<FigureView*>(tabs().currentWidget());
    ASSERT_EQ(rows(wins), 2);
    EXPECT_EQ(cell(wins, 0, 2), u"1"_s); // one bid lost, two revisions
    EXPECT_EQ(cell(wins, 1, 4), u"0 %"_s);
    picture(m_page, u"won and lost"_s);
    tabs().setCurrentWidget(&tab());
    tab().bids().table()->selectRow(0);
    tab().reopen();
    EXPECT_EQ(lastBid().answer, BidAnswer::open);
}

TEST_F(SentTabTest, AHouseIsWonWithItsBid) {
    const Id<House> house = m_kit.startHouse("Lot 9");
    const Id<Plan> work = book().house(house)->work;
    show({work, house, {}});
    send(u"2026-11-20"_s);
    ASSERT_EQ(book().jobs.of<SentBid>().size(), 1U) << m_kit.refused().toStdString();
    answer({{u"day"_s, u"2026-11-24"_s}});
    tab().accept();
    EXPECT_EQ(book().house(house)->stage, HouseStage::won);
    Money sold;
    for (const WorkBid& bid : book().soldBid(work))
        sold += bid.price;
    EXPECT_EQ(sold, lastBid().amount);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(book().house(house)->stage, HouseStage::bidding);
    EXPECT_EQ(lastBid().answer, BidAnswer::open);
}

TEST_F(SentTabTest, AnAnswerWithoutABidIsSaid) {
    tab().accept();
    EXPECT_EQ(m_kit.refused(), u"Choose a bid in the list first."_s);
    tab().printOne();
    EXPECT_EQ(m_kit.refused(), u"Choose a bid in the list first."_s);
}

TEST_F(SentTabTest, SettingsAreCopiedToAHouse) {
    const Id<House> house = m_kit.startHouse("Lot 9");
    BidSetup setup = setupFrom(book().prices.terms(), m_kit.plan());
    setup.id = m_kit.desk().ids().next<BidSetup>();
    setup.profit = Percent::whole(33);
    ASSERT_TRUE(m_kit.desk().perform(putEdit(book(), "Set", setup)));
    answer();
    tab().copySettings();
    const BidSetup* copied = book().bidSetup(book().house(house)->work);
    ASSERT_TRUE(copied) << m_kit.refused().toStdString();
    EXPECT_EQ(copied->profit, Percent::whole(33));
}

} // namespace
} // namespace miterbook
