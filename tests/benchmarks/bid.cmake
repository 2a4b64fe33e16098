# SPDX-License-Identifier: GPL-3.0-or-later
# bid_bench: a price sheet of twelve plans, and what one edit costs a bid.
add_executable(bid_bench bid/bid_bench.cpp ${PROJECT_SOURCE_DIR}/tests/support/sample_house.cpp)
target_include_directories(bid_bench PRIVATE ${PROJECT_SOURCE_DIR}/tests)
target_link_libraries(bid_bench PRIVATE miterbook_options core_papers)
