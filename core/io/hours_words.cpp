// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/hours_words.h"

#include "book/said_words.h"
#include "io/decoded_text.h"

#include <algorithm>
#include <array>

namespace miterbook {

namespace {

template <class T>
struct Synonym {
    std::string_view text;
    T meaning;
};

using enum HoursColumn;

constexpr std::array titles{
    Synonym<HoursColumn>{"day", date},
    Synonym<HoursColumn>{"person", who},
    Synonym<HoursColumn>{"name", who},
    Synonym<HoursColumn>{"crew", who},
    Synonym<HoursColumn>{"carpenter", who},
    Synonym<HoursColumn>{"lot", house},
    Synonym<HoursColumn>{"job", house},
    Synonym<HoursColumn>{"where", house},
    Synonym<HoursColumn>{"work", what},
    Synonym<HoursColumn>{"piece of work", what},
    Synonym<HoursColumn>{"time", hours},
    Synonym<HoursColumn>{"hrs", hours},
    Synonym<HoursColumn>{"h", hours},
    Synonym<HoursColumn>{"units", done},
    Synonym<HoursColumn>{"units done", done},
    Synonym<HoursColumn>{"finished", done},
    Synonym<HoursColumn>{"qty", done},
    Synonym<HoursColumn>{"quantity", done},
    Synonym<HoursColumn>{"notes", note},
    Synonym<HoursColumn>{"remark", note},
    Synonym<HoursColumn>{"kind of time", kind},
};

constexpr std::array works{
    Synonym<PieceOfWork>{"door", PieceOfWork::doors},
    Synonym<PieceOfWork>{"window", PieceOfWork::windows},
    Synonym<PieceOfWork>{"baseboard", PieceOfWork::base},
    Synonym<PieceOfWork>{"baseboards", PieceOfWork::base},
    Synonym<PieceOfWork>{"closet", PieceOfWork::closets},
    Synonym<PieceOfWork>{"stair", PieceOfWork::stairs},
    Synonym<PieceOfWork>{"built in", PieceOfWork::builtIns},
    Synonym<PieceOfWork>{"built ins", PieceOfWork::builtIns},
    Synonym<PieceOfWork>{"wall treatments", PieceOfWork::wallTreatment},
    Synonym<PieceOfWork>{"trip", PieceOfWork::trips},
    Synonym<PieceOfWork>{"extra", PieceOfWork::extras},
};

constexpr std::array kinds{
    Synonym<TimeKind>{"drive", TimeKind::travel},
    Synonym<TimeKind>{"driving", TimeKind::travel},
    Synonym<TimeKind>{"wait", TimeKind::waiting},
    Synonym<TimeKind>{"punch list", TimeKind::punch},
    Synonym<TimeKind>{"call back", TimeKind::callback},
    Synonym<TimeKind>{"callbacks", TimeKind::callback},
};

template <class T, std::size_t N>
std::optional<T> synonymOf(const std::array<Synonym<T>, N>& list, std::string_view text) {
    const auto found = std::ranges::find(list, text, &Synonym<T>::text);
    return found == list.end() ? std::nullopt : std::optional(found->meaning);
}

template <class T, std::size_t N>
std::optional<T> meaningOf(const std::array<Synonym<T>, N>& list, std::string_view text) {
    const auto own = fromWord<T>(text);
    return own ? own : synonymOf(list, text);
}

/// Folded, hyphens as blanks.
std::string plainCell(std::string_view text) {
    std::string plain = foldedText(text);
    std::ranges::replace(plain, '-', ' ');
    std::ranges::replace(plain, '_', ' ');
    return foldedText(plain);
}

std::string firstName(const std::string& folded) {
    return folded.substr(0, folded.find(' '));
}

/// The piece of work that time of a kind is written to when nothing else is said.
PieceOfWork workOfKind(TimeKind kind) {
    return kind == TimeKind::travel ? PieceOfWork::trips : PieceOfWork::punch;
}

bool isCalled(const House& house, const std::string& text) {
    const std::string lot = foldedText(house.lot);
    return foldedText(house.name) == text
        || (!lot.empty() && (lot == text || "lot " + lot == text));
}

} // namespace

std::optional<HoursColumn> hoursColumnCalled(std::string_view title) {
    std::string plain = plainCell(title.substr(0, title.find_first_of(",(")));
    return meaningOf(titles, plain);
}

Result<TimeKind> kindCalled(std::string_view text) {
    if (const auto kind = meaningOf(kinds, plainCell(text)))
        return *kind;
    return badInput(quotedCell(text)
        + " is no kind of time; there are work, travel, waiting, "
          "punch and callback.");
}

Result<Task> taskCalled(std::string_view text) {
    const std::string folded = foldedText(text);
    if (const auto task = taskSaid(folded))
        return *task;
    return badInput(quotedCell(text) + " is no task of the book.");
}

Result<WrittenWork> workCalled(std::string_view text) {
    const std::string folded = foldedText(text);
    const std::string plain = plainCell(text);
    if (const auto kind = meaningOf(kinds, plain); kind && *kind != TimeKind::work)
        return WrittenWork{workOfKind(*kind), Task::other, *kind};
    auto work = fromWord<PieceOfWork>(folded);
    if (!work)
        work = synonymOf(works, plain);
    if (work)
        return WrittenWork{*work, Task::other, TimeKind::work};
    if (const auto task = taskSaid(folded))
        return WrittenWork{pieceOfWork(*task), *task, TimeKind::work};
    return badInput(quotedCell(text) + " is no piece of work, task or kind of time.");
}

Result<Id<CrewMember>> personCalled(std::string_view text, const PriceBook& prices) {
    const std::string folded = foldedText(text);
    Id<CrewMember> byFirstName;
    bool several = false;
    for (const auto& [id, person] : prices.of<CrewMember>()) {
        const std::string name = foldedText(person.name);
        if (name == folded)
            return id;
        if (firstName(name) == folded) {
            several = several || byFirstName;
            byFirstName = id;
        }
    }
    if (several)
        return badInput("More than one of the crew is called " + quotedCell(text) + ".");
    if (!byFirstName)
        return badInput("There is no " + quotedCell(text) + " in the crew.");
    return byFirstName;
}

Result<Id<House>> houseCalled(std::string_view text, const Book& book) {
    const std::string folded = foldedText(text);
    if (folded.empty() || folded == "shop")
        return Id<House>();
    std::vector<const House*> all;
    std::vector<const House*> underway;
    for (const auto& [id, house] : book.jobs.of<House>()) {
        if (!isCalled(house, folded))
            continue;
        all.push_back(&house);
        if (house.stage == HouseStage::underway)
            underway.push_back(&house);
    }
    if (all.empty())
        return badInput("There is no house " + quotedCell(text) + " in the book.");
    const auto& candidates = underway.empty() ? all : underway;
    if (candidates.size() > 1)
        return badInput("More than one house is called " + quotedCell(text) + "; use its name.");
    return candidates.front()->id;
}

} // namespace miterbook
