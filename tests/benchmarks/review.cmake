# SPDX-License-Identifier: GPL-3.0-or-later
# review_bench: a ten-year book with 400 000 time entries, and how long its pictures take to reckon.
add_executable(review_bench review/review_bench.cpp review/ten_year_book.cpp)
target_include_directories(review_bench PRIVATE ${PROJECT_SOURCE_DIR}/tests/benchmarks)
target_link_libraries(review_bench PRIVATE miterbook_options core_store SQLite::SQLite3)
