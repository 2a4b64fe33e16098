// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cut_words.h"

#include "cut/stop_groups.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace miterbook {

namespace {

bool isMitered(const PieceEnd& end) {
    return end.cut == EndCut::miter || end.cut == EndCut::splice;
}

std::string endWord(const PieceEnd& end) {
    return end.cut == EndCut::cope ? "square, then cope" : std::string(word(end.cut));
}

std::string endAngle(const PieceEnd& end) {
    if (end.bevel != 0)
        return "miter " + degreesText(end.sawAngle) + ", bevel " + degreesText(end.bevel);
    return degreesText(end.sawAngle);
}

/// The mitered end first.
std::pair<PieceEnd, PieceEnd> endsOf(const SheetStop& stop) {
    if (!isMitered(stop.left) && isMitered(stop.right))
        return {stop.right, stop.left};
    return {stop.left, stop.right};
}

/// A name and the number at its end; -1 where it ends in none.
struct NumberedName {
    std::string_view stem;
    long number = -1;

    bool follows(const NumberedName& other) const {
        return number > 0 && stem == other.stem && number == other.number + 1;
    }
};

NumberedName numbered(std::string_view name) {
    constexpr std::size_t most = 9; // digits
    std::size_t digits = 0;
    while (digits < std::min(name.size(), most) && name[name.size() - 1 - digits] >= '0'
        && name[name.size() - 1 - digits] <= '9')
        ++digits;
    NumberedName split{name.substr(0, name.size() - digits)};
    if (digits > 0 && name[name.size() - digits] != '0')
        split.number = std::stol(std::string(name.substr(name.size() - digits)));
    return split;
}

/// Two in a row are said one by one: "1–2" saves nothing and reads as a size.
template <class Say>
void addRange(std::vector<std::string>& parts, std::size_t from, std::size_t to, Say say) {
    if (to - from >= 2) {
        parts.push_back(say(from) + "–" + say(to));
        return;
    }
    for (std::size_t at = from; at <= to; ++at)
        parts.push_back(say(at));
}

/// "2 each of W1, W4 (reveals +1/64)".
std::string groupText(const std::vector<std::string>& names, int count, const std::string& error) {
    std::string text = nameRanges(names);
    if (count > 1)
        text = names.size() > 1 ? std::to_string(count) + " each of " + text
                                : text + " ×" + std::to_string(count);
    return error.empty() ? text : text + " (reveals " + error + ")";
}

} // namespace

LengthStyle sawStyle(const Shop& shop) {
    LengthStyle style = shop.lengths();
    style.denominator = std::max(style.denominator, 32);
    return style;
}

std::string degreesText(double degrees) {
    const long tenths = std::lround(degrees * 10);
    std::string text = std::to_string(tenths / 10);
    if (tenths % 10 != 0)
        text += "." + std::to_string(std::abs(tenths % 10));
    return text + "°";
}

std::string endsText(const SheetStop& stop) {
    const auto [one, other] = endsOf(stop);
    if (one.cut == EndCut::square && other.cut == EndCut::square)
        return "square";
    return endWord(one) + "/" + endWord(other);
}

std::string angleText(const SheetStop& stop) {
    const auto [one, other] = endsOf(stop);
    if (!isMitered(one))
        return {};
    const std::string first = endAngle(one);
    if (!isMitered(other) || endAngle(other) == first)
        return first;
    return first + " / " + endAngle(other);
}

std::string fineText(Length length, LengthStyle style) {
    const std::string sign = length < Length() ? "-" : "+";
    if (style.unit == LengthUnit::millimetres) {
        const long tenths = std::abs(std::lround(length.toMillimetres() * 10));
        return tenths == 0 ? std::string()
                           : sign + std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
    }
    const long parts = std::abs(std::lround(length.toInches() * 64));
    if (parts == 0)
        return {};
    const long common = std::gcd(parts, 64L);
    return sign + std::to_string(parts / common) + "/" + std::to_string(64 / common);
}

std::string signedLength(Length length, LengthStyle style) {
    return (length < Length() ? "" : "+") + formatLength(length, style);
}

std::string numberRanges(std::vector<int> numbers) {
    std::ranges::sort(numbers);
    numbers.erase(std::ranges::unique(numbers).begin(), numbers.end());
    std::vector<std::string> parts;
    for (std::size_t from = 0; from < numbers.size();) {
        std::size_t to = from;
        while (to + 1 < numbers.size() && numbers[to + 1] == numbers[to] + 1)
            ++to;
        addRange(parts, from, to, [&](std::size_t at) { return std::to_string(numbers[at]); });
        from = to + 1;
    }
    return joined(parts);
}

