// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/snap.h"
#include "stages/plan/drawing/mark_gestures.h"
#include "stages/plan/drawing/opening_gestures.h"
#include "stages/plan/drawing/picture_painter.h"
#include "stages/plan/drawing/room_gestures.h"
#include "stages/plan/drawing/stair_gestures.h"

#include <QWidget>

#include <functional>
#include <memory>

namespace miterbook {

class Desk;

/// What the pointer does on the drawing.
enum class PlanTool {
    choose,
    rectangle,
    polygon,
    window,
    door,
    standing,
    count,
    run,
    area,
    stair,
    tape,
    saw
};

/// One level of the plan to be drawn on: rooms, openings in their walls, what stands against walls,
/// marks that are counted. Every gesture is one edit; all of them go by keys too.
class PlanView final : public QWidget {
    Q_OBJECT
public:
    explicit PlanView(Desk& desk, QWidget* parent = nullptr);
    ~PlanView() override;

    void setLevel(const EditTarget& target, Id<Level> level);
    const DrawnLevel& level() const { return *m_level; }
    const PlanPicture& picture() const { return m_picture; }
    void setStates(OpeningStates states);
    /// Elevation and options that the level is looked at with.
    void setSeen(std::vector<Id<Variant>> seen);
    /// Draws what lies below the rooms; empty: nothing.
    using Underlayer = std::function<void(QPainter&, const ViewFrame&)>;
    void setUnderlayer(Underlayer underlayer);
    /// Draws what lies above them.
    void setOverlayer(Underlayer overlayer);
    /// What the sheets below cover, in inches: shown whole where nothing is drawn yet.
    void setSheetBounds(const QRectF& bounds);

    void setTool(PlanTool tool);
    PlanTool tool() const { return m_tool; }
    OpeningChoice& openingChoice() { return m_choice; }
    MarkChoice& markChoice() { return m_marking; }
    BreakKind standing() const { return m_standing; }
    void setStanding(BreakKind kind) { m_standing = kind; }
    void setWallThickness(Length wall) { m_wall = wall; }
    Length wallThickness() const { return m_wall; }
    void setShowLengths(bool show);

    const std::set<DrawnItem>& selection() const { return m_look.selected; }
    void select(std::set<DrawnItem> items);
    /// Selects and brings into view.
    void show(const DrawnItem& item);
    int chosenWall() const { return m_look.wall; }

    /// Takes what was typed for the tool: a size, a length, a name. False, and a sentence at the
    /// desk, when it means nothing here.
    bool take(const QString& typed);
    /// What typing means now: "Length of the next wall".
    QString typingHint() const;

    const ViewFrame& frame() const { return m_frame; }
    void fitAll();
    void zoom(double factor);
    QSize sizeHint() const override { return {760, 560}; }

    /// Points clicked so far with the tool.
    const std::vector<PlanPoint>& points() const { return m_points; }
    void clearPoints();

public Q_SLOTS:
    void removeChosen();
    void copyChosen();
    void mirrorPlan();
    void repeatLevel();
    void layOutTyped();
    void switchRun(miterbook::WallRunKind run);
    void clearStanding();

Q_SIGNALS:
    void selectionChanged();
    void toolChanged();
    /// A sentence beside the drawing: what the next click does, how long what is drawn is.
    void said(const QString& sentence);
    /// A new room was drawn: its name is wanted next.
    void nameWanted();
    /// A key that begins to type.
    void typingBegun(const QString& first);
    /// Two points with the tape.
    void taped(double inches);
    /// Saw and bench are to stand here.
    void sawPut(miterbook::PlanPoint point);

protected:
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    enum class Drag { none, pan, items, corner, wall, opening, band, shape };

    void refresh();
    bool perform(const Result<Edit>& edit);
    void sayHint();

    // the pointer
    void pressAt(QPointF at, Qt::KeyboardModifiers keys);
    void pressToChoose(QPointF at, Qt::KeyboardModifiers keys);
    bool takeHandle(QPointF at);
    void dragTo(QPointF at);
    void dropAt(QPointF at, Qt::KeyboardModifiers keys);
    void finishBand(bool more);
    std::optional<DrawnItem> itemAt(QPointF at) const;
    void chooseWallAt(QPointF at);
    PlanPoint snappedAt(QPointF at) const;
    SnapTo snapTo(const std::vector<std::int64_t>& but = {}) const;
    Length step() const;

    // tools
    void clickWith(PlanPoint point);
    void addPoint(PlanPoint point);
    void placeOpening(PlanPoint point);
    void markHere(PlanPoint point);
    void standHere(PlanPoint from, PlanPoint to);
    bool finishShape();
    bool addRoom(const Outline& outline);
    bool drawStair(const std::vector<PlanPoint>& points);
    bool takeForShape(const QString& typed);
    bool takeForChosen(const QString& typed);

    // keys
    bool moveByKey(int key, Qt::KeyboardModifiers keys);
    bool toolByKey(int key);
    bool doByKey(int key, Qt::KeyboardModifiers keys);
    void stepSelection(int by);
    void nudge(PlanPoint by);

    void paintHint(QPainter& painter) const;
    void paintShape(QPainter& painter) const;
    std::vector<std::int64_t> chosenKeys(DrawnItem::Kind kind) const;
    std::vector<DrawnItem> chosenItems() const;
    std::optional<std::int64_t> onlyOne(DrawnItem::Kind kind) const;

    Desk& m_desk;
    std::unique_ptr<DrawnLevel> m_level;
    PlanPicture m_picture;
    OpeningStates m_states;
    std::vector<Id<Variant>> m_seen;
    Underlayer m_underlayer;
    Underlayer m_overlayer;
    QRectF m_sheetBounds;
    ViewFrame m_frame;
    PictureLook m_look;
    std::unique_ptr<LabelFonts> m_fonts;
    PlanTool m_tool = PlanTool::choose;
    OpeningChoice m_choice;
    MarkChoice m_marking;
    BreakKind m_standing = BreakKind::cabinets;
    Length m_standingLength;
    Length m_wall = Length::sixteenths(72);
    std::vector<PlanPoint> m_points;
    PlanPoint m_cursor;
    PlanPoint m_direction{Length::inches(1), {}}; ///< of the last arrow key
    bool m_byKeys = false;                        ///< the cross hair is moved by keys
    bool m_fitted = false;

    Drag m_drag = Drag::none;
    QPointF m_pressed;
    QPointF m_last;
    PlanPoint m_dragBy;
    std::size_t m_dragPart = 0;
    Outline m_dragOutline;
    bool m_moved = false;
};

} // namespace miterbook
