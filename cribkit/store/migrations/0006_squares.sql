-- What this crib's own parts bear, by square: it goes before the program's table.
CREATE TABLE square (
    square TEXT PRIMARY KEY,
    limit_nm REAL NOT NULL CHECK (limit_nm > 0),
    note TEXT NOT NULL DEFAULT ''
) STRICT;
