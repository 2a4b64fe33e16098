// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/price_list_dialog.h"

#include "basics/quote.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "io/file_bytes.h"
#include "widgets/column_text.h"
#include "widgets/plain_text.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

QString signedAmount(Money amount) {
    return amount > Money() ? u'+' + text(formatMoney(amount)) : text(formatMoney(amount));
}

FigureRow changeRow(const ListedPrice& listed, const PriceBook& prices) {
    FigureRow row;
    const Money now = listed.price.price;
    row.cells = {wordCell(prices.profileName(listed.profile)),
        lengthCell(listed.length, prices.shop().lengths()),
        listed.before ? moneyCell(*listed.before)
                      : FigureCell{PriceListDialog::tr("new stick"), std::nullopt},
        moneyCell(now),
        listed.before ? FigureCell{signedAmount(now - *listed.before),
            static_cast<double>((now - *listed.before).cents())}
                      : emptyCell(),
        wordCell(isoDate(listed.price.from)),
        {PriceListDialog::tr("%1 a %2").arg(
             text(formatUnitPrice(listed.price.quoted)), text(word(listed.price.per))),
            std::nullopt}};
    row.from = PriceListDialog::tr("Line %1 of the file.").arg(listed.line);
    return row;
}

} // namespace

PriceListDialog::PriceListDialog(Desk& desk, QWidget* parent)
    : QDialog(parent)
    , m_desk(desk)
    , m_supplier(new QLineEdit)
    , m_from(new QLineEdit(text(isoDate(desk.clock().today()))))
    , m_per(new QComboBox)
    , m_message(
          plainLabel(tr("Choose a price list: a row of titles with profile, length and price, and "
                        "perhaps per, from and supplier. A price by length without one is "
                        "for every stick of its profile.")))
    , m_changes(new FigureView(tr("What changes"),
          {tr("Profile"), tr("Length"), tr("Before"), tr("After"), tr("Difference"), tr("From"),
              tr("Quoted")}))
    , m_rejected(new FigureView(tr("What is wrong"), {tr("Line"), tr("Column"), tr("Why")}))
    , m_bring(new QPushButton) {
    setWindowTitle(tr("Bring in a supplier's prices"));
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(m_changes);
    split->addWidget(m_rejected);
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 1);
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(m_bring, QDialogButtonBox::AcceptRole);
    QPushButton* none = buttons->addButton(tr("Bring in nothing"), QDialogButtonBox::RejectRole);
    connect(m_bring, &QPushButton::clicked, this, &PriceListDialog::bringIn);
    connect(none, &QPushButton::clicked, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(askPart());
    layout->addWidget(m_message);
    layout->addWidget(split, 1);
    layout->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 36);
    showReading();
}

QWidget* PriceListDialog::askPart() {
    auto* part = new QWidget;
    auto* form = new QFormLayout(part);
    form->setContentsMargins(0, 0, 0, 0);
    auto* choose = new QPushButton(tr("Choose a &file\u2026"));
    connect(choose, &QPushButton::clicked, this, &PriceListDialog::chooseFile);
    form->addRow(choose);
    const auto add = [&](const QString& label, QWidget* field) {
        form->addRow(label, field);
        field->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    };
    add(tr("&Supplier, where the file names none"), m_supplier);
    add(tr("Prices hold &from, where the file says no day"), m_from);
    for (const auto& each : Words<PricePer>::list)
        m_per->addItem(text(each.text));
    add(tr("Prices are &per, where the file does not say"), m_per);
    connect(m_supplier, &QLineEdit::editingFinished, this, &PriceListDialog::readAgain);
    connect(m_from, &QLineEdit::editingFinished, this, &PriceListDialog::readAgain);
    connect(m_per, &QComboBox::activated, this, &PriceListDialog::readAgain);
    return part;
}

QString PriceListDialog::message() const {
    return m_message->text();
}

void PriceListDialog::chooseFile() {
    const QString path = QFileDialog::getOpenFileName(this, windowTitle(),
        m_path.isEmpty() ? QDir::homePath() : QFileInfo(m_path).path(),
        tr("Price lists (*.csv *.txt *.tsv);;All files (*)"));
    if (!path.isEmpty())
        readFile(path);
}

bool PriceListDialog::readFile(const QString& path) {
    m_path = path;
    m_bytes.clear();
    m_reading.reset();
    const auto bytes = readFileBytes(utf8(path));
    if (!bytes) {
        showReading();
        m_message->setText(text(bytes.error().sentence));
        return false;
    }
    m_bytes = *bytes;
    readAgain();
    return m_reading.has_value();
}

Result<PriceListReading> PriceListDialog::readNow() const {
    const auto from = dayIn(m_from->text(), m_desk.book());
    if (!from)
        return from.error();
    return readPriceList(m_bytes, m_desk.book().prices,
        {utf8(m_supplier->text().trimmed()), *from,
            Words<PricePer>::list.at(static_cast<std::size_t>(m_per->currentIndex())).value});
}

void PriceListDialog::readAgain() {
    if (m_path.isEmpty())
        return;
    m_reading.reset();
    auto reading = readNow();
    if (reading)
        m_reading = std::move(*reading);
    showReading();
    if (!m_reading)
        m_message->setText(text(reading.error().sentence));
}

QString PriceListDialog::summary() const {
    QString said = QFileInfo(m_path).fileName() + QStringLiteral(": ")
        + tr("%1 prices change, %2 are so already, %3 are wrong.")
              .arg(m_reading->changes.size())
              .arg(m_reading->unchanged)
              .arg(m_reading->rejected.size());
    if (!m_reading->rejected.empty())
        said += QLatin1Char(' ')
            + tr("Put right what is wrong in the file: the list comes in whole or "
                 "not at all.");
    for (const std::string& title : m_reading->unmapped)
        said += QLatin1Char(' ') + tr("The column \"%1\" was not understood.").arg(text(title));
    return said;
}

void PriceListDialog::showReading() {
    const bool whole = m_reading && m_reading->rejected.empty();
    const auto count = m_reading ? qsizetype(m_reading->changes.size()) : 0;
    m_bring->setText(counted(count, tr("Bring in 1 price"), tr("Bring in %1 prices")));
    m_bring->setEnabled(whole && count > 0);
    std::vector<FigureRow> changes;
    std::vector<FigureRow> rejected;
    if (m_reading) {
        for (const ListedPrice& listed : m_reading->changes)
            changes.push_back(changeRow(listed, m_desk.book().prices));
        for (const ListRejection& each : m_reading->rejected) {
            rejected.push_back(
                {{countCell(each.line), wordCell(each.column), wordCell(each.reason)}, {}, false});
        }
        m_message->setText(summary());
    }
    m_changes->setRows(std::move(changes));
    m_rejected->setRows(std::move(rejected));
}

void PriceListDialog::bringIn() {
    if (!m_reading)
        return;
    const auto edit = priceListEdit(
        m_desk.book(), m_desk.ids(), *m_reading, utf8(QFileInfo(m_path).fileName()));
    if (!edit)
        m_message->setText(text(edit.error().sentence));
    else if (m_desk.perform(*edit))
        accept();
}

} // namespace miterbook
