"""A page of HTML for paper and phones: one shell for every sheet, with stored text escaped.

Black on white, no colour carries meaning, no script, nothing fetched from elsewhere.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

CAUTION = (
    "The vehicle maker's service information, local codes and licensed practice come first; "
    "this sheet does not replace them."
)

STYLE = """
:root { font: 15px/1.35 system-ui, sans-serif; color: #000; background: #fff; }
body { max-width: 52rem; margin: 0 auto; padding: 0.75rem; overflow-wrap: break-word; }
h1 { font-size: 1.35rem; margin: 0 0 .3rem; }
h2 { font-size: 1.05rem; margin: 1.1rem 0 .3rem; border-bottom: 2px solid #000; }
table { border-collapse: collapse; width: 100%; }
th, td { border: 1px solid #555; padding: .25rem .4rem; text-align: left; }
th, td { vertical-align: top; }
.long { overflow-wrap: anywhere; }
th { background: #eee; }
.verdict { border: 3px solid #000; padding: .4rem .6rem; font-weight: bold; font-size: 1.15rem; }
.box { width: 1.1rem; height: 1.1rem; border: 1.5px solid #000; display: inline-block; }
.whole { white-space: nowrap; }
.initials { min-width: 4.5rem; }
.note { font-size: .9rem; }
.caution { border-left: 6px solid #000; padding-left: .6rem; }
@media (max-width: 40rem) { :root { font-size: 13px; } body { padding: .4rem; } th, td { padding: .15rem .25rem; } }
@media print { @page { size: A4; margin: 12mm; } body { max-width: none; padding: 0; font-size: 10pt; }
  tr, .verdict { break-inside: avoid; } h2 { break-after: avoid; } }
"""


LONG = 24  # characters: no word of the trade is longer


class Markup(str):
    """Text that is HTML already; everything else is escaped."""

    __slots__ = ()


BOX = Markup('<span class="box" role="img" aria-label="tick"></span>')


def html(value: object) -> str:
    """A value as HTML: markup as it is, text escaped."""
    from html import escape

    return value if isinstance(value, Markup) else escape("" if value is None else str(value))


def flowing(value: object) -> str:
    """A value as HTML in which a very long word may break: else it would push a table over the edge of a phone."""
    if isinstance(value, Markup):
        return value
    import re

    return re.sub(rf"[^\s-]{{{LONG},}}", lambda word: f'<span class="long">{word[0]}</span>', html(value))


def page(title: str, parts: Iterable[str], style: str = "") -> str:
    """A whole page. `parts` are HTML."""
    return (
        '<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8">'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f"<title>{html(title)}</title><style>{STYLE}{style}</style></head>\n<body>\n"
        + "\n".join(parts)
        + f'\n<p class="caution">{html(CAUTION)}</p>\n</body></html>'
    )


def heading(text: str) -> Markup:
    """A section's heading."""
    return Markup(f"<h2>{html(text)}</h2>")


def paragraph(text: object, kind: str = "") -> Markup:
    """A paragraph, with a class of the style."""
    return Markup(f'<p class="{html(kind)}">{flowing(text)}</p>' if kind else f"<p>{flowing(text)}</p>")


def table(columns: Sequence[object], rows: Iterable[Sequence[object]]) -> Markup:
    """A table; cells are escaped unless they are markup."""
    head = "".join(f"<th>{html(name)}</th>" for name in columns)
    body = "\n".join("<tr>" + "".join(f"<td>{flowing(value)}</td>" for value in row) + "</tr>" for row in rows)
    return Markup(f"<table><thead><tr>{head}</tr></thead>\n<tbody>{body}</tbody></table>")


def bullets(texts: Iterable[object]) -> Markup:
    """A list."""
    return Markup("<ul>" + "".join(f"<li>{flowing(text)}</li>" for text in texts) + "</ul>")


def lines(texts: Iterable[object]) -> Markup:
    """Several lines in one cell."""
    return Markup("<br>".join(map(flowing, texts)))
