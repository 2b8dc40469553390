"""The names under which the store keeps settings: every one of them, so that none is borne
by two. What is kept under a name is told where it is written."""

LAST_LESSON = "window.lesson"
WINDOW_STATE = "window.state"
TOUR_TAKEN = "window.tour"  # taken, or skipped
LANGUAGE = "window.language"
LEFT_HANDED = "left_handed"

BARS_VIEW = "bars.view"
PLAYER = "player"
READING_LOOK = "reading.look"
READING_KEYS = "reading.keys"
LEAVES_OUT_KNOWN = "script.leaves_out"
PLANNED_WITH = "plan.{}"  # by lesson: what is planned with, beside the lesson itself
HANDOUT_OPTIONS = "handout.options"  # what was chosen last, studio and contact among it

IMPORT_FOLDER = "import.folder"
TEXTS_FOLDER = "texts.folder"

FITTED_WEIGHTS = "fitted weights"
FITTED_SMALL_WEIGHTS = "fitted weights, small"
WEIGHTS_BEFORE = "weights before the fit"
GRADE_MODEL = "grade model"
GRADE_MODEL_BEFORE = "grade model before the fit"
PRINTED_GRADE = "printed grade.{}"  # by lesson
