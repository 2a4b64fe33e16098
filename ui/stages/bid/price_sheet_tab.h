// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/stick_memory.h"
#include "desk/job_ref.h"
#include "job/sheet_moves.h"

#include <QWidget>

class QLabel;
class QLineEdit;

namespace miterbook {

class Desk;
class FigureView;

/// The prices of the whole plan set, reckoned again in one go, with what moved since the last time
/// and what in the book was changed in between; and a builder's purchase order held against them.
class PriceSheetTab final : public QWidget {
    Q_OBJECT
public:
    explicit PriceSheetTab(Desk& desk, QWidget* parent = nullptr);

    void showJob(const JobRef& job);
    FigureView& prices() const { return *m_prices; }
    QString words() const;
    QString orderWords() const;

public Q_SLOTS:
    void reckon();
    void checkPurchaseOrder();

private:
    QWidget* orderPart();
    bool openSet();
    void showSheet();
    QString why() const;
    Id<PlanSet> set() const;

    Desk& m_desk;
    JobRef m_job;
    Id<PlanSet> m_set; ///< whose sheet is kept
    StickMemory m_memory{sheetMemory};
    std::vector<PlanPrices> m_before;
    std::vector<PlanPrices> m_sheet;
    std::vector<std::string> m_changed; ///< since the sheet was reckoned
    std::vector<std::string> m_reasons; ///< between the sheet before and this one
    QLabel* m_words;
    FigureView* m_prices;
    QLineEdit* m_order;
    QLabel* m_orderWords;
};

} // namespace miterbook
