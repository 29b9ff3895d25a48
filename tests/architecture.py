"""Reads the generator's own source and lists what breaks the house rules; used by test_architecture.py."""

import ast
import math
from dataclasses import dataclass
from pathlib import Path

LAYERS = ("problems", "reading", "answers", "checks", "compiler", "pages", "build", "cli")
ROOM = {name: level for level, name in enumerate(LAYERS)} | {"plugin": LAYERS.index("cli")}
ASIDE = ("calculators", "setting_up")
DOORS = {
    "yaml": "reading/yaml_lines.py",
    "jsonschema": "reading/schema.py",
    "jinja2": "pages/jinja.py",
    "mkdocs": "plugin.py",
}
CALCULATOR_MAY_IMPORT = {"math", "dataclasses"}
# Text from numbers has a hand-written twin in JavaScript, so it is not compiled and may use what is exact in Python.
TWINNED = {"calculators/numbertext.py": {"decimal"}}
PLAIN_NUMBERS = {0, 1, 2, 100}
# Unit conversion, the calendar, and mathematics.
NUMBERS_ALLOWED_IN = tuple(f"calculators/{name}.py" for name in ("units", "dates", "exactmath", "numbertext", "quantiles"))
# Codes and measures of drawings or sentences, none of the trade. Each is looked for: one that has gone fails.
NAMED_NUMBERS = {
    "calculators/bud_sample_size.py": {"COUNTABLE"},
    "calculators/facts.py": {"FROM_LINK", "ENTERED", "COMPUTED"},
    "calculators/cane_path.py": {"PIECES"},
    "calculators/counting.py": {"PARTS"},
    "calculators/drawing_frame.py": {"LINES_OF_TEXT", "MARGIN", "TALLEST", "WIDEST", "ROOM_UNDER"},
    "calculators/drawing_spur.py": {"PANEL", "LETTERS", "LOWEST", "TALLEST", "STEP", "GROWN", "FIRST", "INTERNODE", "OVER", "HALF", "DOT", "LEAN"},
    "calculators/drawing_views.py": {"ACROSS", "EDGE", "LETTERS", "BAR", "TICK", "DOT", "TICKS", "FIVE", "TEN", "MOST_SHOWN"},
    "calculators/drawing_wood.py": {"DOT", "UPRIGHT", "TALL", "STEEP"},
    "calculators/layout_places.py": {"QUARTERS"},
    "calculators/plan_system.py": {"MOST_SHOWN"},
    "calculators/spur_canes.py": {"LOW"},
    "calculators/tally_counts.py": {"OR_MORE"},
    "calculators/wording.py": {"TWO_FIGURES"},
}
LONGEST_MODULE = 250
LONGEST_FUNCTION = 50
LONGEST_FUNCTION_P95 = 35


@dataclass(frozen=True)
class Module:
    """One source file: its name below the package (`reading/cells.py`), its text and its tree."""

    name: str
    text: str
    tree: ast.Module

    @property
    def room(self) -> str:
        """The layer it belongs to: its first folder, or its own name at the top."""
        return self.name.split("/")[0].removesuffix(".py")

    @property
    def dotted(self) -> str:
        """Its import name below the package."""
        return self.name.removesuffix(".py").removesuffix("/__init__").replace("/", ".")


def read_modules(package: Path) -> list[Module]:
    """Every Python file of the package, sorted by name."""
    files = sorted(path for path in package.rglob("*.py") if "templates" not in path.parts)
    return [Module(p.relative_to(package).as_posix(), p.read_text(), ast.parse(p.read_text())) for p in files]


