-- SPDX-License-Identifier: GPL-3.0-or-later
-- The book file, format 1. Never edit this file once a book has been made with it: add the next
-- number. Tables and columns are the names that Describe<Row> gives.
--   Lengths are nanometres, money cents, unit prices 1/10 000 dollar, percentages basis points,
--   quantities thousandths, minutes a unit hundredths, angles hundredths of a degree.
--   Trade words and ISO dates are text; NULL is "none" (no reference, no date); lists are JSON.
-- References are checked at the commit, so that one edit may remove a row and what hangs on it in
-- any order. (RESTRICT would check at once even where deferred; the default refuses just the same.)
-- Every reference has an index: without it removing one row would read whole tables.

CREATE TABLE book_info (
    id INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),
    format INTEGER NOT NULL, -- the last schema step that has been run
    created TEXT NOT NULL, -- UTC, ISO 8601
    last_id INTEGER NOT NULL -- the highest id that any row has ever had; ids are not given twice
) STRICT;

-- Every edit that was made, in order; never changed afterwards.
CREATE TABLE journal (
    seq INTEGER NOT NULL PRIMARY KEY,
    at TEXT NOT NULL, -- UTC, ISO 8601
    sentence TEXT NOT NULL, -- what the user did
    changes TEXT NOT NULL -- JSON: [{"kind": table, "before": row, "after": row}]
) STRICT;

-- The user's firm. One row, id 1; so with practice and terms.
CREATE TABLE shop (
    id INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL, address TEXT NOT NULL, phone TEXT NOT NULL, email TEXT NOT NULL,
    licence TEXT NOT NULL, currency TEXT NOT NULL, unit TEXT NOT NULL,
    denominator INTEGER NOT NULL, page TEXT NOT NULL,
    month_first INTEGER NOT NULL CHECK (month_first IN (0, 1))
) STRICT;

CREATE TABLE practice (
    id INTEGER NOT NULL PRIMARY KEY,
    reveal INTEGER NOT NULL, floor_gap INTEGER NOT NULL, horn INTEGER NOT NULL,
    head_overhang INTEGER NOT NULL, return_piece INTEGER NOT NULL, kerf INTEGER NOT NULL,
    end_trim INTEGER NOT NULL, spare_sticks INTEGER NOT NULL, keep_offcut INTEGER NOT NULL,
    scarf INTEGER NOT NULL, long_side INTEGER NOT NULL, longest_leg INTEGER NOT NULL,
    saw_swing INTEGER NOT NULL, shelf_support INTEGER NOT NULL, baluster_gap INTEGER NOT NULL
) STRICT;

CREATE TABLE terms (
    id INTEGER NOT NULL PRIMARY KEY,
    pricing TEXT NOT NULL, profit_kind TEXT NOT NULL, profit INTEGER NOT NULL,
    overhead INTEGER NOT NULL, material_tax INTEGER NOT NULL, hours_per_year INTEGER NOT NULL,
    trips_per_house INTEGER NOT NULL, valid_days INTEGER NOT NULL, payment_terms TEXT NOT NULL,
    inclusions TEXT NOT NULL, exclusions TEXT NOT NULL
) STRICT;

-- Customers.
CREATE TABLE builder (
    id INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL, contact TEXT NOT NULL, address TEXT NOT NULL, phone TEXT NOT NULL,
    email TEXT NOT NULL, note TEXT NOT NULL
) STRICT;

-- Mouldings, the lengths they are bought in, and remainders on the rack.
CREATE TABLE profile (
    id INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL, use TEXT NOT NULL, thickness INTEGER NOT NULL, width INTEGER NOT NULL,
    material TEXT NOT NULL, finish TEXT NOT NULL,
    hardwood INTEGER NOT NULL CHECK (hardwood IN (0, 1)), spring_angle INTEGER NOT NULL,
    joint TEXT NOT NULL, symmetric INTEGER NOT NULL CHECK (symmetric IN (0, 1)),
    origin TEXT NOT NULL, note TEXT NOT NULL
) STRICT;

