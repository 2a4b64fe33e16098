// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/opened_book.h"

#include "book/starter_book.h"

namespace miterbook {

namespace {

Result<OpenedBook> withWorkbook(Result<std::unique_ptr<BookKeeper>> keeper) {
    if (!keeper)
        return keeper.error();
    auto workbook = Workbook::open(**keeper);
    if (!workbook)
        return workbook.error();
    workbook->setDay(SystemClock().today());
    return OpenedBook{std::move(*keeper), std::move(*workbook)};
}

} // namespace

Result<OpenedBook> openWorkbook(const std::string& path, OpenMode mode) {
    return withWorkbook(openBook(path, mode));
}

Result<OpenedBook> createWorkbook(const std::string& path) {
    IdSource ids;
    Book book;
    book.prices = starterBook(ids);
    return withWorkbook(createBook(path, book));
}

} // namespace miterbook
