// SPDX-License-Identifier: GPL-3.0-or-later
// A file that says it is a book.
#include "fuzz/must.h"
#include "fuzz/targets.h"

#include "papers/freeze.h"
#include "store/book_file.h"
#include "store/safety/book_check.h"
#include "store/safety/salvage.h"
#include "support/small_book.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include <algorithm>
#include <fstream>
#include <iterator>

namespace miterbook::fuzz {

namespace {

/// A place for the file; in memory where the machine has one.
class Place {
public:
    Place()
        : m_folder(QStringLiteral("/dev/shm/miterbook-fuzz-XXXXXX")) {}
    std::string file(const char* name) const {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }

private:
    QTemporaryDir m_folder;
};

void needApplication() {
    static int count = 1;
    static char name[] = "fuzz";
    static char* arguments[] = {name, nullptr};
    if (!QCoreApplication::instance())
        new QCoreApplication(count, arguments); // lives as long as the program
}

/// A book of ours, made once.
const std::string& soundBook(const Place& place) {
    static const std::string bytes = [&] {
        const std::string path = place.file("sound.miterbook");
        must(createBook(path, smallBook()).ok(), "a book can be made");
        std::ifstream file(path, std::ios::binary);
        return std::string{std::istreambuf_iterator<char>(file), {}};
    }();
    return bytes;
}

/// A script of damage to it: three bytes say where, one how much, then what is put there.
std::string damagedBy(std::string_view script, std::string book) {
    constexpr std::size_t head = 4;
    constexpr std::size_t longest = 32;
    const auto byte
        = [&](std::size_t i) { return std::size_t(static_cast<unsigned char>(script[i])); };
    while (script.size() > head) {
        const std::size_t at = (byte(0) << 16 | byte(1) << 8 | byte(2)) % book.size();
        const std::size_t count = std::min(
            {byte(3) % longest + 1, script.size() - head, book.size() - at});
        std::copy_n(script.begin() + head, count, book.begin() + static_cast<std::ptrdiff_t>(at));
        script.remove_prefix(head + count);
    }
    return book;
}

void readAll(BookKeeper& keeper) {
    const auto book = keeper.load();
    if (!book)
        return must(!book.error().sentence.empty(), "a refusal has a sentence");
    for (const auto& [id, plan] : book->jobs.of<Plan>()) {
        const auto rows = keeper.loadPlan(id);
        if (!rows)
            continue;
        for (const auto& [number, paper] : rows->of<IssuedPaper>())
            (void)paperAsIssued(paper, {});
    }
    (void)keeper.loadTime({});
    (void)keeper.journal();
}

} // namespace

void openBookFile(std::string_view bytes) {
    needApplication();
    static const Place place;
    const std::string path = place.file("book.miterbook");
    const bool script = bytes.starts_with('P');
    const std::string content = script ? damagedBy(bytes.substr(1), soundBook(place))
                                       : std::string(bytes);
    std::ofstream(path, std::ios::binary | std::ios::trunc) << content;
    if (auto keeper = openBook(path, OpenMode::look))
        readAll(**keeper);
    else
        must(!keeper.error().sentence.empty(), "a refusal has a sentence");
    (void)checkBook(path);
    const std::string saved = place.file("saved.miterbook");
    if (salvageBook(path, saved, SystemClock())) {
        const auto check = checkBook(saved);
        must(check.ok() && check->sound(), "what is salvaged is sound");
    }
    std::remove(saved.c_str());
}

} // namespace miterbook::fuzz
