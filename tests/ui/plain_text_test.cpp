// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/empty_page.h"
#include "widgets/message_strip.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QPushButton>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

const QString hostile = u"<img src='/etc/passwd'> & <b>Sons</b>"_s;

TEST(PlainText, TipsCannotBeMarkup) {
    const QString tip = safeTip(hostile);
    EXPECT_FALSE(tip.contains(u"<img"_s));
    EXPECT_TRUE(tip.contains(u"&lt;img"_s));
    EXPECT_TRUE(safeTip({}).isEmpty());
}

TEST(PlainText, LabelsCannotBeMarkup) {
    for (QLabel* label : {plainLabel(hostile), headLabel(hostile), hintLabel(hostile)}) {
        EXPECT_EQ(label->textFormat(), Qt::PlainText);
        EXPECT_EQ(label->text(), hostile);
        delete label;
    }
}

TEST(MessageStrip, SaysAndGoesAway) {
    MessageStrip strip;
    EXPECT_TRUE(strip.isHidden());
    strip.say(hostile);
    EXPECT_FALSE(strip.isHidden());
    EXPECT_EQ(strip.sentence(), hostile);
    EXPECT_EQ(strip.findChild<QLabel*>()->textFormat(), Qt::PlainText);
    strip.findChild<QPushButton*>()->click();
    EXPECT_TRUE(strip.isHidden());
}

TEST(Counted, SaysOneAndMany) {
    EXPECT_EQ(counted(1, u"1 row"_s, u"%1 rows"_s), u"1 row"_s);
    EXPECT_EQ(counted(0, u"1 row"_s, u"%1 rows"_s), u"0 rows"_s);
    EXPECT_EQ(counted(12, u"1 row"_s, u"%1 rows"_s), u"12 rows"_s);
}

TEST(SpokenCell, NamesColumnTextAndMark) {
    EXPECT_EQ(spokenCell(u"Width"_s, u"36"_s, {}), u"Width: 36"_s);
    EXPECT_EQ(spokenCell(u"Width"_s, {}, u"removed"_s), u"Width: empty, removed"_s);
}

} // namespace
} // namespace miterbook
