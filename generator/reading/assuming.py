"""What a fact says is assumed until somebody answers: a choice, yes or no, or a number, with how sure that is and why."""

from generator.reading.documents import Document
from generator.reading.items import Assumption, Cite
from generator.reading.near import suggestion

YES_NO = ("no", "yes")
WORDS = {True: "yes", False: "no"}  # YAML reads a bare yes or no as true or false


class BadAssumption(ValueError):
    """An assumption that the fact cannot take: its key, the sentence that ends what begins with it, and what to write."""

    def __init__(self, key: str, sentence: str, next_step: str = "") -> None:
        super().__init__(sentence)
        self.key, self.sentence, self.next_step = key, sentence, next_step


def assumption(document: Document, choices: tuple[str, ...], cites: tuple[Cite, ...]) -> Assumption | None:
    """The assumption of a fact, None when it says none. choices are the ids of a choice fact. Raises BadAssumption."""
    said = document.data.get("assume")
    if said is None:
        return None
    return Assumption(_number(document.data["kind"], said, choices), said["standing"], said["because"], cites)


def _number(kind: str, said: dict, choices: tuple[str, ...]) -> float:
    """The number of what is assumed: the place of a choice, 0 or 1 for no or yes, else the number."""
    if kind in ("text", "date"):
        raise BadAssumption("because", f"is given, but nothing can be assumed of a {kind}", "Take `assume` out.")
    if kind not in ("choice", "yes_no"):
        if "number" not in said:
            raise BadAssumption("choice", "goes with kinds choice and yes_no only", "Write `number: ...`.")
        return float(said["number"])
    allowed = YES_NO if kind == "yes_no" else choices
    if "choice" not in said:
        raise BadAssumption("number", "goes with numbers only", f"Write `choice: {allowed[0]}`, or another choice.")
    word = WORDS.get(said["choice"], said["choice"]) if isinstance(said["choice"], bool) else said["choice"]
    if word not in allowed:
        raise BadAssumption("choice", f"names `{word}`, which is not one of its choices", suggestion(word, list(allowed)))
    return float(allowed.index(word))
