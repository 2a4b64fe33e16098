// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <QByteArray>
#include <QWidget>

class QLabel;
class QPushButton;

namespace miterbook {

class Desk;

/// A picture file made fit for a letterhead: no larger than prints sharp at its size, as PNG, or as
/// JPEG where that would be too large. A drawing (SVG) becomes a picture, so that nothing in it is
/// ever followed. Errors: a sentence naming the file.
struct LetterheadPicture {
    QByteArray bytes;
    std::string type; ///< "image/png" or "image/jpeg"
};
Result<LetterheadPicture> letterheadPicture(const QString& path);

/// The shop's logo: shown, chosen from a file, left off.
class LogoForm final : public QWidget {
    Q_OBJECT
public:
    explicit LogoForm(Desk& desk, QWidget* parent = nullptr);

    /// Takes a file as the logo. False when it was refused; the desk has then said why.
    bool takeFile(const QString& path);

private:
    void choose();
    void leave();
    void refresh();

    Desk& m_desk;
    QLabel* m_picture;
    QPushButton* m_leave;
};

} // namespace miterbook
