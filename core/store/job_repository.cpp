// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/job_repository.h"

#include "store/table_loading.h"

namespace miterbook {

Result<JobTables> loadJobs(Connection& connection) {
    JobTables jobs;
    auto loaded = loadTables(connection, jobs, [](auto store) { return store.all(); });
    if (!loaded)
        return loaded.error();
    return jobs;
}

} // namespace miterbook
