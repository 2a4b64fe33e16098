// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/fault_disk.h"

#include <sqlite3.h>

#include <cassert>
#include <cstring>
#include <fstream>
#include <iterator>
#include <map>
#include <optional>
#include <vector>

namespace miterbook {

namespace {

/// A change of a file that has not been synced.
struct Unsynced {
    enum Kind { write, shorten, remove } kind = write;
    sqlite3_int64 at = 0;
    std::string bytes;
};

struct Image {
    std::optional<std::string> durable; ///< what a power loss leaves; nothing: no such file
    std::vector<Unsynced> pending;
    int open = 0; ///< handles on it
};

struct State {
    DiskFault fault = DiskFault::none;
    int at = 0;
    int count = 0;
    bool met = false;
    long long room = -1;
    std::map<std::string, Image> images;
};

State state;
sqlite3_vfs* realDisk = nullptr;
sqlite3_vfs testDisk;

std::optional<std::string> contentOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return std::nullopt;
    return std::string{std::istreambuf_iterator<char>(file), {}};
}

void applyTo(std::optional<std::string>& content, const Unsynced& change, std::size_t bytes) {
    if (change.kind == Unsynced::remove) {
        content.reset();
        return;
    }
    std::string& held = content ? *content : content.emplace();
    const auto at = static_cast<std::size_t>(change.at);
    if (change.kind == Unsynced::shorten)
        return held.resize(std::min(held.size(), at));
    if (held.size() < at + bytes)
        held.resize(at + bytes);
    std::memcpy(held.data() + at, change.bytes.data(), bytes);
}

/// Whether the operation meets the fault; `fits` says whether it can.
bool meets(bool fits) {
    if (state.fault == DiskFault::powerLoss || state.fault == DiskFault::none)
        fits = true;
    if (!fits)
        return false;
    ++state.count;
    if (state.fault == DiskFault::none || state.at == 0)
        return false;
    const bool lasting = state.fault == DiskFault::powerLoss || state.fault == DiskFault::full;
    const bool now = lasting ? state.count >= state.at : state.count == state.at;
    state.met = state.met || now;
    return now;
}

struct TestFile {
    sqlite3_file base;
    sqlite3_file* real;
    Image* image;
};

sqlite3_file* realOf(sqlite3_file* file) {
    return reinterpret_cast<TestFile*>(file)->real;
}

Image* imageOf(sqlite3_file* file) {
    return reinterpret_cast<TestFile*>(file)->image;
}

int closeFile(sqlite3_file* file) {
    sqlite3_file* real = realOf(file);
    if (imageOf(file))
        --imageOf(file)->open;
    return real->pMethods ? real->pMethods->xClose(real) : SQLITE_OK;
}

int readFile(sqlite3_file* file, void* to, int bytes, sqlite3_int64 at) {
    sqlite3_file* real = realOf(file);
    return real->pMethods->xRead(real, to, bytes, at);
}

int writeReal(sqlite3_file* file, const void* from, int bytes, sqlite3_int64 at) {
    sqlite3_file* real = realOf(file);
    const int code = real->pMethods->xWrite(real, from, bytes, at);
    if (code == SQLITE_OK && imageOf(file))
        imageOf(file)->pending.push_back({Unsynced::write, at,
            std::string(static_cast<const char*>(from), static_cast<std::size_t>(bytes))});
    return code;
}

bool takesTooMuch(sqlite3_file* file, int bytes, sqlite3_int64 at) {
    if (state.room < 0)
        return false;
    sqlite3_int64 size = 0;
    sqlite3_file* real = realOf(file);
    real->pMethods->xFileSize(real, &size);
    const long long growth = at + bytes - size;
    if (growth <= 0)
        return false;
    if (growth > state.room) {
        state.met = true;
        return true;
    }
    state.room -= growth;
    return false;
}

int writeFile(sqlite3_file* file, const void* from, int bytes, sqlite3_int64 at) {
    const DiskFault fault = state.fault;
    const bool fits = fault == DiskFault::writeFails || fault == DiskFault::writeTears
        || fault == DiskFault::full;
    if (meets(fits)) {
        if (fault == DiskFault::writeTears)
            writeReal(file, from, bytes / 2, at);
        return fault == DiskFault::full ? SQLITE_FULL : SQLITE_IOERR_WRITE;
    }
    return takesTooMuch(file, bytes, at) ? SQLITE_FULL : writeReal(file, from, bytes, at);
}

int shortenFile(sqlite3_file* file, sqlite3_int64 size) {
    if (meets(state.fault == DiskFault::shortenFails))
        return SQLITE_IOERR_TRUNCATE;
    sqlite3_file* real = realOf(file);
    const int code = real->pMethods->xTruncate(real, size);
    if (code == SQLITE_OK && imageOf(file))
        imageOf(file)->pending.push_back({Unsynced::shorten, size, {}});
    return code;
}

int syncFileNow(sqlite3_file* file, int flags) {
    if (meets(state.fault == DiskFault::syncFails))
        return SQLITE_IOERR_FSYNC;
    sqlite3_file* real = realOf(file);
    const int code = real->pMethods->xSync(real, flags);
    Image* image = imageOf(file);
    if (code != SQLITE_OK || !image)
        return code;
    if (!image->durable)
        image->durable.emplace();
    for (const Unsynced& change : image->pending)
        applyTo(image->durable, change, change.bytes.size());
    image->pending.clear();
    return code;
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size) {
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int lockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xLock(realOf(file), level);
}
int unlockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xUnlock(realOf(file), level);
}
int checkLock(sqlite3_file* file, int* held) {
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), held);
}
int controlFile(sqlite3_file* file, int operation, void* argument) {
    return realOf(file)->pMethods->xFileControl(realOf(file), operation, argument);
}
int sectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
/// An ordinary disk: nothing of what SQLite would like to rely upon.
int deviceTraits(sqlite3_file*) {
    return 0;
}

