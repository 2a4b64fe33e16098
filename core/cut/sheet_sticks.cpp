// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/sheet_sticks.h"

#include "basics/amount_text.h"
#include "packing/solve.h"
#include "takeoff/geometry.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace miterbook {

namespace {

/// Looked for when the quick plan leaves pieces over: some tens of milliseconds, the same every
/// time.
constexpr std::int64_t fittingWork = 60'000;

bool isSlanted(const PieceEnd& end) {
    return end.cut == EndCut::miter || end.cut == EndCut::splice;
}

/// What one cut takes of a profile's sticks: the slanted kerf where any of its pieces is mitered.
std::map<Id<Profile>, Length> kerfs(const std::vector<SheetPiece>& pieces, Length kerf) {
    std::map<Id<Profile>, bool> mitered;
    for (const SheetPiece& piece : pieces) {
        bool& any = mitered[piece.piece.profile];
        any = any || isSlanted(piece.piece.left) || isSlanted(piece.piece.right);
    }
    std::map<Id<Profile>, Length> taken;
    for (const auto& [profile, any] : mitered)
        taken[profile] = kerfTaken(kerf, any);
    return taken;
}

/// Packs the loose pieces of one profile.
class ProfilePacker {
public:
    ProfilePacker(std::vector<SheetPiece>& pieces, std::vector<std::size_t> loose,
        const SawJob& job, Length kerf)
        : m_pieces(pieces)
        , m_loose(std::move(loose))
        , m_job(job) {
        m_problem.kerf = kerf.nm();
        m_problem.trim = std::max(job.prices.practice().endTrim, Length()).nm();
        std::ranges::stable_sort(m_loose, [&](std::size_t a, std::size_t b) {
            return m_pieces[a].longPoint > m_pieces[b].longPoint;
        });
        for (const std::size_t at : m_loose)
            addLot(m_pieces[at].longPoint);
    }

    /// What a begun stick has left; drops cost less than sticks, so that they go first.
    void addDrop(const SheetStick& stick) {
        if (m_lots.empty() || stick.racked || stick.left.nm() < m_problem.pieces.back().length)
            return;
        addKind({stick.left.nm() + m_problem.trim, priceOf(stick.left, true), 1});
        m_kinds.push_back({stick.number, stick.length, stick.fromRack, {}});
    }

    void addSticks(const StickOnHand& sticks, int unused) {
        if (unused <= 0)
            return;
        addKind({sticks.length.nm(), priceOf(sticks.length, sticks.fromRack), unused});
        m_kinds.push_back({0, sticks.length, sticks.fromRack, {}});
    }

    /// Sticks as cut, each with its pieces; a stick without a number is a new one.
    struct Filled {
        int number = 0;
        Length length;
        bool fromRack = false;
        std::vector<std::size_t> pieces;
    };
    std::vector<Filled> pack() {
        std::vector<Filled> filled;
        if (m_lots.empty() || m_kinds.empty())
            return filled;
        std::vector<std::size_t> next(m_lots.size(), 0);
        for (const packing::Pattern& pattern : solved().patterns) {
            for (std::int64_t time = 0; time < pattern.times; ++time) {
                Filled stick = m_kinds[pattern.stick];
                for (const packing::Share& share : pattern.shares) {
                    for (std::int64_t i = 0; i < share.count; ++i)
                        stick.pieces.push_back(m_lots[share.piece][next[share.piece]++]);
                }
                filled.push_back(std::move(stick));
            }
        }
        return filled;
    }

private:
    void addLot(Length length) {
        if (m_problem.pieces.empty() || m_problem.pieces.back().length != length.nm()) {
            m_problem.pieces.push_back({length.nm(), 0});
            m_lots.emplace_back();
        }
        ++m_problem.pieces.back().count;
        m_lots.back().push_back(m_loose[m_taken++]);
    }

    void addKind(packing::Stick stick) { m_problem.sticks.push_back(stick); }

    /// Paid for already: what counts is how much length is begun.
    static std::int64_t priceOf(Length length, bool drop) {
        const std::int64_t millimetres = length.nm() / 1'000'000;
        return drop ? millimetres / 2 : millimetres;
    }

