// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/whole_plan.h"

#include "plan/overlay.h"
#include "plan/profile_swaps.h"

namespace miterbook {

namespace {

/// The variants of a selection that the plan has, elevation first; what is not there is remarked.
std::vector<const Variant*> chosenVariants(const Plan& plan, const Table<Variant>& variants,
    const Selection& selection, std::vector<std::string>& remarks) {
    std::vector<Id<Variant>> ids;
    if (selection.elevation)
        ids.push_back(selection.elevation);
    ids.insert(ids.end(), selection.options.begin(), selection.options.end());
    std::vector<const Variant*> chosen;
    for (const Id<Variant> id : ids) {
        const Variant* variant = variants.find(id);
        if (!variant || variant->plan != plan.id)
            remarks.push_back("A chosen elevation or option is not one of plan " + plan.name
                + "; it is left out.");
        else if (std::ranges::find(chosen, variant) == chosen.end())
            chosen.push_back(variant);
    }
    return chosen;
}

/// Leads the references of rows to the levels and rooms that are there. One to a row that a variant
/// takes away becomes none, with a remark.
class References {
public:
    References(
        const Overlay<Level>& levels, const Overlay<Room>& rooms, std::vector<std::string>& remarks)
        : m_levels(levels)
        , m_rooms(rooms)
        , m_remarks(remarks) {}

    template <class Row>
    void follow(Row& row) {
        lead(row.level, m_levels, row);
        if constexpr (requires { row.room; })
            lead(row.room, m_rooms, row);
        if constexpr (requires { row.otherRoom; })
            lead(row.otherRoom, m_rooms, row);
    }

private:
    template <class Target, class Row>
    void lead(Id<Target>& id, const Overlay<Target>& targets, const Row& row) {
        if (!id)
            return;
        id = targets.kept(id);
        if (!id)
            m_remarks.push_back("The " + std::string(Describe<Target>::noun) + " of "
                + spokenName(row) + " is taken away, but not the "
                + std::string(Describe<Row>::noun) + ".");
    }

    const Overlay<Level>& m_levels;
    const Overlay<Room>& m_rooms;
    std::vector<std::string>& m_remarks;
};

void changeHand(Opening& opening) {
    if (opening.hand == Hand::left)
        opening.hand = Hand::right;
    else if (opening.hand == Hand::right)
        opening.hand = Hand::left;
}

template <class Fn>
void forEachRowList(WholePlan& whole, Fn&& fn) {
    fn(whole.rooms);
    fn(whole.openings);
    fn(whole.closets);
    fn(whole.stairs);
    fn(whole.treatments);
    fn(whole.others);
}

/// An odd number of reversals builds the plan left for right; two cancel each other.
bool isReversed(const std::vector<const Variant*>& chosen) {
    return std::ranges::count_if(chosen, [](const Variant* v) { return v->reversed; }) % 2 == 1;
}

template <class Row>
const Row* findById(const std::vector<Row>& rows, Id<Row> id) {
    const auto it = std::ranges::find(rows, id, &Row::id);
    return it == rows.end() ? nullptr : &*it;
}

} // namespace

WholePlan::WholePlan() = default;
WholePlan::WholePlan(const WholePlan&) = default;
WholePlan::WholePlan(WholePlan&&) noexcept = default;
WholePlan& WholePlan::operator=(const WholePlan&) = default;
WholePlan& WholePlan::operator=(WholePlan&&) noexcept = default;
WholePlan::~WholePlan() = default;
bool WholePlan::operator==(const WholePlan&) const = default;

const Level* WholePlan::level(Id<Level> id) const {
    return findById(levels, id);
}

const Room* WholePlan::room(Id<Room> id) const {
    return findById(rooms, id);
}

WholePlan wholePlan(const Plan& plan, const PlanRows& rows, const Selection& selection) {
    WholePlan whole;
    whole.plan = plan;
    std::vector<std::string>& remarks = whole.remarks;
    const auto chosen = chosenVariants(plan, rows.of<Variant>(), selection, remarks);

    const Overlay<Level> levels(rows.of<Level>(), chosen, remarks);
    const Overlay<Room> rooms(rows.of<Room>(), chosen, remarks);
    whole.levels = levels.rows();
    whole.rooms = rooms.rows();
    whole.openings = Overlay<Opening>(rows.of<Opening>(), chosen, remarks).rows();
    whole.closets = Overlay<Closet>(rows.of<Closet>(), chosen, remarks).rows();
    whole.stairs = Overlay<Stair>(rows.of<Stair>(), chosen, remarks).rows();
    whole.treatments = Overlay<WallTreatment>(rows.of<WallTreatment>(), chosen, remarks).rows();
    whole.others = Overlay<OtherWork>(rows.of<OtherWork>(), chosen, remarks).rows();

    const ProfileSwaps swaps(rows.of<Swap>(), chosen, remarks);
    References references(levels, rooms, remarks);
    swaps.apply(whole.plan);
    forEachRowList(whole, [&](auto& list) {
        for (auto& row : list) {
            references.follow(row);
            swaps.apply(row);
        }
    });
    if (isReversed(chosen))
        std::ranges::for_each(whole.openings, changeHand);
    return whole;
}

WholePlan onlyLevel(const WholePlan& whole, Id<Level> level) {
    WholePlan part = whole;
    std::erase_if(part.levels, [&](const Level& row) { return row.id != level; });
    forEachRowList(part, [&](auto& list) {
        std::erase_if(list, [&](const auto& row) {
            if constexpr (requires { row.room; }) {
                const Room* room = row.level ? nullptr : whole.room(row.room);
                return (room ? room->level : row.level) != level;
            } else {
                return row.level != level;
            }
        });
    });
    return part;
}

} // namespace miterbook
