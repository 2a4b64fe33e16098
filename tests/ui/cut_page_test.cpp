// SPDX-License-Identifier: GPL-3.0-or-later
// The day at the saw with real keys: measures typed as the tape goes, ticks, test cuts.
#include "cut/progress.h"
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "stages/cut/assembly_tab.h"
#include "stages/cut/bench_tab.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/cut_page.h"
#include "stages/cut/cut_stage.h"
#include "stages/cut/measures_tab.h"
#include "stages/cut/saw_check_tab.h"
#include "stages/cut/sheet_tab.h"
#include "stages/cut/sticks_tab.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QTabWidget>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class CutPageTest : public testing::Test {
protected:
    CutPageTest()
        : m_house(m_kit.startHouse("Lot 14"))
        , m_figures(m_kit.desk())
        , m_stage(m_kit.desk(), m_figures) {
        m_figures.setJob({m_kit.book().house(m_house)->work, m_house, {}});
        m_figures.stopSearch();
        m_page = qobject_cast<CutPage*>(m_stage.page());
        m_page->resize(1500, 900);
        m_page->show();
        m_page->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_page));
    }
    ~CutPageTest() override { m_figures.stopSearch(); }

    const SawSheet& sheet() const { return m_page->cut().figures().sheet; }
    const Measure& firstMeasure() const { return m_page->cut().figures().units.front().measure; }
    DataTable& measures() const { return m_page->measures().table(); }

    void tickEveryOther() {
        std::vector<std::size_t> half;
        for (std::size_t i = 0; i < sheet().pieces.size(); i += 2)
            half.push_back(i);
        ASSERT_TRUE(m_page->cut().tick(half, PieceState::cut));
    }

    /// Whether something of its profile and level has been cut, so that its sheet is kept.
    static bool isBegun(const SawSheet& sheet, const SheetPiece& piece) {
        return std::ranges::any_of(sheet.pieces, [&](const SheetPiece& other) {
            return other.isCut() && other.piece.profile == piece.piece.profile
                && other.piece.source.level == piece.piece.source.level;
        });
    }

    /// Saves a picture for the eye when a folder is named.
    void picture(int tab, const QString& name) {
        m_page->tabs().setCurrentIndex(tab);
        QApplication::processEvents();
        const QPixmap shot = m_page->grab();
        EXPECT_FALSE(shot.isNull());
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
        if (!folder.isEmpty())
            shot.save(folder + u'/' + name + u".png"_s);
    }

    UiKit m_kit;
    Id<House> m_house;
    FigureDesk m_figures;
    CutStage m_stage;
    CutPage* m_page = nullptr;
};

TEST_F(CutPageTest, TabGoesAsTheTapeDoes) {
    goTo(measures(), 0, u"Width top"_s);
    for (const QString& typed :
        {u"36 1/8"_s, u"36"_s, u"36 1/16"_s, u"60"_s, u"60"_s, u"60 1/8"_s, u"70"_s, u"69 7/8"_s})
        typeCell(measures(), typed, Qt::Key_Tab);
    typeCell(measures(), u"-1/8"_s, Qt::Key_Tab);
    const Measure& read = firstMeasure();
    EXPECT_EQ(read.widthTop, Length::sixteenths(36 * 16 + 2));
    EXPECT_EQ(read.widthMiddle, Length::inches(36));
    EXPECT_EQ(read.widthBottom, Length::sixteenths(36 * 16 + 1));
    EXPECT_EQ(read.heightRight, Length::sixteenths(60 * 16 + 2));
    EXPECT_EQ(read.diagonalDown, Length::sixteenths(69 * 16 + 14));
    EXPECT_EQ(read.proud, -Length::sixteenths(2));
    EXPECT_TRUE(m_kit.refused().isEmpty()) << m_kit.refused().toStdString();
    EXPECT_FALSE(cellText(measures(), 0, u"Look at"_s).isEmpty());
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(firstMeasure().proud, Length());
}

TEST_F(CutPageTest, AMeasureChangesTheSawSheetAndNotTheTakeoff) {
    const Takeoff takeoff = m_figures.figures().takeoff;
    const Length before = sheet().pieces.front().shortPoint;
    m_page->measures().planSizesAction()->trigger();
    for (const OpeningUnit& unit : m_page->cut().figures().units)
        EXPECT_TRUE(unit.measure.id);
    EXPECT_EQ(sheet().pieces.front().shortPoint, before);
    goTo(measures(), 0, u"Height left"_s);
    typeCell(measures(), u"61"_s, Qt::Key_Tab);
    typeCell(measures(), u"61"_s, Qt::Key_Tab);
    typeCell(measures(), u"61"_s, Qt::Key_Return);
    const std::int64_t id = m_page->cut().figures().units.front().opening.id.value();
    bool taller = false;
    for (const std::size_t at : piecesOf(sheet(), id, 1))
        taller = taller || sheet().pieces[at].piece.shortPoint > Length::inches(61);
    EXPECT_TRUE(taller);
    EXPECT_EQ(m_figures.figures().takeoff, takeoff); // the bid stays as it was
}

