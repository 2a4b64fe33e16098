// SPDX-License-Identifier: GPL-3.0-or-later
#include "benchmarks/packing/growth.h"

#include "benchmarks/packing/measure.h"
#include "packing/solve.h"

#include <cstdio>
#include <ctime>
#include <fstream>
#include <iostream>
#include <sstream>

#include <sys/wait.h>
#include <unistd.h>

namespace miterbook::packing {

namespace {

double cpuSeconds() {
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

// The most memory this program has held since it began; getrusage would count its parent's too.
double mostMegabytes() {
    std::ifstream status("/proc/self/status");
    std::string word;
    while (status >> word && word != "VmHWM:")
        continue;
    double kilobytes = 0;
    status >> kilobytes;
    return kilobytes / 1024;
}

std::string allFrom(int file) {
    std::string text;
    char buffer[512];
    for (ssize_t count = 0; (count = read(file, buffer, sizeof buffer)) > 0;)
        text.append(buffer, static_cast<std::size_t>(count));
    return text;
}

} // namespace

void printGrowth(std::int64_t pieces, std::int64_t lengths) {
    const Job job{"growth", growthJob(pieces, lengths), std::nullopt};
    const double start = cpuSeconds();
    const Solution first = quickPlan(job.problem);
    const double quick = cpuSeconds() - start;
    const Measured m = measured(job, growthSeconds, Clocks::thread);
    const double bound = static_cast<double>(m.solution.bound);
    const double gap = 100 * (static_cast<double>(m.solution.plan.cost) - bound) / bound;
    const bool right = m.fault.empty() && first.ok();
    std::cout << quick << ' ' << (right ? m.cpu : -1) << ' ' << gap << ' ' << m.solution.proven
              << ' ' << mostMegabytes() << '\n';
}

Growth measuredApart(const std::string& program, std::int64_t pieces, std::int64_t lengths) {
    Growth growth{pieces, lengths, 0, 0, 0, false, 0};
    int ends[2];
    if (pipe(ends) != 0)
        return growth;
    const std::string p = std::to_string(pieces);
    const std::string l = std::to_string(lengths);
    const pid_t child = fork();
    if (child == 0) {
        dup2(ends[1], STDOUT_FILENO);
        close(ends[0]);
        execl(program.c_str(), program.c_str(), "--growth", p.c_str(), l.c_str(), nullptr);
        _exit(127);
    }
    close(ends[1]);
    std::istringstream said(allFrom(ends[0]));
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    said >> growth.quick >> growth.seconds >> growth.gap >> growth.proven >> growth.megabytes;
    return growth;
}

} // namespace miterbook::packing
