"""From plain data of the right shape to a fault of the pruner's work."""

import re
from collections.abc import Iterator

from generator.problems import Problem
from generator.reading.build_items import BadItem, cites, common
from generator.reading.documents import Document
from generator.reading.near import suggestion
from generator.reading.work_faults import GRADES, NAMED, TEXTS, WorkFault


def work_fault(document: Document) -> WorkFault:
    """A fault. Raises BadItem where a text holds digits, or names a number that is not one of its values."""
    data = document.data
    problems = list(_numbers(document))
    if data["grade"] != GRADES[0] and data.get("unsafe", False):
        sentence = f"It is `unsafe` and of the grade `{data['grade']}`."
        problems.append(document.problem(("grade",), sentence, f"Write `grade: {GRADES[0]}`: an unsafe act is never less."))
    if problems:
        raise BadItem(problems)
    return WorkFault(
        **common(document),
        **{name: data[name] for name in (*TEXTS, "grade", "job", "standing")},
        **{name: tuple(data.get(name, ())) for name in ("rows", "values", "looks", "cautions")},
        cites=cites(data),
        unsafe=data.get("unsafe", False),
    )


def _numbers(document: Document) -> Iterator[Problem]:
    """Numbers come from values, so that none is written twice."""
    values = document.data.get("values", ())
    for name in TEXTS:
        text = document.data[name]
        for named in NAMED.findall(text):
            if named not in values:
                step = suggestion(named, values, f"Add `{named}` to `values`.")
                yield document.problem((name,), f"`{name}` shows the number {{{named}}}, which is not one of its `values`.", step)
        if re.search(r"\d", NAMED.sub("", text)):
            step = "Write the id of a value in braces, such as {spur_height_limit_cm}, and add it to `values`."
            yield document.problem((name,), f"`{name}` holds a number.", step)
