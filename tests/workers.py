"""A run in several processes: what each worker counted is sent to the process that reports, and added up there.

Each worker collects every test and runs some. The reports of its tests reach the reporting process by themselves, so that
what is counted from reports is counted there alone.
"""

import pickle

import pytest

from tests.measured import MEASURED, Measured
from tests.summary import CASES, LEFT, Left

SENT = "counted"


def is_worker(config: pytest.Config) -> bool:
    """Whether this process runs tests for another one, which reports."""
    return hasattr(config, "workerinput")


def pytest_configure(config: pytest.Config) -> None:
    """Begin this process's lists of what is left out, of what is measured and of the cases of each proof."""
    config.stash[LEFT], config.stash[MEASURED], config.stash[CASES] = Left(), Measured(), {}
    if not is_worker(config):
        config.pluginmanager.register(config.stash[MEASURED], "measured")


def pytest_sessionfinish(session: pytest.Session) -> None:
    """Send what this worker counted."""
    stash = session.config.stash
    if is_worker(session.config):
        session.config.workeroutput[SENT] = pickle.dumps((stash[LEFT], stash[MEASURED], stash[CASES]))


@pytest.hookimpl(optionalhook=True)
def pytest_testnodedown(node: object) -> None:
    """Add what a worker counted; one that broke off has sent nothing, and fails the run."""
    sent = getattr(node, "workeroutput", {}).get(SENT)
    if sent:
        stash = node.config.stash
        left, measured, cases = pickle.loads(sent)
        stash[LEFT].add_all(left)
        stash[MEASURED].add_all(measured)
        stash[CASES].update(cases)
