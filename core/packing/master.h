// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/pricer.h"
#include "packing/simplex.h"

#include <unordered_map>

namespace miterbook::packing {

// The linear program over all columns, generated as they are needed: rows for each kind of
// piece (at least the demand), for each bin (at most so many sticks) and for each bin that
// costs something (at least so many).
class Master {
public:
    explicit Master(const Instance& instance);

    void add(const Column& column);
    // What is to be cut now and how many sticks may be used for it.
    // Forbidden columns are neither used nor made.
    void ask(const Counts& demand, const StickLimits& limits, const std::vector<Column>& forbidden);

    // Forgets columns outside the basis whose cost exceeds their worth by more than gap.
    void forget(const Duals& duals, double gap);

    enum class Outcome { solved, tooDear, stopped };
    // Column generation. tooDear: certified that no answer is below cutoff (in cents). solved:
    // optimal, or so close that the bound in whole price steps cannot rise any more.
    Outcome solve(std::int64_t cutoff, Budget& budget);

    // A certified bound in cents; after stopped too, as far as the work went.
    std::int64_t bound() const { return m_bound; }
    double objective() const { return m_simplex.objective(); }
    // Columns in use and how often, most first.
    std::vector<std::pair<int, double>> solution() const;
    // Sum of uses per bin.
    std::vector<double> sticks() const;
    const Column& column(int index) const { return m_columns[static_cast<std::size_t>(index)]; }
    std::size_t columns() const { return m_columns.size(); }
    const Duals& duals() const { return m_duals; }
    bool missesPieces() const;

private:
    void addSlacks();
    void setRhs(double jitter);
    void takeDuals();
    bool insert(const Column& column);
    void allow(const std::vector<Column>& forbidden);
    int find(const Column& column) const;
    void priceOut();
    Outcome solveWithPenalty(std::int64_t cutoff, Budget& budget);
    Outcome generate(std::int64_t cutoff, Budget& budget);
    bool certify(Budget& budget);
    static std::size_t hash(const Column& column);

    const Instance& m_instance;
    Pricer m_pricer;
    Simplex m_simplex;
    std::vector<Column> m_columns;
    std::vector<int> m_ids;      // simplex column of each
    std::vector<int> m_columnOf; // and back, -1 for slacks
    std::unordered_multimap<std::size_t, int> m_known;
    std::vector<int> m_lowerRow; // per bin or -1
    std::vector<int> m_firstBasis;
    std::vector<int> m_missing; // simplex columns for pieces left out
    Counts m_demand;
    StickLimits m_limits;
    Duals m_duals;
    std::int64_t m_bound = 0;
    double m_penalty = 1; // for each piece left out; raised when that turns out too cheap
    double m_highestPenalty = 1;
};

} // namespace miterbook::packing
