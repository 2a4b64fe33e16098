# SPDX-License-Identifier: GPL-3.0-or-later
# packing_runner: the whole table.         packing_table: any jobs, one line each.
# packing_bench: Google Benchmark.         packing_work: for packing/count_instructions.
find_package(benchmark REQUIRED)

function(miterbook_packing_program name)
  add_executable(${name} ${ARGN})
  target_include_directories(${name} PRIVATE ${PROJECT_SOURCE_DIR}/tests)
  target_compile_definitions(${name} PRIVATE MITERBOOK_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
  target_link_libraries(${name} PRIVATE miterbook_options packing_measured)
endfunction()

add_library(packing_measured STATIC
  packing/by_hand.cpp packing/families.cpp packing/job_sets.cpp packing/measure.cpp
  ${PROJECT_SOURCE_DIR}/tests/core/packing/job_files.cpp)
target_include_directories(packing_measured PRIVATE ${PROJECT_SOURCE_DIR}/tests)
target_compile_definitions(packing_measured PRIVATE MITERBOOK_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
target_link_libraries(packing_measured PRIVATE miterbook_options PUBLIC core_packing)

miterbook_packing_program(packing_table packing/packing_table.cpp)
miterbook_packing_program(packing_work packing/packing_work.cpp)
miterbook_packing_program(packing_bench packing/packing_bench.cpp)
target_link_libraries(packing_bench PRIVATE benchmark::benchmark)
miterbook_packing_program(packing_runner
  packing/growth.cpp packing/growth_picture.cpp packing/houses.cpp packing/packing_runner.cpp)
target_link_libraries(packing_runner PRIVATE core_io core_job)
