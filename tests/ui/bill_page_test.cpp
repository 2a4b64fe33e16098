// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/bar_picture.h"
#include "desk/figure_desk.h"
#include "papers/write_paper.h"
#include "stages/bill/bill_desk.h"
#include "stages/bill/bill_page.h"
#include "stages/bill/draw_tab.h"
#include "stages/bill/extras_tab.h"
#include "stages/bill/invoices_tab.h"
#include "stages/bill/photos.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"
#include "widgets/field_dialog.h"
#include "windows/aging_tab.h"
#include "windows/dates_tab.h"
#include "windows/money_desk.h"
#include "windows/office_page.h"
#include "windows/reminders_tab.h"

#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QImage>
#include <QLineEdit>
#include <QPushButton>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

/// A house of the sample plan on the Bill page.
class BillPageTest : public testing::Test {
protected:
    BillPageTest()
        : m_figures(m_kit.desk())
        , m_page(m_kit.desk(), m_figures) {
        m_house = m_kit.startHouse("Lot 7");
        const House& house = *m_kit.book().house(m_house);
        m_figures.setJob({house.work, m_house, {}});
        m_page.resize(1280, 820);
        m_page.show();
        QApplication::processEvents();
    }
    ~BillPageTest() override { m_figures.stopSearch(); }

    const Book& book() const { return m_kit.book(); }
    QLineEdit* line(const QString& name) const {
        for (auto* each : m_page.findChildren<QLineEdit*>()) {
            if (each->accessibleName() == name)
                return each;
        }
        ADD_FAILURE() << name.toStdString();
        return nullptr;
    }
    /// Fills in the dialog that comes up next and says yes; gives up when that is refused.
    void answer(const QList<QPair<QString, QString>>& fields) {
        QTimer::singleShot(0, qApp, [fields] {
            auto* dialog = qobject_cast<FieldDialog*>(QApplication::activeModalWidget());
            ASSERT_TRUE(dialog);
            for (const auto& [name, typed] : fields) {
                for (auto* each : dialog->findChildren<QLineEdit*>()) {
                    if (each->accessibleName().contains(name))
                        each->setText(typed);
                }
            }
            picture(*dialog, dialog->windowTitle());
            auto* box = dialog->findChild<QDialogButtonBox*>();
            for (QAbstractButton* button : box->buttons()) {
                if (box->buttonRole(button) == QDialogButtonBox::AcceptRole)
                    button->click();
            }
            if (dialog->isVisible()) // it was refused
                dialog->reject();
        });
    }
    static void picture(QWidget& widget, QString name) {
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES"); // for the eye
        QApplication::processEvents();
        if (!folder.isEmpty())
            widget.grab().save(
                folder + u"/bill-"_s + name.replace(u' ', u'-').toLower() + u".png"_s);
    }
    void addExtra(const QString& title, const QString& price) {
        line(u"New extra"_s)->setText(title);
        line(u"Asked by"_s)->setText(u"R. Haas"_s);
        line(u"Price"_s)->setText(price);
        m_page.extras().add();
    }
    void agree() {
        m_page.draw().agree();
        m_page.tabs().setCurrentIndex(1);
        goTo(m_page.draw().table(), 0, u"Done"_s);
        typeCell(m_page.draw().table(), u"50"_s);
    }
    const Extra& firstExtra() const { return book().jobs.of<Extra>().begin()->second; }

    UiKit m_kit;
    FigureDesk m_figures;
    BillPage m_page;
    Id<House> m_house;
};

TEST_F(BillPageTest, AnExtraIsPricedByTheBooksRates) {
    line(u"New extra"_s)->setText(u"Two more doors"_s);
    line(u"Asked by"_s)->setText(u"R. Haas"_s);
    auto* task = [&] {
        for (auto* box : m_page.findChildren<QComboBox*>()) {
            if (box->accessibleName() == u"Task"_s)
                return box;
        }
        return static_cast<QComboBox*>(nullptr);
    }();
    ASSERT_TRUE(task);
    task->setCurrentText(QString::fromUtf8(word(Task::prehungDoor).data()));
    line(u"How much"_s)->setText(u"2"_s);
    line(u"Material"_s)->setText(u"150"_s);
    EXPECT_TRUE(m_page.extras().priceLine().contains(u"the book's price is"_s))
        << m_page.extras().priceLine().toStdString();
    QTest::keyClick(line(u"Material"_s), Qt::Key_Return);
    ASSERT_EQ(book().jobs.of<Extra>().size(), 1U) << m_kit.refused().toStdString();
    EXPECT_EQ(firstExtra().state, ExtraState::priced);
    EXPECT_GT(firstExtra().price, Money::dollars(150));
    EXPECT_EQ(linesOf(book(), firstExtra()).size(), 1U);
    EXPECT_EQ(cellText(m_page.extras().table(), 0, u"Stands at"_s), u"priced, NOT APPROVED"_s);
    EXPECT_TRUE(m_page.nextStep().contains(u"Two more doors"_s));
    EXPECT_EQ(cellText(m_page.extras().table(), 0, u"Material"_s), u"150.00"_s);
    goTo(m_page.extras().table(), 0, u"Material"_s);
    typeCell(m_page.extras().table(), u"163.20"_s);
    EXPECT_EQ(firstExtra().material, Money::cents(16320)) << "what it came to";
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(firstExtra().material, Money::dollars(150));
    m_kit.desk().undoStack().undo();
    EXPECT_TRUE(book().jobs.of<Extra>().empty());
}

