"""The crib file: SQLite through sqlite-utils, migrations, movements, CSV in and out."""
