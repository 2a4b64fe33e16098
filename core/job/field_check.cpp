// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/field_check.h"

#include "job/row_shape.h"

namespace miterbook {

namespace {

/// A field that cannot be kept, and why; no fault when there is none.
struct FieldFault {
    std::string_view field;
    std::string_view fault;
};

FieldFault faultyField(const RowShape& shape, const void* row);

/// Why a value cannot be kept; empty when it can.
std::string_view faultOf(const ValueShape& shape, const void* value) {
    if (shape.kind == ValueShape::Kind::row)
        return faultyField(shape.row(), value).fault;
    if (shape.kind != ValueShape::Kind::list)
        return shape.fault ? shape.fault(value) : "";
    for (std::size_t i = 0; i < shape.size(value); ++i) {
        if (const auto fault = faultOf(*shape.element, shape.at(value, i)); !fault.empty())
            return fault;
    }
    return {};
}

/// The first field that cannot be kept.
FieldFault faultyField(const RowShape& shape, const void* row) {
    for (const FieldShape& field : shape.fields) {
        if (const auto fault = faultOf(*field.value, field.in(row)); !fault.empty())
            return {field.name, fault};
    }
    return {};
}

constexpr auto settings = BookRows::mapped([]<class Row>(RowKind<Row>) { return isSettings<Row>; });

/// What is wrong with a row; empty when nothing is.
std::string faultOfRow(const AnyRow& row) {
    if (settings[row.kind()] ? row.id() != 1 : row.id() <= 0)
        return "it has no proper id";
    const FieldFault found = faultyField(row.shape(), row.data());
    return found.fault.empty() ? std::string()
                               : std::string(found.field) + ": " + std::string(found.fault);
}

} // namespace

Result<void> checkFields(const AnyRow& row) {
    const std::string fault = faultOfRow(row);
    if (fault.empty())
        return {};
    return badInput("The " + std::string(row.noun()) + " was refused: " + fault + ".");
}

} // namespace miterbook
