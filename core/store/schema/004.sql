-- SPDX-License-Identifier: GPL-3.0-or-later
-- Bills: what was agreed on a house, extras and backcharges, issued papers, invoices, payments,
-- reminders, and the dates of a house.

-- One row, id 1.
CREATE TABLE billing_setup (
    id INTEGER NOT NULL PRIMARY KEY,
    prefix TEXT NOT NULL, first_number INTEGER NOT NULL, age_from TEXT NOT NULL,
    late_days INTEGER NOT NULL, late_note TEXT NOT NULL, remind_days INTEGER NOT NULL,
    receivable TEXT NOT NULL, retainage TEXT NOT NULL, income TEXT NOT NULL, tax TEXT NOT NULL,
    deposits TEXT NOT NULL, backcharges TEXT NOT NULL, bank TEXT NOT NULL
) STRICT;

-- stages: JSON array of {"name", "share", "reached"}; so in contract.
CREATE TABLE billing_terms (
    id INTEGER NOT NULL PRIMARY KEY,
    builder INTEGER REFERENCES builder DEFERRABLE INITIALLY DEFERRED,
    draw_by TEXT NOT NULL, retainage INTEGER NOT NULL, tax INTEGER NOT NULL,
    due_days INTEGER NOT NULL, waiver INTEGER NOT NULL CHECK (waiver IN (0, 1)),
    stages TEXT NOT NULL
) STRICT;
CREATE INDEX billing_terms_by_builder ON billing_terms (builder) WHERE builder IS NOT NULL;

-- "values": JSON array of {"work", "price", "done"}.
CREATE TABLE contract (
    id INTEGER NOT NULL PRIMARY KEY,
    house INTEGER NOT NULL REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    builder INTEGER REFERENCES builder DEFERRABLE INITIALLY DEFERRED,
    date TEXT, purchase_order TEXT NOT NULL, draw_by TEXT NOT NULL,
    retainage INTEGER NOT NULL, tax INTEGER NOT NULL, due_days INTEGER NOT NULL, completed TEXT,
    "values" TEXT NOT NULL, stages TEXT NOT NULL
) STRICT;
CREATE INDEX contract_by_house ON contract (house);
CREATE INDEX contract_by_builder ON contract (builder) WHERE builder IS NOT NULL;

CREATE TABLE extra (
    id INTEGER NOT NULL PRIMARY KEY,
    house INTEGER NOT NULL REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    asked TEXT, asked_by TEXT NOT NULL, title TEXT NOT NULL, note TEXT NOT NULL,
    state TEXT NOT NULL, price INTEGER NOT NULL, approved TEXT, approved_by TEXT NOT NULL,
    done TEXT
) STRICT;
CREATE INDEX extra_by_house ON extra (house);

CREATE TABLE backcharge (
    id INTEGER NOT NULL PRIMARY KEY,
    house INTEGER NOT NULL REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    date TEXT, reason TEXT NOT NULL, amount INTEGER NOT NULL, state TEXT NOT NULL
) STRICT;
CREATE INDEX backcharge_by_house ON backcharge (house);

-- Papers given out of hand, frozen; read with their plan. sum is the SHA-256 of paper. A number is
-- given once, whoever writes.
CREATE TABLE issued_paper (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL, number INTEGER NOT NULL, revision INTEGER NOT NULL, date TEXT,
    amount INTEGER NOT NULL, paper TEXT NOT NULL, sum TEXT NOT NULL
) STRICT;
CREATE INDEX issued_paper_by_plan ON issued_paper (plan);
CREATE UNIQUE INDEX issued_paper_by_number ON issued_paper (kind, number, revision);