TEST_F(BillPageTest, AnApprovalNamesWhoAndWhen) {
    addExtra(u"Window seat"_s, u"480"_s);
    goTo(m_page.extras().table(), 0, u"What"_s);
    m_page.extras().markDone();
    EXPECT_TRUE(m_kit.refused().contains(u"cannot become done"_s));
    answer({{u"Who said yes"_s, u"R. Haas"_s}, {u"day"_s, u"2026-11-20"_s}});
    m_page.extras().approve();
    EXPECT_EQ(firstExtra().state, ExtraState::approved);
    EXPECT_EQ(firstExtra().approvedBy, "R. Haas");
    goTo(m_page.extras().table(), 0, u"Price"_s);
    typeCell(m_page.extras().table(), u"500"_s);
    EXPECT_TRUE(m_kit.refused().contains(u"has been agreed at 480.00"_s));
    picture(m_page, u"extras"_s);
}

TEST_F(BillPageTest, TheBidBecomesTheContractAndADrawIsIssued) {
    agree();
    ASSERT_TRUE(book().contract(m_house)) << m_kit.refused().toStdString();
    EXPECT_EQ(book().house(m_house)->stage, HouseStage::won);
    const Money value = m_page.bill().account().contract;
    EXPECT_GT(value, Money());
    picture(m_page, u"draw-before"_s);
    m_page.tabs().setCurrentIndex(1);
    picture(m_page, u"draw"_s);
    answer({{u"Date"_s, u"2026-11-25"_s}});
    m_page.draw().issueDraw();
    ASSERT_EQ(book().jobs.of<Invoice>().size(), 1U) << m_kit.refused().toStdString();
    const HouseAccount account = m_page.bill().account();
    EXPECT_EQ(account.billed + account.retained + account.unbilled, value);
    EXPECT_TRUE(m_page.account().contains(u"billed"_s));
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(book().jobs.of<Invoice>().size(), 1U) << "an issued invoice is not undone";
    EXPECT_TRUE(m_kit.refused().contains(u"stays as it is"_s));
}

TEST_F(BillPageTest, AnIssuedInvoicePrintsFromItsFrozenPaper) {
    agree();
    answer({});
    m_page.draw().issueDraw();
    m_page.tabs().setCurrentIndex(2);
    goTo(m_page.invoices().bills(), 0, u"Number"_s);
    const auto before = m_page.invoices().currentPaper();
    ASSERT_TRUE(before) << before.error().sentence;
    Shop shop = book().prices.shop();
    shop.name = "Another name";
    ASSERT_TRUE(m_kit.desk().perform(putEdit(book(), "Rename", shop)));
    EXPECT_EQ(paperText(*m_page.invoices().currentPaper()), paperText(*before));
}

TEST_F(BillPageTest, APaymentIsSpreadAndARestStays) {
    agree();
    answer({});
    m_page.draw().issueDraw();
    answer({{u"Amount"_s, u"50000"_s}, {u"Reference"_s, u"1077"_s}});
    m_page.invoices().recordPayment();
    ASSERT_EQ(book().jobs.of<Payment>().size(), 1U) << m_kit.refused().toStdString();
    m_page.tabs().setCurrentIndex(2);
    EXPECT_EQ(cellText(m_page.invoices().bills(), 0, u"Stands at"_s), u"settled"_s);
    picture(m_page, u"invoices"_s);
    answer({{u"Why"_s, u"wrong"_s}});
    goTo(m_page.invoices().bills(), 0, u"Number"_s);
    m_page.invoices().voidOne();
    EXPECT_TRUE(book().jobs.of<InvoiceVoid>().empty()) << "something is paid on it";
}

TEST_F(BillPageTest, APhotoIsKeptInTheBook) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"seat.png"_s);
    QImage image(3000, 2000, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    ASSERT_TRUE(image.save(path));
    const auto photo = photoFrom(path);
    ASSERT_TRUE(photo) << photo.error().sentence;
    EXPECT_TRUE(checkAttachment(*photo));
    const QImage back = QImage::fromData(
        QByteArray::fromBase64(QByteArray::fromStdString(photo->content.text)));
    EXPECT_EQ(back.size(), QSize(1600, 1066));
    EXPECT_FALSE(photoFrom(folder.filePath(u"none.png"_s)));
}

