// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/checks.h"
#include "io/plan_text.h"
#include "io/plan_text_rows.h"

#include <tuple>

namespace miterbook {

namespace {

/// Reads one exchange text into an edit, in order: what it is, owner, profiles, plan, variants,
/// rows.
class Reader {
public:
    Reader(const Book& book, IdSource& ids, const Json& json)
        : m_book(book)
        , m_ids(ids)
        , m_root{&json, ""} {}

    Result<Edit> read() {
        for (const auto step :
            {&Reader::checkKind, &Reader::readOwner, &Reader::readProfiles, &Reader::readPlan,
                &Reader::readVariants, &Reader::readLists, &Reader::readPlainLists}) {
            if (auto done = (this->*step)(); !done)
                return done.error();
        }
        return std::move(m_edit);
    }

private:
    template <class Row>
    void put(Row row) {
        m_edit.changes.push_back({std::nullopt, AnyRow(std::move(row))});
    }

    Result<void> checkKind() {
        if (!m_root.json->is_object() || m_root.text("miterbook") != planTextKind)
            return Error{Fault::notOurs,
                "This is not a plan exchange text: it does not begin with "
                "\"miterbook\": \"plan\"."};
        const auto version = m_root.has("version") ? wholeNumber(m_root.json->at("version"))
                                                   : std::nullopt;
        if (!version || *version < 1)
            return badInput("The text does not say its version, as in \"version\": 1.");
        if (*version > planTextVersion)
            return Error{Fault::notOurs,
                "The plan was written by a newer program (version " + std::to_string(*version)
                    + "; this one reads up to " + std::to_string(planTextVersion) + ")."};
        std::vector<std::string_view> known{"miterbook", "version", "builder", "plan_set", "plan",
            "profiles", "elevations", "options"};
        forEachListedKind(
            [&](auto kind) { known.push_back(listKey<typename decltype(kind)::Row>); });
        forEachPlainKind(
            [&](auto kind) { known.push_back(listKey<typename decltype(kind)::Row>); });
        return checkKeys(m_root, known);
    }

    /// An object that has a row of its own; `otherwise` where the key is missing.
    template <class Row>
    Result<Row> readObject(const char* key) {
        if (!m_root.has(key))
            return Row();
        const auto entry = entryIn(m_root, key);
        if (!entry)
            return entry.error();
        auto row = readRow(*entry->json, Row(), m_refs);
        if (!row)
            return entry->error(row.error());
        return row;
    }

    Result<void> readOwner() {
        auto builder = readObject<Builder>("builder");
        if (!builder)
            return builder.error();
        if (m_root.has("builder") && builder->name.empty())
            return badInput("builder: a name is needed.");
        auto set = readObject<PlanSet>("plan_set");
        if (!set)
            return set.error();
        if (m_root.has("builder"))
            findOrMake(*builder, [&](const Builder& b) { return b.name == builder->name; });
        set->builder = builder->id;
        if (set->name.empty())
            set->name = "Plans";
        if (m_root.has("builder") || m_root.has("plan_set"))
            findOrMake(*set,
                [&](const PlanSet& s) { return s.builder == set->builder && s.name == set->name; });
        m_set = set->id;
        return {};
    }

    /// The book's row that is the same, else the row itself as a new one; its id is set either way.
    template <class Row, class Fn>
    void findOrMake(Row& row, Fn&& same) {
        for (const auto& [id, each] : tableOf<Row>()) {
            if (same(each)) {
                row.id = id;
                return;
            }
        }
        row.id = m_ids.next<Row>();
        put(row);
    }

    template <class Row>
    const Table<Row>& tableOf() const {
        if constexpr (JobTables::holds<Row>)
            return m_book.jobs.of<Row>();
        else
            return m_book.prices.of<Row>();
    }

    Result<void> readProfiles() {
        const auto entries = entriesIn(m_root, "profiles");
        if (!entries)
            return entries.error();
        for (const TextEntry& entry : *entries) {
            auto profile = readRow(*entry.json, Profile(), m_refs, {"sticks"});
            if (!profile)
                return entry.error(profile.error());
            if (m_refs.of<Profile>().find(profile->name))
                return entry.error(badInput("the file describes a profile of this name twice."));
            if (auto done = takeProfile(entry, *profile); !done)
                return done;
        }
        addBookProfiles();
        return {};
    }

    /// The book's profile of that name, else the file's with its sticks.
    Result<void> takeProfile(const TextEntry& entry, Profile& profile) {
        for (const auto& [id, each] : m_book.prices.of<Profile>()) {
            if (each.name == profile.name) {
                m_refs.of<Profile>().add(id.value(), {profile.name});
                return {};
            }
        }
        if (auto checked = check(profile, m_book.prices); !checked)
            return entry.error(checked.error());
        profile.id = m_ids.next<Profile>();
        m_refs.of<Profile>().add(profile.id.value(), {profile.name});
        put(profile);
        return readSticks(entry, profile);
    }

    Result<void> readSticks(const TextEntry& entry, const Profile& profile) {
        const auto sticks = entriesIn(entry, "sticks");
        if (!sticks)
            return sticks.error();
        PriceBook alone; // the profile and the sticks read so far
        alone.of<Profile>().put(profile);
        for (const TextEntry& each : *sticks) {
            auto stick = readRow(*each.json, Stick(), m_refs);
            if (!stick)
                return each.error(stick.error());
            stick->id = m_ids.next<Stick>();
            stick->profile = profile.id;
            if (auto checked = check(*stick, alone); !checked)
                return each.error(checked.error());
            alone.of<Stick>().put(*stick);
            put(std::move(stick).value());
        }
        return {};
    }

