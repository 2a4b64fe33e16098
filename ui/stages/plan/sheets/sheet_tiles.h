// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/sheets/sheet_page.h"

#include <QObject>
#include <QThreadPool>
#include <QTransform>

#include <atomic>
#include <map>
#include <set>
#include <tuple>
#include <vector>

class QPainter;

namespace miterbook {

/// A page drawn in tiles by another thread, sharp at any zoom; until a tile is there, a coarser one
/// is shown. At most `mostTiles` are kept, so that memory is bounded whatever the page is.
class SheetTiles final : public QObject {
    Q_OBJECT
public:
    static constexpr int tileSide = 512;         ///< pixels
    static constexpr std::size_t mostTiles = 96; ///< of 1 MB

    explicit SheetTiles(std::shared_ptr<const SheetPage> page, QObject* parent = nullptr);
    ~SheetTiles() override;

    const SheetPage& page() const { return *m_page; }
    /// Draws what of the page is seen in `view`; asks for tiles that are missing. `inverted`: light
    /// lines on dark.
    void paint(
        QPainter& painter, const QTransform& unitsToScreen, const QRectF& view, bool inverted);
    std::size_t kept() const { return m_tiles.size(); }
    bool isBusy() const { return m_busy; }

Q_SIGNALS:
    /// A tile has come.
    void ready();

private:
    using Key = std::tuple<int, int, int, bool>; ///< level, column, row, inverted
    struct Tile {
        QImage image;
        std::uint64_t used = 0;
    };

    QRectF unitsOf(const Key& key) const;
    void paintLevel(QPainter& painter, const QTransform& toScreen, const QRectF& seen, int level,
        bool inverted, bool ask);
    void ask(const Key& key);
    void next();
    void take(const Key& key, const QImage& image);
    void dropOldest();

    std::shared_ptr<const SheetPage> m_page;
    std::map<Key, Tile> m_tiles;
    std::vector<Key> m_wanted; ///< newest last
    std::set<Key> m_failed;
    std::uint64_t m_clock = 0;
    int m_overview = 0; ///< the level at which the whole page is about one tile
    bool m_busy = false;
    std::shared_ptr<std::atomic<bool>> m_stop;
    QThreadPool m_pool;
};

} // namespace miterbook