CREATE TABLE stick (
    id INTEGER NOT NULL PRIMARY KEY,
    profile INTEGER NOT NULL REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    length INTEGER NOT NULL, price INTEGER NOT NULL,
    stocked INTEGER NOT NULL CHECK (stocked IN (0, 1)), origin TEXT NOT NULL
) STRICT;
CREATE INDEX stick_by_profile ON stick (profile);

CREATE TABLE offcut (
    id INTEGER NOT NULL PRIMARY KEY,
    profile INTEGER NOT NULL REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    length INTEGER NOT NULL, count INTEGER NOT NULL, note TEXT NOT NULL
) STRICT;
CREATE INDEX offcut_by_profile ON offcut (profile);

-- Goods bought by the each or by the box.
CREATE TABLE part (
    id INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL, use TEXT NOT NULL, price INTEGER NOT NULL,
    builder_supplies INTEGER NOT NULL CHECK (builder_supplies IN (0, 1)), origin TEXT NOT NULL
) STRICT;

CREATE TABLE consumable (
    id INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL, price INTEGER NOT NULL, feet_each INTEGER NOT NULL,
    origin TEXT NOT NULL, note TEXT NOT NULL
) STRICT;

-- Minutes, factors and piece prices of each task.
CREATE TABLE labour_rate (
    id INTEGER NOT NULL PRIMARY KEY,
    task TEXT NOT NULL, minutes INTEGER NOT NULL, origin TEXT NOT NULL, source TEXT NOT NULL
) STRICT;

CREATE TABLE factor (
    id INTEGER NOT NULL PRIMARY KEY,
    condition TEXT NOT NULL, percent INTEGER NOT NULL, origin TEXT NOT NULL,
    source TEXT NOT NULL
) STRICT;

CREATE TABLE piece_price (
    id INTEGER NOT NULL PRIMARY KEY,
    task TEXT NOT NULL, price INTEGER NOT NULL, origin TEXT NOT NULL
) STRICT;

-- Who works, and what is paid on top of wages.
CREATE TABLE crew_member (
    id INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL, wage INTEGER NOT NULL, active INTEGER NOT NULL CHECK (active IN (0, 1))
) STRICT;

CREATE TABLE burden (
    id INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL, of_wages INTEGER NOT NULL, per_year INTEGER NOT NULL,
    year INTEGER NOT NULL, origin TEXT NOT NULL, source TEXT NOT NULL
) STRICT;

-- Corrections of schedule headers that the shop made once.
CREATE TABLE header_name (
    id INTEGER NOT NULL PRIMARY KEY,
    schedule TEXT NOT NULL, header TEXT NOT NULL, column TEXT NOT NULL
) STRICT;

-- Builders' plans. A plan with a house is that house's own copy.
CREATE TABLE plan_set (
    id INTEGER NOT NULL PRIMARY KEY,
    builder INTEGER REFERENCES builder DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, community TEXT NOT NULL
) STRICT;
CREATE INDEX plan_set_by_builder ON plan_set (builder) WHERE builder IS NOT NULL;

