-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a house took out of the rack and put there. offcut is the id of a row of offcut that may be
-- gone: it has been cut up elsewhere.
CREATE TABLE rack_move (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    stick INTEGER NOT NULL,
    profile INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    length INTEGER NOT NULL,
    put INTEGER NOT NULL CHECK (put IN (0, 1)),
    offcut INTEGER NOT NULL
) STRICT;
CREATE INDEX rack_move_by_plan ON rack_move (plan);
CREATE INDEX rack_move_by_profile ON rack_move (profile) WHERE profile IS NOT NULL;
