// SPDX-License-Identifier: GPL-3.0-or-later
// sheet_bench [OPENINGS]: takeoff and price of one plan by the program and, in the same run, by a
// spreadsheet of the same formulas that LibreOffice Calc opens and reckons without a window. Says
// where the two disagree (then it fails) and how long each takes, and an almost empty sheet
// besides: most of what Calc takes is its start.
#include "sheet/house_sheet.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>
#include <map>
#include <optional>

namespace miterbook {
namespace {

double milliseconds(const std::function<void()>& work) {
    const auto begun = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
        .count();
}

double median(const std::function<void()>& work) {
    std::vector<double> times;
    for (int run = 0; run < 5; ++run)
        times.push_back(milliseconds(work));
    std::ranges::sort(times);
    return times[2];
}

/// Has Calc open a sheet and write its first table as CSV; the words and numbers of its two
/// columns.
std::optional<std::map<std::string, double>> reckoned(
    const QTemporaryDir& folder, const QString& name, const std::string& sheet) {
    const QString path = folder.filePath(name + QStringLiteral(".fods"));
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(sheet.data(), qint64(sheet.size())) < 0)
        return std::nullopt;
    file.close();
    QProcess office;
    // Semicolons, UTF-8, values as they are and not as shown, the first table.
    office.start(QStringLiteral("soffice"),
        {QStringLiteral("-env:UserInstallation=file://") + folder.filePath(QStringLiteral("user")),
            QStringLiteral("--headless"), QStringLiteral("--convert-to"),
            QStringLiteral("csv:Text - txt - csv (StarCalc):59,34,76,1,,0,false,false"),
            QStringLiteral("--outdir"), folder.path(), path});
    constexpr int patience = 300'000; // milliseconds
    if (!office.waitForFinished(patience) || office.exitCode() != 0)
        return std::nullopt;
    QFile made(folder.filePath(name + QStringLiteral(".csv")));
    if (!made.open(QIODevice::ReadOnly))
        return std::nullopt;
    std::map<std::string, double> values;
    for (const QByteArray& line : made.readAll().split('\n')) {
        const QList<QByteArray> cells = line.split(';');
        if (cells.size() == 2) {
            QByteArray word = cells[0];
            word.replace("\"", "");
            values[word.toStdString()] = cells[1].toDouble();
        }
    }
    return values;
}

bool agree(const std::vector<SheetSum>& sums, const std::map<std::string, double>& sheet) {
    bool all = true;
    std::printf("%-22s %14s %14s %10s\n", "", "program", "spreadsheet", "apart");
    for (const SheetSum& sum : sums) {
        const auto it = sheet.find(sum.name);
        const double theirs = it == sheet.end() ? std::nan("") : it->second;
        const bool same = std::abs(theirs - sum.ours) <= sum.within; // false for what is missing
        all = all && same;
        std::printf("%-22s %14.3f %14.3f %10.3f %s\n", sum.name.c_str(), sum.ours, theirs,
            theirs - sum.ours, same ? "" : "DISAGREE");
    }
    return all;
}

int run(int openings) {
    const PlainHouse house = plainHouse(openings / 2, openings - openings / 2);
    BidSetup setup;
    setup.waste = Percent::whole(10);
    const QTemporaryDir folder;
    const PlainHouse none = plainHouse(1, 1);
    std::optional<std::map<std::string, double>> values;
    reckoned(folder, QStringLiteral("first"), houseSheet(none, setup)); // makes its settings
    const double start = median(
        [&] { reckoned(folder, QStringLiteral("small"), houseSheet(none, setup)); });
    const std::string sheet = houseSheet(house, setup);
    const double whole = median(
        [&] { values = reckoned(folder, QStringLiteral("house"), sheet); });
    if (!values) {
        std::printf("soffice did not answer; on Debian it comes with libreoffice-calc.\n");
        return 1;
    }
    std::vector<SheetSum> sums;
    double ours = 0;
    constexpr int runs = 20;
    for (int i = 0; i < runs; ++i)
        ours += milliseconds([&] { sums = programSums(house, setup); }) / runs;
    const bool same = agree(sums, *values);
    std::printf("\n%d openings, %zu rooms\n", openings, house.whole.rooms.size());
    std::printf("takeoff and price by the program   %10.2f ms\n", ours);
    std::printf("the same by Calc, start and all    %10.2f ms  %8.0f x\n", whole, whole / ours);
    std::printf("an almost empty sheet by Calc      %10.2f ms\n", start);
    return same ? 0 : 1;
}

} // namespace
} // namespace miterbook

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const int openings = argc > 1 ? std::atoi(argv[1]) : 500;
    if (openings < 2 || openings > 10'000) {
        std::printf("A number of openings is from 2 to 10000.\n");
        return 2;
    }
    return miterbook::run(openings);
}
