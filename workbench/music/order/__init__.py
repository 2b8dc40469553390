"""The order in which bars are played, endings and sections.

Uses the values of music only.
"""
