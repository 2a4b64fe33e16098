-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a bid keeps for what nobody foresees, and what bringing the material costs.

ALTER TABLE terms ADD COLUMN contingency INTEGER NOT NULL DEFAULT 0;
ALTER TABLE terms ADD COLUMN delivery INTEGER NOT NULL DEFAULT 0;
ALTER TABLE bid_setup ADD COLUMN contingency INTEGER NOT NULL DEFAULT 0;
ALTER TABLE bid_setup ADD COLUMN delivery INTEGER NOT NULL DEFAULT 0;
