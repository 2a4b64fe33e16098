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

std::string servedText(const SawSheet& sheet, const SheetStop& stop, LengthStyle style) {
    struct Served {
        int count = 0;
        Length error;
    };
    std::vector<std::pair<std::string, Served>> served;
    for (const std::size_t at : stop.pieces) {
        const SheetPiece& piece = sheet.pieces[at];
        const std::string& name = piece.piece.source.name;
        auto it = std::ranges::find(served, name, &std::pair<std::string, Served>::first);
        if (it == served.end())
            it = served.insert(served.end(), {name, {}});
        ++it->second.count;
        it->second.error = revealError(piece.piece.shortPoint, piece.shortPoint);
    }
    std::vector<std::string> texts;
    for (const auto& [name, what] : served) {
        std::string text = oneLine(name);
        if (what.count > 1)
            text += " ×" + std::to_string(what.count);
        if (const std::string error = fineText(what.error, style); !error.empty())
            text += " (" + error + ")";
        texts.push_back(std::move(text));
    }
    return joined(texts);
}

std::string sticksText(const SheetStop& stop) {
    std::vector<std::string> up;
    std::vector<std::string> rack;
    for (const StickUse& use : stop.sticks)
        (use.takenUp ? up : rack).push_back(std::to_string(use.stick));
    std::vector<std::string> parts;
    if (!up.empty())
        parts.push_back("up " + joined(up));
    if (!rack.empty())
        parts.push_back("on " + joined(rack));
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
            "and "
            "ears covered (29 CFR 1926.300 to .304)."}};
}

Paragraph dustCaution() {
    return {Paragraph::Style::caution,
        {"Wood and MDF dust: collect it and wear a respirator.",
            "Wood dust is known to cause cancer in people (NTP). Limit on construction sites 15 "
            "mg/m³ "
            "of dust in all (29 CFR 1926.55); NIOSH advises 1 mg/m³."}};
}

Paragraph benchCaution() {
    return {Paragraph::Style::caution,
        {"Reactive hot-melt adhesive burns, and sensitises skin and airways.",
            "Gloves, fresh air, and read its safety data sheet. Nailers on sequential trigger. Get "
            "help with what weighs over 50 lb."}};
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
