"""The order in which bars are played, endings, sections, and the form in words.

Uses the values of music only.
"""
