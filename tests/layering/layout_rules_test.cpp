// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/layout_rules.h"

#include <gtest/gtest.h>

namespace miterbook {

namespace {

using Lines = std::vector<std::string>;

const std::string licence = "// SPDX-License-Identifier: GPL-3.0-or-later";

std::string saidOf(const std::string& path, const Lines& lines) {
    return inWords(badLayout({{path, lines}}));
}

TEST(Layout, LetsAGoodFileBe) {
    EXPECT_EQ(saidOf("core/plan/room_text.h", {licence, "#pragma once"}), "");
    EXPECT_EQ(saidOf("core/plan/room_text.cpp", {licence}), "");
    EXPECT_EQ(
        saidOf("core/store/schema/001.sql", {"-- SPDX-License-Identifier: GPL-3.0-or-later"}), "");
    EXPECT_EQ(
        saidOf("app/run", {"#!/usr/bin/env bash", "# SPDX-License-Identifier: GPL-3.0-or-later"}),
        "");
}

TEST(Layout, FindsAFileOver500Lines) {
    Lines lines(501, "");
    lines.front() = licence;
    EXPECT_EQ(saidOf("a.cpp", lines), "a.cpp: has 501 lines, over 500.\n");
    lines.pop_back();
    EXPECT_EQ(saidOf("a.cpp", lines), "");
}

TEST(Layout, FindsALineOver100Characters) {
    std::string wide(98, '/');
    wide.append("\u00bd\u2033"); // 100 characters, 103 bytes
    EXPECT_EQ(saidOf("a.cpp", {licence, wide}), "");
    wide.push_back('/');
    EXPECT_EQ(saidOf("a.cpp", {licence, wide}), "a.cpp:2: is over 100 characters wide.\n");
    EXPECT_EQ(saidOf("a.sql", {"-- SPDX-License-Identifier: GPL-3.0-or-later", wide}), "");
}

TEST(Layout, FindsAMissingLicenceLine) {
    const std::string sentence = "a.cpp:1: does not begin with its licence line.\n";
    EXPECT_EQ(saidOf("a.cpp", {}), sentence);
    EXPECT_EQ(saidOf("a.cpp", {"int a;", licence}), sentence);
    EXPECT_EQ(saidOf("a.cpp", {"// SPDX-License-Identifier: MIT"}), sentence);
    EXPECT_EQ(saidOf("a.cpp", {"#!/bin/sh"}), sentence);
}

TEST(Layout, FindsAHeaderThatMayBeReadTwice) {
    EXPECT_EQ(saidOf("a.h", {licence, "// #pragma once"}), "a.h: has no #pragma once.\n");
}

TEST(Layout, FindsANameInCapitals) {
    EXPECT_EQ(saidOf("core/PlanPage.cpp", {licence}),
        "core/PlanPage.cpp: is not named in lower case with underscores.\n");
}

} // namespace

} // namespace miterbook
