"""Serves the folder "site" beside this one to this computer alone. Needs Python 3.7 and nothing else."""
import http.server
import json
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
SITE = os.path.join(HERE, "..", "site")
with open(os.path.join(HERE, "types.json"), encoding="utf-8") as file:
    TYPES = json.load(file)


class Site(http.server.SimpleHTTPRequestHandler):
    def __init__(self, *args):
        super().__init__(*args, directory=SITE)

    def guess_type(self, path):
        # The list of the machine may name a script as text, and a browser would not run it.
        ending = os.path.splitext(str(path))[1].lstrip(".")
        return TYPES.get(ending, "application/octet-stream")

    def list_directory(self, path):
        return self.send_error(404)

    def send_error(self, code, message=None, explain=None):
        if code != 404:
            return super().send_error(code, message, explain)
        with open(os.path.join(SITE, "404.html"), "rb") as page:
            body = page.read()
        self.send_response(404)
        self.send_header("Content-Type", TYPES["html"])
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(body)

    def end_headers(self):
        self.send_header("Cache-Control", "no-cache")
        super().end_headers()

    def log_message(self, *args):
        pass


http.server.ThreadingHTTPServer(("127.0.0.1", int(sys.argv[1])), Site).serve_forever()
