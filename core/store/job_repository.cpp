// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/job_repository.h"

#include "store/row_loading.h"

namespace miterbook {

Result<JobTables> loadJobs(Connection& connection) {
    JobTables jobs;
    auto loaded = loadTables(connection, RowsAsked::all(), jobs);
    if (!loaded)
        return loaded.error();
    return jobs;
}

} // namespace miterbook
