"""The data of a page with a form in two halves: what asks comes with the page, what answers with the first answer.

Whoever only looks at a page, or is still filling it in, need not wait for sentences, sums and tables of an answer.
"""

from typing import Any

Record = dict[str, Any]
# What the form needs to know; and its sentences, which say what is wrong with an entry.
ASKING = ["name", "root", "rules", "edition", "groups", "required", "also", "rows", "columns", "shown", "most", "each", "nodes", "stages"]
SENTENCES = "guard."


def asking(data: Record, answers: list[str]) -> Record:
    """What the form needs. answers are the files that hold the rest, by their paths, each after those that it needs."""
    catalogue = data["catalogue"]
    early = [form for form in catalogue["forms"] if form["id"].startswith(SENTENCES)]
    return {
        **{name: data[name] for name in ASKING if name in data},
        "catalogue": catalogue | {"forms": early, "words": []},
        "answers": answers,
    }


def answering(data: Record) -> Record:
    """The rest; `later` tells the page to add it to what it has."""
    catalogue = data["catalogue"]
    late = [form for form in catalogue["forms"] if not form["id"].startswith(SENTENCES)]
    return {
        "later": True,
        **{name: part for name, part in data.items() if name not in ASKING},
        "catalogue": {"forms": late, "words": catalogue["words"], "facts": [], "units": []},
    }
