"""Set Pluckwright up on this machine where needed, then start it.

    python3 installer/start.py                          opens the window
    python3 installer/start.py handout demo -o page.pdf  works by the command line

Standard library only. Arguments pass on to the command line as they are.
"""

import os
import subprocess
import sys

import libraries
import machine


def has_display():
    """True where a window can be shown, or another Qt platform was asked for."""
    if not sys.platform.startswith("linux"):
        return True
    names = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    return any(os.environ.get(name) for name in names)


def main(arguments):
    """Exit status: the program's own, or 2 where the machine lacks something."""
    window = not arguments and has_display()
    try:
        inner = machine.set_up()
        rows = libraries.provide(window=window, say=machine.say)
        if rows:
            advice = libraries.advice(rows, libraries.family())
            if window:
                raise machine.Stop(advice)
            machine.say(advice)
        if window:
            libraries.provide_sound(say=machine.say)
    except machine.Stop as stop:
        machine.say(str(stop))
        return 2
    if window:
        machine.say("Opening the window ...")
    # -P: a folder of the same name where the user stands must not get in the way.
    return subprocess.call([str(inner), "-P", "-m", "workbench", *arguments])


if __name__ == "__main__":
    try:
        sys.exit(main(sys.argv[1:]))
    except KeyboardInterrupt:
        machine.say("Stopped.")
        sys.exit(130)