CREATE TABLE plan (
    id INTEGER NOT NULL PRIMARY KEY,
    "set" INTEGER REFERENCES plan_set DEFERRABLE INITIALLY DEFERRED,
    house INTEGER REFERENCES house DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, floor_area INTEGER NOT NULL,
    window_casing INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    door_casing INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    stool INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    jamb INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    base INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    shoe INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    crown INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX plan_by_set ON plan ("set") WHERE "set" IS NOT NULL;
CREATE INDEX plan_by_house ON plan (house) WHERE house IS NOT NULL;
CREATE INDEX plan_by_window_casing ON plan (window_casing) WHERE window_casing IS NOT NULL;
CREATE INDEX plan_by_door_casing ON plan (door_casing) WHERE door_casing IS NOT NULL;
CREATE INDEX plan_by_stool ON plan (stool) WHERE stool IS NOT NULL;
CREATE INDEX plan_by_jamb ON plan (jamb) WHERE jamb IS NOT NULL;
CREATE INDEX plan_by_base ON plan (base) WHERE base IS NOT NULL;
CREATE INDEX plan_by_shoe ON plan (shoe) WHERE shoe IS NOT NULL;
CREATE INDEX plan_by_crown ON plan (crown) WHERE crown IS NOT NULL;

-- options: JSON array of variant ids, as chosen when the house was started.
CREATE TABLE house (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    work INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, lot TEXT NOT NULL, address TEXT NOT NULL, stage TEXT NOT NULL,
    elevation INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    options TEXT NOT NULL, started TEXT, note TEXT NOT NULL
) STRICT;
CREATE INDEX house_by_plan ON house (plan);
CREATE INDEX house_by_work ON house (work);
CREATE INDEX house_by_elevation ON house (elevation) WHERE elevation IS NOT NULL;

-- What the bid for one plan or house does otherwise than the terms.
CREATE TABLE bid_setup (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    pricing TEXT NOT NULL, profit_kind TEXT NOT NULL, profit INTEGER NOT NULL,
    overhead INTEGER NOT NULL, trips INTEGER NOT NULL, waste INTEGER NOT NULL,
    scope TEXT NOT NULL, inclusions TEXT NOT NULL, exclusions TEXT NOT NULL
) STRICT;
CREATE INDEX bid_setup_by_plan ON bid_setup (plan);

-- Rows below a plan. Where variant is set a row belongs to that elevation or option: it is
-- added, stands in place of the row it replaces, or takes that row away (removed).
CREATE TABLE variant (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    kind TEXT NOT NULL, name TEXT NOT NULL, note TEXT NOT NULL,
    reversed INTEGER NOT NULL CHECK (reversed IN (0, 1))
) STRICT;
CREATE INDEX variant_by_plan ON variant (plan);

CREATE TABLE swap (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    variant INTEGER NOT NULL REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    "from" INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    "to" INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX swap_by_plan ON swap (plan);
CREATE INDEX swap_by_variant ON swap (variant);
CREATE INDEX swap_by_from ON swap ("from") WHERE "from" IS NOT NULL;
CREATE INDEX swap_by_to ON swap ("to") WHERE "to" IS NOT NULL;

CREATE TABLE level (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    variant INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    replaces INTEGER REFERENCES level DEFERRABLE INITIALLY DEFERRED,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1)), position INTEGER NOT NULL,
    name TEXT NOT NULL, ceiling INTEGER NOT NULL, upper INTEGER NOT NULL CHECK (upper IN (0, 1))
) STRICT;
CREATE INDEX level_by_plan ON level (plan);
CREATE INDEX level_by_variant ON level (variant) WHERE variant IS NOT NULL;
CREATE INDEX level_by_replaces ON level (replaces) WHERE replaces IS NOT NULL;

-- walls: JSON array of {"length", "corner", "angle", "base", "crown"}, in order round the room.
CREATE TABLE room (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    variant INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    replaces INTEGER REFERENCES room DEFERRABLE INITIALLY DEFERRED,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1)), position INTEGER NOT NULL,
    level INTEGER REFERENCES level DEFERRABLE INITIALLY DEFERRED,
    mark TEXT NOT NULL, name TEXT NOT NULL, use TEXT NOT NULL, walls TEXT NOT NULL,
    ceiling INTEGER NOT NULL, base_choice TEXT NOT NULL,
    base INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    shoe_choice TEXT NOT NULL,
    shoe INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    crown_choice TEXT NOT NULL,
    crown INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    chair_rail INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    base_break INTEGER NOT NULL, extra_base INTEGER NOT NULL,
    built_up_base INTEGER NOT NULL CHECK (built_up_base IN (0, 1)), note TEXT NOT NULL
) STRICT;
CREATE INDEX room_by_plan ON room (plan);
CREATE INDEX room_by_variant ON room (variant) WHERE variant IS NOT NULL;
CREATE INDEX room_by_replaces ON room (replaces) WHERE replaces IS NOT NULL;
CREATE INDEX room_by_level ON room (level) WHERE level IS NOT NULL;
CREATE INDEX room_by_base ON room (base) WHERE base IS NOT NULL;
CREATE INDEX room_by_shoe ON room (shoe) WHERE shoe IS NOT NULL;
CREATE INDEX room_by_crown ON room (crown) WHERE crown IS NOT NULL;
CREATE INDEX room_by_chair_rail ON room (chair_rail) WHERE chair_rail IS NOT NULL;

