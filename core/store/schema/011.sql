-- SPDX-License-Identifier: GPL-3.0-or-later
-- Pictures for the shop's letterhead, and which of them it has now.

CREATE TABLE logo (
    id INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL, type TEXT NOT NULL, sum TEXT NOT NULL, content TEXT NOT NULL
) STRICT;

ALTER TABLE shop ADD COLUMN logo INTEGER REFERENCES logo DEFERRABLE INITIALLY DEFERRED;
CREATE INDEX shop_by_logo ON shop (logo) WHERE logo IS NOT NULL;
