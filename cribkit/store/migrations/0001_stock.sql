-- The crib: what is stocked, every movement of it, and the jobs that it was used for.
-- Amounts of stock are whole thousandths of the item's unit (1 each = 1000, 120 mL = 120000), so that sums are exact.
-- Times are UTC, ISO 8601 with a Z; days are ISO 8601 calendar dates.

CREATE TABLE fact (                      -- what the program notes about this file: reader version, head of the chain
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE item (
    tag TEXT PRIMARY KEY COLLATE NOCASE CHECK (length(tag) BETWEEN 1 AND 64),
    kind TEXT NOT NULL CHECK (kind IN ('tool', 'wrench', 'consumable')),
    description TEXT NOT NULL CHECK (description <> ''),
    location TEXT NOT NULL DEFAULT '',
    condition TEXT NOT NULL DEFAULT 'ok' CHECK (condition IN ('ok', 'damaged', 'missing')),
    unit TEXT NOT NULL DEFAULT 'each' CHECK (unit IN ('each', 'mL', 'g', 'mm')),
    pack REAL NOT NULL DEFAULT 1 CHECK (pack > 0),   -- content of one container, in unit
    contents TEXT NOT NULL DEFAULT '',               -- members of a set, as written
    traits TEXT NOT NULL DEFAULT '',
    hazards TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT '',
    meaning TEXT NOT NULL                            -- the description as the reader of `fact.reader` understood it
) STRICT;
CREATE INDEX item_by_kind ON item (kind);

CREATE TABLE item_term (                 -- by which words of meaning an item is looked up
    term TEXT NOT NULL,
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES item (tag) ON DELETE CASCADE,
    PRIMARY KEY (term, tag)
) STRICT, WITHOUT ROWID;
CREATE INDEX item_term_by_tag ON item_term (tag);

CREATE TABLE wrench (                    -- the scale and the calibration of a torque wrench
    tag TEXT PRIMARY KEY COLLATE NOCASE REFERENCES item (tag),
    mechanism TEXT NOT NULL,
    range_min REAL NOT NULL CHECK (range_min >= 0),  -- in `unit`, like range_max and graduation
    range_max REAL NOT NULL CHECK (range_max > 0),
    unit TEXT NOT NULL,
    graduation REAL NOT NULL CHECK (graduation >= 0),  -- 0: no scale to read (fixed, non-graduated)
    second_unit TEXT NOT NULL DEFAULT '',
    second_min REAL,
    second_max REAL,
    second_graduation REAL,
    accuracy_pct REAL CHECK (accuracy_pct > 0),
    drive TEXT NOT NULL DEFAULT '',
    lever_mm REAL CHECK (lever_mm > 0),
    calibrated_on TEXT CHECK (calibrated_on IS date(calibrated_on)),
    interval_months INTEGER NOT NULL DEFAULT 12 CHECK (interval_months > 0),
    interval_cycles INTEGER NOT NULL DEFAULT 5000 CHECK (interval_cycles > 0),
    certificate TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE TABLE supplier (
    name TEXT PRIMARY KEY COLLATE NOCASE CHECK (name <> ''),
    lead_days REAL NOT NULL CHECK (lead_days >= 0),
    minimum_order REAL CHECK (minimum_order >= 0),   -- money
    note TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE TABLE consumable (
    tag TEXT PRIMARY KEY COLLATE NOCASE REFERENCES item (tag),
    stock_unit TEXT NOT NULL,            -- the unit as the crib's files write it: L where item.unit is mL
    minimum REAL CHECK (minimum >= 0),   -- in containers, like maximum
    maximum REAL CHECK (maximum >= minimum),
    supplier TEXT COLLATE NOCASE REFERENCES supplier (name),
    unit_cost REAL CHECK (unit_cost >= 0),           -- money for one container
    service_life_days INTEGER CHECK (service_life_days > 0)  -- how long an opened container may be used
) STRICT;

CREATE TABLE lot (
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES item (tag),
    lot TEXT NOT NULL,
    expires_on TEXT CHECK (expires_on IS date(expires_on)),  -- good through this day
    opened_on TEXT CHECK (opened_on IS date(opened_on)),     -- this lot is an opened container, since this day
    PRIMARY KEY (tag, lot)
) STRICT, WITHOUT ROWID;

CREATE TABLE movement (
    id INTEGER PRIMARY KEY,
    at TEXT NOT NULL,                    -- when it was posted, UTC
    day TEXT NOT NULL CHECK (day IS date(day)),      -- the day that it counts for
    by TEXT NOT NULL CHECK (by <> ''),   -- who posted it
    kind TEXT NOT NULL CHECK (kind IN ('receive', 'issue', 'return', 'use', 'count', 'scrap', 'lost', 'found')),
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES item (tag),
    lot TEXT NOT NULL DEFAULT '',
    amount INTEGER NOT NULL,             -- negative where it takes back the movement that it corrects, or a count fell
    holder TEXT NOT NULL DEFAULT '',     -- who has it, or had it
    job TEXT NOT NULL DEFAULT '',
    due TEXT CHECK (due IS date(due)),   -- when it is expected back
    note TEXT NOT NULL DEFAULT '',
    corrects INTEGER REFERENCES movement (id),
    digest TEXT NOT NULL,                -- SHA-256 over the digest before it and this row (domain/stock/movement.py)
    CHECK (amount > 0 OR corrects IS NOT NULL OR kind = 'count')
) STRICT;
CREATE INDEX movement_by_tag ON movement (tag, id);
CREATE INDEX movement_by_job ON movement (job, id) WHERE job <> '';
CREATE UNIQUE INDEX movement_corrected_once ON movement (corrects) WHERE corrects IS NOT NULL;

CREATE TRIGGER movement_is_never_edited BEFORE UPDATE ON movement BEGIN
    SELECT RAISE(ABORT, 'a movement is never edited: correct it with `cribkit undo`');
END;
CREATE TRIGGER movement_is_never_deleted BEFORE DELETE ON movement BEGIN
    SELECT RAISE(ABORT, 'a movement is never deleted: correct it with `cribkit undo`');
END;
CREATE TRIGGER movement_is_appended BEFORE INSERT ON movement
WHEN NEW.id IS NOT (SELECT coalesce(max(id), 0) + 1 FROM movement) BEGIN
    SELECT RAISE(ABORT, 'a movement is only ever added at the end');
END;

CREATE TABLE balance (                   -- kept for speed; `cribkit audit` works it out again from the movements
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES item (tag),
    lot TEXT NOT NULL DEFAULT '',
    inside INTEGER NOT NULL CHECK (inside >= 0),     -- in the crib
    outside INTEGER NOT NULL CHECK (outside >= 0),   -- issued and not back
    PRIMARY KEY (tag, lot)
) STRICT, WITHOUT ROWID;

CREATE TABLE loan (                      -- who has what; kept for speed, like balance
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES item (tag),
    lot TEXT NOT NULL DEFAULT '',
    holder TEXT NOT NULL,
    job TEXT NOT NULL DEFAULT '',
    amount INTEGER NOT NULL CHECK (amount > 0),
    since TEXT NOT NULL CHECK (since IS date(since)),
    due TEXT CHECK (due IS date(due)),
    PRIMARY KEY (tag, lot, holder, job)
) STRICT, WITHOUT ROWID;
CREATE INDEX loan_by_job ON loan (job) WHERE job <> '';

CREATE TABLE job (
    job TEXT PRIMARY KEY COLLATE NOCASE CHECK (job <> ''),
    opened_at TEXT NOT NULL,
    day TEXT NOT NULL CHECK (day IS date(day)),
    by TEXT NOT NULL CHECK (by <> ''),
    bay TEXT NOT NULL DEFAULT '',
    vehicle TEXT NOT NULL DEFAULT '',
    procedures TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(procedures)),  -- ids with their revisions
    anyway TEXT NOT NULL DEFAULT '',     -- why it was started although it was not ready
    state TEXT NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'held', 'closed')),
    closed_at TEXT,
    closed_by TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE TABLE job_torque (                -- which wrench did which torque
    job TEXT NOT NULL COLLATE NOCASE REFERENCES job (job),
    procedure TEXT NOT NULL,
    torque TEXT NOT NULL,                -- the torque's id in its procedure
    fastener TEXT NOT NULL,
    count INTEGER NOT NULL CHECK (count > 0),        -- fasteners
    steps INTEGER NOT NULL DEFAULT 1 CHECK (steps > 0),  -- times that the wrench acts on each fastener
    spec TEXT NOT NULL,
    target_nm REAL,
    low_nm REAL,
    high_nm REAL,
    setting REAL,
    setting_unit TEXT NOT NULL DEFAULT '',
    wrench TEXT COLLATE NOCASE REFERENCES item (tag),
    day TEXT NOT NULL CHECK (day IS date(day)),
    done INTEGER NOT NULL DEFAULT 0 CHECK (done IN (0, 1)),  -- said to be done when the job was closed
    PRIMARY KEY (job, procedure, torque)
) STRICT;
CREATE INDEX job_torque_by_wrench ON job_torque (wrench, day);

CREATE TABLE job_consumable (            -- what the procedures expected to use; what was used stands in movement
    job TEXT NOT NULL COLLATE NOCASE REFERENCES job (job),
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES item (tag),
    planned INTEGER NOT NULL CHECK (planned >= 0),
    PRIMARY KEY (job, tag)
) STRICT, WITHOUT ROWID;

CREATE TABLE job_hold (                  -- why a job cannot be released yet
    id INTEGER PRIMARY KEY,
    job TEXT NOT NULL COLLATE NOCASE REFERENCES job (job),
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES item (tag),
    lot TEXT NOT NULL DEFAULT '',
    what TEXT NOT NULL CHECK (what IN ('missing', 'piece')),  -- the tool itself, or a piece of a broken one
    amount INTEGER NOT NULL CHECK (amount > 0),
    at TEXT NOT NULL,
    by TEXT NOT NULL CHECK (by <> ''),
    settled TEXT CHECK (settled IN ('found', 'lost')),
    settled_at TEXT,
    settled_by TEXT NOT NULL DEFAULT '',
    reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX job_hold_by_job ON job_hold (job);

CREATE TABLE confirmation (              -- a person decided that this item serves this need
    id INTEGER PRIMARY KEY,
    need TEXT NOT NULL CHECK (need <> ''),
    tag TEXT NOT NULL COLLATE NOCASE REFERENCES item (tag),
    by TEXT NOT NULL CHECK (by <> ''),
    at TEXT NOT NULL,
    anyway TEXT NOT NULL DEFAULT '',     -- why, where a stated attribute speaks against it
    withdrawn_at TEXT,
    withdrawn_by TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE UNIQUE INDEX confirmation_in_force ON confirmation (need, tag) WHERE withdrawn_at IS NULL;
