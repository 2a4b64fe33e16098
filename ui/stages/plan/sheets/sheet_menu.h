// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/sheets/plan_sheets.h"
#include "stages/plan/sheets/sheet_gestures.h"

#include <QMenu>

namespace miterbook {

class PlanView;

/// What is done with the builder's sheet under a level: bring one in, set it to scale, turn, move
/// and dim it.
class SheetMenu final : public QMenu {
    Q_OBJECT
public:
    SheetMenu(Desk& desk, PlanView& view, PlanSheets& sheets, QWidget* parent = nullptr);
    ~SheetMenu() override;

    void setLevel(Id<Plan> plan, Id<Level> level);
    /// Reads a file in the background and lays it under the level. `page` 0 asks where there are
    /// several.
    void bring(const QString& path, int page = 0);
    /// The two points of the tape lie this far apart in the house.
    bool setKnownLength(const QString& typed);
    /// `1/4" = 1'`
    bool setDrawingScale(const QString& typed);
    void turnBy(Angle by);
    void moveBy(PlanPoint by);
    void dimBy(int percent);

Q_SIGNALS:
    void said(const QString& sentence);

private:
    void ask();
    void askScale();
    void toggleShown();
    void takeAway();
    void lay(const NewSheet& sheet);
    void checked(
        const std::string& name, const Bytes& content, int page, const Result<OpenedSheet>& opened);
    bool change(const Result<Underlay>& underlay, const std::string& what);
    const Underlay* wanted();

    Desk& m_desk;
    PlanView& m_view;
    PlanSheets& m_sheets;
    Id<Plan> m_plan;
    Id<Level> m_level;
    QThreadPool m_pool;
};

} // namespace miterbook
