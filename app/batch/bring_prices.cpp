// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/bring_prices.h"

#include "basics/quote.h"
#include "batch/arguments.h"
#include "io/file_bytes.h"
#include "io/price_list.h"

namespace miterbook {

namespace {

Result<PriceListAsk> listAsk(const QCommandLineParser& parser) {
    PriceListAsk ask{value(parser, "supplier"), SystemClock().today(), PricePer::stick};
    if (isSet(parser, "from")) {
        const auto from = parseIsoDate(value(parser, "from"));
        if (!from)
            return from.error();
        ask.from = *from;
    }
    if (isSet(parser, "per")) {
        const auto per = fromWord<PricePer>(value(parser, "per"));
        if (!per)
            return badInput(
                inQuotes(value(parser, "per")) + " is none of stick, foot, 100 ft and metre.");
        ask.per = *per;
    }
    return ask;
}

} // namespace

Result<void> bringPrices(OpenedBook& opened, const QCommandLineParser& parser, Console& console) {
    const auto ask = listAsk(parser);
    if (!ask)
        return ask.error();
    const std::string path = value(parser, "prices");
    const auto bytes = readFileBytes(path);
    if (!bytes)
        return bytes.error();
    const std::string file = fileName(path);
    const auto reading = readPriceList(*bytes, opened.book().prices, *ask);
    if (!reading)
        return badInput(file + ": " + reading.error().sentence);
    for (const ListRejection& rejection : reading->rejected)
        console.err << file << ", " << PriceListReading::sentence(rejection) << '\n';
    for (const std::string& title : reading->unmapped)
        console.out << file << ": the column \"" << title << "\" was not understood and left out\n";
    const auto edit = priceListEdit(opened.book(), opened.workbook.ids(), *reading, file);
    if (!edit)
        return edit.error();
    if (const auto done = opened.perform(*edit); !done)
        return done;
    console.out << file << ": " << edit->sentence << '\n';
    return {};
}

} // namespace miterbook
