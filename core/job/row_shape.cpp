// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/row_shape.h"

namespace miterbook {

std::vector<std::string_view> RowShape::names() const {
    std::vector<std::string_view> names;
    names.reserve(fields.size());
    for (const FieldShape& field : fields)
        names.push_back(field.name);
    return names;
}

} // namespace miterbook
