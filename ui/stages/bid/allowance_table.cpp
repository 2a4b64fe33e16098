// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/allowance_table.h"

#include "widgets/columns.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QObject>

#include <algorithm>
#include <memory>

namespace miterbook {

namespace {

/// An allowance with its place in the setup's list; -1 for a new one.
struct AllowanceRow {
    std::string what;
    PieceOfWork work = PieceOfWork::hardware;
    Money amount;
    int place = -1;

    Allowance plain() const { return {what, work, amount}; }
    bool operator==(const AllowanceRow&) const = default;
};

constexpr Column<AllowanceRow> allowanceColumns[] = {
    textColumn<&AllowanceRow::what>(QT_TRANSLATE_NOOP("Column", "Allowance for")),
    wordColumn<&AllowanceRow::work>(QT_TRANSLATE_NOOP("Column", "Piece of work")),
    moneyColumn<&AllowanceRow::amount>(QT_TRANSLATE_NOOP("Column", "Allowed")).sum(),
};

/// The setup as one gesture's edit leaves it, however many rows the gesture is of.
class SetupInEdit {
public:
    SetupInEdit(Desk& desk, std::function<BidSetup()> present)
        : m_desk(desk)
        , m_present(std::move(present)) {}

    template <class Change>
    void change(EditBuilder& edit, Change change) {
        BidSetup setup = m_present();
        if (!setup.id)
            setup.id = m_made && edit.find(m_made) ? m_made : m_desk.ids().next<BidSetup>();
        m_made = setup.id;
        if (const BidSetup* held = edit.find(setup.id))
            setup = *held;
        change(setup.allowances);
        edit.put(std::move(setup));
    }
    std::vector<AllowanceRow> rows() const {
        std::vector<AllowanceRow> rows;
        for (const Allowance& each : m_present().allowances)
            rows.push_back({each.what, each.work, each.amount, static_cast<int>(rows.size())});
        return rows;
    }

private:
    Desk& m_desk;
    std::function<BidSetup()> m_present;
    Id<BidSetup> m_made; ///< for a job that had no setup of its own
};

} // namespace

QWidget* allowanceTable(Desk& desk, std::function<BidSetup()> present, QWidget* parent) {
    const auto setup = std::make_shared<SetupInEdit>(desk, std::move(present));
    TableSpec<AllowanceRow> spec;
    spec.name = QObject::tr("Allowances");
    spec.columns = allowanceColumns;
    spec.rows = [setup] { return setup->rows(); };
    spec.key = [](const AllowanceRow& row) { return std::int64_t(row.place) + 1; };
    spec.blank = [](int) { return AllowanceRow(); };
    spec.title = [](const AllowanceRow& row) { return "the allowance for " + row.what; };
    spec.store = [setup](EditBuilder& edit, const AllowanceRow& row) {
        setup->change(edit, [&](std::vector<Allowance>& list) {
            const auto place = static_cast<std::size_t>(row.place);
            if (row.place >= 0 && place < list.size())
                list[place] = row.plain();
            else
                list.push_back(row.plain());
        });
    };
    spec.remove = [setup](EditBuilder& edit, const AllowanceRow& row) {
        setup->change(edit, [&](std::vector<Allowance>& list) {
            const auto it = std::ranges::find(list, row.plain());
            if (it != list.end())
                list.erase(it);
        });
    };
    spec.copied = [](AllowanceRow& row, int) { row.place = -1; };
    spec.emptyHint = QObject::tr(
        "Amounts in the price for what has not been chosen yet, such as door "
        "hardware: type the first above.");
    auto* model = new TableModel<AllowanceRow>(desk, std::move(spec));
    auto* panel = new TablePanel(*model, parent);
    model->setParent(panel);
    return panel;
}

} // namespace miterbook