const sqlite3_io_methods fileMethods{1, closeFile, readFile, writeFile, shortenFile, syncFileNow,
    sizeOfFile, lockFile, unlockFile, checkLock, controlFile, sectorSize, deviceTraits, nullptr,
    nullptr, nullptr, nullptr, nullptr, nullptr};

Image* trackedImage(const char* name, int flags) {
    constexpr int tracked = SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_MAIN_JOURNAL;
    if (!name || (flags & tracked) == 0)
        return nullptr;
    Image& image = state.images[name];
    if (image.open == 0) // a test may have written the file since it was closed
        image = {contentOf(name), {}, 0};
    ++image.open;
    return &image;
}

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* flagsOut) {
    auto* opened = reinterpret_cast<TestFile*>(file);
    opened->base.pMethods = nullptr;
    if (state.fault == DiskFault::powerLoss && state.met)
        return SQLITE_IOERR;
    opened->image = trackedImage(name, flags);
    opened->real = reinterpret_cast<sqlite3_file*>(opened + 1);
    const int code = realDisk->xOpen(realDisk, name, opened->real, flags, flagsOut);
    if (code == SQLITE_OK)
        opened->base.pMethods = &fileMethods;
    else if (opened->image)
        --opened->image->open;
    return code;
}

int removeFile(sqlite3_vfs*, const char* name, int syncFolder) {
    const bool fits = state.fault == DiskFault::removeFails
        || state.fault == DiskFault::removeUnsaid;
    const bool met = meets(fits);
    if (met && state.fault != DiskFault::removeUnsaid)
        return SQLITE_IOERR_DELETE;
    const int code = realDisk->xDelete(realDisk, name, syncFolder);
    const auto it = state.images.find(name);
    if (code == SQLITE_OK && it != state.images.end()) {
        if (syncFolder)
            it->second = {std::nullopt, {}, it->second.open};
        else
            it->second.pending.push_back({Unsynced::remove, 0, {}});
    }
    return met ? SQLITE_IOERR_DIR_FSYNC : code;
}

void loseUnsynced(const std::string& path, const Image& image, RandomValues& random) {
    std::optional<std::string> content = image.durable;
    for (const Unsynced& change : image.pending) {
        constexpr std::size_t sector = 512;
        const std::size_t whole = change.bytes.size();
        switch (random.below(3)) {
        case 0:
            break; // never reached the disk
        case 1:
            applyTo(content, change, whole);
            break;
        default:
            applyTo(content, change, random.below(whole / sector + 1) * sector);
        }
    }
    if (!content) {
        std::remove(path.c_str());
        return;
    }
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file.write(content->data(), static_cast<std::streamsize>(content->size()));
}

} // namespace

DiskUnderTest::DiskUnderTest() {
    assert(!realDisk);
    realDisk = sqlite3_vfs_find(nullptr);
    testDisk = *realDisk;
    testDisk.zName = "miterbook-test-disk";
    testDisk.szOsFile = static_cast<int>(sizeof(TestFile)) + realDisk->szOsFile;
    testDisk.xOpen = openFile;
    testDisk.xDelete = removeFile;
    state = {};
    sqlite3_vfs_register(&testDisk, 1);
}

DiskUnderTest::~DiskUnderTest() {
    sqlite3_vfs_register(realDisk, 1);
    sqlite3_vfs_unregister(&testDisk);
    realDisk = nullptr;
    state = {};
}

void DiskUnderTest::failAt(int n, DiskFault fault) {
    state.fault = fault;
    state.at = n;
    state.count = 0;
    state.met = false;
}

void DiskUnderTest::heal() {
    state.fault = DiskFault::none;
    state.at = 0;
    state.room = -1;
}

int DiskUnderTest::counted() const {
    return state.count;
}

bool DiskUnderTest::failed() const {
    return state.met;
}

void DiskUnderTest::leaveRoom(long long bytes) {
    state.room = bytes;
    state.met = false;
}

void DiskUnderTest::losePower(RandomValues& random) {
    for (const auto& [path, image] : state.images)
        loseUnsynced(path, image, random);
    state.images.clear();
    heal();
}

} // namespace miterbook
