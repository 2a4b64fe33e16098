// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "job/stored_form.h"
#include "job/value_fault.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

// Rows without their types: what Describe<Row> says, kept as data. Reading and writing rows is the
// same for every kind, and is then compiled once instead of once for each field of each row.

struct RowShape;

/// How one type of value stands in the book file and the journal: as a whole number, a text, a list
/// or a described value. A `value` below points at a T; only the functions of the kind are there.
struct ValueShape {
    enum class Kind { yesNo, whole, reference, text, date, list, row };

    Kind kind = Kind::whole;
    /// yesNo, whole, reference. Setting: false, and nothing done, for what is no such value.
    std::int64_t (*number)(const void* value) = nullptr;
    bool (*setNumber)(void* value, std::int64_t number) = nullptr;
    /// text, date
    std::string (*text)(const void* value) = nullptr;
    bool (*setText)(void* value, std::string_view text) = nullptr;
    /// list: of elements
    const ValueShape* element = nullptr;
    std::size_t (*size)(const void* list) = nullptr;
    const void* (*at)(const void* list, std::size_t i) = nullptr;
    void (*clear)(void* list) = nullptr;
    void* (*append)(void* list) = nullptr; ///< a new element at the end
    /// row
    const RowShape& (*row)() = nullptr;
    /// Why a value cannot be kept; empty when it can. Nullptr: it always can, or its parts say.
    const char* (*fault)(const void* value) = nullptr;
};

/// One field of a row.
struct FieldShape : FieldPlace {
    const ValueShape* value = nullptr;
};

/// A kind of row, in the order of its Describe.
struct RowShape {
    std::string_view table;
    std::string_view noun;
    std::vector<FieldShape> fields;

    std::vector<std::string_view> names() const;
};

template <class T>
consteval ValueShape makeValueShape();

template <class T>
inline constexpr ValueShape valueShape = makeValueShape<T>();

/// Made once for the whole run of the program.
template <Described Row>
const RowShape& rowShape() {
    static const RowShape shape = [] {
        RowShape made{Describe<Row>::table, Describe<Row>::noun, {}};
        const Row sample{};
        forEachField<Row>([&]<class Member>(const Field<Row, Member>& field) {
            made.fields.push_back({placeOf(sample, field), &valueShape<Member>});
        });
        return made;
    }();
    return shape;
}

// ---------------------------------------------------------------------------------------------

template <StoredWhole T>
consteval ValueShape makeWholeShape() {
    ValueShape shape;
    shape.kind = std::is_same_v<T, bool> ? ValueShape::Kind::yesNo
        : isId<T>                        ? ValueShape::Kind::reference
                                         : ValueShape::Kind::whole;
    shape.number
        = [](const void* value) { return WholeForm<T>::write(*static_cast<const T*>(value)); };
    shape.setNumber = [](void* value, std::int64_t number) {
        const auto read = WholeForm<T>::read(number);
        if (read)
            *static_cast<T*>(value) = *read;
        return read.has_value();
    };
    return shape;
}

template <StoredText T>
consteval ValueShape makeTextShape() {
    ValueShape shape;
    shape.kind = std::is_same_v<T, Date> ? ValueShape::Kind::date : ValueShape::Kind::text;
    shape.text = [](const void* value) -> std::string {
        return TextForm<T>::write(*static_cast<const T*>(value));
    };
    shape.setText = [](void* value, std::string_view text) {
        auto read = TextForm<T>::read(text);
        if (read)
            *static_cast<T*>(value) = *std::move(read);
        return read.has_value();
    };
    return shape;
}

template <class List>
consteval ValueShape makeListShape() {
    ValueShape shape;
    shape.kind = ValueShape::Kind::list;
    shape.element = &valueShape<typename List::value_type>;
    shape.size = [](const void* list) { return static_cast<const List*>(list)->size(); };
    shape.at = [](const void* list, std::size_t i) -> const void* {
        return &(*static_cast<const List*>(list))[i];
    };
    shape.clear = [](void* list) { static_cast<List*>(list)->clear(); };
    shape.append = [](void* list) -> void* { return &static_cast<List*>(list)->emplace_back(); };
    return shape;
}

template <class T>
consteval ValueShape makePlainShape() {
    ValueShape shape;
    if constexpr (StoredWhole<T>)
        shape = makeWholeShape<T>();
    else
        shape = makeTextShape<T>();
    if constexpr (requires(const T& value) { faultOf(value); })
        shape.fault = [](const void* value) { return faultOf(*static_cast<const T*>(value)); };
    return shape;
}

template <class T>
consteval ValueShape makeValueShape() {
    if constexpr (StoredWhole<T> || StoredText<T>) {
        return makePlainShape<T>();
    } else if constexpr (isList<T>) {
        return makeListShape<T>();
    } else {
        ValueShape shape;
        shape.kind = ValueShape::Kind::row;
        shape.row = &rowShape<T>;
        return shape;
    }
}

} // namespace miterbook
