"""The command line: parse at the edge, make one call, render."""

import gc

# A command ends before its garbage matters: collecting while modules load would cost some 10 ms of 130.
gc.set_threshold(100_000, 50, 50)
