// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/price_list.h"

#include "basics/number_text.h"
#include "basics/typed_date.h"
#include "book/checks.h"
#include "book/stick_prices.h"
#include "io/csv_table.h"
#include "io/decoded_text.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace miterbook {

namespace {

enum class ListColumn { profile, length, price, per, from, supplier };

struct ListTitle {
    std::string_view text;
    ListColumn column;
};

constexpr std::array listTitles{
    ListTitle{"profile", ListColumn::profile},
    ListTitle{"moulding", ListColumn::profile},
    ListTitle{"item", ListColumn::profile},
    ListTitle{"description", ListColumn::profile},
    ListTitle{"name", ListColumn::profile},
    ListTitle{"length", ListColumn::length},
    ListTitle{"stick", ListColumn::length},
    ListTitle{"stick length", ListColumn::length},
    ListTitle{"price", ListColumn::price},
    ListTitle{"cost", ListColumn::price},
    ListTitle{"net", ListColumn::price},
    ListTitle{"per", ListColumn::per},
    ListTitle{"unit", ListColumn::per},
    ListTitle{"sold by", ListColumn::per},
    ListTitle{"from", ListColumn::from},
    ListTitle{"date", ListColumn::from},
    ListTitle{"effective", ListColumn::from},
    ListTitle{"supplier", ListColumn::supplier},
    ListTitle{"yard", ListColumn::supplier},
};

struct PerWord {
    std::string_view text;
    PricePer per;
};

constexpr std::array perWords{
    PerWord{"stick", PricePer::stick},
    PerWord{"piece", PricePer::stick},
    PerWord{"each", PricePer::stick},
    PerWord{"ea", PricePer::stick},
    PerWord{"foot", PricePer::foot},
    PerWord{"ft", PricePer::foot},
    PerWord{"lf", PricePer::foot},
    PerWord{"m", PricePer::metre},
    PerWord{"meter", PricePer::metre},
    PerWord{"metre", PricePer::metre},
    PerWord{"100 ft", PricePer::hundredFeet},
    PerWord{"100 lf", PricePer::hundredFeet},
    PerWord{"100ft", PricePer::hundredFeet},
    PerWord{"100lf", PricePer::hundredFeet},
    PerWord{"c", PricePer::hundredFeet},
};

/// Which column of the file says what.
struct ListMap {
    std::map<ListColumn, std::size_t> columns;
    std::vector<std::string> unmapped;

    explicit ListMap(const CsvRecord& titles) {
        for (std::size_t i = 0; i < titles.cells.size(); ++i) {
            const auto known = std::ranges::find(
                listTitles, foldedText(titles.cells[i]), &ListTitle::text);
            if (known != listTitles.end() && columns.try_emplace(known->column, i).second)
                continue;
            if (!titles.cells[i].empty())
                unmapped.push_back(titles.cells[i]);
        }
    }
};

Result<PricePer> perCalled(std::string_view text) {
    const auto known = std::ranges::find(perWords, foldedText(text), &PerWord::text);
    if (known == perWords.end()) {
        return badInput(quotedCell(text)
            + " is none of the ways a price is quoted: stick, foot, 100 ft or metre.");
    }
    return known->per;
}

/// A bare number up to 40 is feet, as yards write stick lengths.
Result<Length> stickLength(std::string_view text, LengthStyle style) {
    const bool bare = text.find_first_not_of("0123456789") == std::string_view::npos;
    if (bare && text.size() <= 2 && style.unit != LengthUnit::millimetres) {
        const int feet = std::stoi(std::string(text));
        if (feet <= 40)
            return Length::feet(feet);
    }
    return parseLength(text, style.unit);
}

/// Reads the rows of one list.
class ListReader {
public:
    ListReader(const PriceBook& prices, const PriceListAsk& ask, const CsvRecord& titles)
        : m_prices(prices)
        , m_ask(ask)
        , m_titles(titles)
        , m_map(titles) {
        m_reading.unmapped = m_map.unmapped;
        for (const auto& [id, profile] : prices.of<Profile>())
            m_profiles[foldedText(profile.name)] = id;
    }

    bool has(ListColumn column) const { return m_map.columns.contains(column); }

    void read(const CsvRecord& record) {
        m_record = &record;
        m_refused = false;
        ListedPrice listed;
        listed.line = record.line;
        listed.profile = take(ListColumn::profile, profileCalled(cell(ListColumn::profile)));
        listed.price.quoted = take(ListColumn::price, parseUnitPrice(cell(ListColumn::price)));
        listed.price.per = otherwise(ListColumn::per, m_ask.per, perCalled);
        listed.price.from = otherwise(ListColumn::from, m_ask.from, [&](std::string_view text) {
            return parseTypedDate(text, m_prices.shop().monthFirst, m_ask.from);
        });
        listed.price.supplier = cell(ListColumn::supplier).empty()
            ? m_ask.supplier
            : std::string(cell(ListColumn::supplier));
        if (!m_refused)
            addLengths(listed);
    }

    PriceListReading take() { return std::move(m_reading); }

private:
    std::string_view cell(ListColumn column) const {
        const auto found = m_map.columns.find(column);
        return found == m_map.columns.end() ? std::string_view() : m_record->cell(found->second);
    }

