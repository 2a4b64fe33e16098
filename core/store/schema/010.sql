-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a profile looks like from its end.

ALTER TABLE profile ADD COLUMN section TEXT NOT NULL DEFAULT 'square edge';
