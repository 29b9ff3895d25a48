"""The schemas: one a kind, each field explained, none that lets unknown fields pass."""

import json
from collections.abc import Iterator
from pathlib import Path

import jsonschema
import pytest

from generator.reading.documents import FOLDERS, KINDS
from generator.reading.schema import FOLDER, WHOLE_FILES, file_schema, schema

ALL = (*KINDS, "edition")


def fields(part: object) -> Iterator[tuple[str, object]]:
    """Every field in a schema with its own schema, at any depth."""
    if isinstance(part, dict):
        for name, inner in part.get("properties", {}).items():
            yield name, inner
        for inner in part.values():
            yield from fields(inner)
    elif isinstance(part, list):
        for inner in part:
            yield from fields(inner)


def objects(part: object) -> Iterator[dict]:
    """Every schema of a group of fields, at any depth."""
    if isinstance(part, dict):
        if part.get("type") == "object":
            yield part
        for inner in part.values():
            yield from objects(inner)
    elif isinstance(part, list):
        for inner in part:
            yield from objects(inner)


def test_every_kind_has_one_schema() -> None:
    """No file in the folder is without a kind, and no kind without its file."""
    assert sorted(path.stem for path in FOLDER.iterdir()) == sorted((*ALL, "common", *WHOLE_FILES.values()))


@pytest.mark.parametrize("kind", ALL)
def test_the_schema_is_sound(kind: str) -> None:
    """It is JSON Schema 2020-12, for one item and for a whole file."""
    for found in (schema(kind), file_schema(kind)):
        jsonschema.Draft202012Validator.check_schema(found)
        assert found["$schema"] == "https://json-schema.org/draft/2020-12/schema"


@pytest.mark.parametrize("kind", ALL)
def test_every_field_is_explained(kind: str) -> None:
    """Each field has a description that an editor can show (those of a condition say why they do not fit)."""
    bare = [
        name for name, part in fields(schema(kind)) if not {"description", "x-message", "const", "enum"} & part.keys()
    ]
    assert bare == []


@pytest.mark.parametrize("kind", ALL)
def test_unknown_fields_are_refused(kind: str) -> None:
    """Wherever fields are named, no others pass, so that a misspelt one is told."""
    assert [
        part for part in objects(schema(kind)) if "properties" in part and part.get("additionalProperties") is not False
    ] == []


def test_editors_find_the_schema_of_every_file(project_root: Path) -> None:
    """The settings that a common editor reads name a schema that is there for every folder and file of rules/."""
    named = json.loads((project_root / ".vscode" / "settings.json").read_text())["yaml.schemas"]
    assert all((project_root / path).is_file() for path in named)
    places = {f"rules/{folder}/*.yml" for folder in FOLDERS} | {"rules/units.yml", "rules/ids.yml", "**/edition.yml"}
    assert set(named.values()) == places
