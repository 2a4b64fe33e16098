// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/data_table.h"

#include "widgets/cell_delegate.h"
#include "widgets/cell_look.h"
#include "widgets/table_proxy.h"

#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QSettings>
#include <QStyle>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

QString widthsKey(const QString& table) {
    return u"columns/"_s + table;
}

} // namespace

DataTable::DataTable(TableModelBase& model, QWidget* parent)
    : QTableView(parent)
    , m_model(model)
    , m_widthsKey(widthsKey(model.name()))
    , m_proxy(new TableProxy(model, this)) {
    setModel(m_proxy);
    setAccessibleName(model.name());
    auto* delegate = new CellDelegate(this);
    setItemDelegate(delegate);
    connect(delegate, &CellDelegate::wrote, this,
        [this](QWidget* editor, bool taken) { m_refused = taken ? nullptr : editor; });
    setAlternatingRowColors(true);
    setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
    setHorizontalScrollMode(ScrollPerPixel);
    setWordWrap(false);
    setSortingEnabled(true);
    horizontalHeader()->setSortIndicatorClearable(true);
    horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    // Fixed heights: measuring every row takes seconds in a long table.
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() * 8 / 5);
    makeGestures();
    m_fitted = restoreWidths();
    if (!m_fitted)
        fitWidths();
    connect(m_proxy, &QAbstractItemModel::rowsInserted, this, [this] {
        if (!m_fitted)
            fitWidths();
    });
    // Words may have the room that is left over; a number would stand far from its row.
    horizontalHeader()->setStretchLastSection(!isNumber(m_model.kind(m_model.columnCount() - 1)));
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, &DataTable::keepWidths);
}

void DataTable::setOpensRows(bool opens) {
    m_opensRows = opens;
    if (!opens)
        return;
    setSelectionBehavior(SelectRows);
    setEditTriggers(EditKeyPressed | SelectedClicked); // a double click opens
    verticalHeader()->hide();
}

void DataTable::keepWidths() const {
    // Only what the user's own hand did: a window that grows and a tab that is clicked resize
    // columns too.
    const bool held = QGuiApplication::mouseButtons() != Qt::NoButton;
    if (held && horizontalHeader()->viewport()->underMouse())
        QSettings().setValue(widthsKey(m_model.name()), horizontalHeader()->saveState());
}

bool DataTable::restoreWidths() {
    const QByteArray kept = QSettings().value(widthsKey(m_model.name())).toByteArray();
    const bool restored = !kept.isEmpty() && horizontalHeader()->restoreState(kept)
        && horizontalHeader()->count() == m_model.columnCount();
    sortByColumn(-1, Qt::AscendingOrder); // widths are remembered, an order is asked for anew
    return restored;
}

/// As wide as title and the first rows need, within reason; taken again when the first rows come.
void DataTable::fitWidths() {
    constexpr int looked = 40;
    const int letter = fontMetrics().averageCharWidth();
    const int margins = 2 * (style()->pixelMetric(QStyle::PM_FocusFrameHMargin, nullptr, this) + 1);
    const int rows = std::min(m_model.realRows(), looked);
    for (int column = 0; column < m_model.columnCount(); ++column) {
        const QString title
            = m_model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        int widest = fontMetrics().size(0, title).width() + 2 * letter; // of its widest line
        for (int row = 0; row < rows; ++row) {
            const QString cell = m_model.index(row, column).data().toString();
            widest = std::max(widest, fontMetrics().horizontalAdvance(cell));
        }
        const int least = std::max(8, m_model.letters(column)) * letter;
        setColumnWidth(column, std::clamp(widest + margins + letter, least, 56 * letter));
    }
    m_fitted = rows > 0;
}

bool DataTable::isBlankRow(const QModelIndex& index) const {
    return index.isValid() && m_proxy->mapToSource(index).row() == m_model.blankRow();
}

int DataTable::currentRow() const {
    const QModelIndex index = currentIndex();
    return !index.isValid() || isBlankRow(index) ? -1 : m_proxy->mapToSource(index).row();
}

std::vector<int> DataTable::selectedRows() const {
    std::vector<int> shown;
    for (const QModelIndex& index : selectionModel()->selectedIndexes()) {
        if (!isBlankRow(index) && std::ranges::find(shown, index.row()) == shown.end())
            shown.push_back(index.row());
    }
    std::ranges::sort(shown);
    for (int& row : shown)
        row = m_proxy->mapToSource(m_proxy->index(row, 0)).row();
    return shown;
}

