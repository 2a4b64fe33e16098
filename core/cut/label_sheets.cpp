// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/label_sheets.h"

#include "basics/length_text.h"

namespace miterbook {

namespace {

constexpr Length tenthsOfMillimetre(int count) {
    return Length::tenthsOfMillimetre(count);
}

constexpr Length sixteenths(int count) {
    return Length::sixteenths(count);
}

constexpr LabelSheet sheets[] = {
    {3, 10, sixteenths(42), sixteenths(16), sixteenths(3), sixteenths(8), sixteenths(2), false},
    {2, 10, sixteenths(64), sixteenths(16), Length::thirtySeconds(5), sixteenths(8), sixteenths(3),
        false},
    {2, 5, sixteenths(64), sixteenths(32), Length::thirtySeconds(5), sixteenths(8), sixteenths(3),
        false},
    {3, 7, tenthsOfMillimetre(635), tenthsOfMillimetre(381), tenthsOfMillimetre(72),
        tenthsOfMillimetre(151), tenthsOfMillimetre(25), true},
    {3, 8, tenthsOfMillimetre(700), tenthsOfMillimetre(370), Length(), Length(), Length(), true},
    {2, 7, tenthsOfMillimetre(991), tenthsOfMillimetre(381), tenthsOfMillimetre(47),
        tenthsOfMillimetre(151), tenthsOfMillimetre(25), true},
};

} // namespace

std::span<const LabelSheet> commonLabelSheets() {
    return sheets;
}

std::string labelSheetName(const LabelSheet& sheet) {
    LengthStyle style;
    style.unit = sheet.isA4 ? LengthUnit::millimetres : LengthUnit::inches;
    return std::to_string(sheet.columns * sheet.rows) + " a sheet, "
        + formatLength(sheet.width, style) + " x " + formatLength(sheet.height, style)
        + (sheet.isA4 ? " mm, A4" : " in, Letter");
}

bool printsOn(const Bench& bench, const LabelSheet& sheet) {
    return bench == withLabelSheet(bench, sheet);
}

Bench withLabelSheet(Bench bench, const LabelSheet& sheet) {
    bench.labelColumns = sheet.columns;
    bench.labelRows = sheet.rows;
    bench.labelWidth = sheet.width;
    bench.labelHeight = sheet.height;
    bench.labelLeft = sheet.left;
    bench.labelTop = sheet.top;
    bench.labelGap = sheet.gap;
    return bench;
}

} // namespace miterbook
