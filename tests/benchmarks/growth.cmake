# SPDX-License-Identifier: GPL-3.0-or-later
# growth_bench: a book of ten years, against the same rows read by the bare SQLite C API.
add_executable(growth_bench growth/bare_read.cpp growth/grown_book.cpp growth/growth_bench.cpp
  review/ten_year_book.cpp)
target_include_directories(growth_bench PRIVATE ${PROJECT_SOURCE_DIR}/tests/benchmarks)
target_link_libraries(growth_bench PRIVATE miterbook_options core_store core_papers SQLite::SQLite3)

# start_bench: the same book to the Houses page on the screen, and to the office.
add_executable(start_bench growth/grown_book.cpp growth/start_bench.cpp review/ten_year_book.cpp)
target_include_directories(start_bench PRIVATE ${PROJECT_SOURCE_DIR}/tests/benchmarks)
target_link_libraries(start_bench PRIVATE miterbook_options core_store core_papers ui_windows
  SQLite::SQLite3)
