-- SPDX-License-Identifier: GPL-3.0-or-later
-- Where a stair stands on the plan of its level: its walking line, and how wide its flights are
-- (36 in).

ALTER TABLE stair ADD COLUMN walk_line TEXT NOT NULL DEFAULT '[]';
ALTER TABLE stair ADD COLUMN flight_width INTEGER NOT NULL DEFAULT 914400000;
