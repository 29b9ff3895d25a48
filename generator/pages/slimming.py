"""Scripts and the style sheet made small for the wire: no comments, no needless space, short names for what is local.

Only the house's own JavaScript is read here (classic, ES2018, every statement ended by its mark). What is not understood is
refused (ValueError), never guessed at. Why no ready-made tool does it: docs/design/small-scripts.md.
"""

import re

from generator.pages.short_names import Token, renamed

TOKEN = re.compile(
    r"""(?P<notice>/\*\*(?:(?!\*/)[\s\S])*Copyright[\s\S]*?\*/)|(?P<comment>/\*[\s\S]*?\*/|//[^\n]*)|(?P<space>\s+)
      |(?P<text>"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*')|(?P<name>[A-Za-z_$][\w$]*)|(?P<number>0x[\da-f]+|(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?n?)
      |(?P<mark>=>|\.\.\.|[!=]==|\*\*|&&|\|\||\+\+|--|[-+*/%&|<>=!]=|[-+*/%<>=!?:;,.(){}\[\]&|^~])""",
    re.VERBOSE | re.IGNORECASE,
)
PATTERN = re.compile(r"/(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n\[])+/[a-z]*")
# After these a slash begins a pattern.
BEFORE_PATTERN = {"", "(", ",", "=", ":", "[", "!", "&&", "||", "?", "{", "}", ";", "return", "=>"}


def slim(script: str) -> str:
    """The script, smaller, with the same meaning; a licence notice stays. Raises ValueError at what it does not understand."""
    return "".join(joined(renamed(part)) for part in statements(tokens(script)))


def slim_style(style: str) -> str:
    """A style sheet without comments and needless white space, one rule a line."""
    bare = re.sub(r"/\*.*?\*/\s*", "", style, flags=re.DOTALL)
    return re.sub(r"\s*;?\s*(\})\s*|\s*([{;,>])\s*|(:)\s+", lambda mark: "}\n" if mark[1] else mark[2] or mark[3], bare).strip() + "\n"


def tokens(script: str) -> list[Token]:
    """The tokens as (kind, text), without comments; white space is left only as ("line", ...) where a line ends."""
    found: list[Token] = []
    place, before = 0, ""
    while place < len(script):
        pattern = PATTERN.match(script, place) if before in BEFORE_PATTERN and not script.startswith(("/*", "//"), place) else None
        match = pattern or TOKEN.match(script, place)
        if not match:
            raise ValueError(f"no token of ours: {script[place : place + 40]!r}")
        kind = "pattern" if pattern else match.lastgroup or ""
        if kind == "space" and "\n" in match[0]:
            found.append(("line", "\n"))
        elif kind not in ("space", "comment"):
            found.append((kind, match[0]))
            before = match[0]
        place = match.end()
    return found


def statements(found: list[Token]) -> list[list[Token]]:
    """The tokens cut after each statement of the top level."""
    parts: list[list[Token]] = [[]]
    depth = 0
    for token in found:
        parts[-1].append(token)
        depth += (token[1] in ("(", "[", "{")) - (token[1] in (")", "]", "}")) if token[0] == "mark" else 0
        if token == ("mark", ";") and depth == 0:
            parts.append([])
    return parts


def joined(part: list[Token]) -> str:
    """The tokens as text: a space only between words, an end of line only where without it two statements might become one."""
    out = [""]
    for place, (kind, text) in enumerate(part):
        before = out[-1][-1:]
        if kind == "line":
            after = part[place + 1][1] if place + 1 < len(part) else "\n"
            ended = before in ";{,([\n" or before == "}" and after[0] not in "([+-/"
            out += [] if ended or after[0] in ")]}.?:" else ["\n"]
        elif text == "}" and before == ";":
            out[-1] = "}"
        else:
            wordy = (before.isalnum() or before in ("_", "$")) and (text[0].isalnum() or text[0] in "_$")
            out.append(f" {text}" if wordy or (before == text[0] and before in ("+", "-")) else text)
    return "".join(out)
