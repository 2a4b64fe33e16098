// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/drawing_setter.h"

#include "printing/block_setter.h"
#include "printing/printable_text.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace miterbook {

namespace {

/// How far a mitered end leans, of the bar's height: drawn, not to scale.
constexpr double lean = 0.55;
constexpr qsizetype linesInPart = 2;

/// Draws one bar.
class BarSetter {
public:
    BarSetter(const PaperBars::Bar& bar, const PaperFonts& fonts, double width, double longest)
        : m_bar(bar)
        , m_fonts(fonts)
        , m_width(width)
        , m_scale(longest > 0 ? width / longest : 0)
        , m_height(fonts.lineHeight(TextRole::small) * linesInPart + fonts.points(4)) {}

    SetBlock set() {
        head();
        m_top = m_block.height;
        outline();
        double at = 0;
        for (const PaperBars::Part& part : m_bar.parts) {
            draw(part, at, at + part.length * m_scale);
            at += part.length * m_scale;
        }
        m_block.height += m_height;
        notes();
        return std::move(m_block);
    }

private:
    void head() {
        const QString left = printable("left " + m_bar.left);
        const double leftWidth = m_fonts.width(TextRole::body, left);
        const double ascent = m_fonts.ascent(TextRole::bold);
        m_block.marks.emplace_back(
            TextMark{TextRole::body, {m_width - leftWidth, m_fonts.ascent(TextRole::body)}, left});
        const double room = m_width - leftWidth - m_fonts.points(8);
        for (const QString& line : m_fonts.wrap(TextRole::bold, printable(m_bar.title), room)) {
            m_block.marks.emplace_back(
                TextMark{TextRole::bold, {0, m_block.height + ascent}, line});
            m_block.height += m_fonts.lineHeight(TextRole::bold);
        }
    }

    void line(QPointF from, QPointF to, double points) {
        const QPointF down(0, m_top);
        m_block.marks.emplace_back(LineMark{from + down, to + down, m_fonts.points(points)});
    }

    void outline() {
        const double end = m_bar.length * m_scale;
        line({0, 0}, {end, 0}, 0.5);
        line({0, m_height}, {end, m_height}, 0.5);
        line({0, 0}, {0, m_height}, 0.5);
        line({end, 0}, {end, m_height}, 0.5);
    }

    /// Long point below, short point above.
    void draw(const PaperBars::Part& part, double from, double to) {
        const double inset = std::min(lean * m_height, (to - from) / 2);
        const double left = from + (part.slantLeft ? inset : 0.0);
        const double right = to - (part.slantRight ? inset : 0.0);
        line({from, m_height}, {left, 0}, 0.8);
        line({to, m_height}, {right, 0}, 0.8);
        if (part.crossed)
            line({left, 0}, {to, m_height}, 0.5);
        write(part, left, right);
    }

    /// The text, and whose it is where there is room for that; else that comes below the bar.
    void write(const PaperBars::Part& part, double from, double to) {
        const double room = to - from - m_fonts.points(3);
        const QString text = printable(part.text);
        QStringList lines = linesIn(
            part.of.empty() ? text : text + QLatin1Char(' ') + printable(part.of), room);
        if (lines.isEmpty()) {
            m_below.emplace_back(text, printable(part.of));
            lines = linesIn(text, room);
        }
        double baseline = m_top + m_fonts.points(2) + m_fonts.ascent(TextRole::small);
        for (const QString& each : lines) {
            const double spare = room - m_fonts.width(TextRole::small, each);
            m_block.marks.emplace_back(TextMark{
                TextRole::small, {from + m_fonts.points(1.5) + spare / 2, baseline}, each});
            baseline += m_fonts.lineHeight(TextRole::small);
        }
    }

    /// A text in the lines that a part has; none where it does not fit or a word would be broken.
    QStringList linesIn(const QString& text, double room) const {
        for (const QString& word : text.split(QLatin1Char(' '))) {
            if (m_fonts.width(TextRole::small, word) > room)
                return {};
        }
        const QStringList lines = m_fonts.wrap(TextRole::small, text, room);
        return lines.size() > linesInPart ? QStringList() : lines;
    }

