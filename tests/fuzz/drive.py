"""Coverage-guided fuzzing of one reader, outside the suite:

    pip install atheris; python -m tests.fuzz.drive csv -runs=100000

Anything but a result or a CribkitError stops it. What it finds stays in .fuzz/.
"""

from __future__ import annotations

import sys

import atheris  # type: ignore[import-untyped, unused-ignore]  # a tool for this script only, not a dependency

with atheris.instrument_imports(include=["cribkit"]):
    from tests.fuzz.readers import INPUTS, READERS, ROOT


def main() -> None:
    """Fuzz the reader that the command line names."""
    name = sys.argv.pop(1)
    corpus = ROOT / ".fuzz" / name
    corpus.mkdir(parents=True, exist_ok=True)
    for number, data in enumerate(INPUTS[name]):
        (corpus / f"good-{number}").write_bytes(data)
    atheris.Setup([*sys.argv, str(corpus)], READERS[name])
    atheris.Fuzz()


if __name__ == "__main__":
    main()
