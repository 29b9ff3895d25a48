"""Reading: YAML with line numbers, editions merged by id, JSON Schema, frozen dataclasses."""
