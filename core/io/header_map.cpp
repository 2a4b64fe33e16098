// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/header_map.h"

#include "io/decoded_text.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr std::size_t recordsToSearch = 10;

struct UnitName {
    std::string_view text;
    HeaderUnit unit;
};

constexpr std::array unitNames{
    UnitName{"mm", HeaderUnit::millimetres},
    UnitName{"millimetres", HeaderUnit::millimetres},
    UnitName{"millimeters", HeaderUnit::millimetres},
    UnitName{"cm", HeaderUnit::centimetres},
    UnitName{"m", HeaderUnit::metres},
    UnitName{"in", HeaderUnit::inches},
    UnitName{"inches", HeaderUnit::inches},
    UnitName{"\"", HeaderUnit::inches},
    UnitName{"ft", HeaderUnit::feet},
    UnitName{"feet", HeaderUnit::feet},
    UnitName{"'", HeaderUnit::feet},
    UnitName{"lf", HeaderUnit::feet},
};

/// A header made comparable: folded, without points, hyphens and its unit, which is told apart.
struct PlainHeader {
    std::string text;
    HeaderUnit unit = HeaderUnit::unsaid;
};

/// Takes `(mm)`, `[mm]` or a last word `mm` off the end of the header.
void takeUnit(PlainHeader& header) {
    std::string last = header.text.substr(header.text.find_last_of(" ([") + 1);
    if (last.size() == header.text.size())
        return;
    const bool bracketed = last.ends_with(')') || last.ends_with(']');
    if (bracketed)
        last.pop_back();
    const auto unit = std::ranges::find(unitNames, last, &UnitName::text);
    if (unit == unitNames.end() || (!bracketed && last == "m"))
        return;
    header.unit = unit->unit;
    header.text.resize(header.text.find_last_of(" (["));
    header.text = foldedText(header.text);
}

PlainHeader plainHeader(std::string_view title) {
    PlainHeader header;
    for (const char c : foldedText(title)) {
        if (c == '_' || c == '-')
            header.text += ' ';
        else if (c != '.' && c != ':' && c != ',' && c != '*')
            header.text += c;
    }
    header.text = foldedText(header.text);
    takeUnit(header);
    return header;
}

bool listHas(std::string_view list, std::string_view text) {
    while (!list.empty()) {
        const std::size_t bar = std::min(list.find('|'), list.size());
        if (list.substr(0, bar) == text)
            return true;
        list.remove_prefix(std::min(bar + 1, list.size()));
    }
    return false;
}

bool kindHas(ScheduleKind kind, ScheduleField field) {
    return std::ranges::count(columnsOf(kind), field, &ScheduleColumn::field) > 0;
}

/// A header's meaning and who said so: 1 common names, 2 the shop, 3 the user.
struct Claim {
    std::optional<ScheduleField> field;
    int strength = 0;
};

class Claims {
public:
    Claims(ScheduleKind kind, const Table<HeaderName>& remembered,
        const std::vector<HeaderChoice>& choices)
        : m_kind(kind)
        , m_remembered(remembered)
        , m_choices(choices) {}

    Claim claimOf(const std::string& title) const {
        const std::string folded = foldedText(title);
        for (const HeaderChoice& choice : m_choices) {
            if (foldedText(choice.header) == folded)
                return checked({choice.field, 3});
        }
        for (const auto& [id, name] : m_remembered) {
            if (name.schedule == word(m_kind) && name.header == folded)
                return checked({fromWord<ScheduleField>(name.column), 2});
        }
        const std::string plain = plainHeader(title).text;
        for (const ScheduleColumn& column : columnsOf(m_kind)) {
            if (word(column.field) == plain || listHas(column.headers, plain))
                return {column.field, 1};
        }
        return {};
    }

private:
    /// A meaning that this kind of schedule does not have counts as "leave it out".
    Claim checked(Claim claim) const {
        if (claim.field && !kindHas(m_kind, *claim.field))
            claim.field.reset();
        return claim;
    }

    ScheduleKind m_kind;
    const Table<HeaderName>& m_remembered;
    const std::vector<HeaderChoice>& m_choices;
};

std::vector<Claim> claimsOf(const CsvRecord& record, const Claims& claims) {
    std::vector<Claim> all;
    for (const std::string& title : record.cells)
        all.push_back(title.empty() ? Claim() : claims.claimOf(title));
    return all;
}

/// The record in which most headers mean something; the first of them.
std::size_t headerRecord(const CsvTable& table, const Claims& claims) {
    std::size_t best = 0;
    long most = 0;
    for (std::size_t i = 0; i < std::min(recordsToSearch, table.records.size()); ++i) {
        const auto all = claimsOf(table.records[i], claims);
        const long meant = std::ranges::count_if(
            all, [](const Claim& c) { return c.strength > 0; });
        if (meant > most) {
            most = meant;
            best = i;
        }
    }
    return best;
}

/// "Room" beside "Name" is the room's number; alone it is its name.
void partRoomNumber(std::vector<Claim>& all, const CsvRecord& record) {
    const auto claimed = [&](ScheduleField field) {
        return std::ranges::count(all, std::optional(field), &Claim::field);
    };
    if (claimed(ScheduleField::name) < 2 || claimed(ScheduleField::mark) > 0)
        return;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].strength == 1 && plainHeader(record.cells[i]).text == "room")
            all[i].field = ScheduleField::mark;
    }
}

/// Whether another column has a better right to the same field.
bool outdone(const std::vector<Claim>& all, std::size_t at) {
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool same = i != at && all[i].field == all[at].field;
        if (same
            && (all[i].strength > all[at].strength
                || (all[i].strength == all[at].strength && i < at)))
            return true;
    }
    return false;
}

} // namespace

std::optional<std::size_t> HeaderMap::columnOf(ScheduleField field) const {
    const auto it = std::ranges::find(headers, std::optional(field), &MappedHeader::field);
    if (it == headers.end())
        return std::nullopt;
    return static_cast<std::size_t>(it - headers.begin());
}

std::string HeaderMap::titleOf(ScheduleField field) const {
    const auto column = columnOf(field);
    return column ? headers[*column].title : std::string(word(field));
}

std::vector<ScheduleField> HeaderMap::fields() const {
    std::vector<ScheduleField> all;
    for (const MappedHeader& header : headers) {
        if (header.field)
            all.push_back(*header.field);
    }
    return all;
}

std::vector<std::string> HeaderMap::unmapped() const {
    std::vector<std::string> titles;
    for (const MappedHeader& header : headers) {
        if (!header.field && !header.leftOut && !header.title.empty())
            titles.push_back(header.title);
    }
    return titles;
}

HeaderMap mapHeaders(ScheduleKind kind, const CsvTable& table, const Table<HeaderName>& remembered,
    const std::vector<HeaderChoice>& choices) {
    const Claims claims(kind, remembered, choices);
    HeaderMap map;
    map.record = headerRecord(table, claims);
    const CsvRecord& record = table.records[map.record];
    auto all = claimsOf(record, claims);
    partRoomNumber(all, record);
    for (std::size_t i = 0; i < all.size(); ++i) {
        MappedHeader header;
        header.title = singleLine(record.cells[i]);
        header.unit = plainHeader(header.title).unit;
        header.leftOut = all[i].strength > 1 && !all[i].field;
        if (all[i].field && !outdone(all, i))
            header.field = all[i].field;
        map.headers.push_back(std::move(header));
    }
    return map;
}

} // namespace miterbook
