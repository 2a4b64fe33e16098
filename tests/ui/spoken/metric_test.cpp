// SPDX-License-Identifier: GPL-3.0-or-later
// A shop that writes millimetres does its whole job without a foot or an inch.
#include "ui/spoken/sample_window.h"
#include "ui/spoken/shown_words.h"
#include "ui/spoken/window_walk.h"

#include "cut/label_sheets.h"
#include "desk/text.h"

#include <QLineEdit>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

/// Words of feet and inches, and their marks behind a number.
QString imperialIn(const QString& text) {
    static const QRegularExpression words(
        u"\\b(feet|foot|ft|LF|SF|inch|inches)\\b|[0-9½¼¾⅛] ?[\"″]|[0-9]'( |[0-9]|$)"
        "|[0-9] in\\b(?! all)|, in$"_s);
    return words.match(text).captured();
}

/// What the user or the yard calls things stays as it is typed.
class Names {
public:
    explicit Names(const Book& book) {
        for (const auto& [id, row] : book.prices.of<Profile>())
            add({row.name, row.note});
        for (const auto& [id, row] : book.prices.of<Part>())
            add({row.name});
        for (const auto& [id, row] : book.prices.of<Consumable>())
            add({row.name, row.note});
        for (const auto& [id, row] : book.prices.of<LabourRate>())
            add({row.source});
        for (const auto& [id, row] : book.prices.of<Factor>())
            add({row.source});
        for (const LabelSheet& sheet : commonLabelSheets())
            add({labelSheetName(sheet)}); // as it is sold
        std::ranges::sort(m_names, std::ranges::greater(), &QString::size); // whole ones first
    }
    /// What another shop may choose instead.
    static bool isChoice(const QString& text) {
        static const QRegularExpression choice(u"^(inches|feet and inches|1/[0-9]+ in)$"_s);
        return choice.match(text).hasMatch();
    }
    QString without(QString text) const {
        for (const QString& name : m_names)
            text.remove(name);
        return text;
    }

private:
    void add(std::initializer_list<std::string> names) {
        for (const std::string& name : names) {
            if (!name.empty())
                m_names << text(name);
        }
    }
    QStringList m_names;
};

void makeMetric(Shop& shop) {
    shop.unit = LengthUnit::millimetres;
    shop.page = PageSize::a4;
    shop.currency = "€";
}

/// A bare 4 1/2 would be read as four and a half millimetres.
TEST(Metric, WallsOfTheDrawingAreSaidInMillimetres) {
    SampleWindow sample(makeMetric);
    sample.window().showJob(sample.firstPlan());
    QString said;
    for (const auto* line : sample.window().findChildren<QLineEdit*>()) {
        if (line->accessibleName() == u"Thickness of inside walls"_s)
            said = line->text();
    }
    EXPECT_EQ(said, u"114.3"_s);
}

TEST(Metric, NoPageSpeaksOfFeetOrInches) {
    SampleWindow sample(makeMetric);
    const Names names(sample.desk().book());
    std::map<QString, QString> faults;
    WindowWalk walk(sample.window(), sample.desk(), [&](QWidget& shown, const QString& where) {
        for (const QString& text : shownWords(shown)) {
            if (!Names::isChoice(text) && !imperialIn(names.without(text)).isEmpty())
                faults.emplace(text, where);
        }
    });
    walk.onlyLook();
    walk.everyPlace();
    walk.everyStage(sample.underway());
    walk.everyStage(sample.firstPlan());
    for (const auto& [text, where] : faults)
        ADD_FAILURE() << where.toStdString() << ": " << text.toStdString();
}

} // namespace
} // namespace miterbook
