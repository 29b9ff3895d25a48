"""Did you mean: the known word that is nearest to a misspelt one."""

from collections.abc import Iterable
from difflib import get_close_matches

LIKE_ENOUGH = 0.6
MOST_LISTED = 12


def nearest(word: str, known: Iterable[str]) -> str:
    """The known word most like this one, or empty text when none is near."""
    words = list(known)
    by_small = {other.lower().replace("-", "_"): other for other in words}
    small = word.lower().replace("-", "_").replace(" ", "_")
    if small in by_small:
        return by_small[small]
    found = get_close_matches(small, by_small, n=1, cutoff=LIKE_ENOUGH)
    return by_small[found[0]] if found else ""


def suggestion(word: str, known: Iterable[str], else_say: str = "") -> str:
    """A next step: the nearest known word, else the short list of them, else what the caller says."""
    words = list(known)
    near = nearest(word, words)
    if near:
        return f"Did you mean `{near}`?"
    if 0 < len(words) <= MOST_LISTED and not else_say:
        return f"{'Write one of' if len(words) > 1 else 'Write'}: {', '.join(words)}."
    return else_say
