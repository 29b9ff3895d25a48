"""serve: build the pages, serve them on this machine only, and build again when a file changes."""

import argparse
import os
import socket

from generator.cli import host
from generator.cli.arguments import PROGRAM
from generator.cli.places import PROJECT, edition_of
from generator.setting_up.environment import hand_over
from generator.setting_up.telling import Stop

LOOPBACK = "127.0.0.1"


def run(options: argparse.Namespace) -> int:
    """Say where the pages will be and become the server. Raises Stop when the port is taken."""
    edition = edition_of(options)
    _refuse_taken(options.port)
    print(
        f"Building the pages. They will be at http://{LOOPBACK}:{options.port}/ in a few seconds; "
        "Ctrl+C stops. What you change in rules/ shows at once.",
        flush=True,
    )
    os.environ.update(host.environment(edition))
    os.chdir(PROJECT)
    return hand_over(host.command("serve", "--livereload", "--dev-addr", f"{LOOPBACK}:{options.port}"))


def _refuse_taken(port: int) -> None:
    """Raise Stop when something else listens on the port, before the build and not after it."""
    with socket.socket() as probe:
        # As the server itself will do; else a port that was used a moment ago would count as taken.
        probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((LOOPBACK, port))
        except OSError:
            free = f"{PROGRAM} serve --port {port + 1 if port < 65535 else port - 1}"
            raise Stop(f"Port {port} is in use or not allowed. Take another: `{free}`.") from None
