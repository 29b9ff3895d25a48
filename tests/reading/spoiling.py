"""Spoils good rule files the way hands and editors do: in the data (structure-aware) and in the text."""

import json
from random import Random

WORDS = (
    "",
    "no",
    "unknown",
    "any",
    "under",
    "not",
    "1e999",
    ".nan",
    "010",
    "2026-02-30",
    "under x",
    "3 to",
    "or",
    "é ü 葡萄",
    "{gap}",
    "a" * 300,
    "*x",
    "&y",
)
VALUES = (
    None,
    True,
    False,
    0,
    -1,
    1e300,
    10**14,
    0.5,
    [],
    {},
    [[]],
    [None],
    {"a": None},
    {"id": "x"},
    ["x", "x"],
    [{"id": 1}],
    {"": ""},
)
SIGNS = (
    ":",
    "\t",
    "*",
    "&",
    "!",
    "%",
    "@",
    "`",
    "{",
    "}",
    "[",
    "]",
    "'",
    '"',
    "#",
    "- ",
    "? ",
    "| ",
    "> ",
    "---\n",
    "...\n",
    "<<: ",
    "\x07",
    "\x85",
    "\ufeff",
    ",",
    "\r",
    "\n",
)


def spoiled(random: Random, text: str, data: object) -> str:
    """A spoiled version of a file, from its text or from its data (written as JSON, which is YAML)."""
    if random.random() < 0.5:
        for _ in range(random.randint(1, 3)):
            text = _text(random, text)
        return text
    copy = json.loads(json.dumps(data))
    for _ in range(random.randint(1, 3)):
        copy = _data(random, copy)
    return json.dumps(copy, indent=1, ensure_ascii=False)


def _text(random: Random, text: str) -> str:
    """One slip in the text: a sign put in, a line taken away, doubled, moved or indented, the end lost."""
    lines = text.splitlines(keepends=True) or [""]
    at = random.randrange(len(lines))
    slip = random.randrange(7)
    if slip == 0:
        place = random.randrange(len(text) + 1)
        return text[:place] + random.choice(SIGNS) + text[place:]
    if slip == 1:
        del lines[at]
    elif slip == 2:
        lines.insert(at, lines[at])
    elif slip == 3:
        lines[at] = random.choice((" ", "  ", "\t")) + lines[at]
    elif slip == 4:
        lines[at] = lines[at].lstrip()
    elif slip == 5:
        lines.insert(random.randrange(len(lines)), lines.pop(at))
    else:
        return text[: random.randrange(len(text) + 1)]
    return "".join(lines)


def _data(random: Random, data: object) -> object:
    """One slip somewhere in the data."""
    places = list(_places(data, ()))
    place = random.choice(places)
    if not place:
        return random.choice(VALUES) if random.random() < 0.2 else data
    inside = data
    for step in place[:-1]:
        inside = inside[step]
    last = place[-1]
    slip = random.randrange(6)
    if slip == 0:
        inside[last] = json.loads(json.dumps(random.choice(VALUES)))
    elif slip == 1:
        inside[last] = random.choice(WORDS)
    elif slip == 2:
        del inside[last]
    elif slip == 3 and isinstance(inside, list):
        inside.append(inside[last])
    elif slip == 3:
        inside[_misspelt(random, last)] = inside.pop(last)
    elif slip == 4:
        inside[last] = [inside[last]] if random.random() < 0.5 else {"id": inside[last]}
    elif isinstance(inside[last], str):
        inside[last] = _misspelt(random, inside[last])
    return data


def _misspelt(random: Random, word: str) -> str:
    """A word with a letter lost, doubled or changed."""
    if not word:
        return "x"
    at = random.randrange(len(word))
    return word[:at] + random.choice(("", word[at] * 2, "_", " ", "X", ".")) + word[at + 1 :]


def _places(data: object, place: tuple) -> "list[tuple]":
    """Every place in the data, the whole first."""
    found = [place]
    steps = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    for step, part in steps:
        found += _places(part, (*place, step))
    return found
