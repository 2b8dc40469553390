"""The techniques in a fingered piece, which of them are new, and exercises for them.

Uses `bars` and the demands of `grading`.
"""
