// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/flat_sheet.h"

#include <cstdio>

namespace miterbook {

namespace {

std::string escaped(std::string_view text) {
    std::string safe;
    for (const char c : text) {
        if (c == '&')
            safe += "&amp;";
        else if (c == '<')
            safe += "&lt;";
        else if (c == '>')
            safe += "&gt;";
        else if (c == '"')
            safe += "&quot;";
        else
            safe += c;
    }
    return safe;
}

constexpr std::string_view head = R"(<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:body><office:spreadsheet>
)";

} // namespace

void FlatSheet::beginTable(std::string_view name) {
    m_text.append("<table:table table:name=\"").append(escaped(name)).append("\">\n");
}

void FlatSheet::endTable() {
    m_text += "</table:table>\n";
}

void FlatSheet::word(std::string_view text) {
    m_text.append("<table:table-cell office:value-type=\"string\"><text:p>")
        .append(escaped(text))
        .append("</text:p></table:table-cell>");
}

void FlatSheet::number(double value) {
    m_text.append("<table:table-cell office:value-type=\"float\" office:value=\"")
        .append(digits(value))
        .append("\"/>");
}

std::string FlatSheet::digits(double value) {
    char text[40];
    std::snprintf(text, sizeof text, "%.17g", value);
    return text;
}

void FlatSheet::formula(std::string_view formula) {
    m_text.append("<table:table-cell table:formula=\"of:=")
        .append(escaped(formula))
        .append("\"/>\n");
}

std::string FlatSheet::take() {
    return std::string(head) + m_text + "</office:spreadsheet></office:body></office:document>\n";
}

} // namespace miterbook
