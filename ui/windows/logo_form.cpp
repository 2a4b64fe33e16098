// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/logo_form.h"

#include "basics/quote.h"
#include "desk/desk.h"
#include "desk/text.h"
#include "job/logo_edits.h"

#include <QBuffer>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QImageReader>
#include <QLabel>
#include <QPushButton>

namespace miterbook {

namespace {

constexpr QSize sharpest(1600, 480); ///< 600 dots an inch where it prints largest
constexpr QSize shown(320, 72);

QByteArray written(const QImage& image, const char* format, int quality) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format, quality);
    return bytes;
}

QImage readPicture(QImageReader& reader) {
    const QSize size = reader.size();
    const bool isDrawing = reader.format() == "svg" || reader.format() == "svgz";
    const bool isLarger = size.width() > sharpest.width() || size.height() > sharpest.height();
    if (size.isValid() && (isDrawing || isLarger))
        reader.setScaledSize(size.scaled(sharpest, Qt::KeepAspectRatio));
    return reader.read();
}

} // namespace

Result<LetterheadPicture> letterheadPicture(const QString& path) {
    const std::string name = inQuotes(utf8(QFileInfo(path).fileName()));
    QImageReader reader(path);
    reader.setAutoTransform(true);
    const QImage image = readPicture(reader);
    if (image.isNull())
        return badInput(name + " cannot be read as a picture: " + utf8(reader.errorString()) + ".");
    constexpr qsizetype most = Logo::mostBytes;
    if (QByteArray png = written(image, "PNG", -1); png.size() <= most)
        return LetterheadPicture{png, "image/png"};
    QImage onWhite(image.size(), QImage::Format_RGB888);
    onWhite.fill(Qt::white);
    QPainter(&onWhite).drawImage(0, 0, image);
    for (int quality = 90; quality >= 30; quality -= 20) {
        if (QByteArray jpeg = written(onWhite, "JPEG", quality); jpeg.size() <= most)
            return LetterheadPicture{jpeg, "image/jpeg"};
    }
    return badInput(name + " stays over 300 KB, the most that is kept for a letterhead.");
}

LogoForm::LogoForm(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_picture(new QLabel)
    , m_leave(new QPushButton(tr("&Leave it off"))) {
    m_picture->setTextFormat(Qt::PlainText);
    m_picture->setAlignment(Qt::AlignCenter);
    m_picture->setFixedSize(shown + QSize(12, 12));
    m_picture->setFrameShape(QFrame::StyledPanel);
    auto* choose = new QPushButton(tr("&Choose a logo\u2026"));
    for (QPushButton* button : {choose, m_leave})
        button->setAutoDefault(false);
    connect(choose, &QPushButton::clicked, this, &LogoForm::choose);
    connect(m_leave, &QPushButton::clicked, this, &LogoForm::leave);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(m_picture);
    line->addWidget(choose);
    line->addWidget(m_leave);
    line->addStretch(1);
    connect(&desk, &Desk::changed, this, [this](const Changes& changes) {
        if (touches<Shop, Logo>(changes))
            refresh();
    });
    refresh();
}

void LogoForm::refresh() {
    const PriceBook& prices = m_desk.book().prices;
    const Logo* logo = prices.of<Logo>().find(prices.shop().logo);
    m_leave->setEnabled(logo != nullptr);
    m_picture->setPixmap({});
    m_picture->setStyleSheet({});
    if (!logo) {
        m_picture->setText(tr("No logo: papers bear the name alone."));
        m_picture->setWordWrap(true);
        m_picture->setAccessibleName(m_picture->text());
        return;
    }
    const auto pixmap = QPixmap::fromImage(
        QImage::fromData(QByteArray::fromStdString(logo->content.content())));
    m_picture->setPixmap(pixmap.scaled(shown, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    // As on paper, whatever the screen's colours are.
    m_picture->setStyleSheet(QStringLiteral("background: white"));
    m_picture->setAccessibleName(tr("Logo %1").arg(text(logo->name)));
}

void LogoForm::choose() {
    const QString path = QFileDialog::getOpenFileName(window(), tr("Logo for the letterhead"),
        QDir::homePath(), tr("Pictures (*.png *.jpg *.jpeg *.svg);;All files (*)"));
    if (!path.isEmpty())
        takeFile(path);
}

bool LogoForm::takeFile(const QString& path) {
    const auto picture = letterheadPicture(path);
    if (!picture) {
        m_desk.refuse(picture.error());
        return false;
    }
    const auto edit = takeLogo(m_desk.book(), m_desk.ids(), utf8(QFileInfo(path).fileName()),
        picture->type, picture->bytes.toStdString());
    if (!edit) {
        m_desk.refuse(edit.error());
        return false;
    }
    return m_desk.perform(*edit);
}

void LogoForm::leave() {
    m_desk.perform(leaveLogo(m_desk.book()));
}

} // namespace miterbook
