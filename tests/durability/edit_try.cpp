// SPDX-License-Identifier: GPL-3.0-or-later
#include "durability/edit_try.h"

#include "job/start_house.h"
#include "support/small_book.h"

#include <filesystem>

namespace miterbook {

namespace {

Edit startOf(const Book& book) {
    IdSource ids(1000);
    const HouseStart start{Id<Plan>(31), {{}, {Id<Variant>(40)}}, "Lot 3", "3", "", noDate};
    return startHouse(book, ids, start).value();
}

} // namespace

EditTry::EditTry()
    : m_old(smallBook())
    , m_new(m_old)
    , m_edit(startOf(m_old)) {
    (void)createBook(m_path, m_old);
    m_bytes = bytesOf(m_path);
    apply(m_new, m_edit);
}

bool EditTry::begin(Bar& bar) {
    close();
    std::filesystem::remove(m_path + "-journal");
    writeBytes(m_path, m_bytes);
    auto keeper = openBook(m_path, OpenMode::write);
    if (!keeper) {
        bar.lose("the book could not be opened: " + keeper.error().sentence);
        return false;
    }
    m_keeper = std::move(keeper).value();
    auto workbook = Workbook::open(*m_keeper);
    if (!workbook || !workbook->openPlan(Id<Plan>(31))) {
        bar.lose("the book could not be read");
        return false;
    }
    m_workbook.emplace(std::move(workbook).value());
    return true;
}

void EditTry::close() {
    m_workbook.reset();
    m_keeper.reset();
}

std::string EditTry::found() {
    auto keeper = openBook(m_path, OpenMode::write);
    if (!keeper)
        return keeper.error().sentence;
    const auto book = loadWhole(**keeper);
    if (!book)
        return book.error().sentence;
    if (const auto sound = (*keeper)->verify(); !sound)
        return sound.error().sentence;
    if (*book == m_old)
        return (*keeper)->journal()->size() == 1 ? "old" : "old rows, new journal";
    if (*book == m_new)
        return (*keeper)->journal()->size() == 2 ? "new" : "new rows, old journal";
    return "neither the old nor the new book";
}

} // namespace miterbook
