// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include <sys/types.h>

namespace miterbook {

/// A program run in a child that the kernel kills at once if it asks for a socket of any network
/// (IPv4, IPv6, packets); sockets of the machine itself are allowed, a desktop needs them.
class GuardedProgram {
public:
    /// Starts `program` with arguments; no screen.
    explicit GuardedProgram(const std::vector<std::string>& arguments);
    /// Runs a function in the child instead.
    explicit GuardedProgram(const std::function<void()>& work);
    ~GuardedProgram();
    GuardedProgram(const GuardedProgram&) = delete;
    GuardedProgram& operator=(const GuardedProgram&) = delete;

    /// Waits for its end. Value: its exit status, or minus the signal that ended it.
    int wait();
    /// Asks it to end, then waits.
    int stop();
    /// Whether it still runs.
    bool runs();

private:
    pid_t m_child = -1;
    int m_status = 0;
};

} // namespace miterbook
