"""What both hands do in each bar, what that measures, how bars are alike, chords and form.

Uses no other room of teaching.
"""
