// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/draw_dialog.h"

#include "basics/number_text.h"
#include "bill/take_back.h"
#include "desk/desk.h"
#include "desk/text.h"
#include "papers/bill_papers.h"
#include "printing/preview.h"
#include "stages/bill/bill_desk.h"
#include "widgets/field_dialog.h"

#include <QCheckBox>
#include <QLineEdit>

#include <algorithm>

namespace miterbook {

namespace {

bool isTakenOff(const std::vector<Bill>& bills, Id<Backcharge> id) {
    return std::ranges::any_of(bills, [&](const Bill& bill) {
        return bill.counts()
            && std::ranges::find(bill.lines, id, &InvoiceLine::backcharge) != bill.lines.end();
    });
}

/// Accepted backcharges of the house that no bill has taken off yet.
std::vector<Backcharge> openBackcharges(const BillDesk& bill) {
    std::vector<Backcharge> open;
    for (const auto& [id, each] : bill.book().jobs.of<Backcharge>()) {
        if (each.house == bill.house()->id && each.state == BackchargeState::accepted
            && !isTakenOff(bill.billing().bills, id))
            open.push_back(each);
    }
    return open;
}

/// Takes an unissued bill through the preview, as it would be numbered now.
Result<void> previewBill(const BillDesk& bill, const Result<Bill>& made, QWidget* parent) {
    const auto number = nextNumber(bill.book());
    if (!made || !number)
        return made ? number.error() : made.error();
    Bill shown = *made;
    shown.invoice.number = *number;
    previewPaper(
        parent, invoicePaper(bill.book(), shown, bill.billing()), bill.book().prices.shop().page);
    return {};
}

/// The fields of a draw and the bill they make.
class DrawFields {
public:
    DrawFields(BillDesk& bill, FieldDialog& dialog)
        : m_bill(bill)
        , m_charges(openBackcharges(bill)) {
        m_date = dialog.addDate(QObject::tr("&Date"), bill.today());
        for (const Backcharge& charge : m_charges) {
            m_taken.push_back(
                dialog.addCheck(QObject::tr("Take off the backcharge of %1: %2")
                                    .arg(text(formatMoney(charge.amount)), text(charge.reason)),
                    true));
        }
        const Money held = bill.account().deposit;
        if (held > Money()) {
            m_deposit = dialog.addMoney(
                QObject::tr("Use up of the &deposit (%1 is left)").arg(text(formatMoney(held))));
        }
    }

    Result<Bill> bill() const {
        const auto day = FieldDialog::dateIn(*m_date, m_bill.book());
        if (!day)
            return day.error();
        const Contract& contract = *m_bill.contract();
        DrawAsk ask{*day,
            progressOf(
                contract, m_bill.billing().schedule, extrasOf(m_bill.book(), contract.house)),
            {}, {}};
        for (std::size_t i = 0; i < m_charges.size(); ++i) {
            if (m_taken[i]->isChecked())
                ask.backcharges.push_back(m_charges[i]);
        }
        if (m_deposit && !m_deposit->text().trimmed().isEmpty()) {
            const auto money = FieldDialog::moneyIn(*m_deposit);
            if (!money)
                return money.error();
            ask.deposit = *money;
        }
        return makeDraw(m_bill.billing(), ask);
    }

private:
    BillDesk& m_bill;
    std::vector<Backcharge> m_charges;
    std::vector<QCheckBox*> m_taken;
    QLineEdit* m_date;
    QLineEdit* m_deposit = nullptr;
};

} // namespace

void issueDrawDialog(BillDesk& bill, QWidget* parent) {
    FieldDialog dialog(QObject::tr("Issue the draw"), QObject::tr("Issue the invoice"), parent);
    const DrawFields fields(bill, dialog);
    dialog.addHint(QObject::tr("An issued invoice is never changed: it can be voided, or taken "
                               "back by a credit note."));
    dialog.addStep(QObject::tr("&Look at it first\u2026"),
        [&] { return previewBill(bill, fields.bill(), &dialog); });
    Result<Bill> made = Bill();
    const bool said = dialog.run([&]() -> Result<void> {
        made = fields.bill();
        return made ? Result<void>() : Result<void>(made.error());
    });
    if (said)
        bill.issue(made);
}

void issueCreditDialog(BillDesk& bill, const Bill& invoice, QWidget* parent) {
    FieldDialog dialog(QObject::tr("Credit note"), QObject::tr("Issue the credit note"), parent);
    auto* date = dialog.addDate(QObject::tr("&Date"), bill.today());
    auto* why = dialog.addText(QObject::tr("&Why"));
    std::vector<QLineEdit*> amounts;
    for (const InvoiceLine& line : invoice.lines) {
        amounts.push_back(
            dialog.addMoney(QObject::tr("%1, billed %2")
                                .arg(menuText(text(line.label)), text(formatMoney(line.amount)))));
    }
    dialog.addHint(QObject::tr("Say how much of each line is taken back. Retainage and tax go back "
                               "in proportion."));
    const auto make = [&]() -> Result<Bill> {
        const auto day = FieldDialog::dateIn(*date, bill.book());
        if (!day)
            return day.error();
        std::vector<LineCredit> credits;
        for (std::size_t i = 0; i < amounts.size(); ++i) {
            if (amounts[i]->text().trimmed().isEmpty())
                continue;
            const auto money = FieldDialog::moneyIn(*amounts[i]);
            if (!money)
                return money.error();
            credits.push_back({invoice.lines[i].id, *money});
        }
        return makeCredit(
            invoice, bill.billing().bills, credits, *day, utf8(why->text().trimmed()));
    };
    dialog.addStep(
        QObject::tr("&Look at it first\u2026"), [&] { return previewBill(bill, make(), &dialog); });
    Result<Bill> made = Bill();
    const bool said = dialog.run([&]() -> Result<void> {
        made = make();
        return made ? Result<void>() : Result<void>(made.error());
    });
    if (said)
        bill.issue(made);
}

void voidDialog(BillDesk& bill, const Bill& invoice, QWidget* parent) {
    const QString number = text(numberText(bill.book(), invoice.invoice.number));
    FieldDialog dialog(QObject::tr("Void %1").arg(number), QObject::tr("Void it"), parent);
    auto* date = dialog.addDate(QObject::tr("&Date"), bill.today());
    auto* why = dialog.addText(QObject::tr("&Why"));
    dialog.addHint(QObject::tr("The number stays, and the paper with it; it counts no more. A void "
                               "cannot be taken back: bill the work again."));
    Result<Edit> edit = Edit();
    const bool said = dialog.run([&]() -> Result<void> {
        const auto day = FieldDialog::dateIn(*date, bill.book());
        if (!day)
            return day.error();
        edit = voidInvoice(
            bill.book(), bill.desk().ids(), invoice.invoice.id, *day, utf8(why->text().trimmed()));
        return edit ? Result<void>() : Result<void>(edit.error());
    });
    if (said)
        bill.perform(edit);
}

} // namespace miterbook
