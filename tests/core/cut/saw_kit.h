// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/takeoff/trim_kit.h"
#include "cut/progress.h"

namespace miterbook::kit {

/// A house at the saw: its plan, the shop's book, what was measured and what stands on the sheet.
struct SawHouse {
    PriceBook book = littleBook();
    WholePlan whole = emptyPlan();
    Bench bench;
    Table<Measure> measures;
    Table<CutPiece> kept;
    Table<RackMove> moves;
    std::vector<StickOnHand> sticks;
    IdSource ids{100'000};

    Opening& add(Opening opening, const std::string& mark) {
        opening.id = ids.next<Opening>();
        opening.mark = mark;
        whole.openings.push_back(opening);
        return whole.openings.back();
    }

    /// Puts what the order for the plan buys on the floor.
    void buy() {
        const Takeoff takeoff = takeOff(whole, book, 0);
        const auto plans = planAllSticks(stickNeeds(takeoff), book, Effort::quick);
        sticks = sticksOnHand(buyList(takeoff, plans, book), book, moves);
    }

    std::vector<SawPiece> pieces() const {
        return sawPieces(whole, takeOff(whole, book, 0), book, measures);
    }
    SawSheet sheet() const {
        const std::vector<SawPiece> list = pieces();
        return sawSheet({whole, book, bench, list, sticks, kept, moves});
    }

    Measure& measure(const Opening& opening, Length width, Length height) {
        Measure row;
        row.id = ids.next<Measure>();
        row.opening = opening.id;
        row.widthTop = row.widthBottom = width;
        row.heightLeft = row.heightRight = height;
        m_last = row;
        measures.put(row);
        return m_last;
    }
    void put(const Measure& row) { measures.put(row); }
    void put(const std::vector<CutPiece>& rows) {
        for (const CutPiece& row : rows)
            kept.put(row);
    }
    void tick(const std::vector<std::size_t>& places, PieceState state = PieceState::cut) {
        put(ticked(sheet(), places, state, Id<Plan>(1), kept, ids));
    }

private:
    Measure m_last;
};

/// A level of 26 windows in 5 heights and 18 doors, cased with 3 1/4 in.
inline SawHouse bigLevel() {
    SawHouse house;
    const int heights[]{36, 48, 54, 60, 66};
    const int widths[]{24, 30, 36};
    for (int i = 0; i < 26; ++i)
        house.add(window(in(widths[i % 3]), in(heights[i % 5])), "W" + std::to_string(i + 1));
    for (int i = 0; i < 18; ++i)
        house.add(door(in(i % 2 == 0 ? 30 : 32)), "D" + std::to_string(i + 1));
    house.buy();
    return house;
}

} // namespace miterbook::kit
