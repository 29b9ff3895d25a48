"""A small web server for tests: one folder, on loopback, under a sub-path, with a policy header and gzip."""

import gzip
import mimetypes
import random
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from urllib.parse import unquote, urlsplit

PACKED = ("text/", "application/javascript", "application/json", "image/svg+xml")


def free_port() -> int:
    """A port for a server that is started later: from a range out of which the system gives none to others, as it might by then
    to another worker's browser."""
    while True:
        port = random.randrange(20_000, 30_000)
        with socket.socket() as probe:
            if probe.connect_ex(("127.0.0.1", port)):
                return port


@contextmanager
def serving(folder: Path, prefix: str = "/", policy: str = "") -> Iterator[str]:
    """Serve folder below prefix until the block ends; gives the base URL, which ends in a slash."""
    server = ThreadingHTTPServer(("127.0.0.1", 0), partial(_Handler, folder, prefix, policy))
    server.daemon_threads = True
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.server_port}{prefix}"
    finally:
        server.shutdown()
        server.server_close()
        thread.join()


class _Handler(BaseHTTPRequestHandler):
    """Answers GET from the folder; a path that is not there gets the site's own 404 page."""

    protocol_version = "HTTP/1.1"

    def __init__(self, folder: Path, prefix: str, policy: str, *rest: object) -> None:
        self.folder, self.prefix, self.policy = folder.resolve(), prefix, policy
        super().__init__(*rest)

    def do_GET(self) -> None:
        """Send the file that the path names."""
        path = unquote(urlsplit(self.path).path)
        file = self._file(path)
        if file is None:
            missing = self.folder / "404.html"
            self._send(404, "text/html", missing.read_bytes() if missing.exists() else b"not here")
            return
        self._send(200, mimetypes.guess_type(file.name)[0] or "application/octet-stream", file.read_bytes())

    def _file(self, path: str) -> Path | None:
        """The file in the folder that path names, or None."""
        if not path.startswith(self.prefix):
            return None
        place = (self.folder / path.removeprefix(self.prefix)).resolve()
        if place.is_dir():
            place /= "index.html"
        return place if place.is_file() and place.is_relative_to(self.folder) else None

    def _send(self, status: int, kind: str, body: bytes) -> None:
        """Send body, packed as a host would pack it when the browser takes that."""
        self.send_response(status)
        text = kind.startswith(PACKED) or kind == "text/javascript"
        self.send_header("Content-Type", f"{kind}; charset=utf-8" if text else kind)
        if text and "gzip" in self.headers.get("Accept-Encoding", ""):
            body = gzip.compress(body, 9)
            self.send_header("Content-Encoding", "gzip")
        if self.policy:
            self.send_header("Content-Security-Policy", self.policy)
        self.send_header("Content-Length", str(len(body)))
        self.send_header("Cache-Control", "no-cache")
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, format: str, *arguments: object) -> None:
        """Keep quiet: the tests look at the browser's side."""
