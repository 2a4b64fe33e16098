// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/sha256.h"

#include <gtest/gtest.h>

using namespace miterbook;

// [pub] NIST, FIPS 180 examples with intermediate values, SHA-256: one block, two blocks; and the
// million letters of FIPS 180-2 appendix B.3.
TEST(Sha256, OfTheStandardsExamples) {
    EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256(std::string(1'000'000, 'a')),
        "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

// [pub] NIST CAVP SHA256ShortMsg, Len = 0.
TEST(Sha256, OfNothing) {
    EXPECT_EQ(sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

// The padding needs a block of its own from 56 bytes on.
TEST(Sha256, SeesEveryByteAroundTheEndOfABlock) {
    for (const std::size_t size : {54U, 55U, 56U, 57U, 63U, 64U, 65U, 119U, 120U}) {
        std::string text(size, 'x');
        const std::string whole = sha256(text);
        EXPECT_EQ(whole.size(), 64U);
        for (std::size_t i = 0; i < size; ++i) {
            text[i] = 'y';
            EXPECT_NE(sha256(text), whole) << size << " bytes, byte " << i;
            text[i] = 'x';
        }
    }
}
