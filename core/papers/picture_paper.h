// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/job_papers.h"

namespace miterbook {

/// What stands above a printed picture of figures: the shop, what is shown and of which house, the
/// day, and what is to be seen in words. Of the job only book, house and date count. For the shop
/// alone.
Paper picturePaper(const PaperJob& job, std::string title, std::vector<std::string> words);

} // namespace miterbook
