// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/sheet_tiles.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

constexpr int coarsest = -24;
constexpr int finest = 12;

int levelFor(double pixelsPerUnit) {
    return std::clamp(
        static_cast<int>(std::ceil(std::log2(pixelsPerUnit) - 0.25)), coarsest, finest);
}

double sideInUnits(int level) {
    return SheetTiles::tileSide / std::exp2(level);
}

} // namespace

SheetTiles::SheetTiles(std::shared_ptr<const SheetPage> page, QObject* parent)
    : QObject(parent)
    , m_page(std::move(page))
    , m_stop(std::make_shared<std::atomic<bool>>(false)) {
    m_pool.setMaxThreadCount(1); // a page is drawn from one thread at a time
    const QSizeF size = m_page->size();
    m_overview = levelFor(tileSide / std::max(size.width(), size.height()));
}

SheetTiles::~SheetTiles() {
    *m_stop = true;
    m_pool.clear();
    m_pool.waitForDone();
}

QRectF SheetTiles::unitsOf(const Key& key) const {
    const double side = sideInUnits(std::get<0>(key));
    return {std::get<1>(key) * side, std::get<2>(key) * side, side, side};
}

void SheetTiles::paint(
    QPainter& painter, const QTransform& unitsToScreen, const QRectF& view, bool inverted) {
    const double scale = std::hypot(unitsToScreen.m11(), unitsToScreen.m12())
        * painter.device()->devicePixelRatioF();
    if (!(scale > 0) || !unitsToScreen.isInvertible())
        return;
    const QRectF page(QPointF(), m_page->size());
    const QRectF seen = unitsToScreen.inverted().mapRect(view) & page;
    if (seen.isEmpty())
        return;
    m_wanted.clear();
    const int level = levelFor(scale);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    paintLevel(painter, unitsToScreen, seen, std::min(m_overview, level), inverted, true);
    if (level > m_overview)
        paintLevel(painter, unitsToScreen, seen, level, inverted, true);
    next();
}

void SheetTiles::paintLevel(QPainter& painter, const QTransform& toScreen, const QRectF& seen,
    int level, bool inverted, bool asks) {
    const double side = sideInUnits(level);
    const auto at = [&](double units) { return static_cast<int>(std::floor(units / side)); };
    painter.save();
    painter.setTransform(toScreen, true);
    painter.setClipRect(QRectF(QPointF(), m_page->size()), Qt::IntersectClip);
    for (int row = at(seen.top()); row <= at(seen.bottom()); ++row) {
        for (int column = at(seen.left()); column <= at(seen.right()); ++column) {
            const Key key{level, column, row, inverted};
            const auto it = m_tiles.find(key);
            if (it != m_tiles.end()) {
                it->second.used = ++m_clock;
                painter.drawImage(unitsOf(key), it->second.image);
            } else if (asks) {
                ask(key);
            }
        }
    }
    painter.restore();
}

void SheetTiles::ask(const Key& key) {
    if (!m_failed.contains(key) && m_wanted.size() < mostTiles)
        m_wanted.push_back(key);
}

/// Hands the next tile to the other thread; the overview first.
void SheetTiles::next() {
    if (m_busy || m_wanted.empty())
        return;
    const Key key = m_wanted.front();
    m_wanted.erase(m_wanted.begin());
    m_busy = true;
    // Whoever destroys this waits for the thread first.
    m_pool.start([this, key, page = m_page, stop = m_stop, units = unitsOf(key)] {
        const auto stops = [&stop] { return stop->load(); };
        QImage image = page->draw(units, {tileSide, tileSide}, stops);
        if (std::get<3>(key))
            image.invertPixels();
        if (!*stop)
            QMetaObject::invokeMethod(
                this, [this, key, image] { take(key, image); }, Qt::QueuedConnection);
    });
}

void SheetTiles::take(const Key& key, const QImage& image) {
    m_busy = false;
    if (image.isNull())
        m_failed.insert(key);
    else
        m_tiles[key] = {image, ++m_clock};
    dropOldest();
    next();
    Q_EMIT ready();
}

void SheetTiles::dropOldest() {
    while (m_tiles.size() > mostTiles) {
        const auto oldest = std::ranges::min_element(
            m_tiles, {}, [](const auto& entry) { return entry.second.used; });
        m_tiles.erase(oldest);
    }
}

} // namespace miterbook
