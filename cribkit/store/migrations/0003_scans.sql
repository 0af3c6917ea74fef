-- The number under which the trade scans an item: GTIN-14, padded with zeros (GS1 General Specifications).
ALTER TABLE item ADD COLUMN gtin TEXT NOT NULL DEFAULT '' CHECK (gtin = '' OR length(gtin) = 14);
CREATE UNIQUE INDEX item_by_gtin ON item (gtin) WHERE gtin <> '';