def imports(module: Module) -> list[tuple[int, str]]:
    """All imports with their line, as full dotted names, wherever in the file they stand."""
    found = []
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Import):
            found += [(node.lineno, alias.name) for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            found += [(node.lineno, f"{node.module}.{alias.name}") for alias in node.names]
    return found


def own_imports(module: Module, names: set[str]) -> list[tuple[int, str]]:
    """Imports of our own modules, resolved to the dotted name of a module below the package."""
    found = []
    for line, name in imports(module):
        if name.split(".")[0] == "generator":
            inner = name.split(".", 1)[1] if "." in name else ""
            found.append((line, inner if inner in names else inner.rpartition(".")[0]))
    return [(line, name) for line, name in found if name and name != module.dotted]


def upward_imports(modules: list[Module]) -> list[str]:
    """Imports that go up the stairs, or into or out of the rooms aside."""
    names = {module.dotted for module in modules}
    faults = []
    for module in modules:
        for line, target in own_imports(module, names):
            room = target.split(".")[0]
            if not _may_import(module.room, room):
                faults.append(f"{module.name}:{line}: {module.room} must not import {room}")
    return faults


def _may_import(room: str, target: str) -> bool:
    if room == "calculators":
        return target == "calculators"
    if room == "setting_up":
        return target == "setting_up"
    if room == "__main__":
        return target in ("setting_up", "cli")
    if target == "calculators":
        return room != "problems"
    if target == "setting_up":
        return room == "cli"
    return ROOM.get(target, len(LAYERS)) <= ROOM[room]


def cycles(modules: list[Module]) -> list[str]:
    """Circles of imports between our modules, each told once."""
    names = {module.dotted for module in modules}
    graph = {module.dotted: sorted({target for _, target in own_imports(module, names)}) for module in modules}
    faults, done = set(), set()

    def walk(name: str, trail: list[str]) -> None:
        if name in trail:
            circle = trail[trail.index(name) :]
            first = circle.index(min(circle))
            faults.add(" -> ".join([*circle[first:], *circle[:first], circle[first]]))
        elif name not in done:
            for target in graph.get(name, []):
                walk(target, [*trail, name])
            done.add(name)

    for name in graph:
        walk(name, [])
    return sorted(faults)


def doors(modules: list[Module]) -> list[str]:
    """Imports of a dependency by a module that is not its door, and imports that calculators may not have."""
    faults = []
    for module in modules:
        for line, name in imports(module):
            top = name.split(".")[0]
            if top in DOORS and module.name != DOORS[top]:
                faults.append(f"{module.name}:{line}: only {DOORS[top]} imports {top}")
            allowed = CALCULATOR_MAY_IMPORT | {"generator"} | TWINNED.get(module.name, set())
            if module.room == "calculators" and top not in allowed:
                faults.append(f"{module.name}:{line}: a calculator must not import {top}")
    return faults


def trade_numbers(modules: list[Module]) -> list[str]:
    """Number literals in calculators other than 0, 1, 2 and 100, outside unit conversion and exactmath."""
    faults = []
    for module in modules:
        if module.room != "calculators" or module.name in NUMBERS_ALLOWED_IN:
            continue
        named = _named_numbers(module)
        for node in ast.walk(module.tree):
            if isinstance(node, ast.Constant) and type(node.value) in (int, float) and node not in named:
                if abs(node.value) not in PLAIN_NUMBERS:
                    faults.append(f"{module.name}:{node.lineno}: {node.value} belongs in rules/values/")
    return faults


def _named_numbers(module: Module) -> list[ast.expr]:
    """The whole numbers that NAMED_NUMBERS lets the module have, where they are given their name."""
    allowed = NAMED_NUMBERS.get(module.name, set())
    named = {
        node.target.id: node.value
        for node in module.tree.body
        if isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name) and isinstance(node.value, ast.Constant)
    }
    return [value for name, value in named.items() if name in allowed and type(value.value) is int]


def needless_exceptions(modules: list[Module]) -> list[str]:
    """Names that NAMED_NUMBERS lists and that no module has any more."""
    found = {module.name: len(_named_numbers(module)) for module in modules}
    return [f"{name}: an exception is no longer needed" for name, names in NAMED_NUMBERS.items() if found.get(name) != len(names)]


def functions(module: Module) -> list[ast.FunctionDef]:
    """All functions and methods of a module."""
    return [n for n in ast.walk(module.tree) if isinstance(n, (ast.FunctionDef, ast.AsyncFunctionDef))]


def length(function: ast.FunctionDef) -> int:
    """Lines of a function, its docstring aside."""
    docstring = ast.get_docstring(function, clean=False)
    return function.end_lineno - function.lineno + 1 - (len(docstring.splitlines()) if docstring else 0)


def too_long(modules: list[Module]) -> list[str]:
    """Modules and functions over their limit, and the 95th percentile of all functions when it is over its own."""
    faults = [
        f"{m.name}: {len(m.text.splitlines())} lines, at most {LONGEST_MODULE}"
        for m in modules
        if len(m.text.splitlines()) > LONGEST_MODULE
    ]
    lengths = []
    for module in modules:
        for function in functions(module):
            lengths.append(length(function))
            if lengths[-1] > LONGEST_FUNCTION:
                faults.append(f"{module.name}:{function.lineno}: {function.name} has {lengths[-1]} lines")
    p95 = sorted(lengths)[math.ceil(0.95 * len(lengths)) - 1]
    if p95 > LONGEST_FUNCTION_P95:
        faults.append(f"the 95th percentile of function lengths is {p95}, at most {LONGEST_FUNCTION_P95}")
    return faults


def without_docstring(modules: list[Module]) -> list[str]:
    """Modules, public classes and public functions without a docstring."""
    faults = []
    for module in modules:
        if not ast.get_docstring(module.tree):
            faults.append(f"{module.name}: the module has no docstring")
        for node in module.tree.body:
            if isinstance(node, (ast.FunctionDef, ast.ClassDef)) and not node.name.startswith("_"):
                public = [node] + [n for n in node.body if isinstance(n, ast.FunctionDef) and not n.name.startswith("_")]
                faults += [f"{module.name}:{n.lineno}: {n.name} has no docstring" for n in public if not ast.get_docstring(n)]
    return faults
