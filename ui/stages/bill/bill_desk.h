// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/account.h"
#include "job/bill_edits.h"

#include <QObject>

namespace miterbook {

class Desk;
class FigureDesk;

/// What the Bill page shows, kept up with the book: a house, what was agreed on it, and its bills.
class BillDesk final : public QObject {
    Q_OBJECT
public:
    BillDesk(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);

    Desk& desk() const { return m_desk; }
    const Book& book() const;
    /// None where the job is a builder's plan: nobody is billed for one.
    const House* house() const;
    const Contract* contract() const;
    /// Whom the house is built for; none where its plan has no builder.
    Id<Builder> builder() const;
    /// Schedule of values and bills; empty before something was agreed.
    const Billing& billing() const { return m_billing; }
    HouseAccount account() const;
    Date today() const;
    const Estimate& estimate() const;
    /// The bid's prices by piece of work, as a contract takes them over: as it was won, else
    /// today's.
    std::vector<ContractValue> bidValues() const;

    /// Does the edit, or says why there is none. False when nothing was done.
    bool perform(const Result<Edit>& edit);
    /// Issues a bill as makeDraw and its like make one.
    bool issue(const Result<Bill>& bill);

Q_SIGNALS:
    void reckoned();

private:
    void reckon();

    Desk& m_desk;
    FigureDesk& m_figures;
    Billing m_billing;
};

} // namespace miterbook
