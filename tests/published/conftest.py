"""Every check against print carries the ids of the evidence it is held against, for the count of the run."""

import pytest

from tests.measured import PROPERTY
from tests.published.evidence_named import evidence_of, is_check


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Give each check its evidence; tests of other folders are left alone."""
    for item in filter(is_check, items):
        item.user_properties += [(PROPERTY, name) for name in evidence_of(item)]