TEST_F(CutPageTest, MeasuresArePastedFromASpreadsheet) {
    goTo(measures(), 0, u"Width top"_s);
    QApplication::clipboard()->setText(u"36\t36\t36\t60\t60\t60\n40\t40\t40\t50\t50\t50\n"_s);
    measures().pasteCells();
    EXPECT_EQ(firstMeasure().heightRight, Length::inches(60));
    EXPECT_EQ(m_page->cut().figures().units[1].measure.widthTop, Length::inches(40));
    m_kit.desk().undoStack().undo();
    EXPECT_FALSE(firstMeasure().id);
}

TEST_F(CutPageTest, MeasuresAreBroughtInFromAFile) {
    QTemporaryDir folder;
    const QString path = folder.filePath(u"m.csv"_s);
    const std::string name = m_page->cut().figures().units.front().name;
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString("opening,width,height\n" + name + ",33,44\n"));
    file.close();
    m_page->measures().bringFile(path);
    EXPECT_EQ(firstMeasure().widthTop, Length::inches(33));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString("opening,width\n" + name + ",34\nX77,12\n"));
    file.close();
    m_page->measures().bringFile(path);
    EXPECT_EQ(firstMeasure().widthTop, Length::inches(33)) << "nothing is half brought in";
}

TEST_F(CutPageTest, SpaceTicksTheStopUnderTheCursor) {
    m_page->tabs().setCurrentIndex(1);
    QTableView* stops = m_page->sheet().stops().table();
    stops->setFocus();
    stops->setCurrentIndex(stops->model()->index(0, 0));
    const int first = m_page->cut().stops().front()->number;
    QTest::keyClick(stops, Qt::Key_Space);
    EXPECT_TRUE(sheet().stop(first)->isDone());
    EXPECT_TRUE(stops->model()->index(0, 1).data().toString().contains(u"all cut"_s));
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(sheet().stop(first)->cut, 0);
}

TEST_F(CutPageTest, ANumberFromThePaperTicksToo) {
    QLineEdit& typed = m_page->sheet().typed();
    QTest::keyClicks(&typed, u"2"_s);
    QTest::keyClick(&typed, Qt::Key_Return);
    EXPECT_TRUE(sheet().stop(2)->isDone());
    EXPECT_TRUE(typed.text().isEmpty());
    QTest::keyClicks(&typed, u"9999"_s);
    QTest::keyClick(&typed, Qt::Key_Return);
    EXPECT_TRUE(m_kit.refused().contains(u"9999"_s));
    EXPECT_EQ(typed.text(), u"9999"_s);
    const OpeningUnit unit = m_page->cut().figures().units.front();
    typed.setText(QString::fromStdString(unit.name + " hung"));
    QTest::keyClick(&typed, Qt::Key_Return);
    EXPECT_EQ(stateOf(sheet(), unit.opening.id.value(), unit.unit), PieceState::hung);
}

TEST_F(CutPageTest, MarkingNothingSaysWhatToChoose) {
    EXPECT_FALSE(m_page->cut().tick({}, PieceState::cut));
    EXPECT_EQ(m_kit.refused().toStdString(),
        "Choose rows first: nothing that is chosen can be marked \"cut\".");
    EXPECT_FALSE(m_page->cut().tick({}, PieceState::spoiled));
    EXPECT_EQ(m_kit.refused().toStdString(), "Choose what has been cut: only that can be spoiled.");
    EXPECT_TRUE(m_kit.book().sheet(m_page->cut().plan()).of<CutPiece>().empty());
}

TEST_F(CutPageTest, ASpoiledPieceIsToBeCutAgain) {
    m_page->tabs().setCurrentIndex(1);
    QTest::keyClicks(&m_page->sheet().typed(), u"1"_s);
    QTest::keyClick(&m_page->sheet().typed(), Qt::Key_Return);
    QTableView* stops = m_page->sheet().stops().table();
    stops->setCurrentIndex(stops->model()->index(0, 0));
    QTableView* pieces = m_page->sheet().pieces().table();
    QApplication::processEvents();
    pieces->setFocus();
    ASSERT_TRUE(pieces->hasFocus());
    pieces->setCurrentIndex(pieces->model()->index(0, 0));
    const std::size_t at = m_page->cut().stops().front()->pieces.front();
    for (QAction* action : pieces->actions()) {
        if (action->text().startsWith(u"Spoiled"_s))
            action->trigger();
    }
    EXPECT_FALSE(sheet().pieces[at].isCut());
    EXPECT_EQ(sheet().stop(1)->cut, static_cast<int>(sheet().stop(1)->pieces.size()) - 1);
}

