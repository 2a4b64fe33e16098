// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/picture_paper.h"

#include "papers/heading.h"
#include "papers/plain_text.h"

namespace miterbook {

Paper picturePaper(const PaperJob& job, std::string title, std::vector<std::string> words) {
    const House* house = job.book.house(job.house);
    const PaperJob shown{job.book, house ? house->work : Id<Plan>(), job.house, {}, job.date};
    Paper paper = beginPaper("picture", oneLine(title), shown);
    addBuilder(paper, shown, false);
    if (house)
        addPlan(paper, shown);
    addDate(paper, shown, "Date", job.date);
    std::erase(words, std::string());
    if (!words.empty())
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, std::move(words)});
    return paper;
}

} // namespace miterbook
