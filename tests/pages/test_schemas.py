"""The schemas of rule files come with the site, each whole in one file."""

import json

import pytest
from jsonschema import Draft202012Validator

from generator.reading.documents import FOLDERS, KINDS
from generator.reading.yaml_lines import read_file

ALL = (*KINDS, "edition")
GOOD = {kind: f"{folder}/*.yml" for folder, kind in FOLDERS.items()} | {"unit": "units.yml", "ids": "ids.yml"}


@pytest.fixture
def published(built):
    """published(kind): the validator of the schema that the site gives out for a kind."""
    return lambda kind: Draft202012Validator(json.loads(built[f"assets/guide/schemas/{kind}.json"]))


@pytest.mark.parametrize("kind", ALL)
def test_a_published_schema_is_sound_and_stands_alone(published, kind):
    """It is JSON Schema 2020-12 and points to no other file."""
    schema = published(kind).schema
    Draft202012Validator.check_schema(schema)
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema" and "$ref" not in json.dumps(schema)


@pytest.mark.parametrize("kind", GOOD)
def test_a_published_schema_fits_the_rules_of_its_kind(published, project_root, kind):
    """A sound rule file passes as a whole; one with a field that nobody knows does not."""
    path = next(iter(sorted((project_root / "rules").glob(GOOD[kind]))))
    data = read_file(path, path.name)[0]
    assert list(published(kind).iter_errors(data)) == []
    assert not published(kind).is_valid({**data, "No such field": []})
