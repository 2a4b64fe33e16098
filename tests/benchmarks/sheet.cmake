# SPDX-License-Identifier: GPL-3.0-or-later
# sheet_bench: takeoff and price of one plan, against a spreadsheet that LibreOffice Calc reckons.
add_executable(sheet_bench sheet/flat_sheet.cpp sheet/house_sheet.cpp sheet/plain_house.cpp
  sheet/sheet_bench.cpp)
target_include_directories(sheet_bench PRIVATE ${PROJECT_SOURCE_DIR}/tests/benchmarks)
target_link_libraries(sheet_bench PRIVATE miterbook_options core_papers Qt6::Core)