    packing::Plan solved() const {
        packing::Solution quick = packing::quickPlan(m_problem);
        if (!quick.ok() || quick.plan.complete())
            return quick.plan;
        packing::Budget budget(fittingWork);
        return packing::solve(m_problem, budget).plan;
    }

    std::vector<SheetPiece>& m_pieces;
    std::vector<std::size_t> m_loose; ///< longest first
    const SawJob& m_job;
    packing::Problem m_problem;
    std::vector<std::vector<std::size_t>> m_lots; ///< pieces of each length
    std::vector<Filled> m_kinds;
    std::size_t m_taken = 0;
};

using StickKind = std::tuple<Id<Profile>, Length, bool>;

/// How many sticks of a kind have been begun.
std::map<StickKind, int> begun(const std::vector<SheetStick>& sticks) {
    std::map<StickKind, int> counts;
    for (const SheetStick& stick : sticks)
        ++counts[{stick.profile, stick.length, stick.fromRack}];
    return counts;
}

int highestStick(const SawJob& job) {
    int highest = 0;
    for (const auto& [id, row] : job.kept)
        highest = std::max(highest, row.stick);
    return highest;
}

/// What a stick is cut into: its stops in order, each with the ends that lean.
using StickOrder = std::vector<std::tuple<int, bool, bool>>;

StickOrder orderOf(const std::vector<std::size_t>& members, const std::vector<SheetPiece>& pieces) {
    StickOrder order;
    for (const std::size_t at : members)
        order.emplace_back(
            pieces[at].stop, isSlanted(pieces[at].piece.left), isSlanted(pieces[at].piece.right));
    std::ranges::sort(order);
    return order;
}

/// The sticks begun, and what each kept row takes of its stick.
class StickTaker {
public:
    StickTaker(const std::vector<SheetPiece>& pieces, const SawJob& job)
        : m_job(job)
        , m_kerfs(kerfs(pieces, job.prices.practice().kerf)) {}

    SheetStick& stick(int number, Id<Profile> profile, Length length, bool fromRack) {
        const auto [it, isNew] = m_sticks.try_emplace(number);
        SheetStick& stick = it->second;
        if (isNew) {
            stick.number = number;
            stick.profile = profile;
            stick.length = length;
            stick.fromRack = fromRack;
            stick.left = length - std::max(m_job.prices.practice().endTrim, Length());
        }
        return stick;
    }

    void take(SheetStick& stick, Length length, bool isGone) {
        const Length with = length + kerf(stick.profile);
        stick.left -= with;
        if (isGone)
            stick.gone += with;
    }

    std::vector<SheetStick> sticks() const {
        std::vector<SheetStick> list;
        for (const auto& [number, stick] : m_sticks) {
            list.push_back(stick);
            list.back().left = std::max(stick.left, Length()); // the last piece may end flush
        }
        return list;
    }

private:
    Length kerf(Id<Profile> profile) const {
        const auto it = m_kerfs.find(profile);
        return it == m_kerfs.end() ? m_job.prices.practice().kerf : it->second;
    }

    const SawJob& m_job;
    std::map<Id<Profile>, Length> m_kerfs;
    std::map<int, SheetStick> m_sticks;
};

/// Rows that pieces stand on the sheet by.
std::set<Id<CutPiece>> shownRows(const std::vector<SheetPiece>& pieces) {
    std::set<Id<CutPiece>> shown;
    for (const SheetPiece& piece : pieces) {
        if (piece.kept)
            shown.insert(piece.row);
    }
    return shown;
}

} // namespace

/// Stick lengths of pieces that have just been given one, by number.
static std::vector<SheetStick> numbered(std::vector<SheetPiece>& pieces, const SawJob& job,
    std::vector<std::pair<Id<Profile>, ProfilePacker::Filled>> filled) {
    // New sticks are taken up in the order of the stops at which they are begun; those cut alike
    // follow each other, so that they are read as one range.
    std::vector<std::pair<StickOrder, std::size_t>> order;
    for (std::size_t i = 0; i < filled.size(); ++i)
        order.emplace_back(orderOf(filled[i].second.pieces, pieces), i);
    std::ranges::stable_sort(order, {}, [](const auto& entry) { return entry.first; });
    int last = highestStick(job);
    std::vector<SheetStick> sticks;
    for (const auto& [key, at] : order) {
        const auto& [profile, stick] = filled[at];
        const int number = stick.number != 0 ? stick.number : ++last;
        for (const std::size_t piece : stick.pieces)
            pieces[piece].stick = number;
        sticks.push_back({number, profile, stick.length, stick.fromRack, {}, {}, {}, false});
    }
    return sticks;
}

