// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/json_text.h"

#include <algorithm>
#include <set>

namespace miterbook {

namespace {

constexpr std::size_t lineWidth = 100;
constexpr std::size_t step = 2;

/// Watches the keys of a text as it is read.
class TwinKeys {
public:
    void note(Json::parse_event_t event, const Json& parsed) {
        if (event == Json::parse_event_t::object_start)
            m_open.emplace_back();
        else if (event == Json::parse_event_t::object_end)
            m_open.pop_back();
        else if (event == Json::parse_event_t::key)
            noteKey(parsed.get<std::string>());
    }
    const std::string& twin() const { return m_twin; }

private:
    void noteKey(const std::string& key) {
        if (!m_open.back().insert(key).second && m_twin.empty())
            m_twin = key;
    }

    std::vector<std::set<std::string>> m_open;
    std::string m_twin;
};

/// "Line 12, column 5": where the byte of a number, from 1, stands.
std::string placeOf(std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, std::min(byte == 0 ? 0 : byte - 1, text.size()));
    const auto line = std::ranges::count(before, '\n') + 1;
    const std::size_t lineStart = before.rfind('\n') + 1; // npos + 1 is 0
    return "Line " + std::to_string(line) + ", column "
        + std::to_string(before.size() - lineStart + 1);
}

std::string inLine(const Json& json) {
    if (!json.is_structured())
        return jsonText(json);
    std::string text(json.is_array() ? "[" : "{");
    bool first = true;
    for (const auto& [key, value] : json.items()) {
        text += first ? "" : ", ";
        first = false;
        if (json.is_object())
            text += jsonText(Json(key)) + ": ";
        text += inLine(value);
    }
    return text + (json.is_array() ? "]" : "}");
}

/// Lays out values that do not fit into a line: a list with each entry in its own line; an object
/// with as many keys to a line as fit, and what does not fit into one in lines of its own.
class Layout {
public:
    void value(const Json& json, std::size_t indent) {
        const std::string whole = inLine(json);
        const bool outer = indent == 0 || (indent == step && json.is_array());
        const bool fits = !outer && column() + whole.size() < lineWidth;
        if (!json.is_structured() || json.empty() || fits)
            m_text += whole;
        else if (json.is_array())
            list(json, indent + step);
        else
            object(json, indent + step);
    }

    std::string text() const { return m_text + "\n"; }

private:
    std::size_t column() const { return m_text.size() - (m_text.rfind('\n') + 1); }

    void newLine(std::size_t indent) { m_text += "\n" + std::string(indent, ' '); }

    void list(const Json& json, std::size_t indent) {
        m_text += '[';
        for (const Json& each : json) {
            m_text += &each == &json.front() ? "" : ",";
            newLine(indent);
            value(each, indent);
        }
        newLine(indent - step);
        m_text += ']';
    }

    void object(const Json& json, std::size_t indent) {
        m_text += '{';
        bool first = true;
        bool alone = false; // the last key stood in lines of its own
        for (const auto& [key, each] : json.items()) {
            const std::string head = jsonText(Json(key)) + ": ";
            const std::size_t size = head.size() + inLine(each).size() + 1;
            alone = indent == step || (each.is_structured() && indent + size > lineWidth);
            m_text += first ? "" : ",";
            if (alone || column() + size + 1 > lineWidth)
                newLine(indent);
            else if (!first)
                m_text += ' ';
            first = false;
            m_text += head;
            value(each, indent);
        }
        if (alone)
            newLine(indent - step);
        m_text += '}';
    }

    std::string m_text;
};

} // namespace

Result<Json> readJsonText(std::string_view text) {
    TwinKeys keys;
    const auto watch = [&](int, Json::parse_event_t event, Json& parsed) {
        keys.note(event, parsed);
        return true;
    };
    try {
        Json json = Json::parse(text.begin(), text.end(), watch);
        if (!keys.twin().empty())
            return badInput("The key \"" + keys.twin() + "\" stands twice in one entry.");
        return json;
    } catch (const Json::parse_error& failure) {
        return badInput(placeOf(text, failure.byte)
            + ": this is not JSON; a comma, quote or bracket is missing or too many.");
    } catch (const Json::exception&) {
        return badInput("The text holds a number that is too large.");
    }
}

std::string layOutJson(const Json& json) {
    Layout layout;
    layout.value(json, 0);
    return layout.text();
}

} // namespace miterbook
