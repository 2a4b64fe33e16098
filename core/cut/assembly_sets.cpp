// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/assembly_sets.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

/// Sides that are mitered to each other round an opening.
bool isSide(const std::string& part) {
    return part == "head" || part == "sill" || part == "left leg" || part == "right leg"
        || part.starts_with("side ");
}

int miters(const SawPiece& piece) {
    return (piece.left.cut == EndCut::miter ? 1 : 0) + (piece.right.cut == EndCut::miter ? 1 : 0);
}

using SetKey = std::tuple<std::int64_t, int, int>;

/// Gathers the pieces of each set.
class SetGatherer {
public:
    SetGatherer(const SawSheet& sheet, const Bench& bench, const PriceBook& prices)
        : m_sheet(sheet)
        , m_bench(bench)
        , m_prices(prices) {
        for (std::size_t i = 0; i < sheet.stops.size(); ++i)
            m_placeOfStop[sheet.stops[i].number] = static_cast<int>(i);
    }

    std::vector<AssemblySet> sets(Id<Level> level) {
        for (std::size_t i = 0; i < m_sheet.pieces.size(); ++i) {
            const SawPiece& piece = m_sheet.pieces[i].piece;
            if (piece.ofOpening && isSide(piece.key.part)
                && (!level || piece.source.level == level))
                add(i);
        }
        std::vector<AssemblySet> list;
        for (auto& [key, set] : m_sets) {
            set.corners /= 2; // two ends meet in each
            if (set.corners > 0 && set.state != PieceState::hung)
                list.push_back(finished(std::move(set)));
        }
        std::ranges::stable_sort(list, {}, &AssemblySet::ready);
        return list;
    }

private:
    void add(std::size_t at) {
        const SheetPiece& piece = m_sheet.pieces[at];
        const PieceKey& key = piece.piece.key;
        AssemblySet& set = m_sets[{key.source, key.unit, key.copy}];
        if (set.pieces.empty()) {
            set.name = piece.piece.source.name;
            set.source = key.source;
            set.unit = key.unit;
            set.face = key.copy;
            set.level = piece.piece.source.level;
            set.profile = piece.piece.profile;
            set.state = piece.state;
        }
        m_faces[{key.source, key.unit}] = std::max(m_faces[{key.source, key.unit}], key.copy);
        set.pieces.push_back(at);
        set.corners += miters(piece.piece);
        set.longest = std::max(set.longest, piece.longPoint);
        set.ready = std::max(set.ready, m_placeOfStop[piece.stop]);
        set.state = std::min(set.state, piece.state);
    }

    AssemblySet finished(AssemblySet set) const {
        if (m_faces.at({set.source, set.unit}) > 1)
            set.name += " face " + std::to_string(set.face);
        set.onFloor = set.longest > m_bench.floorFrame;
        const Profile* profile = m_prices.profile(set.profile);
        const WayOfJoining way = wayOfJoining(m_bench, m_bench.joining);
        set.fasteners = fastenersPerCorner(profile ? profile->width : Length(), way.fastenerOver);
        return set;
    }

    const SawSheet& m_sheet;
    const Bench& m_bench;
    const PriceBook& m_prices;
    std::map<int, int> m_placeOfStop;
    std::map<SetKey, AssemblySet> m_sets;
    std::map<std::pair<std::int64_t, int>, int> m_faces;
};

/// The number of corners that most sets have, the larger of equals.
int usualCorners(const std::vector<AssemblySet>& sets) {
    std::map<int, int> counts;
    for (const AssemblySet& set : sets)
        ++counts[set.corners];
    int usual = 4;
    int most = 0;
    for (const auto& [corners, count] : counts) {
        if (count >= most) {
            usual = corners;
            most = count;
        }
    }
    return usual;
}

} // namespace

AssemblyPlan assemblyPlan(
    const SawSheet& sheet, Id<Level> level, const Bench& bench, const PriceBook& prices) {
    AssemblyPlan plan;
    plan.joining = bench.joiningName(bench.joining);
    const WayOfJoining way = wayOfJoining(bench, bench.joining);
    plan.work = way.corner;
    bool fastened = false;
    std::vector<int> corners;
    for (AssemblySet& set : SetGatherer(sheet, bench, prices).sets(level)) {
        if (set.onFloor) {
            plan.floor.push_back(std::move(set));
            continue;
        }
        corners.push_back(set.state == PieceState::assembled ? 0 : set.corners);
        fastened = fastened || set.fasteners > 0;
        plan.bench.push_back(std::move(set));
    }
    plan.work.makeUp += fastened ? way.fastenerMinutes : 0.0;
    const std::vector<SetTimes> times = runAssembly(corners, plan.work);
    for (std::size_t i = 0; i < times.size(); ++i)
        plan.bench[i].times = times[i];
    const auto first = std::ranges::find_if(
        plan.bench, [](const AssemblySet& set) { return set.state != PieceState::assembled; });
    plan.firstOff = first == plan.bench.end() ? 0.0 : first->times.off;
    plan.usualCorners = usualCorners(plan.bench);
    plan.setsPerHour = setsPerHour(plan.work, plan.usualCorners);
    plan.clampsNeeded = clampsThatNeverWait(plan.work);
    return plan;
}

} // namespace miterbook
