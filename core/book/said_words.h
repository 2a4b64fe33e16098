// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "book/condition.h"
#include "book/task.h"

#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

// Words that name a size, as the shop writes lengths. What is kept and exchanged are the words of
// Words<Task> and Words<Condition>; these are for the eye alone.

std::string_view said(Task task, LengthUnit written);
std::string_view said(Condition condition, LengthUnit written);

/// "stain grade, 2.7 m ceiling".
std::string said(Conditions conditions, LengthUnit written);

/// What was said, either way; nothing where no task or condition is called so.
std::optional<Task> taskSaid(std::string_view text);
std::optional<Condition> conditionSaid(std::string_view text);

} // namespace miterbook
