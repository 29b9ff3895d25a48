"""Fixtures that build the site once and serve folders on loopback as a strict host would."""

import fcntl
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest

from generator.pages.policy import POLICY_FILE
from tests.serving import serving
from tests.workers import is_worker

# Where a course or an organisation would put the guide: below the root of its host.
PREFIX = "/course/guide/"

ServeFolder = Callable[..., str]


@pytest.fixture(scope="session")
def build_site(project_root: Path) -> Callable[..., Path]:
    """build_site(folder, *options): the site built into folder by the real command, with its options."""

    def build(folder: Path, *options: str) -> Path:
        words = [sys.executable, "-m", "generator.cli", "build", "--out", str(folder), *options]
        done = subprocess.run(words, cwd=project_root, capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stderr
        return folder

    return build


@pytest.fixture(scope="session")
def site(build_site: Callable[..., Path], tmp_path_factory: pytest.TempPathFactory, request: pytest.FixtureRequest) -> Path:
    """The folder of the site, built once for the run, by the worker that asks first; it must not be changed."""
    if not is_worker(request.config):
        return build_site(tmp_path_factory.mktemp("site") / "site")
    site = tmp_path_factory.getbasetemp().parent / "site"
    with site.with_name("site.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        return site if site.exists() else build_site(site)


@pytest.fixture(scope="session")
def serve_dir() -> Iterator[ServeFolder]:
    """serve_dir(folder, prefix="/", policy=""): serve folder on loopback until the run ends; gives the base URL."""
    with ExitStack() as servers:

        def serve(folder: Path, prefix: str = "/", policy: str = "") -> str:
            return servers.enter_context(serving(folder, prefix, policy))

        yield serve


@pytest.fixture(scope="session")
def served(site: Path, serve_dir: ServeFolder) -> str:
    """The base URL of the site in a sub-path, under the strict policy that comes with it; it ends in a slash."""
    return serve_dir(site, PREFIX, (site / POLICY_FILE).read_text(encoding="utf-8").strip())
