// SPDX-License-Identifier: GPL-3.0-or-later
// From an empty plan over a builder's sheet to the takeoff of a two-storey house, with the real
// widgets: every press, pull, key and typed line is one gesture. The hand calculation is in
// plan_walk.md.
#include "desk/figure_desk.h"
#include "stages/plan/drawing/plan_panel.h"
#include "stages/plan/plan_stage.h"
#include "stages/plan/sheets/sheet_menu.h"
#include "ui/ui_kit.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

struct WalkRoom {
    const char* name;
    const char* size;
    double x;
    double y;
    double width;
    double height;
};

constexpr WalkRoom walkRooms[] = {
    {"Living room", "16' x 14'", 0, 0, 192, 168},
    {"Kitchen", "12' x 14'", 196.5, 0, 144, 168},
    {"Hall", "28' 4 1/2\" x 4'", 0, 172.5, 340.5, 48},
    {"Study", "10' x 10'", 0, 225, 120, 120},
    {"Bath", "6' x 10'", 124.5, 225, 72, 120},
    {"Dining", "11' 7 1/2\" x 10'", 201, 225, 139.5, 120},
};

/// A sheet of two pages at 1/8" to the foot, an inch of margin.
void writeSheet(const QString& path) {
    QPdfWriter writer(path);
    writer.setPageSize(QPageSize(QSizeF(432, 432), QPageSize::Point));
    writer.setPageMargins({});
    writer.setResolution(72);
    QPainter painter(&writer);
    for (int page = 0; page < 2; ++page) {
        if (page > 0)
            writer.newPage();
        for (const WalkRoom& room : walkRooms)
            painter.drawRect(QRectF(
                72 + room.x * 0.75, 72 + room.y * 0.75, room.width * 0.75, room.height * 0.75));
    }
}

class PlanWalk : public testing::Test {
protected:
    PlanWalk()
        : m_figures(m_kit.desk())
        , m_stage(m_kit.desk(), m_figures) {
        Plan plan = *m_kit.book().plan(m_kit.plan());
        plan.id = m_plan = m_kit.desk().ids().next<Plan>();
        plan.name = "Larkspur";
        plan.crown = {};
        Level level;
        level.id = m_kit.desk().ids().next<Level>();
        level.plan = plan.id;
        level.name = "Main";
        EXPECT_TRUE(m_kit.desk().perform(
            EditBuilder(m_kit.book(), "Begin plan Larkspur").put(plan).put(level).take()));
        EXPECT_TRUE(m_kit.desk().openPlan(m_plan));
        m_figures.setJob({m_plan, {}, {}});
        m_figures.stopSearch();
        m_stage.showJob(m_figures.job());
        QWidget* page = m_stage.page();
        page->resize(1600, 1100);
        page->show();
        page->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(page));
        m_panel = page->findChild<PlanPanel*>();
        for (QLineEdit* line : m_panel->findChildren<QLineEdit*>()) {
            if (line->accessibleName() == u"Typed for the drawing"_s)
                m_typed = line;
        }
        for (QComboBox* box : m_panel->findChildren<QComboBox*>()) {
            if (box->accessibleName() == u"Kind of what is placed"_s)
                m_kind = box;
        }
    }
    ~PlanWalk() override { m_figures.stopSearch(); }

    PlanView& view() const { return m_panel->view(); }
    const PlanRows& rows() const { return m_kit.book().sheet(m_plan); }
    /// On the view, of a place in the house: the sheet's margin is 48 in of it.
    QPoint at(double x, double y) const {
        return view().frame().toScreen(QPointF(48 + x, 48 + y)).toPoint();
    }

    void key(Qt::Key key) {
        ++m_gestures;
        QTest::keyClick(&view(), key);
    }
    void click(double x, double y) {
        ++m_gestures;
        QTest::mouseClick(&view(), Qt::LeftButton, {}, at(x, y));
    }
    void pull(double x1, double y1, double x2, double y2) {
        ++m_gestures;
        QTest::mousePress(&view(), Qt::LeftButton, {}, at(x1, y1));
        QTest::mouseMove(&view(), at((x1 + x2) / 2, (y1 + y2) / 2));
        QTest::mouseMove(&view(), at(x2, y2));
        QTest::mouseRelease(&view(), Qt::LeftButton, {}, at(x2, y2));
    }
    void type(const QString& words) {
        ++m_gestures;
        m_typed->setFocus();
        m_typed->selectAll();
        QTest::keyClicks(m_typed, words);
        QTest::keyClick(m_typed, Qt::Key_Return);
    }
    template <class E>
    void chooseKind(E kind) {
        ++m_gestures;
        m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(kind)));
        Q_EMIT m_kind->activated(m_kind->currentIndex());
    }

    void laySheet(const QString& path) {
        m_gestures += 2; // menu, file
        m_panel->sheetMenu().bring(path, 1);
        QTRY_VERIFY(!view().level().sheet().of<Underlay>().empty());
        QTest::qWait(50);
        key(Qt::Key_Home);
        key(Qt::Key_T);
        click(0, 0);
        click(96, 0); // the sheet is at half its scale until it is set
        type(u"16'"_s);
        key(Qt::Key_Home);
    }

    void drawRooms() {
        key(Qt::Key_R);
        for (const WalkRoom& room : walkRooms) {
            click(room.x, room.y);
            type(QString::fromUtf8(room.size));
            type(QString::fromUtf8(room.name));
        }
    }

    void placeWindows() {
        key(Qt::Key_W);
        type(u"36 x 60"_s);
        for (const auto& [x, y] : {std::pair(48.0, 0.0), {140.0, 0.0}, {0.0, 80.0}, {268.0, 0.0},
                 {340.5, 80.0}, {60.0, 345.0}, {160.0, 345.0}, {270.0, 345.0}, {340.5, 285.0}})
            click(x, y);
    }

    void placeDoors() {
        key(Qt::Key_D);
        type(u"2668"_s);
        click(60, 168); // living to hall
        click(260, 168);
        type(u"2468"_s);
        click(60, 225);
        click(160, 225);
        click(120, 285); // study to bath
        type(u"2868"_s);
        click(260, 225);
        click(192, 90); // living to kitchen
        chooseKind(OpeningKind::exteriorDoor);
        type(u"3068"_s);
        click(0, 196);
        click(340.5, 196);
    }

    void placeWhatStands() {
        key(Qt::Key_C);
        pull(196.5, 0, 340.5, 0);
        chooseKind(BreakKind::tub);
        pull(124.5, 345, 184.5, 345);
        key(Qt::Key_V);
    }

    void repeatLevel() {
        m_gestures += 2; // menu, entry
        for (QAction* action : m_panel->actions()) {
            if (action->text().contains(u"Repeat this level"_s))
                action->trigger();
        }
    }

    Length net(std::size_t runOfLabel) const {
        Length sum;
        const auto& plan = *m_kit.book().plan(m_plan);
        for (const RunCorners& run : m_figures.figures().takeoff.runs) {
            if (run.profile == (runOfLabel == 0 ? plan.base : plan.shoe))
                sum += run.net;
        }
        return sum;
    }

    void picture(const QString& name) const {
        const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
        QApplication::processEvents();
        if (!folder.isEmpty()) {
            EXPECT_TRUE(m_panel->window()->grab().save(folder + u'/' + name + u".png"_s));
        }
    }

    UiKit m_kit;
    Id<Plan> m_plan;
    FigureDesk m_figures;
    PlanStage m_stage;
    PlanPanel* m_panel = nullptr;
    QLineEdit* m_typed = nullptr;
    QComboBox* m_kind = nullptr;
    int m_gestures = 0;
};

