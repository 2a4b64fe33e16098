// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/scope_words.h"

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "basics/quote.h"
#include "papers/plain_text.h"
#include "papers/scope_phrases.h"

#include <algorithm>
#include <array>
#include <map>
#include <span>

namespace miterbook {

namespace {

/// A kind of opening among several: "stool and apron 12".
struct KindCount {
    std::string_view name;
    std::string_view alone;
    std::int64_t count = 0;
};

/// What the takeoff says of one piece of work.
class Scope {
public:
    Scope(PieceOfWork work, const JobFigures& figures, const PriceBook& prices)
        : m_work(work)
        , m_figures(figures)
        , m_prices(prices) {
        for (const TaskCount& task : figures.takeoff.tasks) {
            if (task.work == work)
                add(task);
        }
    }

    std::string words() const {
        std::vector<std::string> parts{doors(), windows(), arches()};
        const bool openings = !joined(parts).empty();
        for (std::string& part : measured())
            parts.push_back(std::move(part));
        parts.push_back(named());
        parts.push_back(suppliedByBuilder());
        const std::string text = joined(parts, openings ? "; " : ", ");
        return text.empty() ? sources() : text;
    }

private:
    struct Amount {
        Quantity quantity;
        std::vector<std::string> names;
    };

    const Opening* openingOf(const Source& source) const {
        const auto* id = std::get_if<Id<Opening>>(&source.row);
        const auto& all = m_figures.whole.openings;
        const auto it = id ? std::ranges::find(all, *id, &Opening::id) : all.end();
        return it == all.end() ? nullptr : &*it;
    }

    /// A window cased on both faces is labour twice, but it is one window.
    void add(const TaskCount& task) {
        Amount& amount = m_amounts[task.task];
        const bool isWindowKind = std::ranges::find(windowPhrases, task.task, &Phrase::task)
            != windowPhrases.end();
        const Opening* opening = isWindowKind ? openingOf(task.source) : nullptr;
        amount.quantity += opening ? Quantity::count(opening->count) : task.quantity;
        addName(amount.names, task.source.name);
    }

    static void addName(std::vector<std::string>& names, const std::string& name) {
        if (std::string line = oneLine(name);
            !line.empty() && std::ranges::find(names, line) == names.end())
            names.push_back(std::move(line));
    }

    std::vector<KindCount> kinds(std::span<const Phrase> phrases) const {
        std::vector<KindCount> result;
        for (const Phrase& phrase : phrases) {
            if (const auto it = m_amounts.find(phrase.task); it != m_amounts.end())
                result.push_back(
                    {phrase.many, phrase.one, it->second.quantity.thousandths() / 1000});
        }
        std::ranges::stable_sort(result, std::greater(), &KindCount::count);
        return result;
    }

    /// ": stool and apron 12, picture frame 6" after a total.
    static std::string split(const std::vector<KindCount>& kinds) {
        std::vector<std::string> texts;
        for (const KindCount& kind : kinds)
            texts.push_back(std::string(kind.name) + ' ' + std::to_string(kind.count));
        return ": " + joined(texts);
    }

    static std::int64_t sum(const std::vector<KindCount>& kinds) {
        std::int64_t count = 0;
        for (const KindCount& kind : kinds)
            count += kind.count;
        return count;
    }

    static std::string counted(std::int64_t count, std::string_view one, std::string_view many) {
        return std::to_string(count) + ' ' + std::string(count == 1 ? one : many);
    }

    std::string doors() const {
        const std::vector<KindCount> found = kinds(doorPhrases);
        if (found.empty())
            return {};
        if (found.size() > 1)
            return counted(sum(found), "door", "doors") + split(found) + casedSides();
        const std::int64_t count = found.front().count;
        std::string text(found.front().alone);
        if (count != 1)
            text.insert(text.find("door") + 4, "s");
        return std::to_string(count) + ' ' + text + casedSides();
    }

