"""The script: written beside the music, read while playing.

May use the shared page, notes, score, paper and what is below them.
"""
