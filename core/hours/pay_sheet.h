// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/money.h"
#include "hours/pay_terms.h"

#include <string>
#include <vector>

namespace miterbook {

/// What was finished at one rate.
struct PieceEarning {
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    Quantity done;
    UnitPrice rate;
    Money pay; ///< done x rate, rounded once

    bool operator==(const PieceEarning&) const = default;
};

/// One person's week. Gross pay before any deduction.
struct PayLine {
    Id<CrewMember> person;
    std::string name;
    PayBasis basis = PayBasis::hourly;
    Hours time;       ///< all of it
    Hours overtime;   ///< of which over the limit
    Hours paidByHour; ///< of which paid at the wage
    Money wages;      ///< paidByHour at the wage
    std::vector<PieceEarning> pieces;
    Money piecePay; ///< sum of `pieces`
    Money extra;    ///< for overtime: overtime x (wages + piecePay) / time x (factor - 1)

    Money total() const { return wages + piecePay + extra; }
    bool operator==(const PayLine&) const = default;
};

struct PaySheet {
    Date first = noDate;
    std::vector<PayLine> lines;        ///< by person
    Money total;                       ///< exact sum of the lines
    std::vector<std::string> problems; ///< what keeps a line from being right

    bool operator==(const PaySheet&) const = default;
};

/// The people, rules and rates that a pay sheet goes by.
struct PayRules {
    std::vector<CrewMember> crew;
    std::vector<CrewPay> bases;
    std::vector<PieceRate> rates;
    PayTerms terms;
};

/// Pays the entries of the seven days from `first`. By the hour: every hour at the wage. By the
/// piece: what is finished at its rate; travel, waiting, punch and callbacks by the hour at the
/// wage. Hours over the limit bring the extra part of the overtime factor on the week's straight
/// pay by hours, which for an hourly wage is time and a half at 150 %
/// [29 CFR 778.110-111; law differs by state].
PaySheet paySheet(const std::vector<TimeEntry>& entries, Date first, const PayRules& rules);

} // namespace miterbook
