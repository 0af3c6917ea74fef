"""`python -m cribkit` is the same command as `cribkit`."""

from __future__ import annotations

import sys

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


if __name__ == "__main__":
    main()
