// SPDX-License-Identifier: GPL-3.0-or-later
#include "figures/figure_view.h"

#include "widgets/cell_block.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include <utility>

namespace miterbook {

namespace {

/// With more rows changed than these, columns are fitted anew to all that is seen.
constexpr std::size_t fewRows = 16;

} // namespace

FigureView::FigureView(const QString& name, const QStringList& titles, QWidget* parent)
    : QWidget(parent)
    , m_model(new FigureModel(titles, this))
    , m_proxy(new QSortFilterProxyModel(this))
    , m_filter(new QLineEdit(this))
    , m_table(new QTableView(this))
    , m_from(new QLabel(this)) {
    m_proxy->setSourceModel(m_model);
    m_proxy->setSortRole(FigureModel::sortRole);
    m_proxy->setFilterKeyColumn(-1);
    m_proxy->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_filter->setPlaceholderText(tr("Find in this table"));
    m_filter->setAccessibleName(tr("Find in %1").arg(name));
    m_filter->setClearButtonEnabled(true);
    connect(
        m_filter, &QLineEdit::textChanged, m_proxy, &QSortFilterProxyModel::setFilterFixedString);
    buildTable(name);
    m_from->setTextFormat(Qt::PlainText);
    m_from->setWordWrap(true);
    m_from->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_from->setAccessibleDescription(tr("Where this comes from"));
    m_from->setMinimumHeight(m_from->fontMetrics().lineSpacing() * 2);
    m_from->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_filter);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_from);
    showFrom();
}

void FigureView::standBelow() {
    m_filter->hide();
    m_invites = false;
    m_from->setMinimumHeight(0);
    showFrom();
}

void FigureView::buildTable(const QString& name) {
    m_table->setModel(m_proxy);
    m_table->setAccessibleName(name);
    m_table->setObjectName(name);
    m_table->setSortingEnabled(true);
    m_table->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false);
    m_table->setAlternatingRowColors(true);
    m_table->setShowGrid(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->verticalHeader()->setDefaultSectionSize(m_table->fontMetrics().height() * 3 / 2);
    m_table->horizontalHeader()->setResizeContentsPrecision(100);
    m_table->horizontalHeader()->setHighlightSections(false);
    connect(m_table->horizontalHeader(), &QHeaderView::sectionResized, this, [this] {
        // Stretching the last column is not the user's doing; dragging needs the button held.
        if (!m_widening && QApplication::mouseButtons() != Qt::NoButton)
            m_ownWidths = true;
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
        [this] { showFrom(); });
    connect(m_model, &QAbstractItemModel::dataChanged, this, [this] { showFrom(); });
    auto* copy = new QShortcut(QKeySequence::Copy, m_table);
    copy->setContext(Qt::WidgetShortcut);
    connect(copy, &QShortcut::activated, this, [this] { copySelection(); });
}

void FigureView::sayWhenEmpty(const QString& words) {
    m_whenEmpty = words;
    showFrom();
}

void FigureView::setRows(std::vector<FigureRow> rows) {
    const std::vector<int> changed = m_model->setRows(std::move(rows));
    if (m_model->rows().empty()) {
        if (!m_fitted)
            fitTitles();
        showFrom();
        return;
    }
    if (!isVisible() && m_fitted)
        m_widenWhenShown = m_widenWhenShown || !changed.empty();
    else if (!m_fitted || changed.size() > fewRows)
        widenColumns();
    else
        widenFor(changed);
}

int FigureView::currentRow() const {
    return m_proxy->mapToSource(m_table->currentIndex()).row();
}

void FigureView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (std::exchange(m_widenWhenShown, false))
        widenColumns();
}

/// Until there are rows to be as wide as.
void FigureView::fitTitles() {
    m_widening = true;
    m_table->resizeColumnsToContents();
    m_widening = false;
}

/// Columns grow with what they show and never shrink, so that nothing jumps while somebody types.
void FigureView::widenColumns() {
    if (m_ownWidths)
        return;
    QHeaderView* header = m_table->horizontalHeader();
    m_widening = true;
    const int last = m_model->columnCount() - 1;
    header->setStretchLastSection(!m_model->isNumeric(last));
    for (int column = 0; column <= last; ++column) {
        const int before = header->sectionSize(column);
        m_table->resizeColumnToContents(column);
        if (m_fitted && before > header->sectionSize(column))
            header->resizeSection(column, before);
    }
    m_fitted = true;
    m_widening = false;
}

/// The same for a few rows: measuring every cell that is seen takes longer than painting them.
void FigureView::widenFor(const std::vector<int>& rows) {
    if (m_ownWidths)
        return;
    QHeaderView* header = m_table->horizontalHeader();
    const int columns = m_model->columnCount() - (header->stretchLastSection() ? 1 : 0);
    m_widening = true;
    for (const int row : rows) {
        for (int column = 0; column < columns; ++column) {
            const QModelIndex index = m_proxy->mapFromSource(m_model->index(row, column));
            const int wanted = index.isValid() ? m_table->sizeHintForIndex(index).width() : 0;
            if (wanted > header->sectionSize(column))
                header->resizeSection(column, wanted);
        }
    }
    m_widening = false;
}

void FigureView::showFrom() {
    const QModelIndex current = m_table->currentIndex();
    const QString from = current.data(FigureModel::fromRole).toString();
    const bool invites = from.isEmpty() && m_invites;
    const bool empty = m_model->rows().empty();
    m_from->setText(!invites ? from
            : empty          ? m_whenEmpty
                             : tr("Choose a row to see where its numbers come from."));
    m_from->setVisible(m_invites || !from.isEmpty());
}

void FigureView::copySelection() const {
    CellBlock copied;
    for (const QModelIndex& index : m_table->selectionModel()->selectedRows()) {
        QStringList& cells = copied.emplaceBack();
        for (int column = 0; column < m_proxy->columnCount(); ++column)
            cells << index.siblingAtColumn(column).data().toString();
    }
    QApplication::clipboard()->setText(writeCellBlock(copied));
}

} // namespace miterbook
