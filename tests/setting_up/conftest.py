"""Small copies of the project whose set-up is real but needs no network: one tiny package, locked with its true hash."""

import base64
import hashlib
import os
import shutil
import subprocess
import sys
import zipfile
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

import pytest

from generator.setting_up import environment

ENTRY = ("generator/__init__.py", "generator/__main__.py", "generator/cli/__init__.py", "generator/cli/arguments.py")
# Stands for the commands: says that it is at work, and in which environment.
AT_WORK = 'import sys\nimport leaf\nprint("at work in", sys.prefix, *sys.argv[1:])\n'
# Installs the copy in place without a build tool: the whole of what the entry needs from one.
BACKEND = '''
import zipfile
META = "Metadata-Version: 2.1\\nName: pruning-guide\\nVersion: 0.1\\n"
WHEEL = "Wheel-Version: 1.0\\nRoot-Is-Purelib: true\\nTag: py3-none-any\\n"
def build_editable(folder, config_settings=None, metadata_directory=None):
    name = "pruning_guide-0.1-py3-none-any.whl"
    with zipfile.ZipFile(folder + "/" + name, "w") as wheel:
        for path, text in (("METADATA", META), ("WHEEL", WHEEL), ("RECORD", "")):
            wheel.writestr("pruning_guide-0.1.dist-info/" + path, text)
    return name
build_wheel = build_editable
'''
PYPROJECT = '[build-system]\nrequires = []\nbuild-backend = "backend"\nbackend-path = ["."]\n'


@dataclass
class Copy:
    """A copy of the project's entry in folder; wheels is a folder of packages; settings are environment variables."""

    folder: Path
    wheels: Path
    settings: dict[str, str] = field(default_factory=dict)

    @property
    def environment(self) -> Path:
        """Where its environment is, or will be."""
        return self.folder / ".venv"

    def start(self, *words: str, python: tuple[str, ...] = (), **settings: str) -> subprocess.CompletedProcess[str]:
        """Run `python3 -m generator WORDS` in the copy to its end, with settings on top of its own."""
        process = self.begin(*words, python=python, **settings)
        out, told = process.communicate()
        return subprocess.CompletedProcess(process.args, process.returncode, out, told)

    def begin(self, *words: str, python: tuple[str, ...] = (), **settings: str) -> subprocess.Popen[str]:
        """The same, without waiting for the end."""
        command = [*(python or (base_python(), "-m", "generator")), *words]
        variables = {**os.environ, **self.settings, **settings}
        pipe = subprocess.PIPE
        return subprocess.Popen(command, cwd=self.folder, env=variables, stdout=pipe, stderr=pipe, text=True)


def base_python() -> str:
    """The Python that these tests' own environment was made from."""
    return os.path.realpath(sys.executable)


def small_copy(project_root: Path, place: Path) -> Copy:
    """A copy in the folder place, whose packages lie in a folder beside it: its set-up needs no network."""
    made = Copy(place / "project", place / "wheels")
    for name in ENTRY:
        (made.folder / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(project_root / name, made.folder / name)
    ignored = shutil.ignore_patterns("__pycache__")  # Python writes there while other tests run
    shutil.copytree(project_root / "generator/setting_up", made.folder / "generator/setting_up", ignore=ignored)
    (made.folder / "generator/cli/__main__.py").write_text(AT_WORK)
    (made.folder / "backend.py").write_text(BACKEND)
    (made.folder / "pyproject.toml").write_text(PYPROJECT)
    made.wheels.mkdir()
    (made.folder / "guide.lock").write_text(_lock(made.wheels, "leaf"))
    (made.folder / "test.lock").write_text(_lock(made.wheels, "leaf") + _lock(made.wheels, "twig"))
    made.settings = {
        "PIP_CONFIG_FILE": os.devnull,
        "PIP_NO_INDEX": "1",
        "PIP_FIND_LINKS": str(made.wheels),
        "PIP_NO_CACHE_DIR": "1",
        "PIP_EXTRA_INDEX_URL": "",
        "PYTHONPATH": "",
    }
    return made


@pytest.fixture
def copy(project_root: Path, tmp_path: Path) -> Copy:
    """A copy of this test alone."""
    return small_copy(project_root, tmp_path)


@pytest.fixture
def whole(copy: Copy) -> Copy:
    """A copy that counts as set up: its environment's Python only says that it is at work."""
    python = copy.environment / "bin/python"
    python.parent.mkdir(parents=True)
    python.write_text("#!/bin/sh\necho at work\n")
    python.chmod(0o755)
    environment.mark_ready(str(copy.folder), "guide.lock")
    return copy


@pytest.fixture
def no_way(tmp_path: Path) -> dict[str, str]:
    """Settings of a machine that cannot make an environment: a Python without ensurepip, as Debian's is, and no uv."""
    folder = tmp_path / "site"
    folder.mkdir()
    (folder / "sitecustomize.py").write_text("import sys\nsys.modules['ensurepip'] = None\n")
    return {"PYTHONPATH": str(folder), "PATH": str(folder)}


@pytest.fixture
def program(tmp_path: Path) -> Callable[[str, str], Path]:
    """program(name, text): a shell script in a folder of its own, which is returned, to be put on the path."""

    def write(name: str, text: str) -> Path:
        folder = tmp_path / "programs"
        folder.mkdir(exist_ok=True)
        path = folder / name
        path.write_text(f"#!/bin/sh\n{text}\n")
        path.chmod(0o755)
        return folder

    return write


def _lock(wheels: Path, name: str) -> str:
    """Write a package of one module into the folder wheels; give its line of a lock."""
    path = wheels / f"{name}-1.0-py3-none-any.whl"
    files = {
        f"{name}.py": "",
        f"{name}-1.0.dist-info/METADATA": f"Metadata-Version: 2.1\nName: {name}\nVersion: 1.0\n",
        f"{name}-1.0.dist-info/WHEEL": "Wheel-Version: 1.0\nRoot-Is-Purelib: true\nTag: py3-none-any\n",
    }
    record = "".join(f"{place},sha256={_digest(text)},{len(text)}\n" for place, text in files.items())
    with zipfile.ZipFile(path, "w") as wheel:
        for place, text in files.items():
            wheel.writestr(place, text)
        wheel.writestr(f"{name}-1.0.dist-info/RECORD", record)
    return f"{name}==1.0 \\\n    --hash=sha256:{hashlib.sha256(path.read_bytes()).hexdigest()}\n"


def _digest(text: str) -> str:
    """The digest of text as a wheel's record writes it."""
    return base64.urlsafe_b64encode(hashlib.sha256(text.encode()).digest()).rstrip(b"=").decode()
