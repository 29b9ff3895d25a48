"""Finding a browser for the tests: the one named, one that is there, one from Debian, the test library's own."""

import os
import shutil
import sys

from generator.setting_up import telling

VARIABLE = "PRUNING_GUIDE_BROWSER"
NAMES = (
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "chrome",
    "microsoft-edge",
    "microsoft-edge-stable",
)
APPLICATIONS = (
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
)
RELEASE = "/etc/os-release"
ASK_FOR_PATH = """
from playwright.sync_api import sync_playwright
library = sync_playwright().start()
print(library.chromium.executable_path)
library.stop()
"""
MISSING = (
    "No browser for the browser tests. Install Chromium (Debian: `sudo apt-get install chromium`), or set %s to the "
    "program of a Chromium, Chrome or Edge, then run the same command again; `python3 -m generator test --no-browser` "
    "runs the other tests and says what was left out." % VARIABLE
)


def find():
    """The path of a browser that is on this machine already, or an empty string.

    Raises telling.Stop when the environment variable names something that is not a program.
    """
    named = os.environ.get(VARIABLE, "")
    if named:
        if not shutil.which(named):
            raise telling.Stop("%s names %s, which is not a program. Correct it or unset it." % (VARIABLE, named))
        return shutil.which(named)
    found = [shutil.which(name) for name in NAMES] + [path for path in APPLICATIONS if os.path.exists(path)]
    return next((path for path in found if path), "")


def find_or_install():
    """The path of a browser, installed first if that can be done without asking. Raises telling.Stop when it cannot."""
    path = find() or from_debian() or from_test_library()
    if not path:
        raise telling.Stop(MISSING)
    return path


def from_debian():
    """Install Chromium from Debian's packages, as root on Debian only; return its path, or an empty string."""
    if not (is_debian() and is_root() and shutil.which("apt-get")):
        return ""
    telling.say("No browser here: installing Chromium with apt-get (once, about a minute).")
    quiet = dict(os.environ, DEBIAN_FRONTEND="noninteractive")
    telling.run(["apt-get", "update"], env=quiet)
    install = ["apt-get", "install", "--yes", "--no-install-recommends", "chromium", "fonts-liberation"]
    status, lines = telling.run(install, env=quiet)
    if status:
        telling.say("apt-get could not install Chromium (%s)." % telling.last_line(lines))
        return ""
    return shutil.which("chromium") or ""


def from_test_library():
    """Let the test library fetch its own Chromium into its cache; return its path, or an empty string."""
    telling.say("No browser here: asking the test library for its own (once, about a minute).")
    status, lines = telling.run([sys.executable, "-m", "playwright", "install", "chromium"])
    if status:
        telling.say("The test library could not fetch a browser (%s)." % telling.last_line(lines))
        return ""
    status, lines = telling.run([sys.executable, "-c", ASK_FOR_PATH])
    path = telling.last_line(lines)
    return path if status == 0 and os.path.exists(path) else ""


def is_debian(release=RELEASE):
    """Whether this is Debian or a close relative; Ubuntu's package only points to another store."""
    try:
        with open(release) as lines:
            pairs = [line.strip().split("=", 1) for line in lines if "=" in line]
    except IOError:
        return False
    words = " ".join(value.strip('"') for key, value in pairs if key in ("ID", "ID_LIKE")).split()
    return "debian" in words and "ubuntu" not in words


def is_root():
    """Whether packages can be installed without asking for a password."""
    return hasattr(os, "geteuid") and os.geteuid() == 0
