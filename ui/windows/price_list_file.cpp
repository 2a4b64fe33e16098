// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/price_list_file.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "io/exact_length.h"
#include "papers/write_paper.h"
#include "printing/export_paper.h"

#include <QDir>
#include <QFileDialog>

namespace miterbook {

namespace {

/// With its unit: a bare number in a price list may be feet.
std::string stickText(Length length) {
    std::string text = exactLengthText(length);
    if (text.find('m') == std::string::npos)
        text += '"';
    return text;
}

/// Without the commas that part thousands.
std::string plainAmount(Money money) {
    std::string text = formatMoney(money);
    std::erase(text, ',');
    return text;
}

} // namespace

std::string priceListCsv(const PriceBook& prices) {
    PaperTable table;
    table.columns = {{"Profile"}, {"Length"}, {"Price"}, {"Per"}};
    for (const auto& [id, profile] : prices.of<Profile>()) {
        for (const Stick& stick : prices.sticksOf(id)) {
            table.rows.push_back({PaperTable::Kind::plain,
                {Cell::of(profile.name), Cell::of(stickText(stick.length)),
                    Cell::of(plainAmount(stick.price)),
                    Cell::of(std::string(word(PricePer::stick)))}});
        }
    }
    Paper paper;
    paper.blocks.emplace_back(std::move(table));
    return paperCsv(paper);
}

void savePriceList(Desk& desk, QWidget* parent) {
    const QString path = QFileDialog::getSaveFileName(parent, QObject::tr("Save prices as CSV"),
        QDir::home().filePath(QStringLiteral("prices.csv")), QObject::tr("Price lists (*.csv)"));
    if (path.isEmpty())
        return;
    const auto bytes = QByteArray::fromStdString(priceListCsv(desk.book().prices));
    if (auto written = writeWholeFile(path, bytes); !written)
        desk.refuse(written.error());
}

} // namespace miterbook
