// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/student_t.h"

#include <boost/math/distributions/students_t.hpp>

namespace miterbook {

double studentQuantile(double below, double freedom) {
    return boost::math::quantile(boost::math::students_t(freedom), below);
}

} // namespace miterbook
