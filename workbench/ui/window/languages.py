"""Which language the window speaks, and Qt's own words in it."""

from __future__ import annotations

import os

from PySide6.QtCore import QLibraryInfo, QLocale, QTranslator
from PySide6.QtWidgets import QApplication

from workbench.language import speech
from workbench.music.errors import BadInput
from workbench.store.setting_names import LANGUAGE
from workbench.store.shelf import Shelf

_of_qt: list[QTranslator] = []


def wanted(shelf: Shelf | None = None) -> str:
    """The language to speak: the one chosen on this shelf, else the one that
    ``PLUCKWRIGHT_LANGUAGE`` names, else the first of the system's that is offered."""
    kept = kept_choice(shelf) if shelf else ""
    return kept or speech.from_environment() or of_system()


def kept_choice(shelf: Shelf) -> str:
    """The language chosen on this shelf; "" where the system decides."""
    try:
        kept = str(shelf.setting(LANGUAGE) or "")
    except BadInput:
        return ""
    return kept if kept in speech.OFFERED else ""


def of_system() -> str:
    """The first of the system's languages that is offered, else English."""
    for name in QLocale.system().uiLanguages():
        short = name.replace("_", "-").split("-")[0].lower()
        if short in speech.OFFERED:
            return short
    return "en"


def speak(code: str) -> None:
    """Speak a language from now on: our words, Qt's buttons and dialogs, numbers and dates.

    Widgets that are there already keep the words they were made with.
    """
    speech.choose(code)
    code = speech.chosen()
    system = QLocale.system()
    same = system.name().split("_")[0] == code
    QLocale.setDefault(system if same else QLocale(code))
    app = QApplication.instance()
    if app is None:
        return
    while _of_qt:
        app.removeTranslator(_of_qt.pop())
    translator = QTranslator()
    folder = os.fspath(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
    if code != "en" and translator.load(f"qtbase_{code}", folder):
        app.installTranslator(translator)
        _of_qt.append(translator)
