// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/drawings.h"

#include "papers/paper.h"
#include "papers/plain_text.h"

namespace miterbook {

PaperTable asTable(const PaperBars& bars) {
    PaperTable table;
    table.title = bars.title;
    table.columns = {{"Stick", PaperColumn::Align::left, 22},
        {"Pieces", PaperColumn::Align::left, 60}, {"Left", PaperColumn::Align::right, 12}};
    for (const PaperBars::Bar& bar : bars.bars) {
        std::vector<std::string> parts;
        for (const PaperBars::Part& part : bar.parts)
            parts.push_back(part.of.empty() ? part.text : part.text + " " + part.of);
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(bar.title), Cell::of(joined(parts, " | ")), Cell::of(bar.left)}});
    }
    return table;
}

PaperTable asTable(const PaperLabels& labels) {
    PaperTable table;
    table.title = "Labels";
    table.columns = {
        {"Piece", PaperColumn::Align::left, 30}, {"On the label", PaperColumn::Align::left, 60}};
    for (const PaperLabels::Label& label : labels.labels) {
        std::string first = label.first;
        if (label.arrow)
            first += " (arrow up)";
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(std::move(first)), Cell::of(joined(label.lines, "; "))}});
    }
    return table;
}

PaperTable asTable(const PaperFloor& floor) {
    PaperTable table;
    table.title = floor.title;
    table.columns = {{"On the plan", PaperColumn::Align::left, 30},
        {"Size", PaperColumn::Align::left, 24}, {"Where", PaperColumn::Align::left, 40}};
    for (const PaperFloor::Entry& entry : floor.entries)
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(entry.what), Cell::of(entry.size), Cell::of(entry.where)}});
    return table;
}

std::optional<PaperTable> tableIn(const Block& block) {
    if (const auto* table = std::get_if<PaperTable>(&block))
        return *table;
    if (const auto* bars = std::get_if<PaperBars>(&block))
        return asTable(*bars);
    if (const auto* labels = std::get_if<PaperLabels>(&block))
        return asTable(*labels);
    if (const auto* floor = std::get_if<PaperFloor>(&block))
        return asTable(*floor);
    return std::nullopt;
}

} // namespace miterbook