CREATE TABLE invoice (
    id INTEGER NOT NULL PRIMARY KEY,
    number INTEGER NOT NULL, kind TEXT NOT NULL,
    house INTEGER NOT NULL REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    builder INTEGER REFERENCES builder DEFERRABLE INITIALLY DEFERRED,
    date TEXT, due TEXT,
    credits INTEGER REFERENCES invoice DEFERRABLE INITIALLY DEFERRED,
    lot TEXT NOT NULL, purchase_order TEXT NOT NULL, retained INTEGER NOT NULL,
    deposit INTEGER NOT NULL, tax_rate INTEGER NOT NULL, tax INTEGER NOT NULL,
    note TEXT NOT NULL, work INTEGER NOT NULL, backcharges INTEGER NOT NULL,
    paper INTEGER REFERENCES issued_paper DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE UNIQUE INDEX invoice_by_number ON invoice (number);
CREATE INDEX invoice_by_house ON invoice (house);
CREATE INDEX invoice_by_builder ON invoice (builder) WHERE builder IS NOT NULL;
CREATE INDEX invoice_by_credits ON invoice (credits) WHERE credits IS NOT NULL;
CREATE INDEX invoice_by_paper ON invoice (paper) WHERE paper IS NOT NULL;

CREATE TABLE invoice_void (
    id INTEGER NOT NULL PRIMARY KEY,
    invoice INTEGER NOT NULL REFERENCES invoice DEFERRABLE INITIALLY DEFERRED,
    date TEXT, reason TEXT NOT NULL
) STRICT;
CREATE INDEX invoice_void_by_invoice ON invoice_void (invoice);

CREATE TABLE payment (
    id INTEGER NOT NULL PRIMARY KEY,
    builder INTEGER REFERENCES builder DEFERRABLE INITIALLY DEFERRED,
    date TEXT, amount INTEGER NOT NULL, reference TEXT NOT NULL
) STRICT;
CREATE INDEX payment_by_builder ON payment (builder) WHERE builder IS NOT NULL;

CREATE TABLE allocation (
    id INTEGER NOT NULL PRIMARY KEY,
    payment INTEGER NOT NULL REFERENCES payment DEFERRABLE INITIALLY DEFERRED,
    invoice INTEGER NOT NULL REFERENCES invoice DEFERRABLE INITIALLY DEFERRED,
    amount INTEGER NOT NULL
) STRICT;
CREATE INDEX allocation_by_payment ON allocation (payment);
CREATE INDEX allocation_by_invoice ON allocation (invoice);

CREATE TABLE reminder (
    id INTEGER NOT NULL PRIMARY KEY,
    kind TEXT NOT NULL, title TEXT NOT NULL, due TEXT, done TEXT,
    house INTEGER REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    builder INTEGER REFERENCES builder DEFERRABLE INITIALLY DEFERRED,
    payment INTEGER REFERENCES payment DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX reminder_by_house ON reminder (house) WHERE house IS NOT NULL;
CREATE INDEX reminder_by_builder ON reminder (builder) WHERE builder IS NOT NULL;
CREATE INDEX reminder_by_payment ON reminder (payment) WHERE payment IS NOT NULL;

-- crew: JSON array of ids of crew members.
CREATE TABLE house_date (
    id INTEGER NOT NULL PRIMARY KEY,
    house INTEGER NOT NULL REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL, "from" TEXT, "to" TEXT, crew TEXT NOT NULL, note TEXT NOT NULL
) STRICT;
CREATE INDEX house_date_by_house ON house_date (house);

-- Below a house's own plan.
CREATE TABLE extra_line (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    extra INTEGER NOT NULL REFERENCES extra DEFERRABLE INITIALLY DEFERRED,
    task TEXT NOT NULL, quantity INTEGER NOT NULL, material INTEGER NOT NULL
) STRICT;
CREATE INDEX extra_line_by_plan ON extra_line (plan);
CREATE INDEX extra_line_by_extra ON extra_line (extra);

CREATE TABLE invoice_line (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    invoice INTEGER NOT NULL REFERENCES invoice DEFERRABLE INITIALLY DEFERRED,
    work TEXT NOT NULL,
    extra INTEGER REFERENCES extra DEFERRABLE INITIALLY DEFERRED,
    backcharge INTEGER REFERENCES backcharge DEFERRABLE INITIALLY DEFERRED,
    label TEXT NOT NULL, to_date INTEGER NOT NULL, amount INTEGER NOT NULL
) STRICT;
CREATE INDEX invoice_line_by_plan ON invoice_line (plan);
CREATE INDEX invoice_line_by_invoice ON invoice_line (invoice);
CREATE INDEX invoice_line_by_extra ON invoice_line (extra) WHERE extra IS NOT NULL;
CREATE INDEX invoice_line_by_backcharge ON invoice_line (backcharge) WHERE backcharge IS NOT NULL;

-- A photo of an extra, in base64.
CREATE TABLE attachment (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    extra INTEGER REFERENCES extra DEFERRABLE INITIALLY DEFERRED,
    date TEXT, name TEXT NOT NULL, type TEXT NOT NULL, content TEXT NOT NULL
) STRICT;
CREATE INDEX attachment_by_plan ON attachment (plan);
CREATE INDEX attachment_by_extra ON attachment (extra) WHERE extra IS NOT NULL;
