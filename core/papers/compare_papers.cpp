// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/compare_papers.h"

#include "basics/number_text.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

/// One line of a paper as it is compared: lines of a part that are called alike are told apart by
/// their turn.
struct Line {
    std::string part;
    std::string name;
    int turn = 0;
    std::string text;
    std::optional<Money> amount;
    bool total = false;
    bool words = false; ///< shown only where it has changed

    bool isSameAs(const Line& other) const {
        return part == other.part && name == other.name && turn == other.turn
            && words == other.words;
    }
};

/// Gathers the lines of one paper.
class Reader {
public:
    std::vector<Line> read(const Paper& paper) {
        for (const auto& [what, text] : paper.facts)
            add({{}, what, 0, text, {}, false, true});
        for (const Block& block : paper.blocks) {
            if (const auto* paragraph = std::get_if<Paragraph>(&block))
                addParagraph(*paragraph);
            else if (const auto* table = std::get_if<PaperTable>(&block))
                addTable(*table);
        }
        return std::move(m_lines);
    }

private:
    void add(Line line) {
        line.turn = m_turns[line.part + '\n' + line.name + (line.words ? "\nwords" : "")]++;
        m_lines.push_back(std::move(line));
    }

    void addParagraph(const Paragraph& paragraph) {
        if (paragraph.style == Paragraph::Style::heading) {
            m_heading = paragraph.lines.empty() ? std::string() : paragraph.lines.front();
            return;
        }
        const std::string part
            = paragraph.style == Paragraph::Style::caution ? std::string("Caution") : m_heading;
        for (const std::string& line : paragraph.lines)
            add({part, line, 0, line, {}, false, true});
    }

    static std::optional<Money> amountIn(const Cell& cell) {
        const auto money = cell.exact.empty() ? Result<Money>(Error()) : parseMoney(cell.exact);
        return money ? std::optional(*money) : std::nullopt;
    }

    /// The first cell names the row, the last is its amount where it is one; the rest are words.
    void addTable(const PaperTable& table) {
        for (const PaperTable::Row& row : table.rows) {
            if (row.cells.empty() || row.kind == PaperTable::Kind::group)
                continue;
            const std::string& name = row.cells.front().text;
            const auto amount = amountIn(row.cells.back());
            if (amount && row.cells.size() > 1)
                add({table.title, name, 0, row.cells.back().text, amount,
                    row.kind == PaperTable::Kind::total, false});
            std::string words;
            for (std::size_t i = 1; i + (amount ? 1 : 0) < row.cells.size(); ++i) {
                const std::string& text = row.cells[i].text;
                if (!text.empty())
                    words += (words.empty() ? "" : " · ") + text;
            }
            if (!amount || !words.empty())
                add({table.title, name, 0, words.empty() ? name : words, {}, false, true});
        }
    }

    std::string m_heading;
    std::map<std::string, int> m_turns;
    std::vector<Line> m_lines;
};

PaperDifference difference(const Line* before, const Line* after) {
    const Line& line = after ? *after : *before;
    PaperDifference made{line.part, line.name, before ? before->text : std::string(),
        after ? after->text : std::string(), {}, line.total};
    if (!line.words) {
        const Money was = before ? before->amount.value_or(Money()) : Money();
        const Money is = after ? after->amount.value_or(Money()) : Money();
        made.change = is - was;
    }
    return made;
}

/// Where the lines of a part end among what has been gathered; the end where it is a new part.
auto endOfPart(std::vector<PaperDifference>& all, const std::string& part) {
    const auto last = std::find_if(all.rbegin(), all.rend(),
        [&](const PaperDifference& each) { return each.part == part && !each.total; });
    return last == all.rend() ? all.end() : last.base();
}

} // namespace

std::vector<PaperDifference> comparePapers(const Paper& before, const Paper& after) {
    const std::vector<Line> old = Reader().read(before);
    const std::vector<Line> now = Reader().read(after);
    const auto in = [](const std::vector<Line>& lines, const Line& line) {
        const auto it = std::ranges::find_if(
            lines, [&](const Line& each) { return each.isSameAs(line); });
        return it == lines.end() ? nullptr : &*it;
    };
    std::vector<PaperDifference> all;
    for (const Line& line : now) {
        PaperDifference each = difference(in(old, line), &line);
        if (!line.words || each.changed())
            all.push_back(std::move(each));
    }
    for (const Line& line : old) {
        if (!in(now, line))
            all.insert(endOfPart(all, line.part), difference(&line, nullptr));
    }
    return all;
}

} // namespace miterbook
