"""What a calculator says: the id of a message and what goes into it. Sentences themselves live in rules/messages/."""

from dataclasses import dataclass


@dataclass(frozen=True)
class Say:
    """A message to be worded later.

    id is `file.key` in rules/messages/ (or `decision.row` for the reason of a row); numbers are in SI units, in the order in which the
    message declares them; words are ids (`choice.<fact>.<choice>`, `fact.<id>`, `term.<id>`, `outcome.<table>.<outcome>`,
    `value.<id>`) in declared order. A word that is the user's own text is written `text:` followed by it.
    """

    id: str
    numbers: list[float]
    words: list[str]
