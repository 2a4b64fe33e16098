// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/incomplete.h"

#include "papers/heading.h"
#include "papers/plain_text.h"

#include <algorithm>

namespace miterbook {

namespace {

void addOnce(std::vector<std::string>& sentences, const std::string& sentence) {
    std::string line = oneLine(sentence);
    if (!line.empty() && std::ranges::find(sentences, line) == sentences.end())
        sentences.push_back(std::move(line));
}

} // namespace

void addIncomplete(Paper& paper, const PaperJob& job, const JobFigures& figures,
    const std::vector<std::string>& problems) {
    std::vector<std::string> sentences;
    if (paper.letterhead.front().empty())
        addOnce(sentences, "The shop has no name in the book yet.");
    if (!variantsAreKnown(job))
        addOnce(sentences,
            "The elevation and options cannot be named: the builder's plan has not "
            "been opened.");
    for (const std::string& problem : problems)
        addOnce(sentences, problem);
    for (const Remark& remark : figures.takeoff.remarks) {
        if (remark.weight == Remark::Weight::problem)
            addOnce(sentences, remark.sentence);
    }
    if (sentences.empty())
        return;
    sentences.insert(sentences.begin(), "Not complete. Mend this before the paper is used:");
    paper.blocks.emplace_back(Paragraph{Paragraph::Style::caution, std::move(sentences)});
}

} // namespace miterbook
