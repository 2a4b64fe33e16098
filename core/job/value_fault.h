// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/id.h"
#include "basics/long_text.h"
#include "basics/words.h"

#include <string>

namespace miterbook {

// Why a value of a row cannot be kept in the book; empty when it can, as values of other types
// always can.

const char* faultOf(const std::string& text);
const char* faultOf(const LongText& text);
const char* faultOf(Date date);

template <Worded E>
const char* faultOf(E value) {
    return word(value).empty() ? "there is no such value" : "";
}

template <class Row>
const char* faultOf(Id<Row> id) {
    return id.value() < 0 ? "it names no row" : "";
}

} // namespace miterbook
