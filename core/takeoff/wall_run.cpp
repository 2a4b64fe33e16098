// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/wall_run.h"

#include "takeoff/run_ends.h"
#include "takeoff/splice.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

/// Cuts one run round one room.
class RunCutter {
public:
    RunCutter(
        const WallRun& run, const Room& room, const std::vector<WallLength>& lengths, Tally& tally)
        : m_run(run)
        , m_room(room)
        , m_lengths(lengths)
        , m_tally(tally)
        , m_stick(tally.stock(run.profile).longest()) {
        m_corners.work = run.work;
        m_corners.source = run.source;
        m_corners.profile = run.profile;
    }

    Length cut(Length extra) {
        for (std::size_t i = 0; i < m_lengths.size(); ++i) {
            if (m_lengths[i].net() > Length())
                cutWall(i);
        }
        if (extra > Length()) {
            addRun(piece(std::string(m_run.label) + ", besides walls"), extra, m_tally);
            m_corners.net += extra;
        }
        const Length net = m_corners.net;
        if (net > Length())
            m_tally.add(std::move(m_corners));
        return net;
    }

private:
    void cutWall(std::size_t i) {
        const std::size_t count = m_lengths.size();
        const std::size_t before = (i + count - 1) % count;
        const RunEnd left = runsOn(before, i) ? nearEnd(*m_run.stock, m_room.walls[before])
                                              : RunEnd();
        const RunEnd right = runsOn(i, (i + 1) % count) ? farEnd(*m_run.stock, m_room.walls[i])
                                                        : RunEnd();
        if (right.counted)
            ++(m_room.walls[i].corner == Corner::outside ? m_corners.outside : m_corners.inside);
        checkSaw(right.end);
        m_corners.net += m_lengths[i].net();
        const std::vector<Stretch>& stretches = m_lengths[i].stretches;
        for (std::size_t k = 0; k < stretches.size(); ++k)
            addPieces(i, stretches[k], k == 0 ? left : RunEnd(),
                k + 1 == stretches.size() ? right : RunEnd());
    }

    /// Whether the run turns from one wall into the next: both have it up to the corner and they
    /// are not the same.
    bool runsOn(std::size_t wall, std::size_t next) const {
        return wall != next && m_room.walls[wall].corner != Corner::open
            && m_lengths[wall].net() > Length() && m_lengths[next].net() > Length()
            && m_lengths[wall].stretches.back().toCorner
            && m_lengths[next].stretches.front().fromCorner;
    }

    void addPieces(std::size_t i, const Stretch& wall, const RunEnd& left, const RunEnd& right) {
        const Practice& practice = m_tally.practice();
        const SplicedRun spliced = spliceRun(wall.length + left.longer + right.longer,
            m_stick - practice.endTrim, practice.scarf, wall.gaps);
        sayIfSpliced(i, spliced);
        const std::vector<RunPart>& parts = spliced.parts;
        for (std::size_t k = 0; k < parts.size(); ++k) {
            const bool first = k == 0;
            const bool last = k + 1 == parts.size();
            Piece cut = piece(partName(i));
            cut.longPoint = parts[k].length;
            cut.left = first ? left.end : joint(parts[k].spliced);
            cut.right = last ? right.end : joint(parts[k + 1].spliced);
            cut.shortPoint = cut.longPoint - (first ? left.longer + left.shorter : Length())
                - (last ? right.longer + right.shorter : Length());
            cut.shortPoint = std::max(cut.shortPoint, Length());
            m_tally.add(std::move(cut));
        }
    }

    /// Between two parts: a scarf, or the square end at a casing.
    static PieceEnd joint(bool spliced) {
        return spliced ? PieceEnd{EndCut::splice, 45, 0} : PieceEnd();
    }

    void sayIfSpliced(std::size_t i, const SplicedRun& spliced) {
        if (spliced.splices == 0)
            return;
        m_corners.splices += spliced.splices;
        m_tally.warn(m_run.source,
            m_run.source.name + ": " + partName(i)
                + splicedText(spliced.longest, m_stick, m_tally));
    }

    void checkSaw(const PieceEnd& end) {
        const double swing = m_tally.practice().sawSwing.toDegrees();
        if (end.sawAngle <= swing || m_saidSaw)
            return;
        m_saidSaw = true;
        m_tally.warn(m_run.source,
            m_run.source.name + ": a corner of the " + std::string(m_run.label)
                + " needs a saw angle of " + std::to_string(std::lround(end.sawAngle))
                + " degrees, more than the saw swings (" + std::to_string(std::lround(swing))
                + ").");
    }

    std::string partName(std::size_t i) const {
        return std::string(m_run.label) + ", wall " + std::to_string(i + 1);
    }

    Piece piece(std::string part) const {
        Piece cut;
        cut.work = m_run.work;
        cut.source = m_run.source;
        cut.profile = m_run.profile;
        cut.part = std::move(part);
        return cut;
    }

    const WallRun& m_run;
    const Room& m_room;
    const std::vector<WallLength>& m_lengths;
    Tally& m_tally;
    Length m_stick;
    RunCorners m_corners;
    bool m_saidSaw = false;
};

} // namespace

Length takeWallRun(const WallRun& run, const Room& room, const std::vector<WallLength>& lengths,
    Length extra, Tally& tally) {
    return RunCutter(run, room, lengths, tally).cut(extra);
}

} // namespace miterbook
