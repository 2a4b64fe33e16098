# SPDX-License-Identifier: GPL-3.0-or-later
# packing_table: solves every cutting job below given folders and prints one table.
add_executable(packing_table ${CMAKE_CURRENT_LIST_DIR}/packing_table.cpp
  ${PROJECT_SOURCE_DIR}/tests/core/packing/job_files.cpp)
target_include_directories(packing_table PRIVATE ${PROJECT_SOURCE_DIR}/tests)
target_link_libraries(packing_table PRIVATE miterbook_options core_packing)
