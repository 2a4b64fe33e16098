// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/materials.h"

#include "basics/quote.h"
#include "papers/plain_text.h"

#include <algorithm>
#include <map>
#include <set>

namespace miterbook {

namespace {

std::string usedFor(const std::set<PieceOfWork>& works) {
    std::vector<std::string> words;
    for (const PieceOfWork work : works)
        words.emplace_back(word(work));
    return capitalised(joined(words));
}

} // namespace

std::string sizeText(const Profile& profile, LengthStyle style) {
    if (profile.thickness == Length() && profile.width == Length())
        return {};
    const std::string size = formatLength(profile.thickness, style) + " x "
        + formatLength(profile.width, style);
    return style.unit == LengthUnit::millimetres ? size + " mm" : size;
}

std::string gradeText(const Profile& profile) {
    return std::string(word(profile.finish)) + " grade";
}

PaperTable materialsTable(const Takeoff& takeoff, const PriceBook& prices) {
    std::map<Id<Profile>, std::set<PieceOfWork>> works;
    for (const Piece& piece : takeoff.pieces)
        works[piece.profile].insert(piece.work);
    std::vector<const Profile*> profiles;
    for (const auto& [id, used] : works) {
        if (const Profile* profile = prices.profile(id))
            profiles.push_back(profile);
    }
    std::ranges::sort(profiles, [](const Profile* a, const Profile* b) {
        return std::tie(a->use, a->name) < std::tie(b->use, b->name);
    });

    PaperTable table;
    table.title = "Materials";
    table.columns = {{"Profile", PaperColumn::Align::left, 30},
        {"Size", PaperColumn::Align::left, 18}, {"Material", PaperColumn::Align::left, 20},
        {"Finish", PaperColumn::Align::left, 16}, {"Used for", PaperColumn::Align::left, 26}};
    for (const Profile* profile : profiles) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(profile->name), Cell::of(sizeText(*profile, prices.shop().lengths())),
                Cell::of(profile->material), Cell::of(gradeText(*profile)),
                Cell::of(usedFor(works[profile->id]))}});
    }
    return table;
}

} // namespace miterbook
