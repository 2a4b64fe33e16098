#include "io/csv_table.h"
