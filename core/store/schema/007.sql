-- SPDX-License-Identifier: GPL-3.0-or-later
-- Bids sent and what builders said, what-if scenarios, suppliers' prices and burden from a day on, and
-- the rules of a price.

ALTER TABLE terms ADD COLUMN minimum_job INTEGER NOT NULL DEFAULT 0;
ALTER TABLE terms ADD COLUMN round_to INTEGER NOT NULL DEFAULT 0;
ALTER TABLE terms ADD COLUMN hourly_rate INTEGER NOT NULL DEFAULT 0;
ALTER TABLE terms ADD COLUMN quote_units INTEGER NOT NULL DEFAULT 0 CHECK (quote_units IN (0, 1));
ALTER TABLE piece_price ADD COLUMN quoted INTEGER NOT NULL DEFAULT 0 CHECK (quoted IN (0, 1));
ALTER TABLE burden ADD COLUMN "from" TEXT;

ALTER TABLE bid_setup ADD COLUMN date TEXT;
ALTER TABLE bid_setup ADD COLUMN minimum INTEGER NOT NULL DEFAULT 0;
ALTER TABLE bid_setup ADD COLUMN round_to INTEGER NOT NULL DEFAULT 0;
ALTER TABLE bid_setup ADD COLUMN offer_options INTEGER NOT NULL DEFAULT 1
    CHECK (offer_options IN (0, 1));
ALTER TABLE bid_setup ADD COLUMN quote_units INTEGER NOT NULL DEFAULT 0 CHECK (quote_units IN (0, 1));
ALTER TABLE bid_setup ADD COLUMN one_page INTEGER NOT NULL DEFAULT 0 CHECK (one_page IN (0, 1));
ALTER TABLE bid_setup ADD COLUMN other_way TEXT NOT NULL DEFAULT '[]';
ALTER TABLE bid_setup ADD COLUMN allowances TEXT NOT NULL DEFAULT '[]';

CREATE TABLE stick_price (
    id INTEGER NOT NULL PRIMARY KEY,
    stick INTEGER NOT NULL REFERENCES stick DEFERRABLE INITIALLY DEFERRED,
    "from" TEXT, price INTEGER NOT NULL, quoted INTEGER NOT NULL, per TEXT NOT NULL,
    supplier TEXT NOT NULL
) STRICT;
CREATE INDEX stick_price_by_stick ON stick_price (stick);

CREATE TABLE scenario (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, wages INTEGER NOT NULL, material INTEGER NOT NULL, minutes INTEGER NOT NULL,
    task TEXT NOT NULL, task_minutes INTEGER NOT NULL,
    profile INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    instead_of INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    profit_kind TEXT NOT NULL, profit INTEGER NOT NULL, overhead INTEGER NOT NULL
) STRICT;
CREATE INDEX scenario_by_plan ON scenario (plan);
CREATE INDEX scenario_by_profile ON scenario (profile) WHERE profile IS NOT NULL;
CREATE INDEX scenario_by_instead_of ON scenario (instead_of) WHERE instead_of IS NOT NULL;

-- options: JSON array of ids; prices: JSON array of {"work", "price"}. A number and revision is given
-- once, whoever writes.
CREATE TABLE sent_bid (
    id INTEGER NOT NULL PRIMARY KEY,
    job INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    builder INTEGER REFERENCES builder DEFERRABLE INITIALLY DEFERRED,
    paper INTEGER NOT NULL REFERENCES issued_paper DEFERRABLE INITIALLY DEFERRED,
    number INTEGER NOT NULL, revision INTEGER NOT NULL, date TEXT, valid_until TEXT,
    elevation INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    options TEXT NOT NULL, amount INTEGER NOT NULL, cost INTEGER NOT NULL, hours INTEGER NOT NULL,
    prices TEXT NOT NULL, answer TEXT NOT NULL, answered TEXT, note TEXT NOT NULL
) STRICT;
CREATE INDEX sent_bid_by_job ON sent_bid (job);
CREATE INDEX sent_bid_by_builder ON sent_bid (builder) WHERE builder IS NOT NULL;
CREATE INDEX sent_bid_by_paper ON sent_bid (paper);
CREATE INDEX sent_bid_by_elevation ON sent_bid (elevation) WHERE elevation IS NOT NULL;
CREATE UNIQUE INDEX sent_bid_by_number ON sent_bid (number, revision);
