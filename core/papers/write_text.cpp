// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/write_paper.h"

#include "papers/plain_text.h"
#include "papers/text_table.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr std::size_t pageWidth = 78;
constexpr std::size_t signatureWidth = 36;

/// Writes lines one after another, with one blank line between what belongs apart.
class TextPage {
public:
    void line(std::string_view text) { m_text.append(validUtf8(text)) += '\n'; }
    void blank() {
        if (!m_text.empty() && !m_text.ends_with("\n\n"))
            m_text += '\n';
    }
    void lines(const std::vector<std::string>& lines) {
        for (const std::string& each : lines)
            line(each);
    }
    /// Wrapped, with `first` before the first line and as much room before the others.
    void paragraph(std::string_view text, std::string_view first = {}) {
        const std::size_t indent = textWidth(first);
        bool isFirst = true;
        for (const std::string& each : wrapped(text, pageWidth - indent)) {
            line((isFirst ? std::string(first) : std::string(indent, ' ')) + each);
            isFirst = false;
        }
    }
    std::string take() { return std::move(m_text); }

private:
    std::string m_text;
};

void write(TextPage& page, const Paragraph& paragraph) {
    // What stands under a heading follows it at once.
    for (const std::string& text : paragraph.lines) {
        switch (paragraph.style) {
        case Paragraph::Style::heading:
            page.paragraph(text);
            page.line(std::string(std::min(textWidth(oneLine(text)), pageWidth), '-'));
            break;
        case Paragraph::Style::caution:
            page.paragraph(text, "! ");
            break;
        case Paragraph::Style::list:
            page.paragraph(text, "- ");
            break;
        case Paragraph::Style::body:
            page.paragraph(text);
            break;
        }
    }
}

void write(TextPage& page, const PaperTable& table) {
    if (!table.title.empty()) {
        page.paragraph(table.title);
        page.line(std::string(std::min(textWidth(oneLine(table.title)), pageWidth), '='));
    }
    page.lines(textTable(table, pageWidth));
}

void write(TextPage& page, const PaperBars& bars) {
    write(page, asTable(bars));
}

void write(TextPage& page, const PaperLabels& labels) {
    write(page, asTable(labels));
}

void write(TextPage& page, const PaperFloor& floor) {
    write(page, asTable(floor));
}

/// Two signatures side by side.
void write(TextPage& page, const Signatures& signatures) {
    for (std::size_t i = 0; i < signatures.who.size(); i += 2) {
        page.blank();
        std::string rules;
        std::string names;
        for (std::size_t k = i; k < std::min(i + 2, signatures.who.size()); ++k) {
            const std::string name = wrapped(signatures.who[k], signatureWidth).front();
            rules += (k == i ? "" : "   ") + std::string(signatureWidth, '_');
            names += (k == i ? "" : "   ") + name;
            if (k == i && i + 1 < signatures.who.size())
                names.append(signatureWidth - textWidth(name), ' ');
        }
        page.line(rules);
        page.line(names);
    }
}

bool isHeading(const Block& block) {
    const auto* paragraph = std::get_if<Paragraph>(&block);
    return paragraph && paragraph->style == Paragraph::Style::heading;
}

void writeFacts(TextPage& page, const Paper& paper) {
    std::size_t widest = 0;
    for (const auto& [what, text] : paper.facts)
        widest = std::max(widest, textWidth(what));
    for (const auto& [what, text] : paper.facts)
        page.paragraph(text, what + std::string(widest - textWidth(what) + 2, ' '));
}

} // namespace

std::string paperText(const Paper& paper) {
    TextPage page;
    for (const std::string& each : paper.letterhead)
        page.paragraph(each);
    page.blank();
    page.paragraph(paper.title);
    page.line(std::string(std::min(textWidth(oneLine(paper.title)), pageWidth), '='));
    writeFacts(page, paper);
    for (std::size_t i = 0; i < paper.blocks.size(); ++i) {
        if (i == 0 || !isHeading(paper.blocks[i - 1]))
            page.blank();
        std::visit([&](const auto& block) { write(page, block); }, paper.blocks[i]);
    }
    return page.take();
}

} // namespace miterbook
