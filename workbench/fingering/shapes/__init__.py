"""Chord shapes: every fingering of some frets, easiest first, and what a chord is called.

Uses `hand`; a shape has no time, so nothing of `lattice`.
"""
