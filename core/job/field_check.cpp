// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/field_check.h"

#include "job/any_row.h"
#include "job/stored_form.h"
#include "job/text_check.h"

namespace miterbook {

namespace {

constexpr std::size_t longestText = 20'000; // bytes of one field: some pages of scope

const char* faultOfText(std::string_view text, std::size_t longest = longestText) {
    if (text.size() > longest)
        return "its text is too long";
    return isSoundText(text) ? "" : "its text holds characters that cannot be kept";
}

/// Why a member cannot be kept; empty when it can.
template <class T>
const char* faultOf(const T& value) {
    if constexpr (std::is_same_v<T, std::string>) {
        return faultOfText(value);
    } else if constexpr (std::is_same_v<T, LongText>) {
        return faultOfText(value.text, LongText::longest);
    } else if constexpr (Worded<T>) {
        return word(value).empty() ? "there is no such value" : "";
    } else if constexpr (isId<T>) {
        return value.value() < 0 ? "it names no row" : "";
    } else if constexpr (std::is_same_v<T, Date>) {
        return value == noDate || value.ok() ? "" : "it is no day";
    } else {
        return "";
    }
}

template <Described Value>
const char* faultOf(const Value& value) {
    const char* fault = "";
    forEachField<Value>([&](const auto& field) {
        if (*fault == '\0')
            fault = faultOf(value.*field.member);
    });
    return fault;
}

template <class T>
const char* faultOf(const std::vector<T>& list) {
    for (const T& each : list) {
        if (const char* fault = faultOf(each); *fault != '\0')
            return fault;
    }
    return "";
}

template <class Row>
bool hasProperId(const Row& row) {
    return onlyOne<Row> ? row.id.value() == 1 : row.id.value() > 0;
}

/// A field that cannot be kept, and why; no fault when there is none.
struct FieldFault {
    std::string_view field;
    const char* fault = "";
};

/// The first field that cannot be kept.
template <class Row>
FieldFault faultyField(const Row& row) {
    FieldFault found;
    forEachField<Row>([&](const auto& field) {
        if (*found.fault == '\0')
            found = {field.name, faultOf(row.*field.member)};
    });
    return found;
}

/// What is wrong with a row; empty when nothing is.
template <class Row>
std::string faultOfRow(const Row& row) {
    if (!hasProperId(row))
        return "it has no proper id";
    const FieldFault found = faultyField(row);
    return *found.fault == '\0' ? std::string() : std::string(found.field) + ": " + found.fault;
}

} // namespace

Result<void> checkFields(const AnyRow& any) {
    const std::string fault
        = std::visit([](const auto& row) { return faultOfRow(row); }, any);
    if (fault.empty())
        return {};
    return badInput("The " + std::string(nounOf(any)) + " was refused: " + fault + ".");
}

} // namespace miterbook
