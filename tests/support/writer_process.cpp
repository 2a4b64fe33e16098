// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/writer_process.h"

#include <array>
#include <csignal>
#include <cstdlib>

#include <sys/wait.h>
#include <unistd.h>

namespace miterbook {

WriterProcess::WriterProcess(const std::string& book) {
    std::array<int, 2> ends{};
    if (pipe(ends.data()) != 0)
        return;
    m_child = fork();
    if (m_child == 0) {
        dup2(ends[1], STDOUT_FILENO);
        close(ends[0]);
        close(ends[1]);
        execl(MITERBOOK_BOOK_WRITER, MITERBOOK_BOOK_WRITER, book.c_str(), nullptr);
        _exit(127);
    }
    close(ends[1]);
    m_output = ends[0];
}

WriterProcess::~WriterProcess() {
    kill();
    if (m_output >= 0)
        close(m_output);
}

int WriterProcess::readAcknowledged(int count) {
    char byte = 0;
    while (m_last < count && read(m_output, &byte, 1) == 1) {
        if (byte != '\n') {
            m_line += byte;
            continue;
        }
        m_last = std::atoi(m_line.c_str());
        m_line.clear();
    }
    return m_last;
}

int WriterProcess::kill() {
    if (m_child <= 0)
        return m_last;
    ::kill(m_child, SIGKILL);
    waitpid(m_child, nullptr, 0);
    m_child = -1;
    return readRest();
}

int WriterProcess::readRest() {
    constexpr int everything = 1'000'000'000;
    return readAcknowledged(everything);
}

} // namespace miterbook
