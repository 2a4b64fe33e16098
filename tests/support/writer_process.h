// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include <sys/types.h>

namespace miterbook {

/// A child program (tests/store/book_writer.cpp) that opens a book and writes one edit after the
/// other, saying the number of each on its output once it is written. To be killed.
class WriterProcess {
public:
    explicit WriterProcess(const std::string& book);
    ~WriterProcess();
    WriterProcess(const WriterProcess&) = delete;
    WriterProcess& operator=(const WriterProcess&) = delete;

    /// Reads until edit `count` has been acknowledged or the child ends; value: the last one read.
    int readAcknowledged(int count);
    /// kill -9, then reads what the child had still said; value: the last edit acknowledged.
    int kill();

private:
    int readRest();

    pid_t m_child = -1;
    int m_output = -1;
    int m_last = 0;
    std::string m_line;
};

} // namespace miterbook
