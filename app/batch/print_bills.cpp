// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/print_bills.h"

#include "basics/number_text.h"
#include "basics/quote.h"
#include "batch/arguments.h"
#include "batch/find.h"
#include "papers/bill_papers.h"
#include "papers/issue.h"
#include "papers/send_bid.h"

namespace miterbook {

namespace {

/// An invoice's own paper, as it was issued.
Result<Paper> invoiceOf(OpenedBook& opened, const std::string& typed) {
    const auto number = parseWhole(typed, "The number of an invoice", 1, 1'000'000'000);
    if (!number)
        return number.error();
    for (const auto& [id, invoice] : opened.book().jobs.of<Invoice>()) {
        if (invoice.number != *number)
            continue;
        const House* house = opened.book().house(invoice.house);
        const Id<Plan> plan = house ? house->work : Id<Plan>();
        if (auto open = opened.workbook.openPlan(plan); !open)
            return open.error();
        return invoiceAsIssued(opened.book(), invoice);
    }
    return Error{Fault::notFound, "No invoice or credit note has the number " + typed + "."};
}

/// A bid as it was sent; the last revision unless one is said.
Result<Paper> sentBidOf(OpenedBook& opened, const QCommandLineParser& parser) {
    const auto number = parseWhole(
        value(parser, "number"), "The number of a bid", 1, 1'000'000'000);
    if (!number)
        return number.error();
    Result<int> revision = 0;
    if (isSet(parser, "revision"))
        revision = parseWhole(value(parser, "revision"), "A revision", 1, 1'000'000);
    if (!revision)
        return revision.error();
    const SentBid* found = nullptr;
    for (const auto& [id, bid] : opened.book().jobs.of<SentBid>()) {
        const bool wanted = *revision == 0 || bid.revision == *revision;
        if (bid.number == *number && wanted && (!found || found->revision < bid.revision))
            found = &bid;
    }
    if (!found) {
        return Error{Fault::notFound,
            "No bid of the number " + std::to_string(*number)
                + (*revision == 0 ? "" : " and revision " + std::to_string(*revision))
                + " was sent."};
    }
    if (auto open = opened.workbook.openPlan(found->job); !open)
        return open.error();
    return sentBidPaper(opened.book(), *found);
}

Result<Paper> extraOf(
    OpenedBook& opened, const std::string& house, const std::string& title, Date date) {
    const auto id = findHouse(opened.book(), house);
    if (!id)
        return id.error();
    if (auto open = opened.workbook.openPlan(opened.book().house(*id)->work); !open)
        return open.error();
    std::string titles;
    for (const Extra& extra : extrasOf(opened.book(), *id)) {
        if (extra.title == title)
            return extraPaper(opened.book(), extra, date);
        titles += (titles.empty() ? "" : ", ") + inQuotes(extra.title);
    }
    return Error{Fault::notFound,
        "The house has no extra " + inQuotes(title)
            + (titles.empty() ? "." : "; it has " + titles + ".")};
}

Result<Paper> statementOf(OpenedBook& opened, const QCommandLineParser& parser, Date date) {
    constexpr int days = 90;
    const auto builder = findBuilder(opened.book(), value(parser, "builder"));
    if (!builder)
        return builder.error();
    Date from = addDays(date, -days);
    if (isSet(parser, "from")) {
        const auto typed = parseIsoDate(value(parser, "from"));
        if (!typed)
            return typed.error();
        from = *typed;
    }
    if (!from.ok() || from > date)
        return badInput("A statement begins before it ends; write --from as 2026-11-25.");
    return statementPaper(opened.book(), *builder, from, date);
}

} // namespace

Result<Id<Builder>> findBuilder(const Book& book, const std::string& name) {
    std::string names;
    for (const auto& [id, builder] : book.prices.of<Builder>()) {
        if (builder.name == name)
            return id;
        names += (names.empty() ? "" : ", ") + inQuotes(builder.name);
    }
    return Error{Fault::notFound,
        "There is no builder " + inQuotes(name)
            + (names.empty() ? "." : "; there are " + names + ".")};
}

Result<Paper> billPaper(
    const std::string& name, OpenedBook& opened, const QCommandLineParser& parser, Date date) {
    if (name == "sent-bid") {
        if (!isSet(parser, "number"))
            return badInput("Say which bid with --number.");
        return sentBidOf(opened, parser);
    }
    if (name == "invoice") {
        if (!isSet(parser, "number"))
            return badInput("Say which invoice with --number.");
        return invoiceOf(opened, value(parser, "number"));
    }
    if (name == "extra") {
        if (!isSet(parser, "house") || !isSet(parser, "extra"))
            return badInput("Say of which --house, and which --extra.");
        return extraOf(opened, value(parser, "house"), value(parser, "extra"), date);
    }
    if (!isSet(parser, "builder"))
        return badInput("Say of which --builder.");
    return statementOf(opened, parser, date);
}

} // namespace miterbook
