// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/drawing/view_frame.h"
#include "stages/plan/sheets/sheet_tiles.h"
#include "stages/plan/variant_rows.h"

#include <QPainter>
#include <QPalette>

#include <map>
#include <memory>

namespace miterbook {

class Desk;

/// The builder's sheets that lie under the levels of a plan: reads them in the background and draws
/// those of one level.
class PlanSheets final : public QObject {
    Q_OBJECT
public:
    explicit PlanSheets(Desk& desk, QObject* parent = nullptr);
    ~PlanSheets() override;

    void setLevel(Id<Plan> plan, Id<Level> level);
    /// The sheets of the level, hidden ones among them.
    const std::vector<Underlay>& underlays() const { return m_underlays; }
    /// The one that gestures mean: the last; nullptr for none.
    const Underlay* current() const { return m_underlays.empty() ? nullptr : &m_underlays.back(); }
    bool isShown() const;
    void paint(QPainter& painter, const ViewFrame& frame, const QPalette& palette) const;
    /// What the level's sheets cover, in inches of the plan; empty before they are read.
    QRectF bounds() const;
    /// Why the current sheet cannot be shown; empty while it can.
    QString trouble() const;
    /// The page of a sheet when it has been read.
    const SheetPage* pageOf(const Underlay& underlay) const;

Q_SIGNALS:
    /// Something to be drawn has come, or cannot come.
    void changed();

private:
    using Key = std::pair<std::int64_t, int>; ///< file and page
    struct Sheet {
        std::unique_ptr<SheetTiles> tiles;
        QString trouble;
        bool reading = false;
    };

    void refresh();
    void read(const Key& key);
    void take(const Key& key, const Result<OpenedSheet>& opened);
    static QTransform toInches(const Underlay& underlay);

    Desk& m_desk;
    Id<Plan> m_plan;
    Id<Level> m_level;
    std::vector<Underlay> m_underlays;
    std::map<Key, Sheet> m_sheets;
    QThreadPool m_pool;
};

} // namespace miterbook