bool DataTable::showKey(std::int64_t key) {
    const int row = m_model.rowOfKey(key);
    if (row < 0)
        return false;
    const QModelIndex source = m_model.index(row, 0);
    if (!m_proxy->mapFromSource(source).isValid())
        m_proxy->setFind({});
    moveTo(m_proxy->mapFromSource(source));
    setFocus(Qt::OtherFocusReason);
    return true;
}

void DataTable::moveTo(const QModelIndex& index) {
    if (!index.isValid())
        return;
    setCurrentIndex(index);
    scrollTo(index);
}

void DataTable::moveDown(int rows) {
    const QModelIndex at = currentIndex();
    const int row = std::clamp(at.row() + rows, 0, m_proxy->rowCount() - 1);
    moveTo(m_proxy->index(row, at.column()));
}

QModelIndex DataTable::nextEditable(const QModelIndex& from, int step) const {
    const QHeaderView* header = horizontalHeader();
    int row = from.row();
    int visual = from.isValid() ? header->visualIndex(from.column()) : -1;
    while (row >= 0 && row < m_proxy->rowCount()) {
        visual += step;
        if (visual < 0 || visual >= header->count()) {
            row += step;
            visual = step > 0 ? -1 : header->count();
            continue;
        }
        const int column = header->logicalIndex(visual);
        const QModelIndex index = m_proxy->index(row, column);
        const bool typed = index.flags() & (Qt::ItemIsEditable | Qt::ItemIsUserCheckable);
        if (typed && !isColumnHidden(column))
            return index;
    }
    return {};
}

QModelIndex DataTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    if (action == MoveNext || action == MovePrevious) {
        const QModelIndex next = nextEditable(currentIndex(), action == MoveNext ? 1 : -1);
        return next.isValid() ? next : currentIndex();
    }
    return QTableView::moveCursor(action, modifiers);
}

bool DataTable::focusNextPrevChild(bool next) {
    // Tab walks through the cells and leaves the table at its end; so does a list that opens rows.
    if (m_opensRows || !nextEditable(currentIndex(), next ? 1 : -1).isValid())
        return QAbstractScrollArea::focusNextPrevChild(next);
    return QTableView::focusNextPrevChild(next);
}

void DataTable::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && state() != EditingState) {
        if (m_opensRows)
            Q_EMIT activated(currentIndex());
        else
            moveDown(event->modifiers() & Qt::ShiftModifier ? -1 : 1);
        return;
    }
    if (event->key() == Qt::Key_F6) {
        const bool back = event->modifiers() & Qt::ShiftModifier;
        QAbstractScrollArea::focusNextPrevChild(!back);
        return;
    }
    const bool tab = event->key() == Qt::Key_Tab || event->key() == Qt::Key_Backtab;
    if (tab && !nextEditable(currentIndex(), event->key() == Qt::Key_Tab ? 1 : -1).isValid()) {
        QAbstractScrollArea::focusNextPrevChild(event->key() == Qt::Key_Tab);
        return;
    }
    QTableView::keyPressEvent(event);
}

void DataTable::mousePressEvent(QMouseEvent* event) {
    if (m_refused) { // what was typed there is not in the book: it is not left behind
        m_refused->setFocus(Qt::OtherFocusReason);
        return;
    }
    QTableView::mousePressEvent(event);
}

void DataTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    if (m_refused == editor && editor && hint != QAbstractItemDelegate::RevertModelCache)
        return;
    m_refused = nullptr;
    const bool submitted = hint == QAbstractItemDelegate::SubmitModelCache;
    const bool next = hint == QAbstractItemDelegate::EditNextItem;
    const bool previous = hint == QAbstractItemDelegate::EditPreviousItem;
    QTableView::closeEditor(editor, QAbstractItemDelegate::NoHint);
    if (submitted)
        moveDown(1);
    else if (next || previous)
        moveTo(moveCursor(next ? MoveNext : MovePrevious, Qt::NoModifier));
}

void DataTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    Q_EMIT currentRowChanged(currentRow());
}

void DataTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (m_model.realRows() > 0 || m_model.emptyHint().isEmpty())
        return;
    QPainter painter(viewport());
    painter.setPen(palette().color(QPalette::PlaceholderText));
    const int margin = fontMetrics().height();
    const QRect room = viewport()->rect().adjusted(margin, 3 * margin, -margin, -margin);
    painter.drawText(room, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, m_model.emptyHint());
}

} // namespace miterbook
