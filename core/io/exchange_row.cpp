// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/exchange_row.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Members that an exchange text says by where a row stands in it (its plan, its variant) or by
/// keys of its own (changes, removes).
template <class Row, class Member>
constexpr bool impliedByPlace() {
    if constexpr (std::is_same_v<Row, Stick> && std::is_same_v<Member, Id<Profile>>)
        return true;
    if constexpr (std::is_same_v<Row, Variant> && std::is_same_v<Member, VariantKind>)
        return true;
    return isOneOf<Member, Id<Row>, Id<Plan>, Id<PlanSet>, Id<House>, Id<Builder>, Id<Variant>>;
}

/// Position and removal are said by the caller too.
template <class Row>
constexpr bool isCallers(std::string_view key) {
    return Overlaid<Row> && (key == "position" || key == "removed");
}

template <class T>
constexpr ExchangeValue exchangeValue{[](const void* value, const PlanRefs& refs) -> Json {
                                          return ExchangeForm<T>::write(
                                              *static_cast<const T*>(value), refs);
                                      },
    [](const Json& json, const PlanRefs& refs, void* value) -> Result<void> {
        auto read = ExchangeForm<T>::read(json, refs);
        if (!read)
            return read.error();
        *static_cast<T*>(value) = std::move(read).value();
        return {};
    },
    [](const void* a, const void* b) {
        return *static_cast<const T*>(a) == *static_cast<const T*>(b);
    }};

template <Described Row>
ExchangeFields makeExchangeFields() {
    ExchangeFields made;
    const Row sample{};
    forEachField<Row>([&]<class Member>(const Field<Row, Member>& field) {
        if constexpr (!impliedByPlace<Row, Member>()) {
            if (!isCallers<Row>(field.name))
                made.push_back({placeOf(sample, field), &exchangeValue<Member>});
        }
    });
    return made;
}

/// Mark and name lead their entry.
bool leads(std::string_view key) {
    return key == "mark" || key == "name";
}

} // namespace

template <Described Row>
const ExchangeFields& exchangeFields() {
    static const ExchangeFields fields = makeExchangeFields<Row>();
    return fields;
}

// A kind that another file places and that is left out here does not link.
template const ExchangeFields& exchangeFields<Builder>();
template const ExchangeFields& exchangeFields<PlanSet>();
template const ExchangeFields& exchangeFields<Plan>();
template const ExchangeFields& exchangeFields<Profile>();
template const ExchangeFields& exchangeFields<Stick>();
template const ExchangeFields& exchangeFields<Variant>();
template const ExchangeFields& exchangeFields<Swap>();
template const ExchangeFields& exchangeFields<Level>();
template const ExchangeFields& exchangeFields<Room>();
template const ExchangeFields& exchangeFields<Opening>();
template const ExchangeFields& exchangeFields<Closet>();
template const ExchangeFields& exchangeFields<Stair>();
template const ExchangeFields& exchangeFields<WallTreatment>();
template const ExchangeFields& exchangeFields<OtherWork>();
template const ExchangeFields& exchangeFields<SheetFile>();
template const ExchangeFields& exchangeFields<Underlay>();
template const ExchangeFields& exchangeFields<Dismissal>();

void writeFields(const ExchangeFields& fields, const void* row, const void* start,
    const PlanRefs& refs, Json& object) {
    for (const bool leading : {true, false}) {
        for (const ExchangeField& field : fields) {
            if (leads(field.name) == leading && !field.value->same(field.in(row), field.in(start)))
                object[std::string(field.name)] = field.value->write(field.in(row), refs);
        }
    }
}

Result<void> readFields(const ExchangeFields& fields, const Json& json, const PlanRefs& refs,
    void* row, std::initializer_list<std::string_view> others) {
    if (!json.is_object())
        return badInput("an entry in braces is needed.");
    for (const auto& [key, value] : json.items()) {
        if (std::ranges::find(others, key) != others.end())
            continue;
        const auto field = std::ranges::find(fields, key, &ExchangeField::name);
        if (field == fields.end())
            return badInput("\"" + key + "\" means nothing here.");
        if (const auto read = field->value->read(value, refs, field->in(row)); !read)
            return Error{read.error().fault, key + ": " + read.error().sentence};
    }
    return {};
}

} // namespace miterbook
