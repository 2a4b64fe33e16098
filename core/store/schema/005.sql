-- SPDX-License-Identifier: GPL-3.0-or-later
-- The plan drawn: outlines of rooms, places of openings and of what stands against walls, marks that
-- are counted, builders' sheets under the levels, reminders that were put away.

ALTER TABLE room ADD COLUMN outline TEXT NOT NULL DEFAULT '[]';
ALTER TABLE room ADD COLUMN breaks TEXT NOT NULL DEFAULT '[]';
ALTER TABLE opening ADD COLUMN along INTEGER NOT NULL DEFAULT 0;
ALTER TABLE other_work ADD COLUMN marked TEXT NOT NULL DEFAULT 'none';
ALTER TABLE other_work ADD COLUMN marks TEXT NOT NULL DEFAULT '[]';

CREATE TABLE sheet_file (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, content TEXT NOT NULL
) STRICT;
CREATE INDEX sheet_file_by_plan ON sheet_file (plan);

CREATE TABLE underlay (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    level INTEGER REFERENCES level DEFERRABLE INITIALLY DEFERRED,
    file INTEGER REFERENCES sheet_file DEFERRABLE INITIALLY DEFERRED,
    page INTEGER NOT NULL, scale INTEGER NOT NULL, x INTEGER NOT NULL, y INTEGER NOT NULL,
    turn INTEGER NOT NULL, strength INTEGER NOT NULL,
    hidden INTEGER NOT NULL CHECK (hidden IN (0, 1))
) STRICT;
CREATE INDEX underlay_by_plan ON underlay (plan);
CREATE INDEX underlay_by_level ON underlay (level) WHERE level IS NOT NULL;
CREATE INDEX underlay_by_file ON underlay (file) WHERE file IS NOT NULL;

CREATE TABLE dismissal (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    sentence TEXT NOT NULL, reason TEXT NOT NULL
) STRICT;
CREATE INDEX dismissal_by_plan ON dismissal (plan);
