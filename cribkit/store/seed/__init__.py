"""The crib's contents as a folder of CSV files: read, load, export."""