std::string nameRanges(const std::vector<std::string>& names) {
    std::vector<NumberedName> split;
    for (const std::string& name : names)
        split.push_back(numbered(name));
    std::vector<std::string> parts;
    for (std::size_t from = 0; from < names.size();) {
        std::size_t to = from;
        while (to + 1 < names.size() && split[to + 1].follows(split[to]))
            ++to;
        addRange(parts, from, to, [&](std::size_t at) { return oneLine(names[at]); });
        from = to + 1;
    }
    return joined(parts);
}

std::string servedText(const SawSheet& sheet, const SheetStop& stop, LengthStyle style) {
    struct Served {
        std::string name;
        int count = 0;
        std::string error;
    };
    std::vector<Served> served;
    for (const std::size_t at : stop.pieces) {
        const SheetPiece& piece = sheet.pieces[at];
        const std::string& name = piece.piece.source.name;
        auto it = std::ranges::find(served, name, &Served::name);
        if (it == served.end())
            it = served.insert(served.end(), {name, 0, {}});
        ++it->count;
        it->error = fineText(revealError(piece.piece.shortPoint, piece.shortPoint), style);
    }
    using Kind = std::pair<int, std::string>; // how many each, and the reveals' error
    std::vector<std::pair<Kind, std::vector<std::string>>> groups;
    for (const Served& each : served) {
        const Kind kind(each.count, each.error);
        auto it = std::ranges::find(groups, kind, [](const auto& group) { return group.first; });
        if (it == groups.end())
            it = groups.insert(groups.end(), {kind, {}});
        it->second.push_back(each.name);
    }
    std::vector<std::string> texts;
    for (const auto& [kind, names] : groups)
        texts.push_back(groupText(names, kind.first, kind.second));
    return joined(texts, "; ");
}

std::string sticksText(const SheetStop& stop) {
    std::vector<int> up;
    std::vector<int> rack;
    for (const StickUse& use : stop.sticks)
        (use.takenUp ? up : rack).push_back(use.stick);
    std::vector<std::string> parts;
    if (!up.empty())
        parts.push_back("take up " + numberRanges(std::move(up)));
    if (!rack.empty())
        parts.push_back("go on with " + numberRanges(std::move(rack)));
    return joined(parts, "; ");
}

std::string stopWarning(const SawSheet& sheet, const SheetStop& stop, const Practice& practice,
    const Bench& bench, LengthStyle style) {
    const double most = std::max(stop.left.sawAngle, stop.right.sawAngle);
    if (most > practice.sawSwing.toDegrees())
        return "Stop " + std::to_string(stop.number) + ": " + degreesText(most)
            + " is more than the saw swings (" + degreesText(practice.sawSwing.toDegrees())
            + "); cut it with a jig.";
    const bool isShort = std::ranges::any_of(
        stop.pieces, [&](std::size_t at) { return sheet.pieces[at].longPoint < bench.shortPiece; });
    if (!isShort)
        return {};
    return "Stop " + std::to_string(stop.number) + ": under "
        + formatLengthWithUnit(bench.shortPiece, style)
        + ". Cut it from a longer piece, clamp it, or set a stop on both sides.";
}

Paragraph sawCaution() {
    return {Paragraph::Style::caution,
        {"Power off before a stop is moved or the blade cleared.",
            "Guards in place and closing by themselves. Hands 6 in or more from the blade. Eyes "
            "and ears covered (29 CFR 1926.300 to .304)."}};
}

Paragraph dustCaution() {
    return {Paragraph::Style::caution,
        {"Wood and MDF dust: collect it and wear a respirator.",
            "Wood dust is known to cause cancer in people (NTP). Limit on construction sites 15 "
            "mg/m³ of dust in all (29 CFR 1926.55); NIOSH advises 1 mg/m³."}};
}

Paragraph benchCaution() {
    return {Paragraph::Style::caution,
        {"Read the adhesive's safety data sheet; gloves, fresh air.",
            "Reactive hot-melt burns, and sensitises skin and airways. Nailers on sequential "
            "trigger. "
            "Get help with what weighs over 50 lb."}};
}

void addSawFacts(Paper& paper, const PaperJob& job, const JobFigures& figures) {
    addPlan(paper, job);
    addPlace(paper, job, "Address");
    if (const Level* level = figures.whole.level(job.level))
        addFact(paper, "Level", level->name);
    addDate(paper, job, "Date", job.date);
}

std::vector<const SheetStop*> stopsOn(const SawSheet& sheet, Id<Level> level) {
    std::vector<const SheetStop*> stops;
    for (const SheetStop& stop : sheet.stops) {
        if (!level || stop.level == level)
            stops.push_back(&stop);
    }
    return stops;
}

} // namespace miterbook
