"""Writing and correcting the music, in the score and by dialogs.

May use the score and what is below it.
"""
