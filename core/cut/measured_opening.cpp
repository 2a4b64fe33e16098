// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/measured_opening.h"

#include "cut/squareness.h"

#include <algorithm>
#include <array>

namespace miterbook {

namespace {

/// The readings of one size that were taken.
struct Readings {
    Length least;
    Length most;

    explicit Readings(std::initializer_list<Length> all) {
        for (const Length reading : all) {
            if (reading <= Length())
                continue;
            least = least == Length() ? reading : std::min(least, reading);
            most = std::max(most, reading);
        }
    }
    bool any() const { return most > Length(); }
    Length middle() const { return (least + most) / 2; }
    Length slack() const { return (most - least) / 2; }
};

Readings widthsOf(const Measure& m) {
    return Readings({m.widthTop, m.widthMiddle, m.widthBottom});
}

Readings heightsOf(const Measure& m) {
    return Readings({m.heightLeft, m.heightMiddle, m.heightRight});
}

void takeWidth(MeasuredOpening& made, const Measure& measure) {
    const Readings widths = widthsOf(measure);
    if (!widths.any())
        return;
    const bool headAlone = !made.opening.isWindow() && measure.widthTop > Length();
    made.opening.width = headAlone ? measure.widthTop : widths.middle();
    made.widthSlack = headAlone ? Length() : widths.slack();
}

void takeHeight(MeasuredOpening& made, const Measure& measure) {
    const Readings heights = heightsOf(measure);
    if (!heights.any())
        return;
    const bool ownLegs = !made.opening.isWindow() && measure.heightLeft > Length()
        && measure.heightRight > Length();
    made.opening.height = ownLegs ? measure.heightLeft : heights.middle();
    made.rightHeight = ownLegs ? measure.heightRight : made.opening.height;
    made.heightSlack = ownLegs ? Length() : heights.slack();
}

/// Writes what is remarked on one measure.
class MeasureReader {
public:
    MeasureReader(const Measure& measure, const Opening& opening, const Bench& bench,
        Length faceWidth, LengthStyle style)
        : m_measure(measure)
        , m_opening(opening)
        , m_bench(bench)
        , m_face(faceWidth)
        , m_style(style) {}

    std::vector<MeasureRemark> read() {
        square();
        bowed("width", bowOf(m_measure.widthTop, m_measure.widthMiddle, m_measure.widthBottom));
        bowed("height", bowOf(m_measure.heightLeft, m_measure.heightMiddle, m_measure.heightRight));
        tapered();
        jamb();
        fromPlan("Width", m_opening.width, widthsOf(m_measure));
        fromPlan("Height", m_opening.height, heightsOf(m_measure));
        return std::move(m_remarks);
    }

private:
    std::string say(Length length) const { return formatLengthWithUnit(length, m_style); }
    /// Small gaps in thousandths of an inch, or hundredths of a millimetre.
    std::string gap(Length length) const {
        const bool metric = m_style.unit == LengthUnit::millimetres;
        const double value = metric ? length.toMillimetres() : length.toInches();
        std::array<char, 32> text{};
        std::snprintf(text.data(), text.size(), metric ? "%.2f mm" : "%.3f\"", value);
        return text.data();
    }
    void add(bool stop, std::string sentence) {
        m_remarks.push_back(
            {stop ? MeasureRemark::Weight::stop : MeasureRemark::Weight::ask, std::move(sentence)});
    }

    void square() {
        const Length up = m_measure.diagonalUp;
        const Length down = m_measure.diagonalDown;
        const Length apart = up > down ? up - down : down - up;
        if (up == Length() || down == Length() || apart < m_bench.askSquare)
            return;
        const MeasuredOpening sized = measuredOpening(m_opening, &m_measure);
        const OutOfSquare out = outOfSquare(
            sized.opening.width, sized.opening.height, up, down, m_face);
        const bool stop = apart >= m_bench.stopSquare;
        std::string text = "Diagonals " + say(apart) + " apart: a square frame's reveal runs out "
            + say(out.runOut) + ", a frame pulled to the opening has miters open by "
            + gap(out.miterGap) + ". ";
        text += stop ? "Stop and ask: shim the jamb square first."
                     : "Assemble square and fit the frame to the opening.";
        add(stop, std::move(text));
    }

    void bowed(const char* what, Length bow) {
        const Length size = bow < Length() ? -bow : bow;
        if (size == Length() || size < m_bench.bowOver)
            return;
        add(false,
            std::string("The ") + what + " bows " + (bow < Length() ? "in " : "out ") + say(size)
                + " in the middle: the reveal " + (bow < Length() ? "narrows" : "widens")
                + " by up to that. Shim the jamb straight.");
    }

    void tapered() {
        const MeasuredOpening sized = measuredOpening(m_opening, &m_measure);
        const Length slack = std::max(sized.widthSlack, sized.heightSlack);
        if (2 * slack < m_bench.askSquare || slack == Length())
            return;
        add(2 * slack >= m_bench.stopSquare,
            "Opposite readings " + say(2 * slack)
                + " apart: the frame is cut for the middle and each "
                  "reveal is off by up to "
                + say(slack / 2) + ".");
    }

    void jamb() {
        const Length off = m_measure.proud < Length() ? -m_measure.proud : m_measure.proud;
        if (off == Length() || off < m_bench.jambOver)
            return;
        add(false,
            m_measure.proud > Length() ? "The jamb stands " + say(off)
                    + " proud: the casing rocks on it and the miter opens at the face. Plane the "
                      "jamb or pad the wall."
                                       : "The jamb is " + say(off)
                    + " shy: the casing bears on the wall and tips in. Pad the jamb or plane the "
                      "board's edge.");
    }

    void fromPlan(const char* what, Length planned, Readings readings) {
        if (planned <= Length() || !readings.any())
            return;
        const Length far = readings.most > planned ? readings.most : readings.least;
        const Length off = far > planned ? far - planned : planned - far;
        if (off >= m_bench.planOver && m_bench.planOver > Length())
            add(false,
                std::string(what) + " " + say(far) + " is " + say(off)
                    + (far > planned ? " over" : " under") + " the plan's " + say(planned)
                    + ". Read it again, or is it another opening?");
    }

    const Measure& m_measure;
    const Opening& m_opening;
    const Bench& m_bench;
    Length m_face;
    LengthStyle m_style;
    std::vector<MeasureRemark> m_remarks;
};

} // namespace

MeasuredOpening measuredOpening(const Opening& opening, const Measure* measure) {
    MeasuredOpening made;
    made.opening = opening;
    made.opening.count = 1;
    made.rightHeight = opening.height;
    if (!measure || opening.shape == Shape::polygon)
        return made;
    takeWidth(made, *measure);
    takeHeight(made, *measure);
    made.measured = widthsOf(*measure).any() && heightsOf(*measure).any();
    return made;
}

std::vector<MeasureRemark> remarksOn(const Measure& measure, const Opening& opening,
    const Bench& bench, Length faceWidth, LengthStyle style) {
    return MeasureReader(measure, opening, bench, faceWidth, style).read();
}

std::string unitName(const std::string& mark, int unit, int count) {
    return count > 1 ? mark + "." + std::to_string(unit) : mark;
}

int readingsIn(const Measure& m) {
    const std::array all{m.widthTop, m.widthMiddle, m.widthBottom, m.heightLeft, m.heightMiddle,
        m.heightRight, m.diagonalUp, m.diagonalDown};
    return static_cast<int>(
        std::ranges::count_if(all, [](Length reading) { return reading > Length(); }));
}

} // namespace miterbook
