"""A headless browser, told what to do over its own debugging pipe: no driver, no network."""

from __future__ import annotations

import base64
import json
import os
import select
import shutil
import subprocess
import sys
import time

import pytest

NAMES = ("chromium-headless-shell", "chromium", "chromium-browser", "google-chrome")


def browser_or_skip():
    """The program; skips with the reason where this machine has none."""
    if not sys.platform.startswith("linux"):
        pytest.skip("the browser is driven through file descriptors as Linux passes them on")
    found = next((path for path in map(shutil.which, NAMES) if path), None)
    if found is None:
        pytest.skip("no Chromium here: install the system's package chromium-headless-shell")
    return found


class Browser:
    """One page in a headless browser, by the Chrome DevTools Protocol."""

    def __init__(self, program, profile):
        (read_here, write_there), (read_there, write_here) = os.pipe(), os.pipe()

        def as_three_and_four():
            # The browser reads from descriptor 3 and writes to 4.
            there = os.dup(read_there), os.dup(write_there)
            os.dup2(there[0], 3)
            os.dup2(there[1], 4)

        self.process = subprocess.Popen(
            [program, "--headless", "--no-sandbox", "--remote-debugging-pipe", "--disable-gpu",
             "--autoplay-policy=no-user-gesture-required", "--mute-audio",
             "--disable-dev-shm-usage", f"--user-data-dir={profile}", "about:blank"],
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
            pass_fds=(3, 4, read_there, write_there), preexec_fn=as_three_and_four,
        ) if _free(3, 4) else None  # fmt: skip
        os.close(read_there)
        os.close(write_there)
        self._read, self._write = read_here, write_here
        self._left, self._number = b"", 0
        self.asked = []  # addresses that the page asked for
        target = self.tell("Target.createTarget", url="about:blank")["targetId"]
        self._session = None
        self._session = self.tell("Target.attachToTarget", targetId=target, flatten=True)[
            "sessionId"
        ]
        self.tell("Network.enable")
        self.tell("Page.enable")

    def tell(self, method, **what):
        """A command and its answer."""
        self._number += 1
        message = {"id": self._number, "method": method, "params": what}
        if getattr(self, "_session", None):
            message["sessionId"] = self._session
        os.write(self._write, json.dumps(message).encode() + b"\0")
        until = time.monotonic() + 60
        while time.monotonic() < until:
            answer = self._next(until)
            if answer.get("method") == "Network.requestWillBeSent":
                self.asked.append(answer["params"]["request"]["url"])
            if answer.get("id") == self._number:
                assert "error" not in answer, answer["error"]
                return answer["result"]
        raise AssertionError(f"the browser does not answer {method}")

    def _next(self, until):
        while b"\0" not in self._left:
            ready, _, _ = select.select([self._read], [], [], max(0, until - time.monotonic()))
            assert ready, "the browser is silent"
            self._left += os.read(self._read, 1 << 16)
        one, _, self._left = self._left.partition(b"\0")
        return json.loads(one)

    def open(self, address):
        self.tell("Page.navigate", url=address)
        self.wait("document.readyState === 'complete'")

    def run(self, script):
        """The value of an expression in the page."""
        answer = self.tell(
            "Runtime.evaluate", expression=script, returnByValue=True, awaitPromise=True,
            userGesture=True,
        )  # fmt: skip
        assert "exceptionDetails" not in answer, answer["exceptionDetails"]
        return answer["result"].get("value")

    def wait(self, script, seconds=30):
        """Until an expression is true."""
        until = time.monotonic() + seconds
        while time.monotonic() < until:
            if self.run(script):
                return
            time.sleep(0.02)
        raise AssertionError(f"never true: {script}")

    def key(self, name, text=""):
        for kind in ("keyDown", "keyUp"):
            more = {"text": text} if text and kind == "keyDown" else {}
            self.tell("Input.dispatchKeyEvent", type=kind, key=name, **more)

    def size(self, width, height, phone=False):
        self.tell("Emulation.setDeviceMetricsOverride", width=width, height=height,
                  deviceScaleFactor=1, mobile=phone)  # fmt: skip

    def picture(self, path):
        data = self.tell("Page.captureScreenshot", format="png")["data"]
        path.write_bytes(base64.b64decode(data))

    def close(self):
        self.process.terminate()
        self.process.wait(20)
        os.close(self._read)
        os.close(self._write)


def _free(*numbers):
    """Make sure that these descriptors are taken, so that they can be passed on."""
    for number in numbers:
        try:
            os.fstat(number)
        except OSError:
            os.dup2(os.open(os.devnull, os.O_RDWR), number)
    return True
