// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/sheet_stops.h"

#include "cut/stop_groups.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

/// Settings lie on a fraction that a tape shows.
constexpr Length stopStep = Length::thirtySeconds(1);

/// An end as a plain key; angles to a thousandth of a degree.
using EndKey = std::tuple<int, long, long>;

EndKey endKey(const PieceEnd& end) {
    return {
        static_cast<int>(end.cut), std::lround(end.sawAngle * 1000), std::lround(end.bevel * 1000)};
}

/// What pieces at one stop have in common besides the setting.
struct StopClass {
    int level = 0; ///< place among the plan's levels
    Id<Profile> profile;
    Length offset;
    EndKey one;
    EndKey other;
    Length tolerance;

    auto operator<=>(const StopClass&) const = default;
};

class StopGiver {
public:
    StopGiver(std::vector<SheetPiece>& pieces, const SawJob& job)
        : m_pieces(pieces)
        , m_job(job) {}

    void give(int lastNumber) {
        std::map<StopClass, std::vector<std::size_t>> loose;
        for (std::size_t i = 0; i < m_pieces.size(); ++i) {
            if (m_pieces[i].stop == 0)
                loose[classOf(m_pieces[i].piece)].push_back(i);
            else
                addKnown(m_pieces[i]);
        }
        for (const auto& [kind, members] : loose)
            serve(kind, members);
        number(lastNumber);
    }

private:
    struct Known {
        int number = 0;
        Length setting;
    };
    struct Fresh {
        StopClass kind;
        Length setting;
        std::vector<std::size_t> members;
    };

    StopClass classOf(const SawPiece& piece) const {
        const auto& levels = m_job.whole.levels;
        const auto at = std::ranges::find(levels, piece.source.level, &Level::id);
        const EndKey left = endKey(piece.left);
        const EndKey right = endKey(piece.right);
        const auto [one, other] = std::minmax(left, right); // of names: it hands out references
        return {static_cast<int>(at - levels.begin()), piece.profile,
            piece.longPoint - piece.shortPoint, one, other,
            toleranceFor(piece, m_job.prices, m_job.bench)};
    }

    void addKnown(const SheetPiece& piece) {
        SawPiece as = piece.piece;
        as.shortPoint = piece.shortPoint;
        as.longPoint = piece.longPoint;
        std::vector<Known>& known = m_known[classOf(as)];
        if (std::ranges::find(known, piece.stop, &Known::number) == known.end())
            known.push_back({piece.stop, piece.shortPoint});
    }

    static StopItem itemOf(const SawPiece& piece) {
        return {piece.shortPoint - piece.slack, piece.shortPoint + piece.slack};
    }

    void set(std::size_t at, Length setting, Length offset) {
        m_pieces[at].shortPoint = setting;
        m_pieces[at].longPoint = setting + offset;
    }

    void serve(const StopClass& kind, const std::vector<std::size_t>& members) {
        const std::vector<Known>& known = m_known[kind];
        std::vector<Length> settings;
        for (const Known& stop : known)
            settings.push_back(stop.setting);
        std::vector<std::size_t> left;
        std::vector<StopItem> items;
        for (const std::size_t at : members) {
            const StopItem item = itemOf(m_pieces[at].piece);
            const std::size_t by = servingSetting(settings, item, kind.tolerance);
            if (by < known.size()) {
                m_pieces[at].stop = known[by].number;
                set(at, known[by].setting, kind.offset);
            } else {
                left.push_back(at);
                items.push_back(item);
            }
        }
        for (const StopGroup& group : groupStops(items, kind.tolerance, stepFor(kind))) {
            Fresh fresh{kind, group.setting, {}};
            for (const std::size_t item : group.items)
                fresh.members.push_back(left[item]);
            m_fresh.push_back(std::move(fresh));
        }
    }

    /// Where nothing may be missed a setting stays what was wanted.
    static Length stepFor(const StopClass& kind) {
        return kind.tolerance > Length() ? stopStep : Length();
    }

    void number(int last) {
        std::ranges::stable_sort(m_fresh, [](const Fresh& a, const Fresh& b) {
            return std::tuple(a.kind.level, a.kind.profile, b.setting)
                < std::tuple(b.kind.level, b.kind.profile, a.setting);
        });
        for (const Fresh& fresh : m_fresh) {
            ++last;
            for (const std::size_t at : fresh.members) {
                m_pieces[at].stop = last;
                set(at, fresh.setting, fresh.kind.offset);
            }
        }
    }

    std::vector<SheetPiece>& m_pieces;
    const SawJob& m_job;
    std::map<StopClass, std::vector<Known>> m_known;
    std::vector<Fresh> m_fresh;
};

} // namespace

void giveStops(std::vector<SheetPiece>& pieces, const SawJob& job, int lastNumber) {
    StopGiver(pieces, job).give(lastNumber);
}

std::vector<SheetStop> stopsOf(const std::vector<SheetPiece>& pieces, const WholePlan& whole) {
    std::map<int, SheetStop> byNumber;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const SheetPiece& piece = pieces[i];
        SheetStop& stop = byNumber[piece.stop];
        if (stop.pieces.empty()) {
            stop.number = piece.stop;
            stop.level = piece.piece.source.level;
            stop.profile = piece.piece.profile;
            stop.setting = piece.shortPoint;
            stop.offset = piece.longPoint - piece.shortPoint;
            stop.left = piece.piece.left;
            stop.right = piece.piece.right;
        }
        stop.pieces.push_back(i);
        stop.cut += piece.isCut() ? 1 : 0;
    }
    std::vector<SheetStop> stops;
    for (auto& [number, stop] : byNumber)
        stops.push_back(std::move(stop));
    const auto levelAt = [&](Id<Level> level) {
        return std::ranges::find(whole.levels, level, &Level::id) - whole.levels.begin();
    };
    std::ranges::stable_sort(stops, [&](const SheetStop& a, const SheetStop& b) {
        return std::tuple(levelAt(a.level), a.profile, b.setting, a.number)
            < std::tuple(levelAt(b.level), b.profile, a.setting, b.number);
    });
    return stops;
}

} // namespace miterbook
