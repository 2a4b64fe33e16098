// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/freeze.h"

#include "basics/sha256.h"
#include "job/row_json.h"
#include "papers/frozen_form.h"
#include "papers/heading.h"

namespace miterbook {

namespace {

template <class T>
Json kindAnd(const char* kind, const T& block) {
    Json json = toJson(block);
    json["block"] = kind;
    return json;
}

Result<Json> blockJson(const Block& block) {
    if (const auto* paragraph = std::get_if<Paragraph>(&block))
        return kindAnd("paragraph", *paragraph);
    if (const auto* table = std::get_if<PaperTable>(&block))
        return kindAnd("table", *table);
    if (const auto* signatures = std::get_if<Signatures>(&block))
        return kindAnd("signatures", *signatures);
    return badInput("A paper with drawings or labels is not given out of hand.");
}

template <class T>
Result<Block> blockOf(const Json& json) {
    T block;
    if (auto read = readJson(json, block); !read)
        return read.error();
    return Block(std::move(block));
}

Result<Block> readBlock(Json json) {
    if (!json.is_object() || !json.contains("block"))
        return unreadable(json);
    const Json kind = json["block"];
    json.erase("block");
    if (kind == "paragraph")
        return blockOf<Paragraph>(json);
    if (kind == "table")
        return blockOf<PaperTable>(json);
    if (kind == "signatures")
        return blockOf<Signatures>(json);
    return unreadable(kind);
}

FrozenHead headOf(const Paper& paper) {
    FrozenHead head{paper.name, paper.title, paper.type, paper.letterhead, {}, {}, paper.footer,
        paper.logo.sum};
    for (const auto& [what, text] : paper.facts)
        head.facts.push_back({what, Cell::of(text)});
    for (const auto& [what, cell] : paper.totals)
        head.totals.push_back({what, cell});
    return head;
}

Paper paperOf(FrozenHead head) {
    Paper paper;
    paper.name = std::move(head.name);
    paper.title = std::move(head.title);
    paper.type = head.type;
    paper.letterhead = std::move(head.letterhead);
    paper.footer = std::move(head.footer);
    paper.logo.sum = std::move(head.logo);
    for (FrozenFact& fact : head.facts)
        paper.facts.emplace_back(std::move(fact.what), std::move(fact.cell.text));
    for (FrozenFact& total : head.totals)
        paper.totals.emplace_back(std::move(total.what), std::move(total.cell));
    return paper;
}

} // namespace

Result<std::string> freezePaper(const Paper& paper) {
    Json json = Json::object();
    json["head"] = toJson(headOf(paper));
    json["blocks"] = Json::array();
    for (const Block& block : paper.blocks) {
        auto frozen = blockJson(block);
        if (!frozen)
            return frozen.error();
        json["blocks"].push_back(*std::move(frozen));
    }
    return jsonText(json);
}

Result<Paper> thawPaper(const std::string& text) {
    auto json = parseJson(text);
    if (!json)
        return json.error();
    if (!json->is_object() || !json->contains("head") || !json->contains("blocks")
        || !(*json)["blocks"].is_array())
        return unreadable(*json);
    FrozenHead head;
    if (auto read = readJson((*json)["head"], head); !read)
        return read.error();
    Paper paper = paperOf(std::move(head));
    for (const Json& each : (*json)["blocks"]) {
        auto block = readBlock(each);
        if (!block)
            return block.error();
        paper.blocks.push_back(*std::move(block));
    }
    return paper;
}

Result<IssuedPaper> issuedPaper(IssuedPaper row, const Paper& paper) {
    auto text = freezePaper(paper);
    if (!text)
        return text.error();
    row.sum = sha256(*text);
    row.paper.text = *std::move(text);
    return row;
}

Result<Paper> paperAsIssued(const IssuedPaper& issued, const PriceBook& prices) {
    const std::string name = "The " + std::string(word(issued.kind)) + ' '
        + std::to_string(issued.number);
    if (sha256(issued.paper.text) != issued.sum) {
        return Error{Fault::storage,
            name
                + " is not what was issued: the book file has been damaged or changed by another "
                  "program. Look into the copies of the book."};
    }
    auto paper = thawPaper(issued.paper.text);
    if (!paper)
        return Error{Fault::storage, name + " cannot be read: " + paper.error().sentence};
    paper->logo = logoOf(prices, paper->logo.sum);
    return paper;
}

} // namespace miterbook
