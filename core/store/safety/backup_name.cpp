// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/backup_name.h"

#include <algorithm>
#include <charconv>

namespace miterbook {

namespace {

constexpr std::string_view bookEnding = ".miterbook";
constexpr std::string_view timePattern = "0000-00-00T00-00-00Z";

bool fitsTime(std::string_view text) {
    return text.size() == timePattern.size()
        && std::ranges::equal(text, timePattern, [](char found, char wanted) {
               return wanted == '0' ? found >= '0' && found <= '9' : found == wanted;
           });
}

/// Files cannot have a colon in their name everywhere.
std::string timeInName(std::string_view at) {
    std::string text(at);
    std::ranges::replace(text, ':', '-');
    return text;
}

std::string timeOfName(std::string_view text) {
    std::string at(text);
    at[13] = at[16] = ':';
    return at;
}

/// "daily" or "daily-2".
std::optional<BackupReason> reasonOf(std::string_view text) {
    const std::size_t dash = text.find('-');
    if (dash != std::string_view::npos) {
        int n = 0;
        const auto [end, fault] = std::from_chars(
            text.data() + dash + 1, text.data() + text.size(), n);
        if (fault != std::errc() || end != text.data() + text.size() || n < 2)
            return std::nullopt;
    }
    return fromWord<BackupReason>(text.substr(0, dash));
}

} // namespace

Date dayOf(const Backup& backup) {
    return parseIsoDate(std::string_view(backup.at).substr(0, 10)).valueOr(noDate);
}

std::string backupFolder(const std::string& book) {
    return book + ".backups";
}

std::string backupName(std::string_view at, BackupReason reason, int n) {
    std::string name = timeInName(at) + "-" + std::string(word(reason));
    if (n > 1)
        name += "-" + std::to_string(n);
    return name + std::string(bookEnding);
}

std::optional<Backup> readBackupName(std::string_view name) {
    if (!name.ends_with(bookEnding))
        return std::nullopt;
    name.remove_suffix(bookEnding.size());
    const std::string_view time = name.substr(0, timePattern.size());
    if (!fitsTime(time) || name.size() <= time.size() + 1 || name[time.size()] != '-')
        return std::nullopt;
    const auto reason = reasonOf(name.substr(time.size() + 1));
    if (!reason)
        return std::nullopt;
    Backup backup{{}, timeOfName(time), *reason, 0};
    if (dayOf(backup) == noDate)
        return std::nullopt;
    return backup;
}

} // namespace miterbook
