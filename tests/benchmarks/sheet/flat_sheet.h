// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace miterbook {

/// Writes a spreadsheet as a flat OpenDocument file (OASIS OpenDocument 1.2, part 1; formulas of
/// part 2), row by row.
class FlatSheet {
public:
    void beginTable(std::string_view name);
    void endTable();
    void beginRow() { m_text += "<table:table-row>"; }
    void endRow() { m_text += "</table:table-row>"; }
    void word(std::string_view text);
    void number(double value);
    /// As `SUM([.A1:.A9])`, without the equals sign.
    void formula(std::string_view formula);
    std::string take();
    /// A number as formulas and cells write it, exactly.
    static std::string digits(double value);

private:
    std::string m_text;
};

} // namespace miterbook
