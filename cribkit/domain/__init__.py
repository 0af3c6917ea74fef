"""The pure core: no clock, no files, no database. "Today" is always an argument."""
