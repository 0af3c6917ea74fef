"""Which socket a fastener's head asks for: never one that the head does not say."""

import pytest

from cribkit.domain.wording import head_drivers


# ISO 272 / ISO 4014: M8 has 13 mm across flats; JIS B 1180 small 12 mm, old DIN 931 M10 17 mm (ISO 16 mm). So that a
# thread alone never tells the socket.
@pytest.mark.parametrize("head", ["M8", "M8 x 1.25", "M10 hex", "M8 bolt", "M6x1.0x20", "strange", ""])
def test_a_thread_alone_gives_no_socket(head: str) -> None:
    assert head_drivers(head) == ()


@pytest.mark.parametrize(
    ("head", "attribute"),
    [
        ("M8 hex, 13 mm", ("size", "13 mm")),
        ("M8 x 1.25, 13 mm hex", ("size", "13 mm")),
        ("12-point 10 mm", ("size", "10 mm")),
        ("10 mm 12 point", ("size", "10 mm")),
        ("12 pt 3/8", ("size", "3/8 in")),
        ("8 mm hex", ("size", "8 mm")),
        ("T30", ("tip", "T30")),
        ("E12", ("tip", "E12")),
        ("M8 cap screw, 6 mm hex key", ("tip", "hex 6 mm")),
    ],
)
def test_the_size_is_that_of_the_head(head: str, attribute: tuple[str, str]) -> None:
    assert attribute in head_drivers(head)[0].attributes


# A socket head (ISO 4762, ISO 7380, ISO 10642) takes a hexagon key; a hex cap screw (ASME B18.2.1) a socket outside.
@pytest.mark.parametrize(
    ("head", "family", "attribute"),
    [
        ("5 mm socket head cap screw", "bit-socket", ("tip", "hex 5 mm")),
        ("6 mm internal hex bolt", "bit-socket", ("tip", "hex 6 mm")),
        ("6 mm SHCS", "bit-socket", ("tip", "hex 6 mm")),
        ("5 mm cap screw", "bit-socket", ("tip", "hex 5 mm")),
        ("4 mm countersunk socket screw", "bit-socket", ("tip", "hex 4 mm")),
        ("T30 button head", "bit-socket", ("tip", "T30")),
        ("1/2 in hex cap screw", "socket", ("size", "1/2 in")),
        ("13 mm hex head bolt", "socket", ("size", "13 mm")),
        ("13 mm hex, deep", "socket", ("depth", "deep")),
        ("13 mm deep hex", "socket", ("depth", "deep")),
        ("16 mm hex, spark plug", "spark-plug-socket", ("size", "16 mm")),
        ("glow plug, 10 mm hex", "glow-plug-socket", ("size", "10 mm")),
        ("22 mm hex, oxygen sensor", "oxygen-sensor-socket", ("size", "22 mm")),
        ("10 mm square head", "socket", ("points", "8")),
    ],
)
def test_the_driver_goes_into_or_onto_the_head(head: str, family: str, attribute: tuple[str, str]) -> None:
    first = head_drivers(head)[0]
    assert (first.family, attribute in first.attributes) == (family, True)


@pytest.mark.parametrize("head", ["8 mm square drain plug", "8 mm square recess"])
def test_a_square_recess_has_no_socket(head: str) -> None:
    assert head_drivers(head) == ()
