// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/icalendar.h"

#include "basics/sha256.h"
#include "papers/plain_text.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr std::size_t longestLine = 75; // octets, without the line break

bool isInsideCharacter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

/// "20261125"
std::string dayDigits(Date date) {
    std::string digits = isoDate(date);
    std::erase(digits, '-');
    return digits;
}

/// "20261125T080000Z" from "2026-11-25T08:00:00Z".
std::string stampDigits(std::string_view stamp) {
    std::string digits(stamp);
    std::erase_if(digits, [](char c) { return c == '-' || c == ':'; });
    return digits;
}

/// The same for a date of a shop's book whenever it is exported, and no other's.
std::string uidOf(const Book& book, const HouseDate& date) {
    constexpr std::size_t digits = 32;
    return sha256(book.prices.shop().name + '\n' + std::to_string(date.id.value()))
               .substr(0, digits)
        + "@miterbook.invalid";
}

std::string summaryOf(const Book& book, const HouseDate& date) {
    const House* house = book.house(date.house);
    return (house ? house->name : std::string("House")) + ": " + std::string(word(date.kind));
}

std::string eventOf(const Book& book, const HouseDate& date, std::string_view stamp) {
    const House* house = book.house(date.house);
    std::string event = "BEGIN:VEVENT\r\n";
    const auto add = [&](const std::string& name, const std::string& value) {
        event += calendarLine(name + ':' + value);
    };
    add("UID", uidOf(book, date));
    add("DTSTAMP", stampDigits(stamp));
    add("DTSTART;VALUE=DATE", dayDigits(date.from));
    // The end is the first day that is not part of it any more (3.6.1).
    add("DTEND;VALUE=DATE", dayDigits(addDays(date.lastDay(), 1)));
    add("SUMMARY", calendarText(summaryOf(book, date)));
    if (house && !house->address.empty())
        add("LOCATION", calendarText(joined(typedLines(house->address))));
    std::string about = crewNames(book, date);
    if (!about.empty())
        about = "Crew: " + about;
    if (!date.note.empty())
        about += (about.empty() ? "" : "\n") + date.note;
    if (!about.empty())
        add("DESCRIPTION", calendarText(about));
    return event + "END:VEVENT\r\n";
}

} // namespace

std::string calendarText(std::string_view text) {
    std::string escaped;
    for (const char c : validUtf8(text)) {
        if (c == '\\' || c == ';' || c == ',')
            escaped += std::string{'\\', c};
        else if (c == '\n')
            escaped += "\\n";
        else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7F)
            escaped += c;
        else if (c == '\t')
            escaped += ' ';
    }
    return escaped;
}

std::string calendarLine(std::string_view line) {
    std::string folded;
    std::size_t room = longestLine;
    while (line.size() > room) {
        std::size_t cut = room;
        while (cut > 0 && isInsideCharacter(line[cut]))
            --cut;
        folded += std::string(line.substr(0, cut)) + "\r\n ";
        line.remove_prefix(cut);
        room = longestLine - 1; // the space at the head of a folded line is one of its octets
    }
    return folded + std::string(line) + "\r\n";
}

Result<std::string> calendarOf(
    const Book& book, const std::vector<HouseDate>& dates, std::string_view stamp) {
    if (dates.empty())
        return badInput("There are no dates to be put into a calendar.");
    std::string calendar = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"
                           "PRODID:-//Miterbook//Miterbook//EN\r\nCALSCALE:GREGORIAN\r\n";
    for (const HouseDate& date : dates)
        calendar += eventOf(book, date, stamp);
    return calendar + "END:VCALENDAR\r\n";
}

} // namespace miterbook
