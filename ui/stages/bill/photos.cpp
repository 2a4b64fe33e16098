// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/photos.h"

#include "basics/quote.h"
#include "desk/desk.h"
#include "desk/text.h"
#include "stages/bill/bill_desk.h"
#include "widgets/plain_text.h"
#include "widgets/spoken_role.h"

#include <QBuffer>
#include <QDialog>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QImageReader>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr int longestSide = 1600;
constexpr int shownWidth = 640;

std::vector<Attachment> photosOf(const BillDesk& bill, const Extra& extra) {
    std::vector<Attachment> photos;
    if (!bill.house())
        return photos;
    for (const auto& [id, photo] : bill.book().sheet(bill.house()->work).of<Attachment>()) {
        if (photo.extra == extra.id)
            photos.push_back(photo);
    }
    return photos;
}

/// JPEG bytes small enough to be kept, coarser until they are.
QByteArray smallEnough(const QImage& image) {
    QByteArray bytes;
    for (int quality = 80; quality >= 20; quality -= 20) {
        bytes.clear();
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        image.save(&buffer, "JPEG", quality);
        if (bytes.size() <= qsizetype(Attachment::mostBytes))
            break;
    }
    return bytes;
}

void addPicture(QVBoxLayout& layout, const Attachment& photo, BillDesk& bill, QDialog& dialog) {
    const QImage image = QImage::fromData(
        QByteArray::fromBase64(QByteArray::fromStdString(photo.content.text)));
    auto* picture = new QLabel;
    picture->setPixmap(QPixmap::fromImage(image.scaledToWidth(
        std::min(shownWidth, std::max(1, image.width())), Qt::SmoothTransformation)));
    picture->setAccessibleName(QObject::tr("Photo %1").arg(text(photo.name)));
    layout.addWidget(picture);
    layout.addWidget(
        hintLabel(text(photo.name) + QStringLiteral("   ") + text(isoDate(photo.date))));
    auto* remove = new QPushButton(QObject::tr("Take it away"));
    remove->setAutoDefault(false);
    QObject::connect(remove, &QPushButton::clicked, &dialog, [&bill, &dialog, id = photo.id] {
        const Result<Edit> edit = EditBuilder(bill.book(), "Take a photo away").remove(id).take();
        if (bill.perform(edit))
            dialog.accept();
    });
    layout.addWidget(remove, 0, Qt::AlignLeft);
}

} // namespace

Result<Attachment> photoFrom(const QString& path) {
    const std::string name = utf8(QFileInfo(path).fileName());
    QImageReader reader(path);
    reader.setAutoTransform(true);
    QImage image = reader.read();
    if (image.isNull()) {
        return badInput(
            inQuotes(name) + " cannot be read as a picture: " + utf8(reader.errorString()) + ".");
    }
    if (std::max(image.width(), image.height()) > longestSide)
        image = image.scaled(
            longestSide, longestSide, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    Attachment photo;
    photo.name = name;
    photo.type = "image/jpeg";
    photo.content.text
        = smallEnough(image.convertToFormat(QImage::Format_RGB888)).toBase64().toStdString();
    return photo;
}

void choosePhoto(BillDesk& bill, const Extra& extra, QWidget* parent) {
    const QString path = QFileDialog::getOpenFileName(parent->window(),
        QObject::tr("Photo of the extra"), QDir::homePath(),
        QObject::tr("Pictures (*.jpg *.jpeg *.png);;All files (*)"));
    if (path.isEmpty() || !bill.house())
        return;
    auto photo = photoFrom(path);
    if (!photo) {
        bill.desk().refuse(photo.error());
        return;
    }
    photo->id = bill.desk().ids().next<Attachment>();
    photo->plan = bill.house()->work;
    photo->extra = extra.id;
    photo->date = bill.today();
    bill.perform(putEdit(bill.book(), "Add a photo to " + extra.title, *photo));
}

void showPhotosOf(BillDesk& bill, const Extra& extra, QWidget* parent) {
    QDialog dialog(parent);
    dialog.setWindowTitle(QObject::tr("Photos"));
    auto* pictures = new QWidget;
    auto* column = new QVBoxLayout(pictures);
    const auto photos = photosOf(bill, extra);
    for (const Attachment& photo : photos)
        addPicture(*column, photo, bill, dialog);
    if (photos.empty())
        column->addWidget(plainLabel(QObject::tr("No photo has been added to this extra.")));
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setWidget(pictures);
    area->setAccessibleName(QObject::tr("Photos of the extra"));
    speakAs(*area, QAccessible::Document);
    auto* layout = new QVBoxLayout(&dialog);
    layout->addWidget(area);
    dialog.resize(shownWidth + 80, shownWidth);
    dialog.exec();
}

} // namespace miterbook
