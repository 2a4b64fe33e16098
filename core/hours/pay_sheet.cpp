// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/pay_sheet.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

PayBasis basisOf(const PayRules& rules, Id<CrewMember> person) {
    const auto found = std::ranges::find(rules.bases, person, &CrewPay::person);
    return found == rules.bases.end() ? PayBasis::hourly : found->basis;
}

Money atWage(Hours time, Money wage) {
    return Money::cents(roundedQuotient(Wide(time.minutes()) * wage.cents(), 60));
}

/// One person's week being added up.
class PayLineMaker {
public:
    PayLineMaker(const PayRules& rules, const CrewMember& person)
        : m_rules(rules)
        , m_wage(person.wage) {
        m_line.person = person.id;
        m_line.name = person.name;
        m_line.basis = basisOf(rules, person.id);
    }

    void add(const TimeEntry& entry, std::vector<std::string>& problems) {
        m_line.time += entry.time;
        if (m_line.basis == PayBasis::hourly || entry.kind != TimeKind::work)
            m_line.paidByHour += entry.time;
        else
            addPiece(entry, problems);
    }

    PayLine take() {
        m_line.wages = atWage(m_line.paidByHour, m_wage);
        for (PieceEarning& piece : m_line.pieces) {
            piece.pay = cost(piece.done, piece.rate);
            m_line.piecePay += piece.pay;
        }
        payOvertime();
        return std::move(m_line);
    }

private:
    void addPiece(const TimeEntry& entry, std::vector<std::string>& problems) {
        if (entry.done == Quantity()) {
            problems.push_back(m_line.name
                + " works by the piece, but nothing finished is said for "
                + std::string(word(entry.work)) + " on " + isoDate(entry.date) + ".");
            return;
        }
        const PieceRate* rate = rateFor(m_rules.rates, entry);
        if (!rate) {
            problems.push_back("There is no piece rate for " + std::string(word(entry.work))
                + ", which " + m_line.name + " finished on " + isoDate(entry.date) + ".");
            return;
        }
        const auto same = [&](const PieceEarning& piece) {
            return piece.work == entry.work && piece.task == entry.task && piece.rate == rate->pay;
        };
        const auto found = std::ranges::find_if(m_line.pieces, same);
        if (found == m_line.pieces.end())
            m_line.pieces.push_back({entry.work, entry.task, entry.done, rate->pay, {}});
        else
            found->done += entry.done;
    }

    void payOvertime() {
        const PayTerms& terms = m_rules.terms;
        if (m_line.time <= terms.overtimeAfter)
            return;
        m_line.overtime = m_line.time - terms.overtimeAfter;
        if (m_line.basis == PayBasis::piece && !terms.overtimeOnPieces)
            return;
        const Money straight = m_line.wages + m_line.piecePay;
        const Percent more = terms.overtimeFactor - Percent::hundred();
        m_line.extra = Money::cents(
            roundedQuotient(Wide(straight.cents()) * m_line.overtime.minutes() * more.basisPoints(),
                Wide(m_line.time.minutes()) * 10'000));
    }

    const PayRules& m_rules;
    Money m_wage;
    PayLine m_line;
};

bool isInWeek(Date date, Date first) {
    return date.ok() && first <= date && date < addDays(first, static_cast<int>(daysOfWeek));
}

} // namespace

const PieceRate* rateFor(const std::vector<PieceRate>& rates, const TimeEntry& entry) {
    const PieceRate* best = nullptr;
    for (const PieceRate& rate : rates) {
        const bool fits = rate.work == entry.work && rate.task == entry.task
            && (!rate.person || rate.person == entry.person);
        if (fits && (!best || (rate.person && !best->person)))
            best = &rate;
    }
    return best;
}

PaySheet paySheet(const std::vector<TimeEntry>& entries, Date first, const PayRules& rules) {
    PaySheet sheet;
    sheet.first = first;
    std::map<Id<CrewMember>, std::vector<const TimeEntry*>> byPerson;
    for (const TimeEntry& entry : entries) {
        if (isInWeek(entry.date, first))
            byPerson[entry.person].push_back(&entry);
    }
    for (const auto& [person, theirs] : byPerson) {
        const auto member = std::ranges::find(rules.crew, person, &CrewMember::id);
        if (member == rules.crew.end()) {
            sheet.problems.push_back("There are hours of somebody who is not in the crew.");
            continue;
        }
        PayLineMaker maker(rules, *member);
        for (const TimeEntry* entry : theirs)
            maker.add(*entry, sheet.problems);
        sheet.lines.push_back(maker.take());
        sheet.total += sheet.lines.back().total();
    }
    return sheet;
}

} // namespace miterbook
