"""The script of a tutorial, bar by bar in playing order, and its files.

Uses `bars`, `lessons` and `techniques`.
"""
