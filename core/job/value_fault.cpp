// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/value_fault.h"

#include "job/text_check.h"

namespace miterbook {

namespace {

constexpr std::size_t longestText = 20'000; // bytes of one field: some pages of scope

const char* faultOfText(const std::string& text, std::size_t longest) {
    if (text.size() > longest)
        return "its text is too long";
    return isSoundText(text) ? "" : "its text holds characters that cannot be kept";
}

} // namespace

const char* faultOf(const std::string& text) {
    return faultOfText(text, longestText);
}

const char* faultOf(const LongText& text) {
    return faultOfText(text.text, LongText::longest);
}

const char* faultOf(Date date) {
    return date == noDate || date.ok() ? "" : "it is no day";
}

} // namespace miterbook
