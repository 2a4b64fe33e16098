// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/rack_edits.h"

#include "cut/progress.h"

#include <algorithm>
#include <map>
#include <set>

namespace miterbook {

namespace {

/// The rack while an edit is made: what is taken and put adds up.
class Rack {
public:
    Rack(EditBuilder& edit, IdSource& ids)
        : m_edit(edit)
        , m_ids(ids)
        , m_offcuts(edit.book().prices.of<Offcut>()) {}

    /// One offcut more. Returns the row it is counted in.
    std::int64_t put(Id<Profile> profile, Length length) {
        Offcut row;
        if (const Offcut* alike = find(profile, length, 0)) {
            row = *alike;
            ++row.count;
        } else {
            row.id = m_ids.next<Offcut>();
            row.profile = profile;
            row.length = length;
        }
        keep(row);
        return row.id.value();
    }

    /// One less; 0 where the rack has none, because somebody took it off by hand.
    std::int64_t take(Id<Profile> profile, Length length) {
        const Offcut* alike = find(profile, length, 1);
        if (!alike)
            return 0;
        Offcut row = *alike;
        --row.count;
        keep(row);
        return row.id.value();
    }

private:
    const Offcut* find(Id<Profile> profile, Length length, int least) const {
        for (const auto& [id, offcut] : m_offcuts) {
            if (offcut.profile == profile && offcut.length == length && offcut.count >= least)
                return &offcut;
        }
        return nullptr;
    }

    void keep(const Offcut& row) {
        if (row.count > 0) {
            m_offcuts.put(row);
            m_edit.put(row);
        } else {
            m_offcuts.erase(row.id);
            m_edit.remove(row.id);
        }
    }

    EditBuilder& m_edit;
    IdSource& m_ids;
    Table<Offcut> m_offcuts;
};

/// A stick of the rack on a sheet.
struct RackStick {
    Id<Profile> profile;
    Length length;
    bool begun = false;
};

std::map<int, RackStick> rackSticks(const Table<CutPiece>& pieces) {
    std::map<int, RackStick> sticks;
    for (const auto& [id, row] : pieces) {
        if (row.stick == 0 || !row.fromRack)
            continue;
        RackStick& stick = sticks[row.stick];
        stick.profile = row.profile;
        stick.length = row.stickLength;
        stick.begun = stick.begun || row.state != PieceState::listed;
    }
    return sticks;
}

/// Sticks of which a piece was cut and is to be cut again.
std::set<int> reopened(const Table<CutPiece>& before, const std::vector<CutPiece>& rows) {
    std::set<int> sticks;
    for (const CutPiece& row : rows) {
        const CutPiece* was = before.find(row.id);
        if (was && was->state != PieceState::listed && row.state == PieceState::listed)
            sticks.insert(row.stick);
    }
    return sticks;
}

Length asKept(Length length, const Shop& shop) {
    const Length step = shop.unit == LengthUnit::millimetres ? Length::nanometres(1'000'000)
                                                             : Length::sixteenths(1);
    return Length::nanometres(length.nm() / step.nm() * step.nm());
}

} // namespace

void keepRack(EditBuilder& edit, IdSource& ids, Id<Plan> plan, const std::vector<CutPiece>& rows) {
    const SheetRows& sheet = edit.book().sheet(plan);
    Table<CutPiece> after = sheet.of<CutPiece>();
    for (const CutPiece& row : rows)
        after.put(row);
    std::map<int, RackStick> begun = rackSticks(after);
    std::erase_if(begun, [](const auto& entry) { return !entry.second.begun; });
    const std::set<int> open = reopened(sheet.of<CutPiece>(), rows);
    Rack rack(edit, ids);
    for (const auto& [id, move] : sheet.of<RackMove>()) {
        if (move.put && open.contains(move.stick)) {
            rack.take(move.profile, move.length);
            edit.remove(id);
        } else if (!move.put && begun.erase(move.stick) == 0) {
            rack.put(move.profile, move.length);
            edit.remove(id);
        }
    }
    for (const auto& [number, stick] : begun)
        edit.put(RackMove{ids.next<RackMove>(), plan, number, stick.profile, stick.length, false,
            rack.take(stick.profile, stick.length)});
}

Edit putAwayEdit(const Book& book, IdSource& ids, Id<Plan> plan, const SawSheet& sheet) {
    const std::vector<Drop> drops = dropsOf(sheet, book.prices.practice().keepOffcut);
    EditBuilder edit(book,
        drops.size() == 1 ? "Put a remainder in the rack"
                          : "Put " + std::to_string(drops.size()) + " remainders in the rack");
    Rack rack(edit, ids);
    for (const Drop& drop : drops) {
        const Length length = asKept(drop.length, book.prices.shop());
        if (length > Length())
            edit.put(RackMove{ids.next<RackMove>(), plan, drop.stick, drop.profile, length, true,
                rack.put(drop.profile, length)});
    }
    return edit.take();
}

} // namespace miterbook
