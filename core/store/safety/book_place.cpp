// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/book_place.h"

#include "store/file_header.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QStorageInfo>

#include <algorithm>
#include <array>

namespace miterbook {

namespace {

/// As /proc/self/mountinfo names them.
constexpr std::array<std::string_view, 16> networkDrives{"nfs", "nfs4", "cifs", "smb3", "smbfs",
    "afs", "9p", "ceph", "davfs", "ncpfs", "fuse.sshfs", "fuse.davfs2", "fuse.rclone",
    "fuse.glusterfs", "fuse.gvfsd-fuse", "fuse.s3fs"};

/// What programs that keep folders alike on several machines leave in them, and not in the user's
/// home folder, where some of them keep their settings.
constexpr std::array marks{".dropbox.cache", ".stfolder", ".stversions", ".owncloudsync.log",
    "._sync_*.db", ".sync_*.db", ".csync_journal.db", ".SynologyWorkingDirectory"};

bool hasMark(const QDir& folder) {
    QStringList names;
    for (const char* mark : marks)
        names << QString::fromLatin1(mark);
    return !folder.entryList(names, QDir::AllEntries | QDir::Hidden | QDir::System).isEmpty();
}

bool isSynced(QDir folder) {
    do {
        if (hasMark(folder))
            return true;
    } while (folder.cdUp());
    return false;
}

/// "shop (conflicted copy 2026-11-26).miterbook", "shop.sync-conflict-20261126.miterbook",
/// "shop-bench2.miterbook (Case Conflict)": the book's own name and the word conflict.
std::vector<std::string> straysBeside(const QFileInfo& book) {
    static const QRegularExpression word(
        QStringLiteral("conflict"), QRegularExpression::CaseInsensitiveOption);
    std::vector<std::string> strays;
    for (const QString& name : book.dir().entryList(QDir::Files, QDir::Name)) {
        if (name != book.fileName() && name.startsWith(book.completeBaseName())
            && name.contains(word))
            strays.push_back(name.toStdString());
    }
    return strays;
}

std::string strayWarning(const std::vector<std::string>& strays) {
    if (strays.empty())
        return {};
    return " Beside it lies " + shownName(strays.front())
        + (strays.size() > 1 ? " and " + std::to_string(strays.size() - 1) + " more" : "")
        + ": what was entered on another machine may stand only there.";
}

} // namespace

bool isNetworkDrive(std::string_view fileSystem) {
    return std::ranges::find(networkDrives, fileSystem) != networkDrives.end();
}

BookPlace placeOf(const std::string& book) {
    const QFileInfo info(QFileInfo(QString::fromStdString(book)).canonicalFilePath());
    BookPlace place;
    if (!info.exists())
        return place;
    place.network = isNetworkDrive(QStorageInfo(info.dir()).fileSystemType().toStdString());
    place.synced = isSynced(info.dir());
    place.strays = straysBeside(info);
    return place;
}

std::string placeWarning(const BookPlace& place) {
    std::string text;
    if (place.network) {
        text = "This book lies on a network drive, where a broken connection can damage it and "
               "where the mark that it is in use cannot be relied upon. Keep it on this machine's "
               "disk and carry a snapshot.";
    } else if (place.synced) {
        text = "This book lies in a folder that is copied to other machines by itself. Do not open "
               "it on two of them at a time: each would go its own way. Close it here before it is "
               "opened there, or carry a snapshot.";
    }
    if (!place.strays.empty() && text.empty())
        text = "There may be two versions of this book.";
    return text + strayWarning(place.strays);
}

} // namespace miterbook
