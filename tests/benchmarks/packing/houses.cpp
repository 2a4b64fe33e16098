// SPDX-License-Identifier: GPL-3.0-or-later
#include "benchmarks/packing/houses.h"

#include "bid/stick_supply.h"
#include "book/starter_book.h"
#include "io/file_bytes.h"
#include "io/plan_text.h"
#include "job/figures.h"

#include <algorithm>
#include <filesystem>

namespace miterbook::packing {

namespace {

// The plan as it was brought into a book of its own, with the first of its elevations.
House houseOf(const std::string& file) {
    IdSource ids;
    Book book;
    book.prices = starterBook(ids);
    House house{std::filesystem::path(file).stem().string(), {}};
    const auto bytes = readFileBytes(file);
    const auto edit = bytes ? readPlanText(book, ids, *bytes) : Result<Edit>(bytes.error());
    if (!edit)
        return house;
    apply(book, *edit);
    const Id<Plan> plan = book.jobs.of<Plan>().begin()->first;
    const JobFigures figures = figuresFor(book, plan, {}, Effort::quick);
    for (const StickNeed& need : stickNeeds(figures.takeoff)) {
        const StickSupply supply = stickSupply(need.profile, book.prices);
        if (!supply.priced)
            continue;
        auto lots = need.lots;
        std::erase_if(lots, [&](const auto& lot) { return lot.length > supply.longest; });
        house.profiles.push_back({std::string(book.prices.profileName(need.profile)),
            cuttingProblem(lots, need.mitered, supply, book.prices.practice()), std::nullopt});
    }
    return house;
}

} // namespace

std::vector<House> sampleHouses() {
    std::vector<std::string> files;
    for (const auto& entry :
        std::filesystem::recursive_directory_iterator(MITERBOOK_SOURCE_DIR "/sample-jobs"))
        if (entry.path().extension() == ".miterplan")
            files.push_back(entry.path().string());
    std::sort(files.begin(), files.end());
    std::vector<House> houses;
    for (const std::string& file : files)
        houses.push_back(houseOf(file));
    return houses;
}

} // namespace miterbook::packing
