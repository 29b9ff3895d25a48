"""Short names for what a script declares: each function's own names, the outer ones first, never one that it uses from outside.

Within a function a name keeps one short name however its blocks are nested, so blocks need not be looked at.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import chain, product
from string import ascii_lowercase, ascii_uppercase

Token = tuple[str, str]
# The compiler's name for its helpers is short as it is, and none of the candidates.
HELPERS = "$"
RESERVED = set(
    "break case catch class const continue debugger default delete do else enum export extends false finally for function if import in "
    "instanceof new null return super switch this throw true try typeof var void while with yield let static async await of get set "
    "arguments eval undefined NaN Infinity".split()
)
# After these a brace is an object's, not a block's.
BEFORE_OBJECT = {"(", ",", "=", ":", "[", "!", "&&", "||", "?", "return", "+"}


@dataclass(eq=False)
class Scope:
    """A function from its first parameter to its end: what it declares, what it and its inner functions use."""

    start: int
    end: int
    outer: "Scope | None"
    names: list[str] = field(default_factory=list)
    used: set[str] = field(default_factory=set)
    short: dict[str, str] = field(default_factory=dict)

    def of(self, name: str) -> "Scope | None":
        """The scope that declares a name as used here; None for what comes from outside."""
        scope: Scope | None = self
        while scope and name not in scope.names:
            scope = scope.outer
        return scope


def renamed(part: list[Token]) -> list[Token]:
    """One statement of the top level with short names; ("line", ...) tokens stay where they are. Raises ValueError."""
    code = [token for token in part if token[0] != "line"]
    kinds = roles(code)
    inside = scopes(code)
    for (_, text), kind, scope in zip(code, kinds, inside):
        while kind and scope:
            scope.used.add(text)
            scope = scope.outer
    for scope in dict.fromkeys(scope for scope in inside if scope):
        shorten(scope)
    named = iter([short(token, kind, scope) for token, kind, scope in zip(code, kinds, inside)])
    return [token if token[0] == "line" else next(named) for token in part]


def short(token: Token, kind: str, scope: Scope | None) -> Token:
    """A token with the short name of what it names; a property written in short (`{ a }`) is written in full."""
    found = scope.of(token[1]) if kind and scope else None
    name = found.short[token[1]] if found else token[1]
    return (token[0], f"{token[1]}:{name}" if kind == "both" and name != token[1] else name)


def shorten(scope: Scope) -> None:
    """Gives a scope's names their short ones; its outer scopes have theirs."""
    taken = set(RESERVED)
    for name in scope.used - set(scope.names):
        found = scope.of(name)
        taken.add(found.short[name] if found else name)
    # What a whole file declares and what one function declares are told apart by the case: like functions then look alike, which packs well.
    free = (name for name in candidates(scope.outer is None) if name not in taken)
    scope.short = {name: name if name == HELPERS else next(free) for name in scope.names}


def candidates(upper: bool) -> Iterator[str]:
    """Names from the shortest."""
    letters = ascii_uppercase if upper else ascii_lowercase
    return map("".join, chain(product(letters), product(letters, ascii_lowercase), product(letters, letters, letters)))


def roles(code: list[Token]) -> list[str]:
    """What each token is as a name: "" none or a property's, "one" a name, "both" a property written in short (`{ a }`)."""
    made: list[str] = []
    braces: list[str] = []
    for place, (kind, text) in enumerate(code):
        before = code[place - 1][1] if place else ""
        after = code[place + 1][1] if place + 1 < len(code) else ""
        if kind == "mark" and text in ("(", "[", "{"):
            braces.append("object" if text == "{" and before in BEFORE_OBJECT else text)
        if kind == "mark" and text in (")", "]", "}"):
            braces.pop()
        inside = bool(braces) and braces[-1] == "object" and before in ("{", ",")
        if text == "{" and before in ("const", "let", "var"):
            raise ValueError("Taking an object apart is not understood.")
        if kind != "name" or text in RESERVED or before == "." or (inside and after == ":"):
            made.append("")
        else:
            made.append("both" if inside and after in (",", "}") else "one")
    return made


def scopes(code: list[Token]) -> list[Scope | None]:
    """For each token the function that it stands in; its parameters belong to it, its name to the one outside."""
    heads = {start: (start, end) for start, end in functions(code)}
    made: list[Scope | None] = []
    current: Scope | None = None
    for place, (_, text) in enumerate(code):
        while current and place > current.end:
            current = current.outer
        if place in heads:
            current = Scope(*heads[place], current)
            current.names += parameters(code, place)
        made.append(current)
        if current and text in ("const", "let", "function", "catch"):
            current.names += [name for name in following(code, place + 1) if name not in current.names]
    return made


def following(code: list[Token], place: int) -> list[str]:
    """What `const`, `let`, `function` or `catch` declares: the name after it, or the names in the brackets after it."""
    if code[place][0] == "name":
        return [code[place][1]]
    before = code[place - 1][1]
    return [] if before == "function" else [text for kind, text in code[place : closing(code, place)] if kind == "name"]


def functions(code: list[Token]) -> Iterator[tuple[int, int]]:
    """Where each function starts (its parameters) and ends."""
    for place, (_, text) in enumerate(code):
        if text == "function":
            start = place + 1 + (code[place + 1][0] == "name")
            yield start, closing(code, closing(code, start) + 1)
        elif text == "=>":
            start = opening(code, place - 1) if code[place - 1][1] == ")" else place - 1
            yield start, closing(code, place + 1) if code[place + 1][1] == "{" else expression_end(code, place + 1)


def parameters(code: list[Token], start: int) -> list[str]:
    """The names of a function's parameters; none of ours has a default. Raises ValueError where one is taken apart."""
    if code[start][1] != "(":
        return [code[start][1]]
    inside = code[start + 1 : closing(code, start)]
    if any(kind == "mark" and text not in (",", "...", "[", "]") for kind, text in inside):
        raise ValueError("A parameter with a default or taken apart is not understood.")
    return [text for kind, text in inside if kind == "name"]


def closing(code: list[Token], start: int) -> int:
    """Where the bracket closes that opens at start."""
    depth = 0
    for place in range(start, len(code)):
        depth += step(code[place])
        if depth == 0:
            return place
    raise ValueError("A bracket that never closes.")


def opening(code: list[Token], end: int) -> int:
    """Where the bracket opens that closes at end."""
    depth = 0
    for place in range(end, -1, -1):
        depth += step(code[place])
        if depth == 0:
            return place
    raise ValueError("A bracket that never opens.")


def expression_end(code: list[Token], start: int) -> int:
    """The last token of the expression that begins at start."""
    depth = 0
    for place in range(start, len(code)):
        depth += step(code[place])
        if depth < 0 or (depth == 0 and code[place][1] in (",", ";") and code[place][0] == "mark"):
            return place - 1
    raise ValueError("An expression that never ends.")


def step(token: Token) -> int:
    """By how much a token goes into brackets (1), out of them (-1), or not."""
    return (token[1] in ("(", "[", "{")) - (token[1] in (")", "]", "}")) if token[0] == "mark" else 0
