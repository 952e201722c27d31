"""A server that answers as it is told, for the parts of the benchmarks."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

import pytest


class Obeying(BaseHTTPRequestHandler):
    """Answers with the status that the address names; 0 is no answer at all, and late an answer after a second."""

    protocol_version = "HTTP/1.1"
    seen: list[tuple[str, bytes, str]]

    def do_POST(self) -> None:
        body = self.rfile.read(int(self.headers["Content-Length"]))
        self.seen.append((self.path, body, self.headers.get("Accept-Language", "")))
        if self.path == "/late":
            time.sleep(1)
        status = 200 if self.path == "/late" else int(self.path.strip("/"))
        if status == 0:
            self.close_connection = True
            return
        self.send_response(status)
        self.send_header("Content-Length", str(len(body)))
        if status == 503:
            self.send_header("Retry-After", "7")
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *_: object) -> None:
        pass


class Listening(ThreadingHTTPServer):
    request_queue_size = 128


@pytest.fixture
def port() -> Iterator[int]:
    Obeying.seen = []
    server = Listening(("127.0.0.1", 0), Obeying)
    threading.Thread(target=server.serve_forever).start()
    yield server.server_port
    server.shutdown()
    server.server_close()
