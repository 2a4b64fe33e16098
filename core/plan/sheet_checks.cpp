// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/blank.h"
#include "plan/check_words.h"
#include "plan/outline.h"

namespace miterbook {

Result<void> checkSheetFile(const SheetFile& file) {
    RowCheck check(namedOr(file.name, "builder's sheet"));
    check.must(file.content.size() > 0, "is empty");
    check.must(file.content.size() <= largestSheet,
        "has " + std::to_string((file.content.size() + 999'999) / 1'000'000)
            + " MB; the book takes sheets of up to 25 MB: save the page alone, or at fewer dots to "
              "the inch");
    return check.result();
}

Result<void> checkUnderlay(const Underlay& underlay) {
    RowCheck check("The sheet under the level");
    check.must(bool(underlay.file), "names no file");
    check.number("page", underlay.page, 1, 10'000);
    check.length("scale", underlay.scale);
    check.number("strength", underlay.strength, 0, 100);
    check.must(isNearZero({underlay.x, underlay.y}), "lies over 300 ft from the plan's zero");
    return check.result();
}

Result<void> checkDismissal(const Dismissal& dismissal) {
    RowCheck check("The reminder");
    check.must(!isBlank(dismissal.sentence), "says nothing");
    check.must(!isBlank(dismissal.reason), "is put away without a reason");
    return check.result();
}

} // namespace miterbook
