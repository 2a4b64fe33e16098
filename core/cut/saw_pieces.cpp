// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_pieces.h"

#include "takeoff/openings.h"

#include <map>

namespace miterbook {

namespace {

SawPiece sawPiece(const Piece& piece, int unit) {
    SawPiece made;
    made.key = {idOfSource(piece.source), unit, piece.part, 1};
    made.source = piece.source;
    made.work = piece.work;
    made.profile = piece.profile;
    made.shortPoint = piece.shortPoint;
    made.longPoint = piece.longPoint;
    made.left = piece.left;
    made.right = piece.right;
    return made;
}

bool isLegOf(const std::string& part) {
    return part == "left leg" || part == "right leg";
}

/// Gathers pieces and numbers those alike.
class PieceGatherer {
public:
    PieceGatherer(const WholePlan& whole, const PriceBook& prices)
        : m_tally(whole, prices) {}

    void addOpening(const Opening& opening, const Measure* measure, int unit) {
        const MeasuredOpening made = measuredOpening(opening, measure);
        std::vector<Piece> pieces = piecesOf(made.opening);
        if (made.rightHeight != made.opening.height) {
            Opening other = made.opening;
            other.height = made.rightHeight;
            takeRightLeg(pieces, piecesOf(other));
        }
        for (const Piece& piece : pieces) {
            SawPiece saw = sawPiece(piece, unit);
            saw.source.name = unitName(saw.source.name, unit, opening.count);
            saw.ofOpening = true;
            saw.measured = made.measured;
            saw.slack = isLegOf(piece.part)                    ? made.heightSlack
                : piece.part == "head" || piece.part == "sill" ? made.widthSlack
                                                               : Length();
            add(std::move(saw), piece.count);
        }
    }

    void add(SawPiece piece, int count) {
        for (int i = 0; i < count; ++i) {
            SawPiece one = piece;
            one.key.copy = ++m_alike[{piece.key.source, piece.key.unit, piece.key.part}];
            m_pieces.push_back(std::move(one));
        }
    }

    std::vector<SawPiece> take() { return std::move(m_pieces); }

private:
    std::vector<Piece> piecesOf(const Opening& opening) {
        takeOpening(opening, m_tally);
        return m_tally.take().pieces;
    }

    static void takeRightLeg(std::vector<Piece>& pieces, const std::vector<Piece>& others) {
        for (std::size_t i = 0; i < pieces.size() && i < others.size(); ++i) {
            if (pieces[i].part == "right leg")
                pieces[i] = others[i];
        }
    }

    Tally m_tally;
    std::map<std::tuple<std::int64_t, int, std::string>, int> m_alike;
    std::vector<SawPiece> m_pieces;
};

} // namespace

std::int64_t idOfSource(const Source& source) {
    return std::visit([](const auto& id) { return id.value(); }, source.row);
}

const Measure* measureOf(const Table<Measure>& measures, Id<Opening> opening, int unit) {
    for (const auto& [id, measure] : measures) {
        if (measure.opening == opening && measure.unit == unit)
            return &measure;
    }
    return nullptr;
}

std::vector<SawPiece> sawPieces(const WholePlan& whole, const Takeoff& takeoff,
    const PriceBook& prices, const Table<Measure>& measures) {
    std::map<std::pair<Id<Opening>, int>, const Measure*> byOpening;
    for (const auto& [id, measure] : measures)
        byOpening.emplace(std::pair(measure.opening, measure.unit), &measure);
    PieceGatherer gatherer(whole, prices);
    for (const Opening& opening : whole.openings) {
        for (int unit = 1; unit <= opening.count; ++unit) {
            const auto it = byOpening.find({opening.id, unit});
            gatherer.addOpening(opening, it == byOpening.end() ? nullptr : it->second, unit);
        }
    }
    for (const Piece& piece : takeoff.pieces) {
        if (!std::holds_alternative<Id<Opening>>(piece.source.row) && piece.profile
            && piece.longPoint > Length())
            gatherer.add(sawPiece(piece, 1), piece.count);
    }
    return gatherer.take();
}

} // namespace miterbook
