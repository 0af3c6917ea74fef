"""`python -m cribkit` is the same command as `cribkit`."""

from cribkit.cli.app import main

if __name__ == "__main__":
    main()
