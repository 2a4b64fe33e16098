// SPDX-License-Identifier: GPL-3.0-or-later
// Prints the table of all ways in which a book could be lost: `durability_table [SEED]`. Ends with
// 1 when something was lost.
#include "durability/bar.h"

#include <QCoreApplication>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <functional>

namespace miterbook {
namespace {

void printRow(const Bar& bar, double seconds) {
    constexpr std::size_t mostSentences = 5;
    std::printf("%-66s %6ld %6ld %5zu  %s %6.1f s  %s\n", bar.what.c_str(), bar.wanted, bar.tried,
        bar.lost.size(), bar.holds() ? "holds" : "FAILS", seconds, bar.note.c_str());
    for (std::size_t i = 0; i < bar.lost.size() && i < mostSentences; ++i)
        std::printf("    %s\n", bar.lost[i].c_str());
    std::fflush(stdout);
}

int printTable(const Extent& extent) {
    const std::vector<std::function<Bar()>> bars{[&] { return killBar(extent); }, editFaultBar,
        [] { return formatFaultBar(1); }, backupFaultBar, [&] { return powerBar(extent); },
        [&] { return fullDiskBar(extent); }, [&] { return bitFlipBar(extent); },
        [&] { return truncationBar(extent); }, [&] { return zeroedPageBar(extent); },
        [&] { return salvageBar(extent); }, [&] { return twoProgramsBar(extent); }, formatsBar};
    std::printf("%-66s %6s %6s %5s\n", "", "wanted", "tried", "lost");
    bool hold = true;
    for (const auto& bar : bars) {
        const auto begin = std::chrono::steady_clock::now();
        const Bar done = bar();
        printRow(
            done, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
        hold = hold && done.holds();
    }
    return hold ? 0 : 1;
}

} // namespace
} // namespace miterbook

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    miterbook::Extent extent;
    if (argc > 1)
        extent.seed = static_cast<std::uint32_t>(std::atoi(argv[1]));
    return miterbook::printTable(extent);
}
