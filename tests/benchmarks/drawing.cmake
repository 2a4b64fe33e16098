# SPDX-License-Identifier: GPL-3.0-or-later
# drawing_bench: how long the drawing of a large level takes.
find_package(benchmark REQUIRED)

add_executable(drawing_bench drawing/drawing_bench.cpp)
target_link_libraries(drawing_bench PRIVATE miterbook_options ui_stage_plan benchmark::benchmark)
