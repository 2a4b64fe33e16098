// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/safety_words.h"

#include <QDateTime>
#include <QLocale>

namespace miterbook {

namespace {

std::string counted(std::int64_t count, const char* one, const char* several) {
    return std::to_string(count) + " " + (count == 1 ? one : several);
}

} // namespace

std::string localTime(const std::string& at) {
    const QDateTime time = QDateTime::fromString(QString::fromStdString(at), Qt::ISODate);
    return time.isValid()
        ? time.toLocalTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString()
        : at;
}

std::string summaryWords(const BookSummary& summary) {
    const std::string holds = counted(summary.houses, "house", "houses") + ", "
        + counted(summary.plans, "plan", "plans");
    if (summary.lastAt.empty())
        return holds;
    return holds + "; last change " + localTime(summary.lastAt) + ": " + summary.lastSentence;
}

std::string reasonWords(BackupReason reason) {
    switch (reason) {
    case BackupReason::opened:
        return "when the book was opened";
    case BackupReason::daily:
        return "of the day";
    case BackupReason::olderFormat:
        return "before a newer program changed its format";
    case BackupReason::replaced:
        return "before another took its place";
    case BackupReason::damaged:
        return "as it was found, damaged";
    }
    return {};
}

std::string sizeWords(std::int64_t bytes) {
    return QLocale::c()
        .formattedDataSize(bytes, 1, QLocale::DataSizeTraditionalFormat)
        .toStdString();
}

} // namespace miterbook
