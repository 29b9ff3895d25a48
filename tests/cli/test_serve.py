"""serve: on loopback, on the port asked for, one process; a port in use is said before anything is built."""

import socket
import subprocess
import sys
import time
import urllib.request

from tests.serving import free_port

# A bound for a machine that is busy with other things, not a measure of speed.
LONGEST_WAIT = 600


def test_a_port_in_use_is_said_with_another_to_take(command):
    """One line, at once."""
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = taken.getsockname()[1]
        done = command("serve", "--port", str(port))
    assert done.returncode == 1
    assert done.stderr == (
        f"error: Port {port} is in use or not allowed. Take another: `python3 -m generator serve --port {port + 1}`.\n"
    )
    assert done.stdout == ""


def test_the_pages_are_served_where_it_says(project_root):
    """It says the address, answers there, and ends when it is told to end."""
    port = free_port()
    words = [sys.executable, "-m", "generator.cli", "serve", "--port", str(port)]
    server = subprocess.Popen(words, cwd=project_root, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
    try:
        address = f"http://127.0.0.1:{port}/"
        assert address in server.stdout.readline()
        assert b"<h1" in wait_for(address, server)
    finally:
        server.terminate()
    server.wait(LONGEST_WAIT)
    with socket.socket() as probe:
        assert probe.connect_ex(("127.0.0.1", port)) != 0


def wait_for(address, server):
    """The body of the page at address, as soon as the server has it."""
    end = time.monotonic() + LONGEST_WAIT
    while time.monotonic() < end and server.poll() is None:
        try:
            return urllib.request.urlopen(address, timeout=5).read()
        except OSError:
            time.sleep(0.2)
    raise AssertionError(f"nothing at {address}")
