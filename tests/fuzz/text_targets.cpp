// SPDX-License-Identifier: GPL-3.0-or-later
// Lengths, sizes and numbers as they are typed; CSV and plan files as they are brought in.
#include "fuzz/must.h"
#include "fuzz/targets.h"

#include "basics/length_text.h"
#include "basics/number_text.h"
#include "io/csv_table.h"
#include "io/hours_reading.h"
#include "io/measures.h"
#include "io/pack_lists.h"
#include "io/plan_text.h"
#include "io/schedule_reading.h"
#include "job/row_check.h"
#include "support/small_book.h"

#include <algorithm>

namespace miterbook::fuzz {

namespace {

template <class T>
bool answered(const Result<T>& read) {
    must(read.ok() || !read.error().sentence.empty(), "a refusal has a sentence");
    return read.ok();
}

void readOneLength(std::string_view text, LengthUnit unit) {
    const auto read = parseLength(text, unit);
    if (!answered(read))
        return;
    must(*read >= Length() && *read <= longestSensible, "a length is sensible");
    const auto again = parseLength(exactInches(*read) + "\"");
    must(again.ok(), "a length that is written can be read");
    must(exactInches(*again) == exactInches(*read), "and is the same");
}

void readNumbers(std::string_view text) {
    if (const auto money = parseMoney(text); answered(money))
        must(*parseMoney(formatMoney(*money)) == *money, "money is read as it is written");
    if (const auto quantity = parseQuantity(text); answered(quantity))
        must(*quantity >= Quantity(), "no quantity is negative");
    (void)answered(parseUnitPrice(text));
    (void)answered(parsePercent(text));
    (void)answered(parseHours(text));
    (void)answered(parseMinutesPerUnit(text));
    (void)answered(parseWhole(text, "The number", 1, 99));
}

void readSchedules(std::string_view bytes) {
    static const Book book = smallBook();
    constexpr ScheduleTarget target{Id<Plan>(31), Id<Level>(41)};
    for (const auto kind : {ScheduleKind::windows, ScheduleKind::doors, ScheduleKind::rooms}) {
        const auto read = readSchedule(kind, bytes, book, target);
        if (!answered(read))
            continue;
        for (const auto& rejection : read->rejected)
            must(!rejection.reason.empty(), "a rejection has a reason");
    }
    (void)answered(readHours(bytes, book, {}, std::chrono::year(2026) / 3 / 1));
    (void)answered(readMeasures(bytes, book, Id<Plan>(31)));
    (void)answered(readPieces(bytes));
    (void)answered(readSticks(bytes));
}

} // namespace

void readLengths(std::string_view bytes) {
    constexpr std::size_t longest = 400; // nobody types more, and the corpus stays small
    const std::string_view text = bytes.substr(0, longest);
    readOneLength(text, LengthUnit::inches);
    readOneLength(text, LengthUnit::millimetres);
    (void)answered(parseDoorLength(text));
    if (const auto size = parseSize(text); answered(size))
        must(size->width <= longestSensible && size->height <= longestSensible,
            "a size is sensible");
    readNumbers(text);
}

void readCsvFile(std::string_view bytes) {
    if (const auto table = readCsv(bytes); answered(table)) {
        int line = 0;
        for (const CsvRecord& record : table->records) {
            must(record.line > line, "records come in order");
            line = record.line;
        }
    }
    readSchedules(bytes);
}

void readPlan(std::string_view bytes) {
    Book book = smallBook();
    IdSource ids(5000);
    const auto edit = readPlanText(book, ids, bytes);
    if (!answered(edit))
        return;
    const auto fits = check(book, *edit);
    must(fits.ok(), "the edit of a plan that was read fits the book");
    if (!answered(checkRows(book, *edit)))
        return;
    apply(book, *edit);
    const Id<Plan> plan = std::prev(book.jobs.of<Plan>().end())->first;
    const std::string text = writePlanText(book, plan);
    Book other;
    IdSource others(9000);
    const auto again = readPlanText(other, others, text);
    must(again.ok(), "a plan that is written can be read");
    apply(other, *again);
    must(writePlanText(other, std::prev(other.jobs.of<Plan>().end())->first) == text,
        "and is written again the same");
}

} // namespace miterbook::fuzz
