"""Every command of the window as data: its words, its menu and its keys.

Menus are built of this table, the list of keys shows it, and pages of the help name keys by it
(``{undo}`` in a page becomes the keys of undo). What a command does is told where the window is
composed.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from workbench.language.speech import mark, say


@dataclass(frozen=True)
class Command:
    """An entry of a menu. ``lesson``: only while one is open; ``ticked``: it stays on until it
    is chosen again; ``writing``: its key while music is written; ``what`` fills the words."""

    name: str
    words: str
    keys: tuple[str, ...] = ()
    lesson: bool = False
    ticked: bool = False
    writing: str = ""
    what: str = ""

    def say(self) -> str:
        """The words in the language spoken now, with the mark of the letter that reaches it."""
        return say(self.words, what=say(self.what)) if self.what else say(self.words)


@dataclass(frozen=True)
class Menu:
    """A menu, or a menu in one. Without entries it is filled when the window knows them."""

    name: str
    words: str
    entries: tuple[Command | Menu | None, ...] = field(default=())  # None: a line between


def _open(
    name: str, words: str, *keys: str, ticked: bool = False, writing: str = "", what: str = ""
) -> Command:
    """A command on the open lesson."""
    return Command(name, words, keys, True, ticked, writing, what)


def _any(name: str, words: str, *keys: str, ticked: bool = False) -> Command:
    """A command that is there without a lesson as well."""
    return Command(name, words, keys, False, ticked)


LESSON = Menu("lesson", mark("&Lesson"), (
    _any("import", mark("&Import a score …"), "Ctrl+O"),
    _any("shelf", mark("&Shelf …"), "Ctrl+L"),
    Menu("recent", mark("Rece&nt lessons")),
    _any("groups", mark("Student &groups …")),
    None,
    _open("change-music", mark("Instrument and &key …"), "Ctrl+K"),
    _open("copy", mark("&Copy for another student …"), "Ctrl+Shift+D"),
    _open("keep-version", mark("Keep a &version …"), "Ctrl+Shift+S"),
    _open("compare-versions", mark("Compare versio&ns …"), "Ctrl+Shift+V"),
    Menu("safe-keeping", mark("Sa&fe keeping"), (
        _any("backups", mark("&Backups …")),
        _any("save-archive", mark("Save all in an &archive …")),
        _any("open-archive", mark("&Take in an archive …")),
        None,
        _any("empty-bin", mark("&Empty the bin …")),
        _any("forget-student", mark("&Forget a student …")),
    )),
    Menu("versions", mark("Go &back to a version")),
    None,
    _open("handout", mark("&Handout …"), "Ctrl+E"),
    _open("print-student", mark("Print the &handout …"), "Ctrl+P"),
    _open("print-teacher", mark("Print the &teacher's sheet …"), "Ctrl+Shift+P"),
    _open("export-plan", mark("Export the practice p&lan …")),
    _open("export-script", mark("Export the scrip&t …"), "Ctrl+Shift+E"),
    _open("read-script", mark("&Read the script"), "F5"),
    None,
    _any("quit", mark("&Quit"), "Ctrl+Q"),
))  # fmt: skip

EDIT = Menu("edit", mark("&Edit"), (
    _open("undo", mark("&Undo"), "Ctrl+Z"),
    _open("redo", mark("&Redo"), "Ctrl+Shift+Z", "Ctrl+Y"),
    _open("history", mark("Undo histor&y …"), "Ctrl+H"),
    None,
    _open("new-note", mark("&New remark on the bar"), "Ctrl+N"),
    _open("pin-bar", mark("&Pin this bar"), "Ctrl+B"),
    _open("free", mark("&Free note or bar"), "Ctrl+Backspace"),
    _open("take-other", mark("Take the other f&ingering"), "Ctrl+T"),
    _open("why-not", mark("Why no&t …"), "Ctrl+Shift+T"),
    _open("section", mark("&Section of the selected bars …"), "Ctrl+G"),
    None,
    _open("learn-choices", mark("Learn from my &choices …")),
    _any("learn-scores", mark("&Learn from fingered scores …")),
    _any("forget-choices", mark("Forget what &was learnt")),
    _any("learn-grades", mark("Learn fro&m my grades …")),
    None,
    _open("next-bar", mark("Next &bar"), "Ctrl+Down", "Ctrl+Right"),
    _open("previous-bar", mark("Pre&vious bar"), "Ctrl+Up", "Ctrl+Left"),
))  # fmt: skip

MUSIC = Menu("music", mark("&Music"), (
    _any("new-piece", mark("&New piece …"), "Ctrl+Shift+N"),
    _open("write", mark("&Write music"), "Ctrl+M", ticked=True),
    None,
    Menu("note-at-hand", mark("N&ote at hand"), (
        _open("relength", mark("Change its &length to the chosen one"), writing="L"),
        _open("tie", mark("&Tie to the next"), writing="T"),
        _open("untie", mark("&Untie"), writing="Shift+T"),
        _open("step-up", mark("A st&ep higher"), writing="Alt+Up"),
        _open("step-down", mark("A ste&p lower"), writing="Alt+Down"),
        _open("semitone-up", mark("A &semitone higher"), writing="Alt+Shift+Up"),
        _open("semitone-down", mark("A se&mitone lower"), writing="Alt+Shift+Down"),
        _open("octave-up", mark("An &octave higher"), writing="PgUp"),
        _open("octave-down", mark("An o&ctave lower"), writing="PgDown"),
        _open("respell", mark("Spell it other&wise"), writing="N"),
        _open("next-voice", mark("Give it to the next &voice"), writing="Shift+V"),
        _open("delete-note", mark("&Delete it"), writing="Del"),
        _open("rest", mark("Write a &rest"), writing="R"),
        _open("chord-name", mark("Chord n&ame …"), writing="S"),
    )),
    Menu("bar", mark("&Bar"), (
        _open("insert-before", mark("Insert a bar &before")),
        _open("insert-after", mark("Insert a bar &after")),
        _open("duplicate-bars", mark("&Write again after it")),
        _open("delete-bars", mark("&Delete")),
        None,
        _open("key-signature", mark("&Key signature …")),
        _open("time-signature", mark("&Time signature …")),
        _open("time-of-bar", mark("Time signature of this bar a&lone …")),
        _open("tempo", mark("Te&mpo …")),
        _open("double-bar", mark("D&ouble bar line")),
    )),
    Menu("repeats", mark("&Repeats and jumps"), (
        _open("repeat-begins", mark("Repeat &begins here"), writing="("),
        _open("repeat-ends", mark("Repeat &ends here"), writing=")"),
        _open("times", mark("How many &times …")),
        _open("first-ending", mark("&First ending")),
        _open("second-ending", mark("&Second ending")),
        _open("no-endings", mark("&Dissolve the endings")),
        None,
        _open("jump", mark("&Jump …")),
        _open("segno", mark("Segno")),
        _open("coda", mark("Coda")),
        _open("to_coda", mark("To Coda")),
        _open("fine", mark("Fine")),
    )),
    _open("pickup", mark("&Pickup …")),
    _open("titles", mark("&Title, composer, arranger …")),
))  # fmt: skip

_PLAY = mark("Play {what}")
SOUND = Menu("sound", mark("&Sound"), (
    _open("play", mark("&Play or stop"), "Ctrl+Space"),
    _open("play-note", _PLAY, "Ctrl+Alt+N", what=mark("from the note")),
    _open("play-bar", _PLAY, "Ctrl+Alt+B", what=mark("this bar")),
    _open("play-selected", _PLAY, "Ctrl+Alt+S", what=mark("the selected bars")),
    _open("play-section", _PLAY, "Ctrl+Alt+A", what=mark("this section")),
    _open("play-whole", _PLAY, "Ctrl+Alt+W", what=mark("the whole piece")),
    None,
    Menu("compare", mark("&Compare by ear"), (
        _open("against-written", mark("As &fingered, then as written")),
        _open("against-other", mark("This &bar, then its other fingering")),
        _open("against-original", mark("The &original, then this arrangement")),
    )),
    None,
    _open("trainer", mark("Tempo &trainer …")),
    _open("tuner", mark("T&uner tones …")),
    None,
    _open("export-sound", mark("&Export sound …"), "Ctrl+Shift+W"),
    _open("pack", mark("Student's &pack …"), "Ctrl+Shift+K"),
))  # fmt: skip

VIEW = Menu("view", mark("&View"), (
    _any("view-score", mark("&Score"), "Ctrl+1"),
    _any("view-techniques", mark("Techni&ques"), "Ctrl+2"),
    _any("view-plan", mark("Practice pla&n"), "Ctrl+3"),
    _any("view-script", mark("Script"), "Ctrl+4"),
    _any("view-grade", mark("Gra&de"), "Ctrl+5"),
    _any("view-arrangement", mark("Arrangement"), "Ctrl+6"),
    _any("order", mark("Bars as &written or as played"), "Ctrl+R"),
    None,
    Menu("colours", mark("&Colours")),
    Menu("text-size", mark("&Text size")),
    _any("larger-text", mark("&Larger text"), "Ctrl+Shift++", "Ctrl+Shift+="),
    _any("smaller-text", mark("S&maller text"), "Ctrl+Shift+-"),
    Menu("language", mark("Lan&guage")),
    None,
    _any("zoom-in", mark("Zoom the score &in"), "Ctrl++", "Ctrl+="),
    _any("zoom-out", mark("Zoom the score &out"), "Ctrl+-"),
    _any("zoom-1", mark("Score at &100 %"), "Ctrl+0"),
    None,
    _any("tab", mark("T&ablature"), ticked=True),
    _any("left", mark("L&eft fingers"), ticked=True),
    _any("right", mark("&Right fingers"), ticked=True),
    _any("left-handed", mark("Left-&handed fretboard"), "Ctrl+Shift+L", ticked=True),
    None,
    _any("full-screen", mark("&Full screen"), "F11", ticked=True),
    _any("forget-layout", mark("Layout as at the &beginning")),
    _any("next-part", mark("Next &part of the window"), "F6"),
    _any("previous-part", mark("Pre&vious part"), "Shift+F6"),
))  # fmt: skip

HELP = Menu("help", mark("&Help"), (
    _any("help-here", mark("&Help on this"), "F1"),
    _any("keys", mark("&Keys …"), "Ctrl+/"),
    _any("tour", mark("&Tour of the window")),
    _any("cautions", mark("Health &cautions …")),
    _any("report", mark("&Error report …")),
))  # fmt: skip

MENUS = (LESSON, EDIT, MUSIC, SOUND, VIEW, HELP)


def commands(menus: tuple[Command | Menu | None, ...] = MENUS) -> Iterator[Command]:
    """Every command, in the order of the menus."""
    for entry in menus:
        if isinstance(entry, Menu):
            yield from commands(entry.entries)
        elif entry is not None:
            yield entry
