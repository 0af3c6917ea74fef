-- Calibration: what was measured, what happened to a wrench, and what it may be used for since.

CREATE TABLE wrench_event (              -- one line of a wrench's life; never edited or deleted
    id INTEGER PRIMARY KEY,
    at TEXT NOT NULL,                    -- when it was recorded, UTC
    day TEXT NOT NULL CHECK (day IS date(day)),      -- the day that it counts for
    by TEXT NOT NULL CHECK (by <> ''),
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES wrench (tag),
    what TEXT NOT NULL CHECK (
        what IN ('calibrated', 'dropped', 'overloaded', 'repaired', 'stored', 'returned', 'withdrawn')
    ),
    note TEXT NOT NULL DEFAULT '',
    withdraws INTEGER REFERENCES wrench_event (id),  -- the line that a "withdrawn" takes back
    digest TEXT NOT NULL,                -- SHA-256 over the digest before it, this row, and its certificate
    CHECK ((what = 'withdrawn') = (withdraws IS NOT NULL))
) STRICT;
CREATE INDEX wrench_event_by_tag ON wrench_event (tag, id);
CREATE UNIQUE INDEX wrench_event_withdrawn_once ON wrench_event (withdraws) WHERE withdraws IS NOT NULL;

CREATE TABLE certificate (
    event INTEGER PRIMARY KEY REFERENCES wrench_event (id),
    number TEXT NOT NULL CHECK (number <> ''),
    laboratory TEXT NOT NULL,
    device TEXT NOT NULL DEFAULT '',
    uncertainty_pct REAL CHECK (uncertainty_pct >= 0),  -- of the reference device, k = 2
    temperature_c REAL,
    note TEXT NOT NULL DEFAULT '',
    limit_pct REAL NOT NULL CHECK (limit_pct > 0),   -- what the readings were judged by
    accepted_pct REAL CHECK (accepted_pct >= 0),     -- the same less a guard band, if one was asked for
    as_found TEXT NOT NULL DEFAULT '',
    as_left TEXT NOT NULL DEFAULT '',
    fitness TEXT NOT NULL CHECK (fitness IN ('ready', 'limited', 'unfit')),
    low_nm REAL,                         -- the range that it may be used in
    high_nm REAL CHECK (high_nm >= low_nm),
    two_way INTEGER NOT NULL CHECK (two_way IN (0, 1)),
    why TEXT NOT NULL,
    mended INTEGER NOT NULL DEFAULT 0 CHECK (mended IN (0, 1))  -- it took the mark "damaged" from the wrench
) STRICT;

CREATE TABLE reading (
    event INTEGER NOT NULL REFERENCES certificate (event),
    place INTEGER NOT NULL,
    phase TEXT NOT NULL CHECK (phase IN ('as-found', 'as-left')),
    direction TEXT NOT NULL CHECK (direction IN ('clockwise', 'counter-clockwise')),
    setting REAL NOT NULL CHECK (setting > 0),
    reference REAL NOT NULL CHECK (reference > 0),   -- what the reference device showed, in the same unit
    unit TEXT NOT NULL,
    PRIMARY KEY (event, place)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER wrench_event_is_never_edited BEFORE UPDATE ON wrench_event BEGIN
    SELECT RAISE(ABORT, 'a line of a wrench''s life is never edited: withdraw it');
END;
CREATE TRIGGER wrench_event_is_never_deleted BEFORE DELETE ON wrench_event BEGIN
    SELECT RAISE(ABORT, 'a line of a wrench''s life is never deleted: withdraw it');
END;
CREATE TRIGGER certificate_is_never_edited BEFORE UPDATE ON certificate BEGIN
    SELECT RAISE(ABORT, 'a certificate is never edited: withdraw it and record it again');
END;
CREATE TRIGGER certificate_is_never_deleted BEFORE DELETE ON certificate BEGIN
    SELECT RAISE(ABORT, 'a certificate is never deleted: withdraw it');
END;
CREATE TRIGGER reading_is_never_edited BEFORE UPDATE ON reading BEGIN
    SELECT RAISE(ABORT, 'a reading is never edited: withdraw the certificate and record it again');
END;
CREATE TRIGGER reading_is_never_deleted BEFORE DELETE ON reading BEGIN
    SELECT RAISE(ABORT, 'a reading is never deleted: withdraw the certificate');
END;

-- What a later look back needs beside the setting: the wrench's torque for one N·m at the fastener (an offset adapter
-- changes it), a left-hand thread, and whether an angle follows the torque.
ALTER TABLE job_torque ADD COLUMN lever REAL NOT NULL DEFAULT 1 CHECK (lever > 0);
ALTER TABLE job_torque ADD COLUMN left_hand INTEGER NOT NULL DEFAULT 0 CHECK (left_hand IN (0, 1));
ALTER TABLE job_torque ADD COLUMN angle INTEGER NOT NULL DEFAULT 0 CHECK (angle IN (0, 1));
