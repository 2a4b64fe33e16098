// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cut/saw_kit.h"
#include "cut/opening_states.h"

#include <set>

using namespace miterbook;
using namespace miterbook::kit;

TEST(OpeningStates, AreThoseOfTheLeastPiece) {
    SawHouse house;
    Opening& pair = house.add(window(in(36), in(60)), "W1");
    pair.count = 2;
    const std::int64_t id = pair.id.value();
    house.buy();
    const auto row = [&] { return openingStates(house.sheet()).at(id); };
    EXPECT_EQ(row(), (RowState{PieceState::listed, 2, 0}));
    EXPECT_EQ(stateText(row()), "to cut");
    house.tick(piecesOf(house.sheet(), id, 2));
    EXPECT_EQ(row(), (RowState{PieceState::listed, 2, 1}));
    EXPECT_EQ(stateText(row()), "to cut, 1 of 2 further");
    house.tick(piecesOf(house.sheet(), id, 1), PieceState::hung);
    EXPECT_EQ(row(), (RowState{PieceState::cut, 2, 1}));
    house.tick({piecesOf(house.sheet(), id, 1).front()}, PieceState::spoiled);
    EXPECT_EQ(unitStates(house.sheet()).at({id, 1}), PieceState::listed);
    EXPECT_EQ(unitStates(house.sheet()).at({id, 2}), PieceState::cut);
}

TEST(OpeningStates, HaveAMarkEach) {
    std::set<std::string_view> marks;
    for (const PieceState state :
        {PieceState::listed, PieceState::cut, PieceState::assembled, PieceState::hung})
        marks.insert(stateMark(state));
    EXPECT_EQ(marks.size(), 4U);
}
