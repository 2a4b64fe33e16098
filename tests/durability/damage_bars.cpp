// SPDX-License-Identifier: GPL-3.0-or-later
// Damaged files: no crash, no hang, no issued paper that is another than was issued.
#include "durability/bar.h"
#include "papers/freeze.h"
#include "store/safety/book_check.h"
#include "store/safety/salvage.h"
#include "support/billed_house.h"
#include "support/book_files.h"
#include "support/random_values.h"

#include <algorithm>
#include <filesystem>
#include <functional>
#include <map>

namespace miterbook {

namespace {

constexpr std::size_t pageBytes = 4096;

using PaperTexts = std::map<int, std::string>;

/// A book with three invoices issued, to be damaged.
class DamageTry {
public:
    DamageTry() {
        auto keeper = createBook(m_path, billedHouse());
        auto workbook = Workbook::open(**keeper);
        (void)workbook->openPlan(lot7Plan);
        for (const int percent : {20, 50, 80}) {
            (void)issue(*workbook,
                drawOf(workbook->book(), marchDay(percent / 3), {{PieceOfWork::doors, percent}}));
        }
        for (const auto& [id, paper] : workbook->book().sheet(lot7Plan).of<IssuedPaper>())
            m_issued[paper.number] = freezePaper(*paperAsIssued(paper, {})).value();
        workbook = Error{};
        keeper->reset();
        m_bytes = bytesOf(m_path);
    }

    const std::string& bytes() const { return m_bytes; }
    void put(const std::string& bytes) const {
        std::filesystem::remove(m_path + "-journal");
        writeBytes(m_path, bytes);
    }

    /// Opens the book and prints every issued paper that it gives. Value: what is wrong with those
    /// that it gives without an error; empty when all is well.
    std::string changedInSilence() const {
        auto keeper = openBook(m_path, OpenMode::look);
        if (!keeper)
            return keeper.error().sentence.empty() ? "an error without a sentence" : "";
        const auto rows = (*keeper)->loadPlan(lot7Plan);
        if (!rows)
            return {};
        for (const auto& [id, row] : rows->of<IssuedPaper>()) {
            const auto paper = paperAsIssued(row, {});
            if (!paper)
                continue;
            const auto known = m_issued.find(row.number);
            if (known == m_issued.end() || freezePaper(*paper).value() != known->second)
                return unlessChecked("invoice " + std::to_string(row.number) + " has changed");
        }
        return {};
    }

    /// Salvages the book. Value: what is wrong with what comes out.
    std::string badSalvage() const {
        const std::string saved = m_folder.file("saved.miterbook");
        std::filesystem::remove(saved);
        if (const auto report = salvageBook(m_path, saved, SystemClock()); !report)
            return std::filesystem::exists(saved) ? "refused, but there is a file" : "";
        const auto check = checkBook(saved);
        if (!check)
            return check.error().sentence;
        return check->sound() ? "" : "the salvaged book: " + check->findings.front();
    }

private:
    /// A number that stands beside the paper's text is no part of its hash; the check finds it by
    /// the journal.
    std::string unlessChecked(const std::string& what) const {
        const auto report = checkBook(m_path);
        return report && report->sound() ? what : "";
    }

    BookFolder m_folder;
    std::string m_path = m_folder.book();
    std::string m_bytes;
    PaperTexts m_issued;
};

std::string flipped(const std::string& bytes, RandomValues& random) {
    std::string changed = bytes;
    const std::size_t at = random.below(bytes.size());
    changed[at] = static_cast<char>(changed[at] ^ (1 << random.below(8)));
    return changed;
}

std::string shortened(const std::string& bytes, RandomValues& random) {
    return bytes.substr(0, random.below(bytes.size()));
}

std::string zeroed(const std::string& bytes, RandomValues& random) {
    std::string changed = bytes;
    const std::size_t page = random.below(bytes.size() / pageBytes);
    std::fill_n(changed.begin() + static_cast<std::ptrdiff_t>(page * pageBytes), pageBytes, '\0');
    return changed;
}

using Damage = std::function<std::string(const std::string&, RandomValues&)>;

Bar damageBar(const std::string& what, long count, std::uint32_t seed, const Damage& damage) {
    Bar bar{what, count, 0, {}, {}};
    const DamageTry book;
    RandomValues random(seed);
    for (; bar.tried < count; ++bar.tried) {
        book.put(damage(book.bytes(), random));
        if (const std::string wrong = book.changedInSilence(); !wrong.empty())
            bar.lose("try " + std::to_string(bar.tried) + ": " + wrong);
    }
    return bar;
}

} // namespace

Bar bitFlipBar(const Extent& extent) {
    return damageBar("a bit is turned: issued papers", extent.bitFlips, extent.seed, flipped);
}

Bar truncationBar(const Extent& extent) {
    return damageBar("a file is cut short", extent.truncations, extent.seed + 1, shortened);
}

Bar zeroedPageBar(const Extent& extent) {
    return damageBar("a page is zeroed", extent.zeroedPages, extent.seed + 2, zeroed);
}

Bar salvageBar(const Extent& extent) {
    Bar bar{"what is salvaged of such a book is sound", extent.salvages, 0, {}, {}};
    const DamageTry book;
    RandomValues random(extent.seed + 3);
    const std::array<Damage, 3> damages{flipped, shortened, zeroed};
    for (; bar.tried < extent.salvages; ++bar.tried) {
        book.put(damages[static_cast<std::size_t>(bar.tried) % 3](book.bytes(), random));
        if (const std::string wrong = book.badSalvage(); !wrong.empty())
            bar.lose("try " + std::to_string(bar.tried) + ": " + wrong);
    }
    return bar;
}

} // namespace miterbook
