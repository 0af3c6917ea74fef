"""`python -m cribkit` is the same command as `cribkit`."""

from __future__ import annotations

import os
import sys
from typing import NoReturn

STOPPED = "Stopped. A posting is whole or not there at all: `cribkit history` tells."
INTERRUPTED = 130  # as shells report Ctrl-C


def main() -> None:
    """Run the program. Ctrl-C ends it without a traceback, also while it starts up."""
    try:
        from cribkit.cli.app import main as run

        run()
    except KeyboardInterrupt:
        stopped()
    except SystemExit as end:
        if end.code == INTERRUPTED:
            stopped()
        raise


def stopped() -> None:
    """Say so, and end."""
    print(STOPPED, file=sys.stderr)
    sys.exit(INTERRUPTED)


def run_and_leave() -> NoReturn:
    """The installed command: `main`, and then the end of the process, with everything written and nothing taken down.

    By then every file and crib is closed and only memory is left, which the system takes back at once; taking it down
    object by object would cost a check some 12 ms of 120. Where an output cannot be flushed, Python's own end tells it.
    """
    code: int | str | None = 0
    try:
        main()
    except SystemExit as end:
        code = end.code
    if not (code is None or isinstance(code, int)):
        sys.exit(code)
    try:
        for stream in (sys.stdout, sys.stderr):
            if stream is not None:  # a process may have been started without one
                stream.flush()
    except (OSError, ValueError):
        sys.exit(code)
    os._exit(code or 0)


if __name__ == "__main__":
    run_and_leave()
