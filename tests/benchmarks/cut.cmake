# SPDX-License-Identifier: GPL-3.0-or-later
# cut_bench: the saw sheet of a large level, made and ticked. Google Benchmark.
find_package(benchmark REQUIRED)
find_package(Qt6 6.4 REQUIRED COMPONENTS Test)

add_executable(cut_bench cut/cut_bench.cpp ${PROJECT_SOURCE_DIR}/tests/support/level_house.cpp)
target_include_directories(cut_bench PRIVATE ${PROJECT_SOURCE_DIR}/tests)
target_link_libraries(cut_bench PRIVATE miterbook_options ui_stage_cut ui_printing benchmark::benchmark)

add_executable(cut_window_bench
  cut/cut_window_bench.cpp ${PROJECT_SOURCE_DIR}/tests/support/level_house.cpp)
target_include_directories(cut_window_bench PRIVATE ${PROJECT_SOURCE_DIR}/tests)
target_link_libraries(cut_window_bench PRIVATE miterbook_options ui_windows ui_stage_plan
  ui_stage_takeoff ui_stage_bid ui_stage_order ui_stage_cut ui_stage_hours ui_stage_bill
  ui_stage_review Qt6::Test benchmark::benchmark)