TEST_F(BillPageTest, TheOfficeListsWhatIsOwedAndDue) {
    agree();
    answer({});
    m_page.draw().issueDraw();
    MoneyDesk money(m_kit.desk());
    OfficePage office(m_kit.desk(), money);
    office.resize(1200, 700);
    office.show();
    EXPECT_EQ(cellText(office.aging(), 0, u"Builder"_s), u"Hollis Homes"_s);
    EXPECT_NE(cellText(office.aging(), 0, u"Owed"_s), u"0.00"_s);
    picture(office, u"office-owes"_s);
    const BarPicture& owed = office.agingTab().picture();
    EXPECT_TRUE(owed.isVisible());
    EXPECT_TRUE(owed.words().contains(u"0 to 30 days: $"_s)) << owed.words().toStdString();
    EXPECT_FALSE(owed.words().contains(u"left of payments"_s)) << "nobody paid too much";
    office.tabs().setCurrentIndex(1);
    EXPECT_EQ(cellText(office.houses(), 0, u"House"_s), u"Lot 7"_s);
    picture(office, u"office-to-bill"_s);
    Reminder reminder;
    reminder.id = m_kit.desk().ids().next<Reminder>();
    reminder.kind = ReminderKind::insurance;
    reminder.title = "Liability policy";
    reminder.due = m_kit.desk().clock().today();
    ASSERT_TRUE(m_kit.desk().perform(putEdit(book(), "Add", reminder)));
    office.tabs().setCurrentIndex(2);
    EXPECT_TRUE(office.findChild<RemindersTab*>()->due().contains(u"Liability policy"_s));
    picture(office, u"office-reminders"_s);
}

TEST_F(BillPageTest, ThePictureOfWhatIsOwedFollowsTheMoney) {
    MoneyDesk money(m_kit.desk());
    OfficePage office(m_kit.desk(), money);
    office.show();
    const BarPicture& owed = office.agingTab().picture();
    EXPECT_FALSE(owed.isVisible()) << "nobody owes anything";
    agree();
    answer({});
    m_page.draw().issueDraw();
    EXPECT_TRUE(owed.isVisible());
    const Invoice& invoice = book().jobs.of<Invoice>().begin()->second;
    const auto paid = recordPayment(book(), m_kit.desk().ids(),
        {{}, invoice.builder, m_kit.desk().clock().today(), invoice.total() + Money::dollars(125),
            "check 7"});
    ASSERT_TRUE(paid.ok());
    ASSERT_TRUE(m_kit.desk().perform(*paid));
    EXPECT_TRUE(owed.words().contains(u"left of payments: $-125.00"_s)
        || owed.words().contains(u"left of payments: $\u2212125.00"_s))
        << owed.words().toStdString();
}

TEST_F(BillPageTest, DaysOfADialogAreTypedAsPeopleDo) {
    agree();
    answer({{u"Date"_s, u"11/24/2026"_s}});
    m_page.draw().issueDraw();
    ASSERT_EQ(book().jobs.of<Invoice>().size(), 1U);
    EXPECT_EQ(isoDate(book().jobs.of<Invoice>().begin()->second.date), "2026-11-24");
}

TEST_F(BillPageTest, DatesClashInWords) {
    const Id<House> other = m_kit.startHouse("Lot 9");
    CrewMember marta;
    marta.id = m_kit.desk().ids().next<CrewMember>();
    marta.name = "Marta";
    EditBuilder edit(book(), "Plan the month");
    edit.put(marta);
    const Date today = m_kit.desk().clock().today();
    int n = 0;
    for (const Id<House> house : {m_house, other}) {
        HouseDate date;
        date.id = m_kit.desk().ids().next<HouseDate>();
        date.house = house;
        date.from = addDays(today, 3 * n++);
        date.to = addDays(date.from, 5);
        date.crew = {marta.id};
        edit.put(date);
    }
    ASSERT_TRUE(m_kit.desk().perform(edit.take())) << m_kit.refused().toStdString();
    DatesTab dates(m_kit.desk());
    dates.resize(1200, 600);
    dates.show();
    EXPECT_TRUE(dates.clashWords().contains(u"Marta is to be at Lot 7"_s))
        << dates.clashWords().toStdString();
    EXPECT_EQ(cellText(dates.table(), 0, u"Crew"_s), u"Marta"_s);
    picture(dates, u"dates"_s);
    goTo(dates.table(), 0, u"Crew"_s);
    typeCell(dates.table(), u"Nobody"_s);
    EXPECT_TRUE(m_kit.refused().contains(u"Nobody in the crew"_s));
}

} // namespace
} // namespace miterbook
