// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/invoice_number.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr std::size_t fewestDigits = 4;

} // namespace

Result<int> nextInvoiceNumber(std::vector<int> issued, int first) {
    if (issued.empty())
        return first;
    std::ranges::sort(issued);
    for (std::size_t i = 1; i < issued.size(); ++i) {
        if (issued[i] == issued[i - 1]) {
            return Error{Fault::conflict,
                "There are two invoices with number " + std::to_string(issued[i]) + "."};
        }
        if (issued[i] != issued[i - 1] + 1) {
            return Error{Fault::conflict,
                "Invoice " + std::to_string(issued[i - 1] + 1)
                    + " is missing; no further one can be issued."};
        }
    }
    return issued.back() + 1;
}

std::string invoiceNumberText(int number, const std::string& prefix) {
    const std::string digits = std::to_string(number);
    const std::size_t zeros = digits.size() < fewestDigits ? fewestDigits - digits.size() : 0;
    return prefix + std::string(zeros, '0') + digits;
}

} // namespace miterbook
