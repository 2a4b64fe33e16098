// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// What is to be known of the place where a book lies.
struct BookPlace {
    bool network = false;            ///< on another machine's disk
    bool synced = false;             ///< in a folder that a program copies to other machines
    std::vector<std::string> strays; ///< copies that such a program has put beside the book

    bool operator==(const BookPlace&) const = default;
};

/// Looks at the disk and the folders that a book lies in.
BookPlace placeOf(const std::string& book);

/// Whether a kind of file system, as the kernel names it, is another machine's disk.
bool isNetworkDrive(std::string_view fileSystem);

/// The warning for the user, in plain words; empty when there is nothing to warn of.
std::string placeWarning(const BookPlace& place);

} // namespace miterbook
