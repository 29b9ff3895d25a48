"""The JSON Schemas of rule files, published with the site so that an editor anywhere can help to write them."""

import json

from generator.reading.documents import KINDS
from generator.reading.schema import file_schema

FOLDER = "assets/guide/schemas/"
PUBLISHED = (*KINDS, "edition")


def schema_files() -> dict[str, str]:
    """The schema of a whole file of each kind, by its path from the root of the site; each stands alone."""
    return {f"{FOLDER}{kind}.json": json.dumps(file_schema(kind), ensure_ascii=False, indent=2) + "\n" for kind in PUBLISHED}
