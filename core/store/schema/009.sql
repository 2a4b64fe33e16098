-- SPDX-License-Identifier: GPL-3.0-or-later
-- How much of a piece of work is done, as it was said; and what the material of an extra costs, which
-- until now only its lines told.

CREATE TABLE work_done (
    id INTEGER NOT NULL PRIMARY KEY,
    house INTEGER NOT NULL REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    work TEXT NOT NULL, done INTEGER NOT NULL
) STRICT;
CREATE INDEX work_done_by_house ON work_done (house);

ALTER TABLE extra ADD COLUMN material INTEGER NOT NULL DEFAULT 0;
UPDATE extra SET material =
    (SELECT coalesce(sum(line.material), 0) FROM extra_line AS line WHERE line.extra = extra.id);