-- sides: JSON array of {"length", "angle"} for a polygon.
CREATE TABLE opening (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    variant INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    replaces INTEGER REFERENCES opening DEFERRABLE INITIALLY DEFERRED,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1)), position INTEGER NOT NULL,
    level INTEGER REFERENCES level DEFERRABLE INITIALLY DEFERRED,
    room INTEGER REFERENCES room DEFERRABLE INITIALLY DEFERRED,
    other_room INTEGER REFERENCES room DEFERRABLE INITIALLY DEFERRED,
    wall INTEGER NOT NULL, mark TEXT NOT NULL, count INTEGER NOT NULL, kind TEXT NOT NULL,
    width INTEGER NOT NULL, height INTEGER NOT NULL, shape TEXT NOT NULL, rise INTEGER NOT NULL,
    sides TEXT NOT NULL, style TEXT NOT NULL, sides_cased INTEGER NOT NULL,
    casing INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    stool INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    cap INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    reveal INTEGER NOT NULL, mulls INTEGER NOT NULL,
    mull_casing INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    wall_thickness INTEGER NOT NULL, frame_depth INTEGER NOT NULL, hand TEXT NOT NULL,
    lockset TEXT NOT NULL, deadbolt INTEGER NOT NULL CHECK (deadbolt IN (0, 1)),
    door_stop INTEGER NOT NULL CHECK (door_stop IN (0, 1)),
    from_subfloor INTEGER NOT NULL CHECK (from_subfloor IN (0, 1)), flooring INTEGER NOT NULL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX opening_by_plan ON opening (plan);
CREATE INDEX opening_by_variant ON opening (variant) WHERE variant IS NOT NULL;
CREATE INDEX opening_by_replaces ON opening (replaces) WHERE replaces IS NOT NULL;
CREATE INDEX opening_by_level ON opening (level) WHERE level IS NOT NULL;
CREATE INDEX opening_by_room ON opening (room) WHERE room IS NOT NULL;
CREATE INDEX opening_by_other_room ON opening (other_room) WHERE other_room IS NOT NULL;
CREATE INDEX opening_by_casing ON opening (casing) WHERE casing IS NOT NULL;
CREATE INDEX opening_by_stool ON opening (stool) WHERE stool IS NOT NULL;
CREATE INDEX opening_by_cap ON opening (cap) WHERE cap IS NOT NULL;
CREATE INDEX opening_by_mull_casing ON opening (mull_casing) WHERE mull_casing IS NOT NULL;

CREATE TABLE closet (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    variant INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    replaces INTEGER REFERENCES closet DEFERRABLE INITIALLY DEFERRED,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1)), position INTEGER NOT NULL,
    level INTEGER REFERENCES level DEFERRABLE INITIALLY DEFERRED,
    room INTEGER REFERENCES room DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, kind TEXT NOT NULL, width INTEGER NOT NULL, depth INTEGER NOT NULL,
    shelves INTEGER NOT NULL, count INTEGER NOT NULL,
    shelf INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    rod INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    cleat INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX closet_by_plan ON closet (plan);
CREATE INDEX closet_by_variant ON closet (variant) WHERE variant IS NOT NULL;
CREATE INDEX closet_by_replaces ON closet (replaces) WHERE replaces IS NOT NULL;
CREATE INDEX closet_by_level ON closet (level) WHERE level IS NOT NULL;
CREATE INDEX closet_by_room ON closet (room) WHERE room IS NOT NULL;
CREATE INDEX closet_by_shelf ON closet (shelf) WHERE shelf IS NOT NULL;
CREATE INDEX closet_by_rod ON closet (rod) WHERE rod IS NOT NULL;
CREATE INDEX closet_by_cleat ON closet (cleat) WHERE cleat IS NOT NULL;

