// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/decoded_text.h"

#include <QString>
#include <QStringDecoder>

#include <algorithm>
#include <array>

namespace miterbook {

namespace {

/// What Windows-1252 has at 0x80 to 0x9F, where Latin-1 has controls (Unicode mapping CP1252.TXT);
/// the five places it leaves empty stay what they are in Latin-1.
constexpr std::array<char16_t, 32> windows1252 = {0x20AC, 0x81, 0x201A, 0x0192, 0x201E, 0x2026,
    0x2020, 0x2021, 0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0x8D, 0x017D, 0x8F, 0x90, 0x2018,
    0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x9D,
    0x017E, 0x0178};

QString fromWindows1252(QByteArrayView bytes) {
    QString text = QString::fromLatin1(bytes);
    for (QChar& c : text) {
        const char16_t code = c.unicode();
        if (code >= 0x80 && code < 0xA0)
            c = QChar(windows1252[code - 0x80]);
    }
    return text;
}

/// The text when the bytes are sound in `encoding`, else a null string.
QString soundText(QByteArrayView bytes, QStringConverter::Encoding encoding) {
    QStringDecoder decoder(encoding, QStringConverter::Flag::Stateless);
    QString text = decoder(bytes);
    return decoder.hasError() ? QString() : text;
}

/// Control characters that no cell needs and no row may hold.
bool isStray(QChar c) {
    const char16_t code = c.unicode();
    const bool control = code < 0x20 || (code >= 0x7F && code < 0xA0);
    return control && code != u'\t' && code != u'\r' && code != u'\n';
}

QString fromUtf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

bool startsWith(std::string_view bytes, std::string_view mark) {
    return bytes.substr(0, mark.size()) == mark;
}

} // namespace

Result<std::string> decodedText(std::string_view bytes) {
    const QByteArrayView view(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QString text;
    if (startsWith(bytes, "\xFF\xFE") || startsWith(bytes, "\xFE\xFF"))
        text = soundText(view, QStringConverter::Utf16);
    if (text.isNull())
        text = soundText(view, QStringConverter::Utf8);
    if (text.isNull())
        text = fromWindows1252(view);
    if (const auto nul = text.indexOf(QChar(u'\0')); nul >= 0)
        return badInput("It is not a text file: there is a NUL byte in line "
            + std::to_string(QStringView(text).left(nul).count(u'\n') + 1) + ".");
    text.removeIf(isStray);
    return text.toStdString();
}

std::string singleLine(std::string_view text) {
    return fromUtf8(text).simplified().toStdString();
}

std::string quotedCell(std::string_view text) {
    return "\"" + singleLine(text) + "\"";
}

std::string foldedText(std::string_view text) {
    return fromUtf8(text).simplified().toLower().toStdString();
}

std::string trimmedText(std::string_view text) {
    return fromUtf8(text).trimmed().toStdString();
}

} // namespace miterbook
