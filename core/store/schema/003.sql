-- SPDX-License-Identifier: GPL-3.0-or-later
-- The crew's time, how it is paid, and the bids of houses as they were won.

CREATE TABLE time_entry (
    id INTEGER NOT NULL PRIMARY KEY, "date" TEXT,
    person INTEGER REFERENCES crew_member DEFERRABLE INITIALLY DEFERRED,
    house INTEGER REFERENCES house DEFERRABLE INITIALLY DEFERRED, -- none: the shop's own time
    work TEXT NOT NULL, task TEXT NOT NULL, kind TEXT NOT NULL, "time" INTEGER NOT NULL,
    done INTEGER NOT NULL, note TEXT NOT NULL
) STRICT;
CREATE INDEX time_entry_by_date ON time_entry ("date");
CREATE INDEX time_entry_by_person ON time_entry (person);
-- Answers what a house has taken without looking at the table.
CREATE INDEX time_entry_sum ON time_entry (house, work, task, kind, "time", done);
CREATE INDEX time_entry_callback ON time_entry (house, "date") WHERE kind = 'callback';

CREATE TABLE timer (
    id INTEGER NOT NULL PRIMARY KEY,
    person INTEGER REFERENCES crew_member DEFERRABLE INITIALLY DEFERRED,
    house INTEGER REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    work TEXT NOT NULL, task TEXT NOT NULL, kind TEXT NOT NULL, day TEXT,
    started TEXT NOT NULL, -- UTC, ISO 8601; empty: it stands still
    seconds INTEGER NOT NULL
) STRICT;
CREATE INDEX timer_by_person ON timer (person);
CREATE INDEX timer_by_house ON timer (house);

CREATE TABLE week_approval (
    id INTEGER NOT NULL PRIMARY KEY, week TEXT,
    person INTEGER REFERENCES crew_member DEFERRABLE INITIALLY DEFERRED,
    approved TEXT, "by" TEXT NOT NULL
) STRICT;
CREATE INDEX week_approval_by_person ON week_approval (person);

-- One row, id 1.
CREATE TABLE pay_terms (
    id INTEGER NOT NULL PRIMARY KEY,
    week_start TEXT NOT NULL, overtime_after INTEGER NOT NULL, overtime_factor INTEGER NOT NULL,
    overtime_on_pieces INTEGER NOT NULL CHECK (overtime_on_pieces IN (0, 1))
) STRICT;

CREATE TABLE crew_pay (
    id INTEGER NOT NULL PRIMARY KEY,
    person INTEGER REFERENCES crew_member DEFERRABLE INITIALLY DEFERRED,
    basis TEXT NOT NULL
) STRICT;
CREATE INDEX crew_pay_by_person ON crew_pay (person);

CREATE TABLE piece_rate (
    id INTEGER NOT NULL PRIMARY KEY,
    person INTEGER REFERENCES crew_member DEFERRABLE INITIALLY DEFERRED,
    work TEXT NOT NULL, task TEXT NOT NULL, pay INTEGER NOT NULL
) STRICT;
CREATE INDEX piece_rate_by_person ON piece_rate (person);

-- A bid as it was won, on the house's own plan: by piece of work, and by task and conditions.
CREATE TABLE sold_work (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    work TEXT NOT NULL, hours INTEGER NOT NULL, labour INTEGER NOT NULL, units INTEGER NOT NULL,
    cost INTEGER NOT NULL, price INTEGER NOT NULL
) STRICT;
CREATE INDEX sold_work_by_plan ON sold_work (plan);

CREATE TABLE sold_task (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    work TEXT NOT NULL, task TEXT NOT NULL, conditions TEXT NOT NULL, factor INTEGER NOT NULL,
    quantity INTEGER NOT NULL, hours INTEGER NOT NULL
) STRICT;
CREATE INDEX sold_task_by_plan ON sold_task (plan);

-- When the last piece of work of a house was done.
ALTER TABLE house ADD COLUMN finished TEXT;