CREATE TABLE stair (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    variant INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    replaces INTEGER REFERENCES stair DEFERRABLE INITIALLY DEFERRED,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1)), position INTEGER NOT NULL,
    level INTEGER REFERENCES level DEFERRABLE INITIALLY DEFERRED,
    room INTEGER REFERENCES room DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, risers INTEGER NOT NULL, closed_skirts INTEGER NOT NULL,
    open_skirts INTEGER NOT NULL,
    treads_and_risers INTEGER NOT NULL CHECK (treads_and_risers IN (0, 1)),
    skirt_length INTEGER NOT NULL,
    skirt INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    rail TEXT NOT NULL, rail_length INTEGER NOT NULL,
    handrail INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    newels INTEGER NOT NULL, balusters INTEGER NOT NULL, baluster_run INTEGER NOT NULL,
    baluster_width INTEGER NOT NULL, note TEXT NOT NULL
) STRICT;
CREATE INDEX stair_by_plan ON stair (plan);
CREATE INDEX stair_by_variant ON stair (variant) WHERE variant IS NOT NULL;
CREATE INDEX stair_by_replaces ON stair (replaces) WHERE replaces IS NOT NULL;
CREATE INDEX stair_by_level ON stair (level) WHERE level IS NOT NULL;
CREATE INDEX stair_by_room ON stair (room) WHERE room IS NOT NULL;
CREATE INDEX stair_by_skirt ON stair (skirt) WHERE skirt IS NOT NULL;
CREATE INDEX stair_by_handrail ON stair (handrail) WHERE handrail IS NOT NULL;

CREATE TABLE wall_treatment (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    variant INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    replaces INTEGER REFERENCES wall_treatment DEFERRABLE INITIALLY DEFERRED,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1)), position INTEGER NOT NULL,
    level INTEGER REFERENCES level DEFERRABLE INITIALLY DEFERRED,
    room INTEGER REFERENCES room DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, kind TEXT NOT NULL, width INTEGER NOT NULL, height INTEGER NOT NULL,
    board INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    spacing INTEGER NOT NULL,
    cap INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX wall_treatment_by_plan ON wall_treatment (plan);
CREATE INDEX wall_treatment_by_variant ON wall_treatment (variant) WHERE variant IS NOT NULL;
CREATE INDEX wall_treatment_by_replaces ON wall_treatment (replaces) WHERE replaces IS NOT NULL;
CREATE INDEX wall_treatment_by_level ON wall_treatment (level) WHERE level IS NOT NULL;
CREATE INDEX wall_treatment_by_room ON wall_treatment (room) WHERE room IS NOT NULL;
CREATE INDEX wall_treatment_by_board ON wall_treatment (board) WHERE board IS NOT NULL;
CREATE INDEX wall_treatment_by_cap ON wall_treatment (cap) WHERE cap IS NOT NULL;

CREATE TABLE other_work (
    id INTEGER NOT NULL PRIMARY KEY,
    plan INTEGER NOT NULL REFERENCES plan DEFERRABLE INITIALLY DEFERRED,
    variant INTEGER REFERENCES variant DEFERRABLE INITIALLY DEFERRED,
    replaces INTEGER REFERENCES other_work DEFERRABLE INITIALLY DEFERRED,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1)), position INTEGER NOT NULL,
    level INTEGER REFERENCES level DEFERRABLE INITIALLY DEFERRED,
    room INTEGER REFERENCES room DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL, task TEXT NOT NULL, quantity INTEGER NOT NULL,
    profile INTEGER REFERENCES profile DEFERRABLE INITIALLY DEFERRED,
    length INTEGER NOT NULL, material INTEGER NOT NULL, note TEXT NOT NULL
) STRICT;
CREATE INDEX other_work_by_plan ON other_work (plan);
CREATE INDEX other_work_by_variant ON other_work (variant) WHERE variant IS NOT NULL;
CREATE INDEX other_work_by_replaces ON other_work (replaces) WHERE replaces IS NOT NULL;
CREATE INDEX other_work_by_level ON other_work (level) WHERE level IS NOT NULL;
CREATE INDEX other_work_by_room ON other_work (room) WHERE room IS NOT NULL;
CREATE INDEX other_work_by_profile ON other_work (profile) WHERE profile IS NOT NULL;
