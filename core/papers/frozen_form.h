// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/words.h"
#include "papers/paper.h"

#include <string_view>
#include <vector>

namespace miterbook {

// How the parts of a paper are written where it is frozen. Never change a name here: papers that
// were issued years ago are read by them. A field may be added at the end.

template <>
struct Words<PaperColumn::Align> {
    using enum PaperColumn::Align;
    static constexpr std::array list{
        Word{left, "left"}, Word{right, "right"}, Word{centre, "centre"}};
};

template <>
struct Words<PaperTable::Kind> {
    using enum PaperTable::Kind;
    static constexpr std::array list{
        Word{plain, "plain"}, Word{group, "group"}, Word{total, "total"}};
};

template <>
struct Words<Paragraph::Style> {
    static constexpr std::array list{Word{Paragraph::Style::body, "body"},
        Word{Paragraph::Style::heading, "heading"}, Word{Paragraph::Style::caution, "caution"},
        Word{Paragraph::Style::list, "list"}};
};

template <>
struct Words<Paper::Type> {
    using enum Paper::Type;
    static constexpr std::array list{
        Word{office, "office"}, Word{wall, "wall"}, Word{labels, "labels"}};
};

template <>
struct Describe<Cell> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "cell";
    static constexpr void allFields(auto&& take) {
        take(field("text", &Cell::text), field("exact", &Cell::exact));
    }
};

template <>
struct Describe<PaperColumn> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "column";
    static constexpr void allFields(auto&& take) {
        take(field("title", &PaperColumn::title), field("align", &PaperColumn::align),
            field("weight", &PaperColumn::weight), field("once", &PaperColumn::once),
            field("strong", &PaperColumn::strong), field("below", &PaperColumn::below));
    }
};

template <>
struct Describe<PaperTable::Row> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "row";
    static constexpr void allFields(auto&& take) {
        take(field("kind", &PaperTable::Row::kind), field("cells", &PaperTable::Row::cells));
    }
};

template <>
struct Describe<PaperTable> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "table";
    static constexpr void allFields(auto&& take) {
        take(field("title", &PaperTable::title), field("columns", &PaperTable::columns),
            field("rows", &PaperTable::rows), field("to_fill", &PaperTable::toFill));
    }
};

template <>
struct Describe<Paragraph> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "paragraph";
    static constexpr void allFields(auto&& take) {
        take(field("style", &Paragraph::style), field("lines", &Paragraph::lines));
    }
};

template <>
struct Describe<Signatures> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "signatures";
    static constexpr void allFields(auto&& take) { take(field("who", &Signatures::who)); }
};

/// A fact or total of a paper.
struct FrozenFact {
    std::string what;
    Cell cell;
};

/// All of a paper but its blocks.
struct FrozenHead {
    std::string name;
    std::string title;
    Paper::Type type = Paper::Type::office;
    std::vector<std::string> letterhead;
    std::vector<FrozenFact> facts;
    std::vector<FrozenFact> totals;
    std::string footer;
    std::string logo; ///< SHA-256 of the picture on the letterhead; empty: none
};

template <>
struct Describe<FrozenFact> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "fact";
    static constexpr void allFields(auto&& take) {
        take(field("what", &FrozenFact::what), field("cell", &FrozenFact::cell));
    }
};

template <>
struct Describe<FrozenHead> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "head of a paper";
    static constexpr void allFields(auto&& take) {
        take(field("name", &FrozenHead::name), field("title", &FrozenHead::title),
            field("type", &FrozenHead::type), field("letterhead", &FrozenHead::letterhead),
            field("facts", &FrozenHead::facts), field("totals", &FrozenHead::totals),
            field("footer", &FrozenHead::footer), field("logo", &FrozenHead::logo));
    }
};

} // namespace miterbook