TEST_F(CutPageTest, TestCutsMoveTheSettings) {
    const auto firstSetting = [this] {
        m_page->tabs().setCurrentIndex(1);
        return m_page->sheet().stops().table()->model()->index(0, 2).data().toString();
    };
    const QString before = firstSetting();
    m_page->tabs().setCurrentIndex(4);
    DataTable& table = m_page->check().table();
    goTo(table, 0, u"Stop set to"_s);
    typeCell(table, u"36"_s, Qt::Key_Tab);
    goTo(table, 0, u"Piece measured"_s);
    typeCell(table, u"35 15/16"_s, Qt::Key_Tab);
    goTo(table, 0, u"Corner of two, degrees"_s);
    typeCell(table, u"89.8"_s, Qt::Key_Return);
    EXPECT_EQ(m_page->cut().figures().correction.add, Length::sixteenths(1));
    EXPECT_TRUE(m_page->check().result().contains(u"+1/16"_s))
        << m_page->check().result().toStdString();
    EXPECT_TRUE(m_page->check().result().contains(u"heel"_s));
    picture(4, u"cut-check"_s);
    EXPECT_NE(firstSetting(), before);
}

TEST_F(CutPageTest, SetsAreTickedAssembledAndHung) {
    m_page->tabs().setCurrentIndex(3);
    ASSERT_FALSE(m_page->cut().assembly().bench.empty());
    const AssemblySet first = m_page->cut().assembly().bench.front();
    QTableView* sets = m_page->assembly().sets().table();
    sets->setCurrentIndex(sets->model()->index(0, 0));
    m_page->assembly().tick(PieceState::assembled);
    EXPECT_EQ(sheet().pieces[first.pieces.front()].state, PieceState::assembled);
    sets->setCurrentIndex(sets->model()->index(0, 0));
    m_page->assembly().tick(PieceState::hung);
    EXPECT_EQ(*stateOf(sheet(), first.source, first.unit), PieceState::hung);
    EXPECT_NE(m_page->cut().assembly().bench.front().name, first.name);
}

TEST_F(CutPageTest, WhatIsCutStaysWhenAnOpeningIsMeasuredAgain) {
    tickEveryOther();
    const SawSheet before = sheet();
    const std::int64_t id = m_page->cut().figures().units.front().opening.id.value();
    goTo(measures(), 0, u"Width top"_s);
    for (const QString& typed : {u"41"_s, u"41"_s, u"41"_s, u"66"_s, u"66"_s})
        typeCell(measures(), typed, Qt::Key_Tab);
    typeCell(measures(), u"66"_s);
    int changed = 0;
    for (std::size_t i = 0; i < before.pieces.size(); ++i) {
        const SheetPiece& was = before.pieces[i];
        const SheetPiece& is = sheet().pieces[i];
        if (was.piece.key.source == id && !was.isCut()) {
            changed += is.shortPoint != was.shortPoint ? 1 : 0;
            continue;
        }
        if (!isBegun(before, was))
            continue; // its sheet is not kept yet
        EXPECT_EQ(is.stop, was.stop);
        EXPECT_EQ(is.stick, was.stick);
        EXPECT_EQ(is.shortPoint, was.shortPoint);
        EXPECT_EQ(is.state, was.state);
    }
    EXPECT_GT(changed, 0);
    EXPECT_FALSE(sheet().problems.empty()) << "what was cut no longer fits, and it is said";
}

TEST_F(CutPageTest, WhatIsListedStaysWhenAnOpeningIsAdded) {
    tickEveryOther();
    const SawSheet before = sheet();
    Opening added = m_page->cut().figures().units.front().opening;
    added.id = m_kit.desk().ids().next<Opening>();
    added.mark = "W98";
    added.count = 1;
    added.position = 0; // first of all, so that places on the sheet move
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Add window W98", added)));
    std::map<PieceKey, SheetPiece> after;
    int fresh = 0;
    for (const SheetPiece& piece : sheet().pieces) {
        after[piece.piece.key] = piece;
        fresh += piece.piece.source.name == "W98" ? 1 : 0;
    }
    EXPECT_GT(fresh, 0);
    for (const SheetPiece& was : before.pieces) {
        const SheetPiece& is = after[was.piece.key];
        const bool wantedOtherwise = is.piece.shortPoint != was.piece.shortPoint;
        if (!was.isCut() && (wantedOtherwise || !isBegun(before, was)))
            continue;
        EXPECT_EQ(is.stop, was.stop);
        EXPECT_EQ(is.stick, was.stick);
        EXPECT_EQ(is.state, was.state);
    }
}

