"""What a result looks like: table, JSON, CSV, Markdown, HTML."""
