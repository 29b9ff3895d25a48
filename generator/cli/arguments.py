"""The whole command line at a glance: commands, what they take, and the lock that each needs.

Standard library only: `python3 -m generator` reads it before there is an environment.
"""

import argparse
import sys
from typing import NoReturn

PROGRAM = "python3 -m generator"
PORT = 8000

# Every other command needs what guide.lock holds. Renewing the locks must work when they are spoilt.
LOCKS = {"test": "test.lock", "lock": ""}


class OneLineParser(argparse.ArgumentParser):
    """A parser whose complaint is one line that names the next step; exit status 2."""

    def error(self, message: str) -> NoReturn:
        """Leave with the complaint."""
        self.exit(2, f"error: {message}. `{self.prog} --help` shows what it takes.\n")


def read(words: list[str]) -> argparse.Namespace:
    """The options of one command, from its words; `extra` holds what follows `--`.

    Leaves with status 2 and one line on stderr when they make no command.
    """
    cut = words.index("--") if "--" in words else len(words)
    parser = _parser()
    if not words:
        parser.print_help(sys.stderr)
        parser.exit(2)
    options = parser.parse_args(words[:cut])
    options.extra = words[cut + 1 :]
    if options.extra and options.command != "test":
        parser.error(f"only `test` passes on what follows --, not `{options.command}`")
    return options


def _parser() -> argparse.ArgumentParser:
    """The parser of all commands."""
    parser = OneLineParser(prog=PROGRAM, description="The decision guide for winter pruning of grapevines.")
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")
    edition = argparse.ArgumentParser(add_help=False)
    edition.add_argument("--edition", metavar="DIR", default="", help="a local edition laid over the rules")
    _add_site_commands(commands, edition)
    _add_author_commands(commands, edition)
    _add_answer_commands(commands, edition)
    return parser


def _add_site_commands(commands: "argparse._SubParsersAction", edition: argparse.ArgumentParser) -> None:
    """serve, build, write: the pages."""
    serve = commands.add_parser("serve", parents=[edition], help="build the pages and serve them on this machine")
    serve.add_argument("--port", type=_port, default=PORT, metavar="N", help=f"default {PORT}")
    build = commands.add_parser("build", parents=[edition], help="build the site into a folder")
    build.add_argument("--out", metavar="DIR", help="default site")
    write = commands.add_parser("write", parents=[edition], help="write the pages as plain Markdown, for any host")
    write.add_argument("out", metavar="DIR")


def _add_author_commands(commands: "argparse._SubParsersAction", edition: argparse.ArgumentParser) -> None:
    """test, check, explain, new, ids, lock: for those who write rules and code."""
    test = commands.add_parser("test", help="run every check and test; what follows -- goes to pytest")
    test.set_defaults(edition="", json=False, annotations=False)
    test.add_argument("--no-browser", action="store_true", help="leave the browser tests out, and say which")
    test.add_argument("--deep", action="store_true", help="the proofs alone, with far more cases each; records the run")
    check = commands.add_parser("check", parents=[edition], help="check the rules: every problem with file and line")
    form = check.add_mutually_exclusive_group()
    form.add_argument("--json", action="store_true", help="the problems as JSON")
    form.add_argument("--annotations", action="store_true", help="as a code host shows them beside the line")
    explain = commands.add_parser("explain", help="the manual page of one check")
    explain.add_argument("check", metavar="CHECK", nargs="?", default="", help="without it: the names of all checks")
    new = commands.add_parser("new", help="begin a new item of the rules")
    new.add_argument("kind", metavar="KIND", help="fact, value, decision, source, term, ...")
    new.add_argument("id", metavar="ID", help="its permanent name, in small letters with _ between words")
    commands.add_parser("ids", help="add every id that rules/ids.yml does not list yet")
    lock = commands.add_parser("lock", help="renew guide.lock and test.lock from pyproject.toml")
    lock.add_argument("--keep", action="store_true", help="keep every version that still fits")


def _add_answer_commands(commands: "argparse._SubParsersAction", edition: argparse.ArgumentParser) -> None:
    """compute and plan: the answers of the pages, without the pages."""
    compute = commands.add_parser("compute", parents=[edition], help="one calculator or decision, as JSON")
    compute.add_argument("name", metavar="NAME", nargs="?", default="")
    what = compute.add_mutually_exclusive_group(required=True)
    files = "a JSON file of facts, a .csv file of rows (give --input twice for both), or - for JSON on standard input"
    what.add_argument("--input", metavar="FILE", action="append", help=files)
    what.add_argument("--describe", action="store_true", help="what it asks and what it gives")
    what.add_argument("--list", action="store_true", help="the names that it knows")
    plan = commands.add_parser("plan", parents=[edition], help="the pruning plan of a block")
    plan.add_argument("block", metavar="BLOCK.yml")
    plan.add_argument("--json", action="store_true", help="as JSON, to the last digit as on the page")


def _port(text: str) -> int:
    """A port number from text. Raises ArgumentTypeError when it is none."""
    if not text.isdigit() or not 1 <= int(text) <= 65535:
        raise argparse.ArgumentTypeError(f"{text} is not a port; take a whole number from 1 to 65535")
    return int(text)
