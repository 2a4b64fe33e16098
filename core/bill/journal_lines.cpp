// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/journal_lines.h"

#include <algorithm>

namespace miterbook {

namespace {

/// One document's lines; a negative debit is a credit.
class Entry {
public:
    Entry(Date date, std::string document, std::string memo)
        : m_date(date)
        , m_document(std::move(document))
        , m_memo(std::move(memo)) {}

    void debit(const std::string& account, Money amount) {
        if (amount == Money())
            return;
        JournalLine line{m_date, m_document, account, {}, {}, m_memo};
        (amount > Money() ? line.debit : line.credit) = amount > Money() ? amount : -amount;
        m_lines.push_back(std::move(line));
    }
    void credit(const std::string& account, Money amount) { debit(account, -amount); }
    std::vector<JournalLine> take() { return std::move(m_lines); }

private:
    Date m_date;
    std::string m_document;
    std::string m_memo;
    std::vector<JournalLine> m_lines;
};

/// The entry of a bill, or (sign -1) of its void.
std::vector<JournalLine> billEntry(const Bill& bill, Date date, int sign,
    const LedgerAccounts& accounts, const std::string& prefix) {
    const Invoice& invoice = bill.invoice;
    const std::string name = billName(invoice, prefix);
    Entry entry(
        date, sign < 0 ? name + " voided" : name, sign < 0 ? bill.voided->reason : invoice.note);
    entry.debit(accounts.receivable, bill.total() * sign);
    entry.debit(accounts.retainage, invoice.retained * sign);
    entry.debit(accounts.backcharges, bill.backcharges() * sign);
    entry.credit(accounts.deposits, invoice.deposit * sign);
    entry.credit(accounts.income, bill.work() * sign);
    entry.credit(accounts.tax, invoice.tax * sign);
    return entry.take();
}

std::vector<JournalLine> paymentEntry(const Payment& payment, const LedgerAccounts& accounts) {
    Entry entry(payment.date, "Payment " + payment.reference, {});
    entry.debit(accounts.bank, payment.amount);
    entry.credit(accounts.receivable, payment.amount);
    return entry.take();
}

} // namespace

std::vector<JournalLine> journalLines(const std::vector<Bill>& bills,
    const std::vector<Payment>& payments, Date from, Date to, const LedgerAccounts& accounts,
    const std::string& prefix) {
    std::vector<JournalLine> all;
    const auto add = [&](Date date, std::vector<JournalLine> lines) {
        if (from <= date && date <= to)
            std::ranges::move(lines, std::back_inserter(all));
    };
    for (const Bill& bill : bills) {
        add(bill.invoice.date, billEntry(bill, bill.invoice.date, 1, accounts, prefix));
        if (bill.voided)
            add(bill.voided->date, billEntry(bill, bill.voided->date, -1, accounts, prefix));
    }
    for (const Payment& payment : payments)
        add(payment.date, paymentEntry(payment, accounts));
    std::ranges::stable_sort(all, {}, &JournalLine::date);
    return all;
}

} // namespace miterbook
