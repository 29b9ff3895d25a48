"""Editions: a folder of local rules laid over the base by kind and id, before any schema sees the data.

An edition may replace an item or add one; it can delete nothing. The original stays beside what replaced it.
"""

from dataclasses import replace
from pathlib import Path

from generator.problems import Problem
from generator.reading.digest import digest
from generator.reading.documents import Document, read_folder
from generator.reading.items import Replaced

Documents = dict[tuple[str, str], Document]


def merge(base: list[Document], over: list[Document], edition_id: str) -> Documents:
    """The documents by (kind, id): the base's, with those of the edition replacing or adding.

    Of the ledger of ids both files are kept: the edition's entries are added under its own id.
    """
    merged: Documents = {(document.kind, document.id): document for document in base if document.kind != "edition"}
    for document in over:
        if document.kind == "edition":
            continue
        key = (document.kind, document.id if document.kind != "ids" else edition_id)
        original = merged.get(key)
        if original is not None:
            kept = Replaced(_as_dict(original.data), digest(original.data), edition_id)
            document = replace(document, replaced=kept)
        merged[key] = document
    return merged


def read_edition(folder: Path) -> tuple[list[Document], list[Problem]]:
    """The documents of an edition's folder; its edition.yml must be among them."""
    documents, problems = read_folder(folder)
    named = any(document.kind == "edition" for document in documents)
    if not named and not any(problem.path.endswith("/edition.yml") for problem in problems):
        step = "Write edition.yml with `id`, `name` and `by`."
        problems.append(
            Problem(f"{folder.name}/edition.yml", 0, "An edition says who it is, and this one does not.", step)
        )
    return documents, problems


def _as_dict(data: object) -> dict:
    """The original as a mapping: a message that is plain text becomes its `text` field."""
    return data if isinstance(data, dict) else {"text": data}
