// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/any_row.h"

#include "job/row_shape.h"

namespace miterbook {

namespace {

/// What cannot be done by a row's shape.
struct RowHandling {
    std::shared_ptr<void> (*make)();
    bool (*same)(const void*, const void*);
};

constexpr auto handlings = BookRows::mapped([]<class Row>(RowKind<Row>) {
    return RowHandling{[]() -> std::shared_ptr<void> { return std::make_shared<Row>(); },
        [](const void* a, const void* b) {
            return *static_cast<const Row*>(a) == *static_cast<const Row*>(b);
        }};
});

constexpr auto belongsToPlan = BookRows::mapped([]<class Row>(RowKind<Row>) {
    return std::is_same_v<Row, Plan> || belowPlan<Row> || hangsOnPlan<Row>;
});

} // namespace

const RowShape& AnyRow::shape() const {
    return *rowShapes()[m_kind];
}

std::string_view AnyRow::table() const {
    return shape().table;
}

std::string_view AnyRow::noun() const {
    return shape().noun;
}

bool AnyRow::operator==(const AnyRow& other) const {
    return m_kind == other.m_kind
        && (m_row == other.m_row || handlings[m_kind].same(data(), other.data()));
}

RowDraft::RowDraft(std::size_t kind)
    : m_kind(kind)
    , m_row(handlings[kind].make()) {
}

const RowShape& RowDraft::shape() const {
    return *rowShapes()[m_kind];
}

AnyRow RowDraft::take() && {
    const FieldShape& id = shape().fields.front();
    const std::int64_t number = id.value->number(id.in(m_row.get()));
    return {m_kind, number, std::move(m_row)};
}

std::optional<std::size_t> kindOfTable(std::string_view table) {
    const auto& shapes = rowShapes();
    const auto shape = std::ranges::find(shapes, table, &RowShape::table);
    if (shape == shapes.end())
        return std::nullopt;
    return static_cast<std::size_t>(shape - shapes.begin());
}

const std::array<const RowShape*, BookRows::count>& rowShapes() {
    static const auto shapes = BookRows::mapped(
        []<class Row>(RowKind<Row>) { return &rowShape<Row>(); });
    return shapes;
}

Id<Plan> planOf(const AnyRow& row) {
    if (!belongsToPlan[row.kind()])
        return {};
    const std::string_view name = row.is<Plan>() ? "id" : "plan";
    const auto field = std::ranges::find(row.shape().fields, name, &FieldShape::name);
    return Id<Plan>(field->value->number(field->in(row.data())));
}

} // namespace miterbook
