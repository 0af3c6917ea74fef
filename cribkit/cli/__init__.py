"""The command line: parse at the edge, make one call, render."""
