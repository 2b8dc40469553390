"""A Piece as MEI: note values, voices, beams, accidentals, marks.

Knows no drawing and no Qt.
"""