TEST_F(CutPageTest, ANumberMovesAnOpeningInWalkingOrder) {
    const std::string third = m_page->cut().figures().units[2].name;
    goTo(measures(), 2, u"No."_s);
    typeCell(measures(), u"1"_s);
    EXPECT_EQ(m_page->cut().figures().units.front().name, third);
    EXPECT_EQ(cellText(measures(), 0, u"No."_s), u"1"_s);
    EXPECT_EQ(m_page->nextStep(), m_stage.nextStep());
    EXPECT_TRUE(m_page->nextStep().contains(u"measure"_s)) << "a number is no reading";
    // One that is measured stays where it stands.
    const std::string fifth = m_page->cut().figures().units[4].name;
    goTo(measures(), 4, u"Width top"_s);
    typeCell(measures(), u"36"_s);
    EXPECT_EQ(m_page->cut().figures().units[4].name, fifth);
}

TEST_F(CutPageTest, SticksAreTickedAndTheirRemaindersPutAway) {
    m_page->tabs().setCurrentIndex(2);
    SticksTab& tab = m_page->sticks();
    QTableView* sticks = tab.sticks().table();
    EXPECT_FALSE(tab.putAwayAction()->isEnabled());
    sticks->setFocus();
    sticks->selectAll();
    QTest::keyClick(sticks, Qt::Key_Space);
    for (const SheetStick& stick : sheet().sticks) {
        for (const std::size_t at : stick.pieces)
            EXPECT_TRUE(sheet().pieces[at].isCut());
    }
    ASSERT_TRUE(tab.putAwayAction()->isEnabled()) << tab.told().toStdString();
    picture(2, u"cut-remainders"_s);
    const std::size_t before = m_kit.book().prices.of<Offcut>().size();
    QTest::keyClick(sticks, Qt::Key_R, Qt::ControlModifier);
    EXPECT_GT(m_kit.book().prices.of<Offcut>().size(), before);
    EXPECT_FALSE(tab.putAwayAction()->isEnabled());
    bool said = false;
    for (int row = 0; row < sticks->model()->rowCount(); ++row)
        said = said || sticks->model()->index(row, 6).data().toString() == u"in the rack"_s;
    EXPECT_TRUE(said);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_kit.book().prices.of<Offcut>().size(), before);
    EXPECT_TRUE(tab.putAwayAction()->isEnabled());
}

TEST_F(CutPageTest, ATabNobodySeesIsFilledWhenItIsShown) {
    const auto firstState
        = [](SheetTab& tab) { return tab.stops().table()->model()->index(0, 1).data().toString(); };
    m_page->tabs().setCurrentIndex(1);
    const SheetStop first = *m_page->cut().stops().front();
    EXPECT_EQ(firstState(m_page->sheet()), QString());
    m_page->tabs().setCurrentIndex(3);
    ASSERT_TRUE(m_page->cut().tick(first.pieces, PieceState::cut));
    EXPECT_EQ(firstState(m_page->sheet()), QString()) << "nobody sees it";
    m_page->tabs().setCurrentIndex(1);
    EXPECT_TRUE(firstState(m_page->sheet()).contains(u"all cut"_s));
}

TEST_F(CutPageTest, ATickLeavesPriceAndSearchAsTheyAre) {
    int figured = 0;
    int atSaw = 0;
    QObject::connect(&m_figures, &FigureDesk::figured, m_page, [&] { ++figured; });
    QObject::connect(&m_figures, &FigureDesk::sawRowsChanged, m_page, [&] { ++atSaw; });
    const JobFigures before = m_figures.figures();
    const SheetStop first = *m_page->cut().stops().front();
    ASSERT_TRUE(m_page->cut().tick({first.pieces.front()}, PieceState::cut));
    EXPECT_EQ(figured, 0);
    EXPECT_EQ(atSaw, 1);
    EXPECT_EQ(m_figures.figures(), before);
    EXPECT_TRUE(sheet().pieces[first.pieces.front()].isCut()) << "the sheet is reckoned anew";
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(atSaw, 2);
    EXPECT_FALSE(sheet().pieces[first.pieces.front()].isCut());
}