std::vector<SheetStick> giveSticks(std::vector<SheetPiece>& pieces, const SawJob& job) {
    const std::vector<SheetStick> held = sticksOf(pieces, {}, job);
    std::map<StickKind, int> used = begun(held);
    std::map<Id<Profile>, std::vector<std::size_t>> loose;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i].stick == 0)
            loose[pieces[i].piece.profile].push_back(i);
    }
    const auto kerfOf = kerfs(pieces, job.prices.practice().kerf);
    std::vector<std::pair<Id<Profile>, ProfilePacker::Filled>> filled;
    for (auto& [profile, members] : loose) {
        ProfilePacker packer(pieces, std::move(members), job, kerfOf.at(profile));
        for (const SheetStick& stick : held) {
            if (stick.profile == profile)
                packer.addDrop(stick);
        }
        for (const StickOnHand& sticks : job.sticks) {
            if (sticks.profile == profile)
                packer.addSticks(
                    sticks, sticks.count - used[{profile, sticks.length, sticks.fromRack}]);
        }
        for (ProfilePacker::Filled& stick : packer.pack())
            filled.emplace_back(profile, std::move(stick));
    }
    return numbered(pieces, job, std::move(filled));
}

std::vector<SheetStick> sticksOf(const std::vector<SheetPiece>& pieces,
    const std::vector<SheetStick>& given, const SawJob& job) {
    StickTaker taker(pieces, job);
    const std::set<Id<CutPiece>> shown = shownRows(pieces);
    for (const auto& [id, row] : job.kept) {
        if (row.stick == 0 || (row.state == PieceState::listed && !shown.contains(id)))
            continue;
        SheetStick& stick = taker.stick(row.stick, row.profile, row.stickLength, row.fromRack);
        if (!shown.contains(id))
            taker.take(stick, row.longPoint, true);
    }
    for (const SheetStick& stick : given)
        taker.stick(stick.number, stick.profile, stick.length, stick.fromRack);
    std::map<int, std::vector<std::size_t>> onStick;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i].stick != 0)
            onStick[pieces[i].stick].push_back(i);
    }
    for (const auto& [number, members] : onStick) {
        SheetStick& stick = taker.stick(number, pieces[members.front()].piece.profile, {}, false);
        for (const std::size_t at : members) {
            taker.take(stick, pieces[at].longPoint, false);
            stick.pieces.push_back(at);
        }
        std::ranges::stable_sort(stick.pieces, [&](std::size_t a, std::size_t b) {
            return pieces[a].longPoint > pieces[b].longPoint;
        });
    }
    std::vector<SheetStick> sticks = taker.sticks();
    for (const auto& [id, move] : job.moves) {
        const auto it = std::ranges::find(sticks, move.stick, &SheetStick::number);
        if (it != sticks.end())
            it->racked = it->racked || move.put;
    }
    return sticks;
}

std::vector<std::string> shortages(const std::vector<SheetPiece>& pieces, const PriceBook& prices) {
    struct Short {
        int count = 0;
        Length longest;
        Length running;
    };
    std::map<Id<Profile>, Short> byProfile;
    for (const SheetPiece& piece : pieces) {
        if (piece.stick != 0)
            continue;
        Short& sum = byProfile[piece.piece.profile];
        ++sum.count;
        sum.longest = std::max(sum.longest, piece.longPoint);
        sum.running += piece.longPoint;
    }
    std::vector<std::string> sentences;
    for (const auto& [profile, sum] : byProfile) {
        const bool one = sum.count == 1;
        sentences.push_back(std::string(prices.profileName(profile)) + ": "
            + std::to_string(sum.count) + (one ? " piece finds" : " pieces find")
            + " no stick on hand, the longest "
            + formatLengthWithUnit(sum.longest, prices.shop().lengths()) + ", "
            + formatRunWithUnit(sum.running, prices.shop().unit)
            + " in all. Buy more before they are cut.");
    }
    return sentences;
}

} // namespace miterbook
