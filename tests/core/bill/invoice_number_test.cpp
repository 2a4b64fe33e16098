// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/invoice_number.h"

#include <gtest/gtest.h>

using namespace miterbook;

TEST(InvoiceNumber, FollowsTheLast) {
    EXPECT_EQ(nextInvoiceNumber({}).value(), 1);
    EXPECT_EQ(nextInvoiceNumber({}, 2600).value(), 2600);
    EXPECT_EQ(nextInvoiceNumber({3, 1, 2}).value(), 4);
    EXPECT_EQ(nextInvoiceNumber({2600, 2601}, 1).value(), 2602);
}

TEST(InvoiceNumber, IsRefusedOnAGapOrATwin) {
    EXPECT_EQ(nextInvoiceNumber({1, 2, 4}).error().sentence,
        "Invoice 3 is missing; no further one can be issued.");
    EXPECT_EQ(
        nextInvoiceNumber({1, 2, 2}).error().sentence, "There are two invoices with number 2.");
    EXPECT_EQ(nextInvoiceNumber({1, 2, 2}).error().fault, Fault::conflict);
}

TEST(InvoiceNumber, IsWrittenWithFourDigits) {
    EXPECT_EQ(invoiceNumberText(42), "0042");
    EXPECT_EQ(invoiceNumberText(42, "T-"), "T-0042");
    EXPECT_EQ(invoiceNumberText(12345), "12345");
}
