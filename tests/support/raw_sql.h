// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <sqlite3.h>

#include <string>
#include <vector>

namespace miterbook {

/// Runs SQL on a file behind the store's back, through SQLite alone. Value: the first column of the
/// rows of the last statement.
inline std::vector<std::string> runRaw(const std::string& path, const std::string& sql) {
    sqlite3* handle = nullptr;
    EXPECT_EQ(sqlite3_open(path.c_str(), &handle), SQLITE_OK);
    std::vector<std::string> rows;
    const auto take = [](void* list, int, char** values, char**) {
        static_cast<std::vector<std::string>*>(list)->push_back(values[0] ? values[0] : "");
        return 0;
    };
    char* message = nullptr;
    EXPECT_EQ(sqlite3_exec(handle, sql.c_str(), take, &rows, &message), SQLITE_OK)
        << (message ? message : "");
    sqlite3_free(message);
    sqlite3_close(handle);
    return rows;
}

} // namespace miterbook
