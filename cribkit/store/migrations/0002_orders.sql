-- Orders placed with suppliers, their lines, and which receipts belong to them.
-- What is still to come of a line = its amount less its receipts and their corrections; nothing is kept twice.

CREATE TABLE purchase (                  -- one order to one supplier
    id INTEGER PRIMARY KEY,
    supplier TEXT NOT NULL DEFAULT '' COLLATE NOCASE,    -- '': no supplier is known
    day TEXT NOT NULL CHECK (day IS date(day)),          -- ordered on
    due TEXT NOT NULL CHECK (due IS date(due)),          -- expected on
    at TEXT NOT NULL,                    -- when it was posted, UTC
    by TEXT NOT NULL CHECK (by <> ''),
    note TEXT NOT NULL DEFAULT '',
    ended_on TEXT CHECK (ended_on IS date(ended_on)),    -- what had not come by then will not come any more
    ended_by TEXT NOT NULL DEFAULT '',
    ended_why TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE TABLE purchase_line (
    purchase INTEGER NOT NULL REFERENCES purchase (id),
    line INTEGER NOT NULL CHECK (line > 0),
    tag TEXT COLLATE NOCASE REFERENCES item (tag),       -- NULL: not stocked so far
    what TEXT NOT NULL CHECK (what <> ''),               -- the item's description, or the need's own text
    packs INTEGER NOT NULL CHECK (packs > 0),
    amount INTEGER NOT NULL CHECK (amount > 0),          -- thousandths of `unit`, like a movement's
    unit TEXT NOT NULL CHECK (unit IN ('each', 'mL', 'g', 'mm')),
    unit_cost REAL CHECK (unit_cost >= 0),               -- money for one container
    why TEXT NOT NULL DEFAULT '',
    PRIMARY KEY (purchase, line)
) STRICT, WITHOUT ROWID;
CREATE INDEX purchase_line_by_tag ON purchase_line (tag);

CREATE TABLE purchase_arrival (          -- a receipt that belongs to a line
    movement INTEGER PRIMARY KEY REFERENCES movement (id),
    purchase INTEGER NOT NULL,
    line INTEGER NOT NULL,
    FOREIGN KEY (purchase, line) REFERENCES purchase_line (purchase, line)
) STRICT;
CREATE INDEX purchase_arrival_by_line ON purchase_arrival (purchase, line);