TEST_F(PlanWalk, FromAnEmptyPlanToACompleteTakeoff) {
    QTemporaryDir folder;
    const QString path = folder.filePath(u"A1.pdf"_s);
    writeSheet(path);
    laySheet(path);
    drawRooms();
    ASSERT_EQ(rows().of<Room>().size(), 6U) << m_kit.refused().toStdString();
    placeWindows();
    placeDoors();
    placeWhatStands();
    QTest::qWait(200);
    picture(u"plan-walk-main"_s);
    repeatLevel();
    EXPECT_EQ(m_kit.refused(), QString());

    int windows = 0;
    int doors = 0;
    for (const auto& [id, opening] : rows().of<Opening>()) {
        (opening.isWindow() ? windows : doors) += 1;
        EXPECT_TRUE(opening.room) << opening.mark;
        EXPECT_GT(opening.along, Length()) << opening.mark;
    }
    EXPECT_EQ(windows, 18);
    EXPECT_EQ(doors, 18);
    EXPECT_EQ(rows().of<Level>().size(), 2U);

    // plan_walk.md
    EXPECT_EQ(net(0), Length::inches(5468));
    EXPECT_EQ(net(1), Length::inches(5468));
    const Takeoff& takeoff = m_figures.figures().takeoff;
    EXPECT_EQ(
        runningLength(takeoff, m_kit.book().plan(m_plan)->doorCasing), Length::inches(10'215));
    int pieces = 0;
    for (const Piece& piece : takeoff.pieces) {
        if (piece.profile == m_kit.book().plan(m_plan)->doorCasing)
            pieces += piece.count;
    }
    EXPECT_EQ(pieces, 168);
    EXPECT_LE(m_gestures, 150);
    RecordProperty("gestures", m_gestures);
    std::printf("%d gestures\n", m_gestures);
    picture(u"plan-walk"_s);
}

} // namespace
} // namespace miterbook
