-- SPDX-License-Identifier: GPL-3.0-or-later
-- The day at the saw: settings of saw and bench, and below a house's own plan what was measured,
-- what stands on the saw sheet and which test cuts were made.

-- One row, id 1.
CREATE TABLE bench (
    id INTEGER NOT NULL PRIMARY KEY,
    paint_tolerance INTEGER NOT NULL, stain_tolerance INTEGER NOT NULL,
    ask_square INTEGER NOT NULL, stop_square INTEGER NOT NULL, bow_over INTEGER NOT NULL,
    jamb_over INTEGER NOT NULL, plan_over INTEGER NOT NULL, short_piece INTEGER NOT NULL,
    floor_frame INTEGER NOT NULL, fence INTEGER NOT NULL, stop_move INTEGER NOT NULL,
    tape_pull INTEGER NOT NULL, joining TEXT NOT NULL,
    first_name TEXT NOT NULL, first_make_up INTEGER NOT NULL, first_dwell INTEGER NOT NULL,
    first_clamps INTEGER NOT NULL, first_cost INTEGER NOT NULL, first_fastener INTEGER NOT NULL,
    first_fastener_cost INTEGER NOT NULL, first_fastener_over INTEGER NOT NULL,
    second_name TEXT NOT NULL, second_make_up INTEGER NOT NULL, second_dwell INTEGER NOT NULL,
    second_clamps INTEGER NOT NULL, second_cost INTEGER NOT NULL,
    second_fastener INTEGER NOT NULL, second_fastener_cost INTEGER NOT NULL,
    second_fastener_over INTEGER NOT NULL,
    wood TEXT NOT NULL, grain TEXT NOT NULL, rack_temperature INTEGER NOT NULL,
    rack_humidity INTEGER NOT NULL, house_temperature INTEGER NOT NULL,
    house_humidity INTEGER NOT NULL, label_columns INTEGER NOT NULL, label_rows INTEGER NOT NULL,
    label_width INTEGER NOT NULL, label_height INTEGER NOT NULL, label_left INTEGER NOT NULL,
    label_top INTEGER NOT NULL, label_gap INTEGER NOT NULL
) STRICT;

CREATE TABLE measure (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    opening INTEGER NOT NULL REFERENCES opening DEFERRABLE INITIALLY DEFERRED,
    unit INTEGER NOT NULL, position INTEGER NOT NULL,
    width_top INTEGER NOT NULL, width_middle INTEGER NOT NULL, width_bottom INTEGER NOT NULL,
    height_left INTEGER NOT NULL, height_middle INTEGER NOT NULL, height_right INTEGER NOT NULL,
    diagonal_up INTEGER NOT NULL, diagonal_down INTEGER NOT NULL, proud INTEGER NOT NULL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX measure_by_plan ON measure (plan);
CREATE INDEX measure_by_opening ON measure (opening);

-- source is the id of an opening, room or the like: what was cut stays on record when that row goes.
CREATE TABLE cut_piece (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    source INTEGER NOT NULL, unit INTEGER NOT NULL, part TEXT NOT NULL, copy INTEGER NOT NULL,
    profile INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    stop INTEGER NOT NULL, wanted INTEGER NOT NULL, short_point INTEGER NOT NULL,
    long_point INTEGER NOT NULL, stick INTEGER NOT NULL, stick_length INTEGER NOT NULL,
    from_rack INTEGER NOT NULL CHECK (from_rack IN (0, 1)), state TEXT NOT NULL
) STRICT;
CREATE INDEX cut_piece_by_plan ON cut_piece (plan);
CREATE INDEX cut_piece_by_profile ON cut_piece (profile) WHERE profile IS NOT NULL;

CREATE TABLE saw_test (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    setting INTEGER NOT NULL, measured INTEGER NOT NULL, corner INTEGER NOT NULL
) STRICT;
CREATE INDEX saw_test_by_plan ON saw_test (plan);

-- What a kept offcut counts for, in hundredths of a per cent of a new stick by length.
ALTER TABLE practice ADD COLUMN offcut_worth INTEGER NOT NULL DEFAULT 0;