TEST_F(CutPageTest, OneFaceOfADoorIsTickedByItsName) {
    std::string door;
    for (const SheetPiece& piece : sheet().pieces) {
        if (piece.piece.ofOpening && piece.piece.key.part == "head" && piece.piece.key.copy == 2)
            door = piece.piece.source.name;
    }
    ASSERT_FALSE(door.empty());
    QLineEdit& typed = m_page->sheet().typed();
    typed.setText(QString::fromStdString(door + " face 2 assembled"));
    QTest::keyClick(&typed, Qt::Key_Return);
    EXPECT_TRUE(m_kit.refused().isEmpty()) << m_kit.refused().toStdString();
    for (const SheetPiece& piece : sheet().pieces) {
        if (piece.piece.ofOpening && piece.piece.source.name == door) {
            EXPECT_EQ(piece.state,
                piece.piece.key.copy == 2 ? PieceState::assembled : PieceState::listed);
        }
    }
}

TEST_F(CutPageTest, ALabelSheetIsChosenByItsSize) {
    m_page->tabs().setCurrentIndex(5);
    QComboBox& sheets = m_page->bench().labelSheets();
    EXPECT_EQ(sheets.currentIndex(), 1) << "as a new book begins";
    sheets.setFocus();
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(&sheets, Qt::Key_Down);
    EXPECT_EQ(m_kit.book().bench().labelRows, 7);
    EXPECT_TRUE(sheets.currentText().endsWith(u"mm, A4"_s)) << sheets.currentText().toStdString();
    Bench own = m_kit.book().bench();
    own.labelGap = Length::sixteenths(9);
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Change the labels", own)));
    EXPECT_EQ(sheets.currentIndex(), 0) << "of the shop's own size";
    for (int i = 0; i < 4; ++i) // three keys and one change
        m_kit.desk().undoStack().undo();
    EXPECT_EQ(sheets.currentIndex(), 1);
}

TEST_F(CutPageTest, TwoWaysOfJoiningStandSideBySide) {
    m_page->tabs().setCurrentIndex(5);
    const std::vector<FigureRow>& rows = m_page->bench().joining().model()->rows();
    ASSERT_GE(rows.size(), 2U);
    ASSERT_EQ(rows.size() % 2, 0U) << "both ways for each casing";
    const Bench bench = m_kit.book().bench();
    for (std::size_t i = 0; i < rows.size(); i += 2) {
        EXPECT_EQ(rows[i].cells[0], rows[i + 1].cells[0]);
        EXPECT_EQ(rows[i].cells[1].text.toStdString(), bench.firstName);
        EXPECT_EQ(rows[i + 1].cells[1].text.toStdString(), bench.secondName);
        // Four corners: yellow glue 2 min and a biscuit 1 min each, hot melt 3/4 min [calc].
        EXPECT_DOUBLE_EQ(*rows[i].cells[2].number, 12);
        EXPECT_DOUBLE_EQ(*rows[i + 1].cells[2].number, 3);
        EXPECT_GT(*rows[i].cells[4].number, *rows[i + 1].cells[4].number) << "clamps";
        EXPECT_EQ(rows[i].cells[7].text, u"any width"_s);
        EXPECT_EQ(rows[i + 1].cells[7].text, u"3 1/2"_s);
    }
}

TEST_F(CutPageTest, APlanIsNotCutFor) {
    m_figures.setJob(m_kit.job());
    EXPECT_FALSE(m_page->cut().plan());
    EXPECT_TRUE(sheet().pieces.empty());
    EXPECT_EQ(m_stage.nextStep(), u"start a house from this plan"_s);
    m_figures.stopSearch();
}

TEST_F(CutPageTest, EveryTabIsPainted) {
    m_page->measures().planSizesAction()->trigger();
    goTo(measures(), 1, u"Width bottom"_s);
    typeCell(measures(), u"37"_s);
    QTest::keyClicks(&m_page->sheet().typed(), u"2"_s);
    QTest::keyClick(&m_page->sheet().typed(), Qt::Key_Return);
    QTableView* stops = m_page->sheet().stops().table();
    stops->setCurrentIndex(stops->model()->index(1, 0));
    EXPECT_TRUE(m_page->summary().contains(u"stop settings"_s)) << m_page->summary().toStdString();
    const char* const names[]{"measures", "sheet", "sticks", "assembly", "check", "bench"};
    for (int tab = 0; tab < 6; ++tab)
        picture(tab, u"cut-"_s + QString::fromLatin1(names[tab]));
    EXPECT_TRUE(m_page->bench().moisture().contains(u"%"_s));
    EXPECT_TRUE(m_page->bench().walking().contains(u"is drawn on this level yet"_s));
}

} // namespace
} // namespace miterbook