    /// Profiles that the file names without describing them must be in the book.
    void addBookProfiles() {
        NameIndex& profiles = m_refs.of<Profile>();
        for (const auto& [id, each] : m_book.prices.of<Profile>()) {
            if (!profiles.find(each.name))
                profiles.addOutside(id.value(), each.name);
        }
    }

    Result<void> readPlan() {
        if (!m_root.has("plan"))
            return badInput("The text has no \"plan\".");
        auto plan = readObject<Plan>("plan");
        if (!plan)
            return plan.error();
        if (plan->name.empty())
            return badInput("plan: a name is needed.");
        for (const auto& [id, each] : m_book.jobs.of<Plan>()) {
            if (!each.house && each.set == m_set && each.name == plan->name)
                return Error{Fault::conflict,
                    "The plan set has a plan " + plan->name
                        + " already; remove it or rename one of them."};
        }
        plan->id = m_plan = m_ids.next<Plan>();
        plan->set = m_set;
        m_edit.sentence = "Bring in plan " + plan->name;
        put(std::move(plan).value());
        m_layers.push_back({m_root, {}});
        return {};
    }

    Result<void> readVariants() {
        if (auto done = readVariants("elevations", VariantKind::elevation); !done)
            return done;
        return readVariants("options", VariantKind::option);
    }

    Result<void> readVariants(std::string_view key, VariantKind kind) {
        const auto entries = entriesIn(m_root, key);
        if (!entries)
            return entries.error();
        for (const TextEntry& entry : *entries) {
            if (auto done = readVariant(entry, kind); !done)
                return done;
        }
        return {};
    }

    Result<void> readVariant(const TextEntry& entry, VariantKind kind) {
        auto variant = readRow(*entry.json, Variant(), m_refs,
            {"swaps", listKey<Level>, listKey<Room>, listKey<Opening>, listKey<Closet>,
                listKey<Stair>, listKey<WallTreatment>, listKey<OtherWork>});
        if (!variant)
            return entry.error(variant.error());
        if (auto checked = checkVariant(*variant); !checked)
            return entry.error(checked.error());
        variant->id = m_ids.next<Variant>();
        variant->plan = m_plan;
        variant->kind = kind;
        m_layers.push_back({entry, variant->id});
        put(std::move(variant).value());
        return readSwaps(m_layers.back());
    }

    Result<void> readSwaps(const TextLayer& layer) {
        const auto entries = entriesIn(layer.entry, "swaps");
        if (!entries)
            return entries.error();
        for (const TextEntry& entry : *entries) {
            auto swap = readRow(*entry.json, Swap(), m_refs);
            if (!swap)
                return entry.error(swap.error());
            if (auto checked = checkSwap(*swap); !checked)
                return entry.error(checked.error());
            swap->id = m_ids.next<Swap>();
            swap->plan = m_plan;
            swap->variant = layer.variant;
            put(std::move(swap).value());
        }
        return {};
    }

    /// All names first, so that an opening may stand in a room of any option.
    Result<void> readLists() {
        Result<void> result;
        forEachListedKind([&](auto kind) {
            if (result)
                result = rowsOf<typename decltype(kind)::Row>().collect(m_layers, m_ids, m_refs);
        });
        forEachListedKind([&](auto kind) {
            auto& rows = rowsOf<typename decltype(kind)::Row>();
            if (result)
                result = rows.read(m_plan, m_refs);
            for (const auto& row : rows.rows())
                put(row);
        });
        return result;
    }

    Result<void> readPlainLists() {
        Result<void> result;
        forEachPlainKind([&](auto kind) {
            if (result)
                result = readPlain<typename decltype(kind)::Row>();
        });
        return result;
    }

    /// Rows that no variant changes.
    template <class Row>
    Result<void> readPlain() {
        const auto entries = entriesIn(m_root, listKey<Row>);
        if (!entries)
            return entries.error();
        for (const TextEntry& entry : *entries) {
            auto row = readRow(*entry.json, Row(), m_refs);
            if (!row)
                return entry.error(row.error());
            if (auto checked = checkListed(*row); !checked)
                return entry.error(checked.error());
            row->id = m_ids.next<Row>();
            row->plan = m_plan;
            m_refs.of<Row>().add(row->id.value(), {entry.text("name")});
            put(std::move(row).value());
        }
        return {};
    }

    template <class Row>
    TextRows<Row>& rowsOf() {
        return std::get<TextRows<Row>>(m_lists);
    }

    const Book& m_book;
    IdSource& m_ids;
    TextEntry m_root;
    PlanRefs m_refs;
    Edit m_edit;
    Id<PlanSet> m_set;
    Id<Plan> m_plan;
    std::vector<TextLayer> m_layers;
    std::tuple<TextRows<Level>, TextRows<Room>, TextRows<Opening>, TextRows<Closet>,
        TextRows<Stair>, TextRows<WallTreatment>, TextRows<OtherWork>>
        m_lists;
};

} // namespace

Result<Edit> readPlanText(const Book& book, IdSource& ids, std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);
    const auto json = readJsonText(text);
    if (!json)
        return json.error();
    return Reader(book, ids, *json).read();
}

} // namespace miterbook
