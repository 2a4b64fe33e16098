// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <string>
#include <string_view>

namespace miterbook {

/// The text in a file's bytes as UTF-8, without a byte order mark: UTF-8 where the bytes are sound
/// UTF-8, UTF-16 where they begin with its byte order mark, else Windows-1252 (which holds all
/// printing characters of Latin-1). Stray control characters are dropped. Errors: one sentence for
/// bytes that are no text (NUL).
Result<std::string> decodedText(std::string_view bytes);

/// Line ends and runs of blanks as one space, none at the ends.
std::string singleLine(std::string_view text);

/// A cell as one line in quotes, for a sentence.
std::string quotedCell(std::string_view text);

/// Lower case, line ends and runs of blanks as one space, none at the ends; for comparing names
/// that people typed.
std::string foldedText(std::string_view text);

/// Without blanks, no-break spaces and line ends at either end.
std::string trimmedText(std::string_view text);

} // namespace miterbook
