// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

namespace miterbook {

/// What several rows of money have to say together: a payment pays no more than came in and no
/// invoice more than it asks; a house has one contract; an agreed price stands; and what has been
/// billed stays in the contract, so that billed + retained + unbilled = contract + extras.
Result<void> checkMoney(const Book& book, const Edit& edit);

} // namespace miterbook
