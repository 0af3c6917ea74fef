"""How people write amounts, lengths and angles."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.problem import BadInput
from cribkit.domain.quantity import Amount, format_amount, parse_amount, parse_angle_deg, parse_length_mm


@pytest.mark.parametrize(
    ("text", "value", "unit"),
    [
        ("4", 4, "each"),
        ("3 pcs", 3, "each"),
        ("6 off", 6, "each"),
        ("6 ea.", 6, "each"),
        ("2 pairs", 4, "each"),
        ("120 mL", 120, "mL"),
        ("120ml", 120, "mL"),
        ("0.5 l", 500, "mL"),
        ("0,5 l", 500, "mL"),
        ("1/2 L", 500, "mL"),
        ("½ L", 500, "mL"),
        ("33 cl", 330, "mL"),
        ("2 x 500 mL", 1000, "mL"),
        ("2 × 0.5 L", 1000, "mL"),
        ("250 g", 250, "g"),
        ("1.5 kg", 1500, "g"),
        ("1 lb", 453.59237, "g"),  # exact: NIST SP 811, Appendix B
        ("1.5 m", 1500, "mm"),
        ("40 cm", 400, "mm"),
        ("12 in", 304.8, "mm"),
        ("2 ft", 609.6, "mm"),
        ("1 US gal", 3785.411784, "mL"),  # 231 cubic inches: NIST SP 811, Appendix B
        ("1 US qt", 946.352946, "mL"),
        ("16 US fl oz", 473.176473, "mL"),
        ("1 imp gal", 4546.09, "mL"),  # UK Weights and Measures Act 1985
        ("20 imp fl oz", 568.26125, "mL"),
    ],
)
def test_an_amount_is_read_in_the_base_of_its_dimension(text: str, value: float, unit: str) -> None:
    amount = parse_amount(text)
    assert (amount.value, amount.unit) == (pytest.approx(value, rel=1e-12), unit)


@pytest.mark.parametrize(
    ("text", "code", "word"),
    [
        ("", "no-number", "number"),
        ("some", "no-number", "number"),
        ("nan mL", "no-number", "number"),
        ("-3", "negative", "above zero"),
        ("0 mL", "negative", "above zero"),
        ("2.5", "not-whole", "whole"),
        ("1,000 mL", "ambiguous", "1.000"),
        ("5 oz", "ambiguous", "mass or a volume"),
        ("5 fl oz", "ambiguous", "US"),
        ("1 pint", "ambiguous", "568"),
        ("3 tubes", "ambiguous", "any amount"),
        ("3 N·m", "unknown-unit", "'n·m'"),
        ("3 parsecs", "unknown-unit", "parsecs"),
    ],
)
def test_an_unclear_amount_is_refused_with_the_reason(text: str, code: str, word: str) -> None:
    with pytest.raises(BadInput, match=word) as caught:
        parse_amount(text)
    assert [problem.code for problem in caught.value.problems] == [code]


@pytest.mark.parametrize(
    ("text", "mm"), [("40 mm", 40), ("4cm", 40), ('1 1/2"', 38.1), ("1.5 in", 38.1), ("0 mm", 0), ("1 ft", 304.8)]
)
def test_a_length_is_read_in_mm(text: str, mm: float) -> None:
    assert parse_length_mm(text) == pytest.approx(mm)


@pytest.mark.parametrize(
    ("text", "degrees"),
    [("90°", 90), ("+45°", 45), ("0°", 0), ("90 deg", 90), ("1/4 turn", 90), ("1 turn", 360), ("155 degrees", 155)],
)
def test_an_angle_is_read_in_degrees(text: str, degrees: float) -> None:
    assert parse_angle_deg(text) == degrees


@pytest.mark.parametrize("text", ["40", "40 mL", "-40 mm", "long", "", "nan mm"])
def test_what_is_no_length_is_refused(text: str) -> None:
    with pytest.raises(BadInput):
        parse_length_mm(text)


@pytest.mark.parametrize("text", ["90", "-45°", "90 N·m", "round", "", "nan°", "1,000°"])
def test_what_is_no_angle_is_refused(text: str) -> None:
    with pytest.raises(BadInput):
        parse_angle_deg(text)


@given(st.integers(1, 999_999), st.sampled_from(["each", "mL", "g", "mm"]))
def test_what_is_shown_is_read_back(value: int, unit: str) -> None:
    amount = parse_amount(format_amount(value, unit))
    assert (amount.value, amount.unit) == (pytest.approx(value, rel=1e-12), unit)


def reads(reader: Callable[[str], Amount | float], text: str) -> Amount | float | BadInput:
    """The quantity, or the refusal: any other exception fails the test."""
    try:
        return reader(text)
    except BadInput as refusal:
        return refusal


@pytest.mark.parametrize("reader", [parse_amount, parse_length_mm, parse_angle_deg])
@given(text=st.one_of(st.text(max_size=40), st.text(alphabet="0123456789.,-+x×/ mlLkgcftin\"'°½", max_size=20)))
def test_any_text_gives_a_quantity_or_bad_input(reader: Callable[[str], Amount | float], text: str) -> None:
    match reads(reader, text):
        case BadInput() as refusal:
            assert all(problem.message and problem.next for problem in refusal.problems)
        case Amount(value=value) | float(value):
            assert math.isfinite(value)
            assert value >= 0
