// SPDX-License-Identifier: GPL-3.0-or-later
#include "program/guarded_program.h"

#include <array>
#include <csignal>
#include <cstddef>
#include <cstdlib>

#include <fcntl.h>
#include <linux/filter.h>
#include <linux/seccomp.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

namespace miterbook {

namespace {

sock_filter statement(unsigned short code, unsigned value) {
    return {code, 0, 0, value};
}

/// Goes on behind the next `skip` instructions when the loaded value is another.
sock_filter unlessEqual(unsigned value, unsigned char skip) {
    return {BPF_JMP | BPF_JEQ | BPF_K, 0, skip, value};
}

/// Loads the number of the system call, for socket() its family, and kills for a network's.
bool forbidNetworks() {
    constexpr unsigned callAt = offsetof(seccomp_data, nr);
    constexpr unsigned familyAt = offsetof(seccomp_data, args); // the low half of the first
    std::array filter{statement(BPF_LD | BPF_W | BPF_ABS, callAt), unlessEqual(SYS_socket, 7),
        statement(BPF_LD | BPF_W | BPF_ABS, familyAt), unlessEqual(AF_INET, 1),
        statement(BPF_RET | BPF_K, SECCOMP_RET_KILL_PROCESS), unlessEqual(AF_INET6, 1),
        statement(BPF_RET | BPF_K, SECCOMP_RET_KILL_PROCESS), unlessEqual(AF_PACKET, 1),
        statement(BPF_RET | BPF_K, SECCOMP_RET_KILL_PROCESS),
        statement(BPF_RET | BPF_K, SECCOMP_RET_ALLOW)};
    sock_fprog program{static_cast<unsigned short>(filter.size()), filter.data()};
    return prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0
        && prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &program) == 0;
}

void runProgram(const std::vector<std::string>& arguments) {
    std::vector<char*> words;
    for (const std::string& argument : arguments)
        words.push_back(const_cast<char*>(argument.c_str()));
    words.push_back(nullptr);
    setenv("QT_QPA_PLATFORM", "offscreen", 1);
    const int nowhere = open("/dev/null", O_WRONLY);
    dup2(nowhere, STDOUT_FILENO);
    execv(words.front(), words.data());
}

} // namespace

GuardedProgram::GuardedProgram(const std::function<void()>& work) {
    m_child = fork();
    if (m_child != 0)
        return;
    if (!forbidNetworks())
        _exit(125);
    work();
    _exit(127);
}

GuardedProgram::GuardedProgram(const std::vector<std::string>& arguments)
    : GuardedProgram([&] { runProgram(arguments); }) {
}

GuardedProgram::~GuardedProgram() {
    if (m_child <= 0)
        return;
    kill(m_child, SIGKILL);
    wait();
}

int GuardedProgram::wait() {
    if (m_child > 0)
        waitpid(m_child, &m_status, 0);
    m_child = -1;
    return WIFSIGNALED(m_status) ? -WTERMSIG(m_status) : WEXITSTATUS(m_status);
}

int GuardedProgram::stop() {
    if (m_child > 0)
        kill(m_child, SIGTERM);
    return wait();
}

bool GuardedProgram::runs() {
    if (m_child > 0 && waitpid(m_child, &m_status, WNOHANG) == m_child)
        m_child = -1;
    return m_child > 0;
}

} // namespace miterbook
