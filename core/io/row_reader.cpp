// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/row_reader.h"

#include "basics/digits.h"
#include "basics/number_text.h"
#include "io/decoded_text.h"

#include <algorithm>

namespace miterbook {

namespace {

bool oneOf(std::string_view text, std::initializer_list<std::string_view> words) {
    return std::ranges::find(words, std::string_view(text)) != words.end();
}

bool isBareNumber(std::string_view text) {
    const bool digits = std::ranges::any_of(text, isDigit);
    return digits && text.find_first_not_of("0123456789.,/ ") == std::string_view::npos;
}

std::string_view unitMark(HeaderUnit unit) {
    switch (unit) {
    case HeaderUnit::feet:
        return "'";
    case HeaderUnit::centimetres:
        return "cm";
    case HeaderUnit::metres:
        return "m";
    default:
        return "";
    }
}

} // namespace

bool saysNone(std::string_view text) {
    return oneOf(foldedText(text),
        {"", "-", "--", "\u2013", "\u2014", "none", "no", "n", "n/a", "na", "nil", "0", "false",
            "not used"});
}

bool saysYes(std::string_view text) {
    return oneOf(foldedText(text), {"yes", "y", "x", "1", "true", "\u2713", "\u2714"});
}

bool RowReader::has(ScheduleField field) const {
    return m_reading.headers.columnOf(field).has_value();
}

std::string_view RowReader::text(ScheduleField field) const {
    const auto column = m_reading.headers.columnOf(field);
    return column ? m_record.cell(*column) : std::string_view();
}

bool RowReader::silent(ScheduleField field) const {
    return saysNone(text(field));
}

void RowReader::reject(ScheduleField field, std::string reason) {
    m_rejected = true;
    m_reading.rejected.push_back(
        {line(), m_reading.headers.titleOf(field), std::string(text(field)), std::move(reason)});
}

void RowReader::remark(std::string_view sentence) {
    std::string mark(text(ScheduleField::mark));
    if (mark.empty())
        mark = text(ScheduleField::name);
    m_reading.remarks.push_back(
        "line " + std::to_string(line()) + ", " + mark + ": " + std::string(sentence));
}

LengthUnit RowReader::bareUnit(ScheduleField field) const {
    const auto column = m_reading.headers.columnOf(field);
    const bool metric = column
        && m_reading.headers.headers[*column].unit == HeaderUnit::millimetres;
    return metric ? LengthUnit::millimetres : LengthUnit::inches;
}

std::string RowReader::measure(ScheduleField field) const {
    std::string cell(text(field));
    const auto column = m_reading.headers.columnOf(field);
    const auto mark = column ? unitMark(m_reading.headers.headers[*column].unit) : "";
    if (mark.empty())
        return cell;
    const std::size_t times = cell.find_first_of("xX");
    if (times == std::string::npos)
        return isBareNumber(cell) ? cell + std::string(mark) : cell;
    const std::string first = trimmedText(cell.substr(0, times));
    const std::string second = trimmedText(cell.substr(times + 1));
    if (!isBareNumber(first) || !isBareNumber(second))
        return cell;
    return first + std::string(mark) + " x " + second + std::string(mark);
}

std::optional<Length> RowReader::length(ScheduleField field) {
    if (silent(field))
        return std::nullopt;
    const auto read = parseLength(measure(field), bareUnit(field));
    if (read)
        return *read;
    reject(field, read.error().sentence);
    return std::nullopt;
}

std::optional<Length> RowReader::doorLength(ScheduleField field) {
    if (silent(field))
        return std::nullopt;
    const auto read = parseDoorLength(measure(field), bareUnit(field));
    if (read)
        return *read;
    reject(field, read.error().sentence);
    return std::nullopt;
}

std::optional<Size> RowReader::size(ScheduleField field) {
    if (silent(field))
        return std::nullopt;
    const auto read = parseSize(measure(field), bareUnit(field));
    if (read)
        return *read;
    reject(field, read.error().sentence);
    return std::nullopt;
}

int RowReader::whole(ScheduleField field, int low, int high, int otherwise) {
    if (text(field).empty())
        return otherwise;
    const auto read = parseWhole(text(field), word(field), low, high);
    if (read)
        return *read;
    reject(field, read.error().sentence);
    return otherwise;
}

bool RowReader::yes(ScheduleField field) {
    if (silent(field))
        return false;
    if (!saysYes(text(field)))
        reject(field, "\"" + std::string(text(field)) + "\" is neither yes nor no.");
    return true;
}

const Room* RowReader::room(ScheduleField field) {
    if (silent(field))
        return nullptr;
    const Room* found = m_names.room(text(field));
    if (!found)
        remark("the plan has no one room \"" + singleLine(text(field)) + "\"; left without it.");
    return found;
}

const Level* RowReader::level() {
    if (silent(ScheduleField::level))
        return nullptr;
    const std::string name = singleLine(text(ScheduleField::level));
    if (const Level* found = m_names.level(name))
        return found;
    remark("the plan has no one level \"" + name + "\"; left without it.");
    auto& missing = m_reading.missingLevels;
    const bool known = std::ranges::any_of(
        missing, [&](const std::string& each) { return foldedText(each) == foldedText(name); });
    if (!known)
        missing.push_back(name);
    return nullptr;
}

Id<Profile> RowReader::profile(ScheduleField field, ProfileUse use) {
    if (silent(field))
        return {};
    if (const Profile* found = m_names.profile(text(field), use))
        return found->id;
    reject(field,
        quotedCell(text(field)) + " is no one " + std::string(word(use))
            + " profile of the book; add it there, or leave this column out.");
    return {};
}

} // namespace miterbook
