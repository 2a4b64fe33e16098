// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/book_files.h"

#include <fstream>
#include <iterator>

namespace miterbook {

Result<Book> loadWhole(Keeper& keeper) {
    auto book = keeper.load();
    if (!book)
        return book;
    for (const auto& [id, plan] : book->jobs.of<Plan>()) {
        auto rows = keeper.loadPlan(id);
        if (!rows)
            return rows.error();
        book->sheets.insert_or_assign(id, std::move(rows).value());
    }
    const auto time = keeper.loadTime({});
    if (!time)
        return time.error();
    book->time.addRead(*time);
    return book;
}

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void writeBytes(const std::string& path, const std::string& bytes) {
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

} // namespace miterbook
