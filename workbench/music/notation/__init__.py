"""Music as it is written down: notes cut at bar lines, and lengths as note values.

Engraving and export share it. Uses the values of music only.
"""