    void refuse(ListColumn column, const std::string& reason) {
        const auto found = m_map.columns.find(column);
        m_reading.rejected.push_back({m_record->line,
            found == m_map.columns.end() ? std::string("Length")
                                         : std::string(m_titles.cell(found->second)),
            reason});
        m_refused = true;
    }

    template <class T>
    T take(ListColumn column, const Result<T>& value) {
        if (value)
            return *value;
        refuse(column, value.error().sentence);
        return {};
    }

    template <class T, class Read>
    T otherwise(ListColumn column, T asked, Read reading) {
        return cell(column).empty() ? asked : take<T>(column, reading(cell(column)));
    }

    Result<Id<Profile>> profileCalled(std::string_view text) const {
        const auto found = m_profiles.find(foldedText(text));
        if (found == m_profiles.end())
            return badInput("The book has no profile " + quotedCell(text) + ".");
        return found->second;
    }

    /// One stick, or where no length stands all of the profile's at their feet.
    void addLengths(ListedPrice listed) {
        const std::string_view text = cell(ListColumn::length);
        if (!text.empty()) {
            listed.length = take(ListColumn::length, stickLength(text, m_prices.shop().lengths()));
            if (!m_refused)
                add(std::move(listed));
            return;
        }
        const std::vector<Stick> sticks = m_prices.sticksOf(listed.profile);
        if (listed.price.per == PricePer::stick)
            return refuse(ListColumn::length, "A price for a stick needs the stick's length.");
        if (sticks.empty())
            return refuse(ListColumn::length, "The book has no stick of this profile yet.");
        for (const Stick& stick : sticks) {
            listed.length = stick.length;
            add(listed);
        }
    }

    void add(ListedPrice listed) {
        listed.price.price = priceOfStick(listed.length, listed.price.quoted, listed.price.per);
        Stick stick{{}, listed.profile, listed.length, listed.price.price};
        for (const Stick& held : m_prices.sticksOf(listed.profile)) {
            if (held.length == listed.length)
                stick = held;
        }
        listed.stick = stick.id;
        if (stick.id)
            listed.before = stickPriceOn(m_prices, stick, listed.price.from);
        stick.price = listed.price.price;
        if (const auto sound = check(stick, m_prices); !sound)
            return refuse(ListColumn::price, sound.error().sentence);
        if (!m_seen.insert({listed.profile, listed.length, listed.price.from}).second)
            return refuse(
                ListColumn::profile, "The list has a price for this stick above already.");
        if (listed.before == listed.price.price)
            ++m_reading.unchanged;
        else
            m_reading.changes.push_back(std::move(listed));
    }

    const PriceBook& m_prices;
    const PriceListAsk& m_ask;
    const CsvRecord& m_titles;
    ListMap m_map;
    std::map<std::string, Id<Profile>> m_profiles;
    std::set<std::tuple<Id<Profile>, Length, Date>> m_seen;
    const CsvRecord* m_record = nullptr;
    bool m_refused = false;
    PriceListReading m_reading;
};

/// A price of the same stick from the same day gives way to the list's.
Id<StickPrice> priceFrom(const Book& book, Id<Stick> stick, Date from) {
    for (const auto& [id, price] : book.prices.of<StickPrice>()) {
        if (price.stick == stick && price.from == from)
            return id;
    }
    return {};
}

} // namespace

std::string PriceListReading::sentence(const ListRejection& rejection) {
    return "line " + std::to_string(rejection.line) + ", " + rejection.column + ": "
        + rejection.reason;
}

Result<PriceListReading> readPriceList(
    std::string_view bytes, const PriceBook& prices, const PriceListAsk& ask) {
    const auto table = readCsv(bytes);
    if (!table)
        return table.error();
    if (!ask.from.ok())
        return badInput("Say from which day on the prices hold.");
    ListReader reader(prices, ask, table->records.front());
    if (!reader.has(ListColumn::profile) || !reader.has(ListColumn::price))
        return badInput("A price list needs a row of titles with columns for profile and price.");
    for (std::size_t i = 1; i < table->records.size(); ++i)
        reader.read(table->records[i]);
    return reader.take();
}

Result<Edit> priceListEdit(
    const Book& book, IdSource& ids, const PriceListReading& reading, const std::string& file) {
    if (!reading.rejected.empty()) {
        return badInput(file + ", " + PriceListReading::sentence(reading.rejected.front())
            + " Nothing was brought in.");
    }
    if (reading.changes.empty())
        return badInput("The book has the prices of " + file + " already.");
    const std::string count = std::to_string(reading.changes.size());
    const std::string& supplier = reading.changes.front().price.supplier;
    EditBuilder edit(book,
        "Bring in " + count + (count == "1" ? " price" : " prices")
            + (supplier.empty() ? "" : " of " + supplier) + " from " + file);
    for (const ListedPrice& listed : reading.changes) {
        StickPrice price = listed.price;
        price.stick = listed.stick;
        if (!price.stick) {
            price.stick = ids.next<Stick>();
            edit.put(Stick{price.stick, listed.profile, listed.length, price.price});
        }
        price.id = priceFrom(book, price.stick, price.from);
        if (!price.id)
            price.id = ids.next<StickPrice>();
        edit.put(std::move(price));
    }
    return edit.take();
}

} // namespace miterbook
