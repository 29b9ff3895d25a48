"""The scripts that parity tests load, and the modules that they come from: all calculators, or the sample of every construct."""

import importlib
import importlib.util
import inspect
import sys
from collections.abc import Callable
from pathlib import Path
from types import ModuleType

from generator.compiler.modules import CALCULATORS
from generator.compiler.script import compile_module, compile_text, helpers_for, module_order
from generator.pages.slimming import slim

SAMPLES = Path(__file__).parents[1] / "compiler" / "samples"


def calculator_names() -> list[str]:
    """The names of all modules of generator/calculators/."""
    return sorted(path.stem for path in CALCULATORS.glob("*.py") if path.stem != "__init__")


def calculators() -> list[ModuleType]:
    """All modules of generator/calculators/, imported."""
    return [importlib.import_module(f"generator.calculators.{name}") for name in calculator_names()]


def calculators_script() -> str:
    """Helpers and all calculators, as they are shipped."""
    return slim(with_helpers("".join(compile_module(name) for name in module_order(calculator_names()))))


def with_helpers(scripts: str) -> str:
    """The scripts with the helpers that they use before them."""
    return helpers_for(scripts) + scripts


def constructs() -> ModuleType:
    """The sample module of every construct, imported."""
    if "constructs" not in sys.modules:
        spec = importlib.util.spec_from_file_location("constructs", SAMPLES / "constructs.py")
        module = importlib.util.module_from_spec(spec)
        sys.modules["constructs"] = module
        spec.loader.exec_module(module)
    return sys.modules["constructs"]


def constructs_script() -> str:
    """Helpers, what the sample imports, and the sample, as they would be shipped."""
    return slim(constructs_compiled())


def constructs_compiled() -> str:
    """The same with the names that the compiler gives."""
    path = SAMPLES / "constructs.py"
    sample = compile_text(path.read_text(encoding="utf-8"), "tests/compiler/samples/constructs.py", "constructs")
    return with_helpers("".join(compile_module(name) for name in module_order(["exactmath", "numbertext"])) + sample)


def own_functions(module: ModuleType) -> list[Callable[..., object]]:
    """The functions that a module defines itself, in order."""
    return [value for value in vars(module).values() if inspect.isfunction(value) and value.__module__ == module.__name__]
