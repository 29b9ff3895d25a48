"""Words that pages use for what the rulebook stores as ids: standings, lifetimes, ranges, numbers with units."""

from generator.reading.items import Fact, Unit

STANDING = {
    "published": "published",
    "abstract": "published, abstract read",
    "second_hand": "published, second-hand",
    "common_practice": "common practice",
    "from_memory": "from memory",
    "our_arithmetic": "our arithmetic",
    "our_judgement": "our judgement",
}
STANDING_MEANS = {
    "published": "A named source prints it, and we read the place.",
    "abstract": "A named source prints it; only its abstract was read.",
    "second_hand": "A named source is said to print it; we read that in another source.",
    "common_practice": "Growers commonly do it so; we know of no source that prints it.",
    "from_memory": "A named source is thought to say it; the source was not read again.",
    "our_arithmetic": "Worked out by us from published figures.",
    "our_judgement": "Our own judgement, such as a weight or a step limit. Put your own figure in its place.",
}
LIFETIME = {
    "block": "It stays with the block from winter to winter.",
    "winter": "It holds for one winter and is asked again in the next.",
    "today": "It holds for today only: it is not kept overnight and not put in links.",
}
LASTS = {"block": "with the block", "winter": "one winter", "today": "today"}


def plain_number(number: float) -> str:
    """A number as an author writes it: no needless decimals, a true minus sign."""
    text = repr(float(number)).removesuffix(".0")
    return text.replace("-", "\u2212") if "e" not in text else text


def with_unit(number: float, unit: Unit | None) -> str:
    """A number with the symbol of its unit after a no-break space; a count or a ratio has no symbol."""
    symbol = unit.symbol if unit else ""
    return f"{plain_number(number)}\u00a0{symbol}" if symbol else plain_number(number)


def allowed(fact: Fact, unit: Unit | None) -> str:
    """What a fact may be, in words."""
    if fact.kind in ("number", "whole"):
        whole = "a whole number " if fact.kind == "whole" else ""
        return f"{whole}from {plain_number(fact.low)} to {with_unit(fact.high, unit)}"
    words = {"choice": "one of the choices", "yes_no": "yes or no", "date": "a date", "text": "your own words"}
    return words[fact.kind]


def assumed(fact: Fact, unit: Unit | None) -> str:
    """What a fact itself says is assumed, as a form shows it; empty when it says nothing."""
    if fact.assumed is None:
        return ""
    if fact.kind == "choice":
        return fact.choices[int(fact.assumed.number)].label
    if fact.kind == "yes_no":
        return "yes" if fact.assumed.number else "no"
    return with_unit(fact.assumed.number, unit)


def crop(shares: tuple[float, ...]) -> str:
    """A crop as a share of a full one, in words; empty where no figure is given."""
    if not shares:
        return ""
    low, high = (f"{plain_number(share)}\u00a0%" for share in shares)
    return f"{low} of a full crop" if low == high else f"{plain_number(shares[0])} to {high} of a full crop"


def capital(text: str) -> str:
    """The text with a capital first letter; the rest stays as it is."""
    return text[:1].upper() + text[1:]
