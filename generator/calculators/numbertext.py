"""Numbers as text: the only place where text is made. Its JavaScript is written by hand in generator/compiler/numbertext.js."""

import decimal

THIN_SPACE = "\u202f"
MINUS = "\u2212"
EXACT = decimal.Context(prec=60, rounding=decimal.ROUND_HALF_UP)


def fixed(x: float, digits: int) -> str:
    """x with so many digits after the point (0 to 20), worked out from its exact value; an exact half goes away from zero.

    Groups of three from 10 000 up are parted by a thin no-break space; the minus is U+2212; -0 is written 0.
    Raises ValueError for what is not a finite number below 1e21 in size, and for other digits.
    """
    if not abs(x) < 1e21:
        raise ValueError("a number that cannot be written")
    if digits < 0 or digits > 20:
        raise ValueError("digits from 0 to 20")
    exact = decimal.Decimal(abs(x)).quantize(decimal.Decimal(1).scaleb(-digits), context=EXACT)
    whole, point, rest = f"{exact:f}".partition(".")
    grouped = f"{int(whole):,}".replace(",", THIN_SPACE) if len(whole) > 4 else whole
    return (MINUS if x < 0 and exact != 0 else "") + grouped + point + rest


def join(parts: list[str]) -> str:
    """The parts one after another, nothing between them."""
    return "".join(parts)
