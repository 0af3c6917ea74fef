"""What a pattern is."""

from __future__ import annotations

import re
from collections.abc import Callable

# A regular expression, and what stands in its place: a template, or what makes it of a match.
Pattern = tuple[str, str | Callable[[re.Match[str]], str]]
