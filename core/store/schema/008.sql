-- SPDX-License-Identifier: GPL-3.0-or-later
-- Where saw and bench stand on a level of a house; and which rows of a builder's plan a house's rows
-- were copied from. Levels and tied rows are bare ids: they may have been removed.

CREATE TABLE saw_spot (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    level INTEGER NOT NULL, x INTEGER NOT NULL, y INTEGER NOT NULL
) STRICT;
CREATE INDEX saw_spot_by_plan ON saw_spot (plan);

CREATE TABLE plan_tie (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL, own INTEGER NOT NULL, source INTEGER NOT NULL, stamp INTEGER NOT NULL
) STRICT;
CREATE INDEX plan_tie_by_plan ON plan_tie (plan);
