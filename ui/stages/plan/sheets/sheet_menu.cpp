// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/sheet_menu.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "stages/plan/drawing/plan_view.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>

namespace miterbook {

namespace {

constexpr int strengthStep = 15; // per cent

} // namespace

SheetMenu::SheetMenu(Desk& desk, PlanView& view, PlanSheets& sheets, QWidget* parent)
    : QMenu(tr("Builder's &sheet"), parent)
    , m_desk(desk)
    , m_view(view)
    , m_sheets(sheets) {
    m_pool.setMaxThreadCount(1);
    addAction(tr("&Bring in a page (PDF, PNG, JPEG, DXF)\u2026"), this, &SheetMenu::ask);
    addSeparator();
    addAction(tr("Set to scale by a &known length"), this, [this] {
        if (wanted())
            m_view.setTool(PlanTool::tape);
    });
    addAction(tr("Type its drawing &scale\u2026"), this, &SheetMenu::askScale);
    addSeparator();
    addAction(tr("Turn a &quarter to the right"), this, [this] { turnBy(Angle::degrees(90)); });
    addAction(tr("Turn a &degree to the right"), this, [this] { turnBy(Angle::degrees(1)); });
    addAction(tr("Turn a degree to the &left"), this, [this] { turnBy(Angle::degrees(-1)); });
    addAction(tr("&Move by the two points of the tape"), this, [this] {
        if (m_view.points().size() == 2)
            moveBy(m_view.points()[1] - m_view.points()[0]);
        else
            m_desk.refuse(badInput("Measure with the tape from where a corner of the sheet lies to "
                                   "where it belongs first."));
    });
    addSeparator();
    addAction(tr("S&tronger"), this, [this] { dimBy(strengthStep); });
    addAction(tr("&Fainter"), this, [this] { dimBy(-strengthStep); });
    addAction(tr("S&how or hide"), this, &SheetMenu::toggleShown);
    addSeparator();
    addAction(tr("Take it a&way"), this, &SheetMenu::takeAway);
}

SheetMenu::~SheetMenu() {
    m_pool.clear();
    m_pool.waitForDone();
}

void SheetMenu::setLevel(Id<Plan> plan, Id<Level> level) {
    m_plan = plan;
    m_level = level;
    m_sheets.setLevel(plan, level);
}

void SheetMenu::ask() {
    const QString path = QFileDialog::getOpenFileName(parentWidget(), tr("A builder's sheet"),
        QString(), tr("Sheets (*.pdf *.png *.jpg *.jpeg *.dxf);;All files (*)"));
    if (!path.isEmpty())
        bring(path);
}

void SheetMenu::bring(const QString& path, int page) {
    QFile file(path);
    const std::string name = utf8(QFileInfo(path).fileName());
    if (!file.open(QIODevice::ReadOnly)) {
        m_desk.refuse(badInput(name + " cannot be read: " + utf8(file.errorString()) + "."));
        return;
    }
    if (file.size() > static_cast<qint64>(largestSheet)) {
        m_desk.refuse(badInput(name + " has " + std::to_string(file.size() / 1'000'000)
            + " MB; the book takes sheets of up to 25 MB: save the page alone, or at fewer dots to "
              "the inch."));
        return;
    }
    const Bytes content(file.readAll().toStdString());
    Q_EMIT said(tr("Reading %1\u2026").arg(text(name)));
    m_pool.start([this, name, content, page] {
        auto opened = std::make_shared<Result<OpenedSheet>>(
            openSheet(name, content, std::max(page, 1)));
        QMetaObject::invokeMethod(
            this, [=, this] { checked(name, content, page, *opened); }, Qt::QueuedConnection);
    });
}

void SheetMenu::checked(
    const std::string& name, const Bytes& content, int page, const Result<OpenedSheet>& opened) {
    Q_EMIT said({});
    if (!opened) {
        m_desk.refuse(opened.error());
        return;
    }
    if (page == 0 && opened->pages > 1) {
        bool chosen = false;
        page = QInputDialog::getInt(parentWidget(), tr("Which page"),
            tr("%1 has %2 pages. Which one?").arg(text(name)).arg(opened->pages), 1, 1,
            opened->pages, 1, &chosen);
        if (!chosen)
            return;
    }
    lay({name, content, std::max(page, 1), firstScale(*opened->page)});
}

void SheetMenu::lay(const NewSheet& sheet) {
    const auto edit = sheetAdded(m_desk.book(), m_desk.ids(), m_plan, m_level, sheet, {});
    if (!edit)
        m_desk.refuse(edit.error());
    else if (m_desk.perform(*edit))
        Q_EMIT said(
            tr("Set the sheet to scale: measure a length you know with the tape, then type it."));
}

const Underlay* SheetMenu::wanted() {
    const Underlay* underlay = m_sheets.current();
    if (!underlay)
        m_desk.refuse(badInput("Bring in a builder's sheet for this level first."));
    return underlay;
}

bool SheetMenu::change(const Result<Underlay>& underlay, const std::string& what) {
    if (underlay)
        return m_desk.perform(sheetChanged(m_desk.book(), *underlay, what));
    m_desk.refuse(underlay.error());
    return false;
}

bool SheetMenu::setKnownLength(const QString& typed) {
    const Underlay* underlay = wanted();
    if (!underlay)
        return false;
    const auto known = parseLength(utf8(typed), m_desk.book().prices.shop().unit);
    if (!known) {
        m_desk.refuse(known.error());
        return false;
    }
    const auto& points = m_view.points();
    if (points.size() != 2) {
        m_desk.refuse(badInput("Click the two ends of the length that you know first."));
        return false;
    }
    const bool done = change(
        scaledTo(*underlay, points[0], points[1], *known), "Set the sheet to scale");
    if (done)
        m_view.setTool(PlanTool::choose);
    return done;
}

bool SheetMenu::setDrawingScale(const QString& typed) {
    const Underlay* underlay = wanted();
    const SheetPage* page = underlay ? m_sheets.pageOf(*underlay) : nullptr;
    if (!underlay)
        return false;
    const auto scale = parseDrawingScale(utf8(typed));
    if (!scale) {
        m_desk.refuse(scale.error());
        return false;
    }
    if (!page || page->unitOnPaper() <= Length()) {
        m_desk.refuse(
            badInput("The sheet does not say how large it is on paper; set it to scale by a "
                     "length that you know."));
        return false;
    }
    Underlay after = *underlay;
    after.scale = Length::fromInches(page->unitOnPaper().toInches() * *scale);
    return change(Result<Underlay>(after), "Set the sheet to scale");
}

void SheetMenu::askScale() {
    bool chosen = false;
    const QString typed = QInputDialog::getText(parentWidget(), tr("Drawing scale"),
        tr("The scale that stands below the drawing, such as 1/4\" = 1' or 1:50:"),
        QLineEdit::Normal, QStringLiteral("1/4\" = 1'"), &chosen);
    if (chosen)
        setDrawingScale(typed);
}

void SheetMenu::turnBy(Angle by) {
    if (const Underlay* underlay = wanted()) {
        const PlanPoint middle = m_view.frame().toPlan(QRectF(m_view.rect()).center());
        change(turnedAbout(*underlay, middle, by), "Turn the sheet");
    }
}

void SheetMenu::moveBy(PlanPoint by) {
    if (const Underlay* underlay = wanted()) {
        Underlay after = *underlay;
        after.x += by.x;
        after.y += by.y;
        change(Result<Underlay>(after), "Move the sheet");
    }
}

void SheetMenu::dimBy(int percent) {
    if (const Underlay* underlay = wanted()) {
        Underlay after = *underlay;
        after.strength = std::clamp(after.strength + percent, 10, 100);
        change(Result<Underlay>(after), "Dim the sheet");
    }
}

void SheetMenu::toggleShown() {
    if (const Underlay* underlay = wanted()) {
        Underlay after = *underlay;
        after.hidden = !after.hidden;
        change(Result<Underlay>(after), after.hidden ? "Hide the sheet" : "Show the sheet");
    }
}

void SheetMenu::takeAway() {
    if (const Underlay* underlay = wanted())
        m_desk.perform(sheetRemoved(m_desk.book(), *underlay));
}

} // namespace miterbook
