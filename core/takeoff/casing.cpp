// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/casing.h"

#include "takeoff/arch_casing.h"
#include "takeoff/geometry.h"
#include "takeoff/leg_check.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

/// Cuts the casing of one opening and keeps what is remarked about it.
class CasingCutter {
public:
    CasingCutter(const OpeningTrim& trim, const std::vector<OutlineSide>& outline, Tally& tally)
        : m_trim(trim)
        , m_outline(outline)
        , m_tally(tally)
        , m_framed(trim.style == TrimStyle::pictureFrame)
        , m_standing(legStanding(trim.opening, tally.practice())) {}

    LongSides cut() {
        const Opening& opening = m_trim.opening;
        if (opening.shape == Shape::arch)
            cutBelowArch();
        else if (m_trim.style == TrimStyle::buttedHead && opening.shape == Shape::rectangle)
            cutButted();
        else
            cutMitered();
        cutMulls();
        return m_long;
    }

private:
    /// All sides of a frame; without the sill where legs stand on a floor or stool.
    void cutMitered() {
        const std::size_t sides = m_outline.size() - (m_framed ? 0 : 1);
        for (std::size_t i = 0; i < sides; ++i)
            add(mitered(m_outline[i], !m_framed && i == 0, !m_framed && i + 1 == sides),
                m_outline[i].leg);
    }

    Piece mitered(const OutlineSide& side, bool nearRests, bool farRests) const {
        const double near = nearRests ? restRun(side.nearCorner) : miterRun(side.nearCorner);
        const double far = farRests ? restRun(side.farCorner) : miterRun(side.farCorner);
        Piece piece = casingPiece(m_trim, m_trim.casing, side.name, {});
        const SidePoints points = sideBetween(side.length + (side.leg ? m_standing : Length()),
            near, far, m_trim.reveal, m_trim.face);
        piece.shortPoint = points.shortPoint;
        piece.longPoint = points.longPoint;
        piece.left = nearRests ? restingEnd(side.nearCorner) : miteredEnd(side.nearCorner);
        piece.right = farRests ? restingEnd(side.farCorner) : miteredEnd(side.farCorner);
        return piece;
    }

    /// Square legs h + r under a head board w + 2r + 2c + 2 overhangs, and its cap.
    void cutButted() {
        const Length leg = m_outline[0].length + m_standing + m_trim.reveal;
        add(casingPiece(m_trim, m_trim.casing, "left leg", leg), true);
        add(casingPiece(m_trim, m_trim.casing, "right leg", leg), true);
        const Length head = m_trim.outside(m_outline[1].length)
            + 2 * m_tally.practice().headOverhang;
        add(casingPiece(m_trim, m_trim.casing, "head", head), false);
        const Id<Profile> cap = m_trim.opening.cap;
        if (cap && m_tally.usable(cap, m_trim.source, "head cap"))
            m_tally.add(casingPiece(m_trim, cap, "head cap", head));
    }

    /// Legs up to a made head, and the sill of a frame.
    void cutBelowArch() {
        const ArchLeg leg = archLegOf(m_trim, m_standing, m_framed);
        Piece left = casingPiece(m_trim, m_trim.casing, "left leg", leg.points.longPoint);
        left.shortPoint = leg.points.shortPoint;
        left.left = m_framed ? miteredEnd(90) : PieceEnd();
        left.right = leg.sawAngle == 0 ? PieceEnd() : PieceEnd{EndCut::miter, leg.sawAngle, 0};
        Piece right = left;
        right.part = "right leg";
        std::swap(right.left, right.right);
        add(std::move(left), true);
        add(std::move(right), true);
        if (m_framed)
            add(mitered(m_outline.back(), false, false), false);
        orderArch(m_trim, m_tally);
    }

    /// One square piece for each joint between units, head casing to sill casing or stool.
    void cutMulls() {
        const Opening& opening = m_trim.opening;
        const Id<Profile> profile = opening.mullCasing ? opening.mullCasing : m_trim.casing;
        if (opening.mulls <= 0 || !m_tally.usable(profile, m_trim.source, "mull casing"))
            return;
        if (opening.height <= Length()) {
            m_tally.problem(m_trim.source,
                m_trim.source.name + " has no height; its mull casing is not counted.");
            return;
        }
        const Length rise = opening.shape == Shape::arch ? opening.rise : Length();
        Piece mull = casingPiece(m_trim, profile, "mull casing",
            opening.height + rise + m_standing + m_trim.reveal * (m_framed ? 2 : 1));
        mull.count *= opening.mulls;
        m_tally.add(std::move(mull));
    }

    void add(Piece piece, bool leg) {
        if (leg && !m_trim.opening.isWindow())
            checkLeg(m_trim, piece, m_saidLeg, m_tally);
        if (piece.longPoint > longLimit()) {
            m_long.count += piece.count;
            m_long.longest = std::max(m_long.longest, piece.longPoint);
        }
        checkSaw(piece);
        m_tally.add(std::move(piece));
    }

    /// A door's rate covers its legs and head; only what outgrows the usual leg takes longer.
    Length longLimit() const {
        const Practice& practice = m_tally.practice();
        return m_trim.opening.isWindow() ? practice.longSide : practice.longestLeg;
    }

    void checkSaw(const Piece& piece) {
        const double swing = m_tally.practice().sawSwing.toDegrees();
        const double most = std::max(piece.left.sawAngle, piece.right.sawAngle);
        if (most <= swing || m_saidSaw)
            return;
        m_saidSaw = true;
        m_tally.warn(m_trim.source,
            m_trim.source.name + ": " + piece.part + " needs a saw angle of "
                + std::to_string(std::lround(most)) + " degrees, more than the saw swings ("
                + std::to_string(std::lround(swing)) + "); cut it with a jig.");
    }

    const OpeningTrim& m_trim;
    const std::vector<OutlineSide>& m_outline;
    Tally& m_tally;
    bool m_framed;     ///< mitered all round
    Length m_standing; ///< what legs have more than the opening's height
    LongSides m_long;
    bool m_saidSaw = false;
    bool m_saidLeg = false;
};

} // namespace

LongSides takeCasing(
    const OpeningTrim& trim, const std::vector<OutlineSide>& outline, Tally& tally) {
    return CasingCutter(trim, outline, tally).cut();
}

Piece casingPiece(const OpeningTrim& trim, Id<Profile> profile, std::string part, Length length) {
    Piece piece;
    piece.work = trim.work;
    piece.source = trim.source;
    piece.profile = profile;
    piece.part = std::move(part);
    piece.shortPoint = length;
    piece.longPoint = length;
    piece.count = trim.faces;
    return piece;
}

PieceEnd miteredEnd(double cornerDegrees) {
    return {EndCut::miter, std::abs(sawAngleAt(cornerDegrees)), 0};
}

PieceEnd restingEnd(double cornerDegrees) {
    if (cornerDegrees == 90.0)
        return {};
    return {EndCut::miter, std::abs(90.0 - cornerDegrees), 0};
}

} // namespace miterbook
