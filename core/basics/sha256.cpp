// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/sha256.h"

#include <array>
#include <bit>
#include <cstdint>

namespace miterbook {

namespace {

constexpr std::size_t blockSize = 64; // bytes
using ShaWords = std::array<std::uint32_t, 8>;

// FIPS 180-4, 4.2.2: the first 32 bits of the fractional parts of the cube roots of the first 64
// primes.
constexpr std::array<std::uint32_t, 64> roundWords{0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5,
    0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5, 0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3,
    0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174, 0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc,
    0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da, 0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7,
    0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967, 0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13,
    0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85, 0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3,
    0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070, 0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5,
    0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3, 0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208,
    0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

std::array<std::uint32_t, 64> messageWords(std::string_view block) {
    std::array<std::uint32_t, 64> w{};
    for (std::size_t i = 0; i < blockSize; ++i)
        w.at(i / 4) = w.at(i / 4) << 8U | static_cast<unsigned char>(block[i]);
    for (std::size_t t = 16; t < w.size(); ++t) {
        const std::uint32_t a = w.at(t - 15);
        const std::uint32_t b = w.at(t - 2);
        const std::uint32_t s0 = std::rotr(a, 7) ^ std::rotr(a, 18) ^ a >> 3U;
        const std::uint32_t s1 = std::rotr(b, 17) ^ std::rotr(b, 19) ^ b >> 10U;
        w.at(t) = s1 + w.at(t - 7) + s0 + w.at(t - 16);
    }
    return w;
}

/// 6.2.2 of the standard, letters as there.
void mix(ShaWords& hash, std::string_view block) {
    const auto w = messageWords(block);
    auto [a, b, c, d, e, f, g, h] = hash;
    for (std::size_t t = 0; t < w.size(); ++t) {
        const std::uint32_t sum1 = std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25);
        const std::uint32_t t1 = h + sum1 + ((e & f) ^ (~e & g)) + roundWords.at(t) + w.at(t);
        const std::uint32_t sum0 = std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22);
        const std::uint32_t t2 = sum0 + ((a & b) ^ (a & c) ^ (b & c));
        h = g;
        g = f;
        f = e;
        e = d + t1;
        d = c;
        c = b;
        b = a;
        a = t1 + t2;
    }
    const ShaWords added{a, b, c, d, e, f, g, h};
    for (std::size_t i = 0; i < hash.size(); ++i)
        hash.at(i) += added.at(i);
}

/// What is left after the whole blocks, with the standard's padding: one bit, zeros, the length.
std::string lastBlocks(std::string_view rest, std::size_t size) {
    std::string blocks(rest);
    blocks += '\x80';
    while (blocks.size() % blockSize != blockSize - 8)
        blocks += '\0';
    const std::uint64_t bits = std::uint64_t(size) * 8;
    for (int shift = 56; shift >= 0; shift -= 8)
        blocks += static_cast<char>(bits >> static_cast<unsigned>(shift) & 0xFFU);
    return blocks;
}

} // namespace

std::string sha256(std::string_view bytes) {
    ShaWords hash{0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c,
        0x1f83d9ab, 0x5be0cd19};
    const std::size_t size = bytes.size();
    while (bytes.size() >= blockSize) {
        mix(hash, bytes.substr(0, blockSize));
        bytes.remove_prefix(blockSize);
    }
    const std::string last = lastBlocks(bytes, size);
    for (std::size_t at = 0; at < last.size(); at += blockSize)
        mix(hash, std::string_view(last).substr(at, blockSize));
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    for (const std::uint32_t word : hash) {
        for (int shift = 28; shift >= 0; shift -= 4)
            text += digits[word >> static_cast<unsigned>(shift) & 0xFU];
    }
    return text;
}

} // namespace miterbook
