// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "store/connection.h"

namespace miterbook {

/// All that is written between begin() and commit() is in the book, or none of it: whatever leaves
/// the scope without a commit is taken back.
class Transaction {
public:
    explicit Transaction(Connection& connection)
        : m_connection(connection) {}
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    /// Takes the right to write at once, so that no later statement finds the book busy.
    Result<void> begin();
    /// On the disk when it returns. A commit that fails leaves the transaction open, so that the
    /// reason can be looked up; `brokenReference` says whether that was a dangling reference.
    Result<void> commit();
    bool brokenReference() const { return m_brokenReference; }

private:
    Connection& m_connection;
    bool m_open = false;
    bool m_brokenReference = false;
};

} // namespace miterbook
