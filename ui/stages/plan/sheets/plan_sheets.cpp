// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/plan_sheets.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "widgets/accent.h"

#include <algorithm>

namespace miterbook {

PlanSheets::PlanSheets(Desk& desk, QObject* parent)
    : QObject(parent)
    , m_desk(desk) {
    m_pool.setMaxThreadCount(1);
    connect(&desk, &Desk::changed, this, &PlanSheets::refresh);
}

PlanSheets::~PlanSheets() {
    m_pool.clear();
    m_pool.waitForDone();
}

void PlanSheets::setLevel(Id<Plan> plan, Id<Level> level) {
    if (plan != m_plan)
        m_sheets.clear();
    m_plan = plan;
    m_level = level;
    const Plan* row = m_desk.book().plan(plan);
    const House* house = row ? m_desk.book().house(row->house) : nullptr;
    if (house && house->plan && !m_desk.book().isOpen(house->plan))
        m_desk.openPlan(house->plan); // a house looks at the sheets of its builder's plan
    refresh();
}

void PlanSheets::refresh() {
    m_underlays.clear();
    for (const auto& [id, underlay] : m_desk.book().sheet(m_plan).of<Underlay>()) {
        if (underlay.level == m_level)
            m_underlays.push_back(underlay);
    }
    for (const Underlay& underlay : m_underlays) {
        const Key key(underlay.file.value(), underlay.page);
        if (!underlay.hidden && !m_sheets.contains(key))
            read(key);
    }
    Q_EMIT changed();
}

void PlanSheets::read(const Key& key) {
    Sheet& sheet = m_sheets[key];
    const SheetFile* file = findRow(m_desk.book(), Id<SheetFile>(key.first));
    if (!file) {
        sheet.trouble = tr("The sheet's file is not in the book any more.");
        return;
    }
    sheet.reading = true;
    m_pool.start([this, key, name = file->name, content = file->content] {
        auto opened = std::make_shared<Result<OpenedSheet>>(openSheet(name, content, key.second));
        QMetaObject::invokeMethod(
            this, [this, key, opened] { take(key, *opened); }, Qt::QueuedConnection);
    });
}

void PlanSheets::take(const Key& key, const Result<OpenedSheet>& opened) {
    const auto it = m_sheets.find(key);
    if (it == m_sheets.end())
        return; // another plan is shown
    it->second.reading = false;
    if (opened) {
        it->second.tiles = std::make_unique<SheetTiles>(opened->page);
        connect(it->second.tiles.get(), &SheetTiles::ready, this, &PlanSheets::changed);
    } else {
        it->second.trouble = text(opened.error().sentence);
    }
    Q_EMIT changed();
}

bool PlanSheets::isShown() const {
    return std::ranges::any_of(m_underlays, [](const Underlay& each) { return !each.hidden; });
}

const SheetPage* PlanSheets::pageOf(const Underlay& underlay) const {
    const auto it = m_sheets.find(Key(underlay.file.value(), underlay.page));
    return it == m_sheets.end() || !it->second.tiles ? nullptr : &it->second.tiles->page();
}

QString PlanSheets::trouble() const {
    const Underlay* sheet = current();
    const auto it = sheet ? m_sheets.find(Key(sheet->file.value(), sheet->page)) : m_sheets.end();
    if (it == m_sheets.end())
        return {};
    return it->second.reading ? tr("Reading the sheet\u2026") : it->second.trouble;
}

QTransform PlanSheets::toInches(const Underlay& underlay) {
    QTransform way;
    way.translate(underlay.x.toInches(), underlay.y.toInches());
    way.rotate(underlay.turn.toDegrees());
    way.scale(underlay.scale.toInches(), underlay.scale.toInches());
    return way;
}

void PlanSheets::paint(QPainter& painter, const ViewFrame& frame, const QPalette& palette) const {
    const QPointF zero = frame.toScreen(QPointF());
    QTransform toScreen;
    toScreen.translate(zero.x(), zero.y());
    toScreen.scale(frame.scale(), frame.scale());
    for (const Underlay& underlay : m_underlays) {
        const auto it = m_sheets.find(Key(underlay.file.value(), underlay.page));
        if (underlay.hidden || it == m_sheets.end() || !it->second.tiles
            || underlay.scale <= Length())
            continue;
        painter.save();
        painter.setOpacity(underlay.strength / 100.0);
        it->second.tiles->paint(
            painter, toInches(underlay) * toScreen, QRectF(painter.viewport()), isDark(palette));
        painter.restore();
    }
}

QRectF PlanSheets::bounds() const {
    QRectF box;
    for (const Underlay& underlay : m_underlays) {
        if (const SheetPage* page = pageOf(underlay); page && !underlay.hidden)
            box = box.united(toInches(underlay).mapRect(QRectF(QPointF(), page->size())));
    }
    return box;
}

} // namespace miterbook
