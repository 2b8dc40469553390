"""A score file read into a Piece, in a process of its own.

Uses `parsing` and the values of music.
"""