    /// "; 12 cased both sides, 2 one side" of the doors.
    std::string casedSides() const {
        std::array<std::int64_t, 3> sides{};
        for (const TaskCount& task : m_figures.takeoff.tasks) {
            if (task.work != m_work || task.task > Task::exteriorDoor)
                continue;
            if (const Opening* opening = openingOf(task.source)) {
                const bool bare = opening->style == TrimStyle::drywallReturn;
                const int cased = bare ? 0 : std::clamp(opening->sidesCased, 0, 2);
                sides.at(static_cast<std::size_t>(cased)) += opening->count;
            }
        }
        std::vector<std::string> texts;
        if (sides[2] > 0)
            texts.push_back(std::to_string(sides[2]) + " cased both sides");
        if (sides[1] > 0)
            texts.push_back(std::to_string(sides[1]) + " cased one side");
        if (sides[0] > 0)
            texts.push_back(std::to_string(sides[0]) + " not cased");
        return texts.empty() ? std::string() : "; " + joined(texts);
    }

    std::string windows() const {
        const std::vector<KindCount> found = kinds(windowPhrases);
        if (found.empty())
            return {};
        const bool allCased = !m_amounts.contains(Task::drywallReturnStool);
        const std::string head = counted(sum(found), "window", "windows")
            + (allCased ? " cased" : " trimmed");
        return found.size() == 1 ? head + ", " + std::string(found.front().alone)
                                 : head + split(found);
    }

    std::string arches() const {
        std::int64_t count = 0;
        for (const PartCount& part : m_figures.takeoff.parts) {
            if (part.work == m_work && part.use == PartUse::archCasing)
                count += part.count;
        }
        return count == 0 ? std::string()
                          : counted(count, "arched casing", "arched casings") + " made to order";
    }

    std::string measure(const Phrase& phrase, Quantity quantity) const {
        const Unit unit = unitOf(phrase.task);
        if (unit == Unit::linearFoot || unit == Unit::squareFoot) {
            const LengthUnit written = m_prices.shop().unit;
            const std::string_view feet = unit == Unit::linearFoot ? "ft" : "sq ft";
            return formatQuantity(amountSaid(quantity, unit, written), 0) + ' '
                + (written == LengthUnit::millimetres ? unitText(unit, written) : std::string(feet))
                + " of " + std::string(phrase.many);
        }
        const bool isOne = quantity == Quantity::count(1);
        return formatQuantity(quantity) + ' ' + std::string(isOne ? phrase.one : phrase.many);
    }

    std::vector<std::string> measured() const {
        std::vector<std::pair<const Phrase*, Quantity>> found;
        for (const Phrase& phrase : otherPhrases) {
            const auto it = m_amounts.find(phrase.task);
            if (it == m_amounts.end())
                continue;
            if (!found.empty() && found.back().first->many == phrase.many)
                found.back().second += it->second.quantity;
            else
                found.emplace_back(&phrase, it->second.quantity);
        }
        std::vector<std::string> texts;
        for (const auto& [phrase, quantity] : found)
            texts.push_back(measure(*phrase, quantity));
        return texts;
    }

    /// Work that is counted in hours is said by name.
    std::string named() const {
        std::vector<std::string> texts;
        if (m_amounts.contains(Task::punch))
            texts.emplace_back("punch list");
        if (const auto it = m_amounts.find(Task::other); it != m_amounts.end())
            texts.push_back(joined(it->second.names));
        return joined(texts);
    }

    std::string suppliedByBuilder() const {
        std::vector<std::string> names;
        for (const PartCount& part : m_figures.takeoff.parts) {
            const Part* goods = m_prices.part(part.use);
            if (part.work == m_work && goods && goods->builderSupplies)
                addName(names, std::string(word(part.use)));
        }
        return names.empty() ? std::string() : "supplied by the builder: " + joined(names);
    }

    /// Where nothing is counted but goods or sticks go in: what they are for.
    std::string sources() const {
        std::vector<std::string> names;
        for (const Piece& piece : m_figures.takeoff.pieces) {
            if (piece.work == m_work)
                addName(names, piece.source.name);
        }
        for (const BoughtGoods& goods : m_figures.takeoff.goods) {
            if (goods.work == m_work)
                addName(names, goods.source.name);
        }
        return joined(names);
    }

    PieceOfWork m_work;
    const JobFigures& m_figures;
    const PriceBook& m_prices;
    std::map<Task, Amount> m_amounts;
};

} // namespace

std::string scopeWords(PieceOfWork work, const JobFigures& figures, const PriceBook& prices) {
    return capitalised(Scope(work, figures, prices).words());
}

} // namespace miterbook
