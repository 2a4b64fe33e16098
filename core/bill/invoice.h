// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/backcharge.h"
#include "bill/contract.h"

#include <optional>

namespace miterbook {

struct IssuedPaper;
struct Plan;

enum class InvoiceKind { draw, deposit, release, credit };

template <>
struct Words<InvoiceKind> {
    static constexpr std::array list{
        Word{InvoiceKind::draw, "invoice"},
        Word{InvoiceKind::deposit, "deposit invoice"},
        Word{InvoiceKind::release, "retainage invoice"},
        Word{InvoiceKind::credit, "credit note"},
    };
};

/// An issued invoice or credit note. It never changes: only a void or a credit note follows it.
/// Amounts are signed: a credit note bears the invoice's with the other sign.
struct Invoice {
    Id<Invoice> id;
    int number = 0;
    InvoiceKind kind = InvoiceKind::draw;
    Id<House> house;
    Id<Builder> builder;
    Date date = noDate;
    Date due = noDate;
    Id<Invoice> credits; ///< the invoice that a credit note takes back, in whole or in part
    std::string lot;
    std::string purchaseOrder;
    Money retained; ///< held back here; negative: released
    Money deposit;  ///< asked for ahead of the work; negative: used up here
    Percent taxRate;
    Money tax;
    std::string note;      ///< on a credit note, the reason
    Money work;            ///< sum of its lines of work and extras
    Money backcharges;     ///< sum of what its lines take off
    Id<IssuedPaper> paper; ///< as it was printed

    /// work - retained + deposit - backcharges + tax: what the paper asks for.
    Money total() const { return work - retained + deposit - backcharges + tax; }

    bool operator==(const Invoice&) const = default;
};

template <>
struct Describe<Invoice> {
    static constexpr std::string_view table = "invoice";
    static constexpr std::string_view noun = "invoice";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Invoice::id), field("number", &Invoice::number),
            field("kind", &Invoice::kind), field("house", &Invoice::house),
            field("builder", &Invoice::builder), field("date", &Invoice::date),
            field("due", &Invoice::due), field("credits", &Invoice::credits),
            field("lot", &Invoice::lot), field("purchase_order", &Invoice::purchaseOrder),
            field("retained", &Invoice::retained), field("deposit", &Invoice::deposit),
            field("tax_rate", &Invoice::taxRate), field("tax", &Invoice::tax),
            field("note", &Invoice::note), field("work", &Invoice::work),
            field("backcharges", &Invoice::backcharges), field("paper", &Invoice::paper));
    }
};

/// One line of an invoice: part of a piece of work, of an extra, or a backcharge taken off.
struct InvoiceLine {
    Id<InvoiceLine> id;
    Id<Plan> plan; ///< the house's own
    Id<Invoice> invoice;
    PieceOfWork work = PieceOfWork::doors;
    Id<Extra> extra;
    Id<Backcharge> backcharge;
    std::string label;
    Percent toDate; ///< of the line of the schedule of values, with this invoice
    Money amount;   ///< a backcharge is negative

    ValueKey key() const { return {work, extra}; }
    bool operator==(const InvoiceLine&) const = default;
};

template <>
struct Describe<InvoiceLine> {
    static constexpr std::string_view table = "invoice_line";
    static constexpr std::string_view noun = "line of an invoice";
    static constexpr void allFields(auto&& take) {
        take(field("id", &InvoiceLine::id), field("plan", &InvoiceLine::plan),
            field("invoice", &InvoiceLine::invoice), field("work", &InvoiceLine::work),
            field("extra", &InvoiceLine::extra), field("backcharge", &InvoiceLine::backcharge),
            field("label", &InvoiceLine::label), field("to_date", &InvoiceLine::toDate),
            field("amount", &InvoiceLine::amount));
    }
};

/// That an invoice does not count any more; it keeps its number.
struct InvoiceVoid {
    Id<InvoiceVoid> id;
    Id<Invoice> invoice;
    Date date = noDate;
    std::string reason;

    bool operator==(const InvoiceVoid&) const = default;
};

template <>
struct Describe<InvoiceVoid> {
    static constexpr std::string_view table = "invoice_void";
    static constexpr std::string_view noun = "voided invoice";
    static constexpr void allFields(auto&& take) {
        take(field("id", &InvoiceVoid::id), field("invoice", &InvoiceVoid::invoice),
            field("date", &InvoiceVoid::date), field("reason", &InvoiceVoid::reason));
    }
};

/// An issued invoice and whether it still counts. Its lines are read with its house: without them
/// all sums of a bill are known, but not what they are for.
struct Bill {
    Invoice invoice;
    std::vector<InvoiceLine> lines;
    std::optional<InvoiceVoid> voided;

    /// Work and extras, before anything is held back or taken off.
    Money work() const { return invoice.work; }
    /// What is taken off for backcharges; positive on an invoice.
    Money backcharges() const { return invoice.backcharges; }
    Money total() const { return invoice.total(); }
    bool counts() const { return !voided; }

    bool operator==(const Bill&) const = default;
};

/// `Retainage invoice T-0042`.
std::string billName(const Invoice& invoice, const std::string& prefix);

/// Puts the sums of the bill's lines where its invoice keeps them.
void sumUp(Bill& bill);

} // namespace miterbook
