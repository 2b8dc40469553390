"""The verbs of the command line, one module each.

A verb's module has ``options(parser)``, which declares its arguments and
imports nothing heavy, and ``run(options)``, which does the work and returns a
``Result``.
"""

#: Verb and what it does, in the order of the job.
VERBS = {
    "read": "show what a score holds: parts, bars, form",
    "keys": "rank the keys that suit the instrument and the hand",
    "arrange": "lay a score on an instrument, and list what that altered",
    "finger": "finger a score for both hands",
    "shape": "finger a chord shape",
    "grade": "estimate the grade and the learning time",
    "plan": "plan the practice day by day",
    "script": "write the tutorial's script with times",
    "handout": "write the student's or the teacher's page as PDF",
    "export": "write the arranged and fingered piece as MusicXML or MIDI",
    "sound": "write the piece as plucked sound",
    "pack": "make the student's pack: sheet, tracks and a page that plays them",
    "lessons": "list the lessons that the store holds",
    "archive": "carry lessons to another shelf in one open file",
    "backup": "make, list or restore backups of the lesson store",
    "fit": "learn from the pins and fingerings that the teacher chose",
    "batch": "make handouts of all scores in a folder",
}