    void notes() {
        QStringList texts;
        for (const auto& [text, of] : m_below)
            texts << (of.isEmpty() ? text : text + QStringLiteral(": ") + of);
        texts.removeDuplicates();
        if (texts.isEmpty())
            return;
        m_block.height += m_fonts.points(2);
        for (const QString& line : m_fonts.wrap(TextRole::small, texts.join(u"; "), m_width)) {
            const double baseline = m_block.height + m_fonts.ascent(TextRole::small);
            m_block.marks.emplace_back(TextMark{TextRole::small, {0, baseline}, line});
            m_block.height += m_fonts.lineHeight(TextRole::small);
        }
    }

    const PaperBars::Bar& m_bar;
    const PaperFonts& m_fonts;
    double m_width;
    double m_scale; ///< dots for one unit of length
    double m_height;
    double m_top = 0;
    std::vector<std::pair<QString, QString>>
        m_below; ///< what found no room inside, and whose it is
    SetBlock m_block;
};

/// Sets the text of one label inside its rectangle.
void setLabel(const PaperLabels::Label& label, const PaperFonts& fonts, QPointF at, QSizeF size,
    SetBlock& block) {
    const double pad = fonts.points(5);
    const double arrowWidth = label.arrow ? fonts.points(12) : 0.0;
    const double room = size.width() - 2 * pad - arrowWidth;
    double top = at.y() + pad;
    const auto put = [&](TextRole role, const QString& text) {
        if (top + fonts.lineHeight(role) > at.y() + size.height())
            return;
        block.marks.emplace_back(TextMark{role, {at.x() + pad, top + fonts.ascent(role)}, text});
        top += fonts.lineHeight(role);
    };
    put(TextRole::shop, fonts.wrap(TextRole::shop, printable(label.first), room).front());
    for (const std::string& line : label.lines) {
        for (const QString& part : fonts.wrap(TextRole::body, printable(line), room))
            put(TextRole::body, part);
    }
    if (!label.arrow)
        return;
    const double x = at.x() + size.width() - pad - arrowWidth / 2;
    const QPointF tip(x, at.y() + pad);
    const double head = fonts.points(5);
    const double thick = fonts.points(1.2);
    block.marks.emplace_back(LineMark{tip, {x, at.y() + size.height() - pad}, thick});
    block.marks.emplace_back(LineMark{tip, tip + QPointF(-head, head * 1.4), thick});
    block.marks.emplace_back(LineMark{tip, tip + QPointF(head, head * 1.4), thick});
}

} // namespace

void setBars(
    const PaperBars& bars, const PaperFonts& fonts, double width, std::vector<Slab>& slabs) {
    if (!bars.title.empty())
        setHeading(printable(bars.title), fonts, width, slabs);
    double longest = 0;
    for (const PaperBars::Bar& bar : bars.bars)
        longest = std::max(longest, bar.length);
    for (const PaperBars::Bar& bar : bars.bars) {
        Slab slab;
        slab.before = fonts.points(6);
        slab.block = BarSetter(bar, fonts, width, longest).set();
        slabs.push_back(std::move(slab));
    }
}

void setLabels(
    const PaperLabels& labels, const PaperFonts& fonts, double height, std::vector<Slab>& slabs) {
    const std::size_t perRow = static_cast<std::size_t>(std::max(labels.columns, 1));
    const std::size_t perSheet = perRow * static_cast<std::size_t>(std::max(labels.rows, 1));
    const QSizeF size(fonts.points(labels.width), fonts.points(labels.height));
    for (std::size_t first = 0; first < labels.labels.size(); first += perSheet) {
        Slab sheet;
        sheet.block.height = height;
        const std::size_t end = std::min(first + perSheet, labels.labels.size());
        for (std::size_t i = first; i < end; ++i) {
            const double column = static_cast<double>((i - first) % perRow);
            const double row = static_cast<double>((i - first) / perRow);
            const QPointF at(fonts.points(labels.left + column * (labels.width + labels.gap)),
                fonts.points(labels.top + row * labels.height));
            setLabel(labels.labels[i], fonts, at - fonts.pageCorner(), size, sheet.block);
        }
        slabs.push_back(std::move(sheet));
    }
}

} // namespace miterbook
